#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/step_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using StepJson = nlohmann::ordered_json;

StepJson solid_json(const Solid& solid) {
  return {{"outline", region_in<StepJson>(solid.outline())},
          {"base_mm", millimetres(solid.base())},
          {"top_mm", millimetres(solid.top())}};
}

StepJson spot_json(const PiecePlace& spot) {
  const bool stands = spot.stands_in_room();
  const bool on_edge = stands && spot.pose.manner != Pose::Manner::flat && spot.pose.faces;
  return {
      {"kind", word(spot.kind)},
      {"place", spot.place},
      {"on", spot.carried_by},
      {"solid", stands ? solid_json(spot.solid()) : StepJson(nullptr)},
      {"faces", on_edge ? StepJson(word(term_of(*spot.pose.faces), English::american)) : StepJson(nullptr)}};
}

StepJson standing_json(const std::optional<StandingPlace>& standing) {
  if (!standing) return nullptr;
  return {{"corner", place_in<StepJson>(standing->square.low)},
          {"opposite", place_in<StepJson>(standing->square.high)},
          {"away_mm", millimetres(standing->away)}};
}

StepJson motion_json(const Motion& motion) {
  StepJson sweep = StepJson::array();
  for (const Solid& solid : motion.sweep) sweep.push_back(solid_json(solid));
  return {{"kind", word(motion.kind)},
          {"before", solid_json(motion.before)},
          {"after", solid_json(motion.after)},
          {"sweep", sweep}};
}

StepJson step_json(const Plan& plan, const Step& step) {
  StepJson motions = StepJson::array();
  for (const Motion& motion : step.motions) motions.push_back(motion_json(motion));
  return {{"piece", step.piece.text()},
          {"from", spot_json(step.from)},
          {"to", spot_json(step.to)},
          {"opens", step.opens},
          {"bent", step.bent},
          {"turned_over", step.flipped},
          {"motions", motions},
          {"stand_to_take", standing_json(step.taking)},
          {"stand_to_let_go", standing_json(step.letting_go)},
          {"sentence", step_sentence(plan, step)}};
}

StepJson conversion_json(const Plan& plan, const Conversion& conversion) {
  StepJson json{{"from", conversion.from->id.text()},
                {"to", conversion.to->id.text()},
                {"verdict", word(conversion.verdict)},
                {"at_least", conversion.at_least ? StepJson(*conversion.at_least) : StepJson(nullptr)},
                {"stages", conversion.stages}};
  json["steps"] = StepJson::array();
  for (const Step& step : conversion.steps) json["steps"].push_back(step_json(plan, step));
  json["stuck"] = StepJson::array();
  for (const Stuck& stuck : conversion.stuck)
    json["stuck"].push_back({{"piece", stuck.piece},
                             {"at", stuck.at_goal ? "goal" : "start"},
                             {"by", stuck.by},
                             {"depth_mm", millimetres(stuck.depth)},
                             {"sentence", stuck_sentence(plan, conversion, stuck)}});
  json["sentence"] = conversion_heading(conversion) + ". " + conversion_bound(conversion);
  return json;
}

}  // namespace

std::string steps_json(const Plan& plan, const std::vector<Conversion>& shown) {
  StepJson json{{"schema_version", schema_version},
                {"title", plan->title.title},
                {"unit", plan->unit == Unit::inch ? "in" : "mm"},
                {"exit_code", exit_code(shown)}};
  json["conversions"] = StepJson::array();
  for (const Conversion& conversion : shown) json["conversions"].push_back(conversion_json(plan, conversion));
  json["moves"] = moves_tried();
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright
