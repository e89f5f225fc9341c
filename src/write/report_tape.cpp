#include <algorithm>

#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "view/tape_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

Weight weight_of_case(const WorstCase& one) { return find_rule(one.written.rule.text())->weight; }

std::string turning_lines(const TapedPlan& plan, const WorstCase& one) {
  const std::vector<std::string> told = turning_sentences(plan, one);
  std::string text = wrapped((weight_of_case(one) == Weight::alert ? "ALERT " : "") + told.front(), item);
  for (std::size_t i = 1; i < told.size(); ++i) text += wrapped(told[i], under_item);
  return text;
}

/// What is met as written stands first, since it may go wrong.
enum class AsWritten { fine, unknown, not_met };
AsWritten as_written(const WorstCase& one) {
  if (one.arises) return AsWritten::fine;
  switch (one.written.status) {
    case Status::not_met:
      return AsWritten::not_met;
    case Status::unknown:
      return AsWritten::unknown;
    default:
      return AsWritten::fine;
  }
}

std::string turning_part(const TapedPlan& plan, const WorstCases& worst, AsWritten side,
                         const std::string& heading) {
  std::string text;
  std::size_t count = 0;
  for (const WorstCase& one : worst.cases) {
    if (one.standing != TapeStanding::turns || weight_of_case(one) == Weight::information) continue;
    if (as_written(one) != side) continue;
    ++count;
    text += turning_lines(plan, one);
  }
  return count == 0 ? std::string{} : "\n" + heading + " (" + std::to_string(count) + ")\n" + text;
}

std::string again_part(const TapedPlan& plan, const WorstCases& worst) {
  if (worst.again.empty()) return {};
  std::string text = "\nMeasure these again, in this order (" + std::to_string(worst.again.size()) + ")\n";
  std::size_t number = 0;
  for (const TakeAgain& one : worst.again)
    text += wrapped(std::to_string(++number) + ". " + again_sentence(plan, one), item);
  return text;
}

std::string untried_part(const TapedPlan& plan, const WorstCases& worst) {
  if (worst.untried.empty()) return {};
  std::string text =
      "\nNot looked at, since there is no such plan (" + std::to_string(worst.untried.size()) + ")\n";
  for (const Untried& one : worst.untried) text += wrapped(untried_sentence(plan, one), item);
  return text;
}

std::size_t count_of(const WorstCases& worst, TapeStanding standing, bool information) {
  return static_cast<std::size_t>(std::ranges::count_if(worst.cases, [&](const WorstCase& one) {
    return one.standing == standing && (weight_of_case(one) == Weight::information) == information;
  }));
}

std::string rest_part(const WorstCases& worst) {
  std::string text = "\nAll other alerts and advice\n";
  const auto tell = [&](TapeStanding standing, bool information, const std::string& what) {
    const std::size_t number = count_of(worst, standing, information);
    if (number > 0) text += wrapped(what + ": " + std::to_string(number) + ".", item);
  };
  tell(TapeStanding::looked_at, false,
       "Turned in none of the plans looked at, which is no proof, since a figure may jump between them");
  tell(TapeStanding::proven, false,
       "Cannot turn while measures keep to their tolerances, since no length decides it, or one measure "
       "alone");
  tell(TapeStanding::unknown, false,
       "Unknown as the plan is written; none of the plans looked at shows them not met");
  tell(TapeStanding::turns, true, "Beside them, figures for information that turn (--json tells which)");
  return text;
}

}  // namespace

std::string tape_text(const TapedPlan& plan, const WorstCases& worst) {
  std::string text = heading(plan.plan()) + "\nIf the tape is off\n";
  for (const std::string& one : method_sentences(plan, worst)) text += wrapped(one, item);
  text += turning_part(plan, worst, AsWritten::fine, "Met as written, and may not be");
  text += turning_part(plan, worst, AsWritten::unknown, "Unknown as written, and may not be met");
  text += turning_part(plan, worst, AsWritten::not_met, "Not met as written, and may be");
  text += again_part(plan, worst) + untried_part(plan, worst) + rest_part(worst);
  return text + "\n" + wrapped(caution_line(plan.plan()->english), {});
}

}  // namespace berthwright
