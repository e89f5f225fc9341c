#include "view/tape_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

namespace berthwright {
namespace {

constexpr std::size_t deciders_told = 6;
constexpr std::size_t moved_told = 6;

/// In inches without feet, as a tape is read; finer than a tape only where it must be.
std::string on_tape(Length length, Unit own, Rounding rounding = Rounding::nearest) {
  return both(length, own, {.rounding = rounding, .feet = false, .parts = 64});
}

bool is_fine_as(const Finding& finding) {
  return finding.status == Status::met || finding.status == Status::close;
}

std::string margin_words(const Finding& finding, Unit own) {
  if (finding.status == Status::unknown) return "unknown";
  if (!finding.margin) return is_fine_as(finding) ? "met" : "not met";
  const bool fine = is_fine_as(finding);
  return (fine ? "met with " : "not met by ") +
         on_tape(abs(*finding.margin), own, fine ? Rounding::down : Rounding::up) + (fine ? " to spare" : "");
}

std::string moved_words(const TapedPlan& plan, const std::vector<MovedMeasure>& moved) {
  const Unit own = plan.plan()->unit;
  std::string text;
  for (std::size_t i = 0; i < std::min(moved.size(), moved_told); ++i)
    text +=
        (text.empty() ? "" : ", ") + plan.measures()[moved[i].measure].name + " " + on_tape(moved[i].to, own);
  if (moved.size() > moved_told)
    text += " and " + std::to_string(moved.size() - moved_told) + " more at their ends";
  return text;
}

/// Both numbers are printed so that the plan is on the side told: rounding moves each away from the other.
std::string turn_words(const TapedPlan& plan, const Decider& decider) {
  const TapeMeasure& measure = plan.measures()[decider.measure];
  const Unit own = plan.plan()->unit;
  const Rounding back = decider.longer ? Rounding::down : Rounding::up;
  const Rounding on = decider.longer ? Rounding::up : Rounding::down;
  return measure.name + ": " + on_tape(measure.length, own) + " as written, holds to " +
         on_tape(decider.turns->holds, own, back) + ", has turned at " +
         on_tape(decider.turns->turned, own, on);
}

std::string effect_words(const TapedPlan& plan, const Decider& decider) {
  const TapeMeasure& measure = plan.measures()[decider.measure];
  return measure.name + " " + (decider.longer ? "longer" : "shorter") + " by " +
         on_tape(measure.tolerance, plan.plan()->unit) +
         (decider.effect > Length{} ? " takes " + on_tape(decider.effect, plan.plan()->unit) : "");
}

std::string lone_turns(const TapedPlan& plan, const WorstCase& worst) {
  std::string text;
  for (const Decider& one : worst.deciders)
    if (one.turns) text += (text.empty() ? "" : "; ") + turn_words(plan, one);
  return text;
}

std::string weights(const TapedPlan& plan, const WorstCase& worst) {
  std::string text;
  for (std::size_t i = 0; i < std::min(worst.deciders.size(), deciders_told); ++i)
    text += (text.empty() ? "" : "; ") + effect_words(plan, worst.deciders[i]);
  if (worst.deciders.size() > deciders_told)
    text += "; and " + std::to_string(worst.deciders.size() - deciders_told) + " more that weigh less";
  return text;
}

std::string count_of(std::size_t number, const std::string& one, const std::string& many) {
  return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::string states(const TapedPlan& plan) {
  std::string text;
  for (const TapeState state : {TapeState::planned, TapeState::as_built, TapeState::checked}) {
    const auto number =
        std::ranges::count_if(plan.measures(), [&](const TapeMeasure& one) { return one.state == state; });
    if (number > 0)
      text += (text.empty() ? "" : ", ") + std::to_string(number) + " " + std::string(word(state));
  }
  return text;
}

}  // namespace

std::string_view word(TapeStanding standing) {
  switch (standing) {
    case TapeStanding::proven:
      return "proven";
    case TapeStanding::looked_at:
      return "looked at";
    case TapeStanding::turns:
      return "turns";
    case TapeStanding::unknown:
      return "unknown";
  }
  throw std::logic_error("TapeStanding out of range");
}

std::string_view word(TapeState state) {
  switch (state) {
    case TapeState::planned:
      return "planned";
    case TapeState::as_built:
      return "as built";
    case TapeState::checked:
      return "checked";
  }
  throw std::logic_error("TapeState out of range");
}

std::string measure_text(const TapeMeasure& measure, Unit own) {
  return measure.name + " " + on_tape(measure.length, own) + ", ± " + on_tape(measure.tolerance, own) + ", " +
         std::string(word(measure.state));
}

std::vector<std::string> turning_sentences(const TapedPlan& plan, const WorstCase& worst) {
  const Unit own = plan.plan()->unit;
  std::vector<std::string> told;
  if (worst.arises) {
    told.push_back(sentence(plan.plan(), worst.at_worst));
    told.push_back("The plan as written has no such fault; it is so with " + moved_words(plan, worst.moved) +
                   ".");
  } else {
    told.push_back(sentence(plan.plan(), worst.written));
    std::string at_worst = "As written " + margin_words(worst.written, own) + "; ";
    const bool was_not_met = worst.written.status == Status::not_met;
    if (was_not_met && worst.at_worst.status == Status::not_met && worst.vanishes)
      at_worst += "within the tolerances it may not be there at all";
    else
      at_worst += std::string(was_not_met ? "at best " : "at worst ") + margin_words(worst.at_worst, own) +
                  ", with " + moved_words(plan, worst.moved);
    told.push_back(at_worst + ".");
  }
  if (const std::string lone = lone_turns(plan, worst); !lone.empty())
    told.push_back("Turns alone: " + lone + ".");
  if (worst.deciders.size() > 1) told.push_back("In order of weight: " + weights(plan, worst) + ".");
  if (worst.adds_up && worst.deciders.size() > 1)
    told.push_back("These add up. By chance they come to about " +
                   on_tape(root_of_squares(worst.deciders), own) +
                   " (root of the squares, for information only).");
  return told;
}

std::vector<std::string> method_sentences(const TapedPlan& plan, const WorstCases& worst) {
  std::vector<std::string> told;
  told.push_back(count_of(plan.measures().size(), "measure", "measures") + ": " + states(plan) + "; " +
                 std::to_string(worst.loose) + " may be off.");
  std::string looked =
      "Beside the plan as written " + count_of(worst.looked_at, "plan was", "plans were") +
      " stood up and checked: each measure alone at both ends of its tolerance, all long, all "
      "short, what decides an alert or advice together, and lengths between where one measure turns it.";
  if (worst.not_stood_up > 0)
    looked += " " + count_of(worst.not_stood_up, "combination makes", "combinations make") +
              " no plan and could not be looked at.";
  told.push_back(looked);
  return told;
}

std::string again_sentence(const TapedPlan& plan, const TakeAgain& again) {
  return measure_text(plan.measures()[again.measure], plan.plan()->unit) + ": decides " +
         count_of(again.findings, "finding", "findings") + ".";
}

std::string untried_sentence(const TapedPlan& plan, const Untried& untried) {
  return "With " + moved_words(plan, {untried.moved}) + " the plan cannot be stood up: " + untried.reason +
         ".";
}

}  // namespace berthwright
