#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/measure.h>
#include <berthwright/exact/result.h>

namespace berthwright {

/// One thing asked of a person who walks through a trailer with a tape.
struct Question {
  enum class Kind { text, length, distance, choice };  ///< a distance may be zero
  std::string id;
  std::string asked;
  Kind kind = Kind::text;
  std::string otherwise{};  ///< what counts where the answer is empty; empty: there is nothing usual
  std::string good_for{};   ///< what the usual is good for
  std::vector<std::string> choices{};
  std::optional<Length> most{};
  std::string why_most{};  ///< "the room is 76 in wide"
  std::optional<Length> least{};
  std::string why_least{};
};

/// What was answered so far. A value: answering and going back give new ones.
class Interview {
 public:
  struct Given {
    std::string id;
    std::string text;  ///< as it was typed; never empty
    friend bool operator==(const Given&, const Given&) = default;
  };

  /// What is asked next, in the order of the walk; none: all is known.
  std::optional<Question> next() const;
  /// With the answer to `next`; an empty one takes the usual. Problems "answer.…" or those of `read_length`,
  /// with what is allowed. std::logic_error when nothing is asked.
  Result<Interview> answered(std::string_view text) const;
  /// Without the last answer; the same where there is none.
  Interview back() const;

  const std::vector<Given>& given() const { return given_; }
  bool has(std::string_view id) const;
  /// What was answered; std::logic_error where that was not asked.
  const std::string& word(std::string_view id) const;
  Length length(std::string_view id) const;
  Unit unit() const;

  /// One answer a line, "length: 10 ft", to be read again by `from_text`.
  std::string text() const;

 private:
  friend Result<Interview> interview_from(std::string_view text, bool usual);
  std::vector<Given> given_;
  std::vector<Given> prepared_;  ///< answers to what was not asked yet; they count as usual when it is
};

/// An interview from answers in any order, one a line; empty lines and lines that begin with # do not count.
/// It goes as far as the answers do; where `usual`, what is missing is taken as usual. Problems, with their
/// lines: an answer that cannot be, one that nobody asks for.
Result<Interview> interview_from(std::string_view text, bool usual);

/// The layouts that `next` offers as "layout".
const std::vector<std::string>& start_layouts();
/// What the bed over benches and boards is called: "Dinette bed".
std::string bed_of_layout(std::string_view layout);

/// The plan that the answers make, before its cushions: room, benches, table, what stands there, day and
/// night; with comments, in house order. std::logic_error before `next` is empty. Problems: a room that is
/// out of square beyond all measures.
Result<std::string> started_plan(const Interview& interview);

/// How each measure of a room that is out of square misfits the walls that fit them best, a line each; else
/// empty.
std::vector<std::string> misfits_of(const Interview& interview);

}  // namespace berthwright
