#pragma once

#include <span>
#include <string>
#include <string_view>

#include <berthwright/view/words.h>

namespace berthwright {

/// What a sentence may draw on: the finding, the plan's names for its subjects, numbers rounded the careful
/// way.
class Telling {
 public:
  /// std::logic_error when the finding's rule does not exist.
  Telling(const Plan& plan, const Finding& finding);

  /// The name the plan gives to the `index`-th subject, the id where it gives none.
  std::string subject(std::size_t index) const;
  /// The subjects from the `from`-th on: "A", "A and B", "A, B and C".
  std::string subjects(std::size_t from) const;
  bool has_subject(std::size_t index) const { return index < finding_.subjects.size(); }
  bool is_leaf(std::size_t index) const { return plan_.leaf(finding_.subjects.at(index)) != nullptr; }
  std::string bed() const;
  /// "In lounge, ", "By night, ", or nothing where the finding holds for the trailer.
  std::string when() const;
  std::string measured() const;
  /// The `index`-th of the figures beside the measure, rounded as said; they must be there.
  std::string beside(std::size_t index, Rounding rounding) const;
  bool has_beside(std::size_t index) const { return index < finding_.besides.size(); }
  bool is_measured() const { return finding_.measured.has_value(); }
  bool is_negative() const;
  bool is_nothing() const;  ///< a length of zero
  bool is_compared() const { return finding_.compared.has_value(); }
  /// Shares of the survey who sit upright under the measured head room.
  std::string upright_under_measured() const;
  /// The size of a negative measure, rounded up.
  std::string magnitude() const;
  /// "at least 3' 0\" (914.4 mm) (CPSC …)", with the plan's own number and reason where it has one.
  std::string demand() const;
  /// Whose that number is: the rule's source, or that it is the plan's own in place of it, and why.
  std::string whose() const;
  /// "; short by 2 in", "; over by …", or nothing when it is met.
  std::string shortfall() const;
  std::string compared() const { return "asked: " + demand() + shortfall(); }
  /// The demand where it is the plan's own; that nothing may stick out needs no number.
  std::string own_figure() const;
  const std::string& variant() const { return finding_.variant; }
  std::string source() const { return source_text(finding_.source); }
  Status status() const { return finding_.status; }
  /// ", 1' 2\" from the front and 3\" from the left wall", or nothing.
  std::string place() const;
  const Finding& finding() const { return finding_; }  ///< for sentences that count or list
  Unit unit() const { return plan_->unit; }
  English english() const { return plan_->english; }

 private:
  Rounding careful() const;
  std::string named(const std::string& id) const;

  const Plan& plan_;
  const Finding& finding_;
  const Rule* rule_;
};

/// Who tells the findings of one rule.
struct Teller {
  std::string_view rule;
  std::string (*tell)(const Telling&);
};

// One list for each subject.
std::span<const Teller> room_tellers();
std::span<const Teller> support_tellers();
std::span<const Teller> bed_tellers();
std::span<const Teller> strength_tellers();
std::span<const Teller> seat_tellers();
std::span<const Teller> heat_tellers();
std::span<const Teller> cord_tellers();
std::span<const Teller> leaf_tellers();
std::span<const Teller> way_tellers();
std::span<const Teller> alarm_tellers();

}  // namespace berthwright
