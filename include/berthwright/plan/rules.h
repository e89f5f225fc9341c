#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include <berthwright/exact/length.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// How much a finding weighs. Only alerts change the exit code of a check.
enum class Weight { alert, advice, information };

/// Where a number comes from, and how far it can be trusted.
struct Source {
  enum class Kind { published, maker, common_practice, from_memory, own_choice };
  Kind kind = Kind::own_choice;
  std::string text;     ///< who says so: "49 CFR 393.76(a)"; empty for common practice
  std::string edition;  ///< edition or date; empty when none is known
  std::string address;  ///< where it was read; empty when it was not
  friend bool operator==(const Source&, const Source&) = default;
};

/// One rule: what is measured, against which number, and who says so. All rules stand in src/plan/rules.json.
struct Rule {
  RuleId id;
  Weight weight = Weight::information;
  std::string title;            ///< a short noun phrase: "distance from a heater to bedding"
  std::string meaning;          ///< how it is measured, in plain sentences
  std::optional<Length> limit;  ///< the number compared with; none for rules that only report
  bool at_least = true;         ///< the measure must reach the limit (else: must not exceed it)
  Length close_within;          ///< a met rule with less margin than this is reported as close
  std::string asked{};          ///< of a rule whose figure depends on the thing: what is asked, in words
  Source source;
  std::string caution;  ///< what the reader must know beside the number; may be empty
};

/// A plan's own number in place of a rule's, with its reason; shown wherever the rule is used.
struct Override {
  RuleId rule;
  Length limit;
  std::string reason;
  Origin origin;
};

/// Every rule, in the order of the file. Throws std::logic_error if the compiled-in file is broken.
std::span<const Rule> all_rules();
/// nullptr when there is no such rule.
const Rule* find_rule(std::string_view id);

}  // namespace berthwright
