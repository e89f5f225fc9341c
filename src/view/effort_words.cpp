#include "view/effort_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "exact/required.h"
#include "view/called.h"

namespace berthwright {
namespace {

std::string whose(const Plan& plan, bool own) {
  return own ? " (the plan's own figure, " + plan->lifting.reason + ", in place of common practice)"
             : " (common practice, no source)";
}

std::string standing_sentence(const Plan& plan, const std::optional<StandingPlace>& place,
                              const std::string& what) {
  if (!place) return "No free floor of 20 × 20 in was found to stand on to " + what + ".";
  return "To " + what + " the nearest place to stand is " +
         both(place->away, plan->unit, {.rounding = Rounding::up}) + " away; reached is at most " +
         both(reaching_limit(plan), plan->unit, {.rounding = Rounding::down}) +
         whose(plan, plan->lifting.reach.has_value()) + ".";
}

bool is_asking(Effort::Stand stand) { return stand == Effort::Stand::far || stand == Effort::Stand::nowhere; }

}  // namespace

std::string_view word(Effort::Stand stand) {
  switch (stand) {
    case Effort::Stand::near:
      return "near";
    case Effort::Stand::far:
      return "far";
    case Effort::Stand::nowhere:
      return "nowhere";
    case Effort::Stand::outside:
      return "outside";
  }
  throw std::logic_error("Effort::Stand out of range");
}

std::vector<std::string> effort_sentences(const Plan& plan, const Step& step) {
  const Effort effort = effort_of(plan, step);
  std::vector<std::string> told;
  if (effort.too_heavy)
    told.push_back(name_of(plan, step.piece.text()) + " weighs " +
                   mass_text(required(effort.weight), plan->unit, Rounding::up) +
                   "; one person lifts at most " +
                   mass_text(lifting_limit(plan), plan->unit, Rounding::down) +
                   whose(plan, plan->lifting.weight.has_value()) + ": lift it with two.");
  if (is_asking(effort.taking)) told.push_back(standing_sentence(plan, step.taking, "take it up"));
  if (is_asking(effort.letting_go)) told.push_back(standing_sentence(plan, step.letting_go, "let it go"));
  return told;
}

std::string unknown_weights(const Plan& plan, const Conversion& conversion) {
  std::vector<std::string> ids;
  for (const Step& step : conversion.steps) {
    const std::string& id = step.piece.text();
    if (!effort_of(plan, step).weight && std::ranges::find(ids, id) == ids.end()) ids.push_back(id);
  }
  if (ids.empty()) return {};
  return "The plan does not say what " + names_with_and(plan, ids) +
         (ids.size() == 1 ? " weighs" : " weigh") + ": whether one person lifts " +
         (ids.size() == 1 ? "it" : "each") + " is unknown.";
}

}  // namespace berthwright
