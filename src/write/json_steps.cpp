#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/effort_words.h"
#include "view/meanwhile_words.h"
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
          {"degrees", motion.swing ? StepJson(motion.swing->degrees) : StepJson(nullptr)},
          {"before", solid_json(motion.before)},
          {"after", solid_json(motion.after)},
          {"sweep", sweep}};
}

StepJson step_json(const Plan& plan, const Step& step) {
  StepJson motions = StepJson::array();
  for (const Motion& motion : step.motions) motions.push_back(motion_json(motion));
  const Effort effort = effort_of(plan, step);
  return {{"piece", step.piece.text()},
          {"weight_kg", effort.weight ? StepJson(static_cast<double>(effort.weight->units()) /
                                                 (1000.0 * mass_units_per_gram))
                                      : StepJson(nullptr)},
          {"too_heavy", effort.weight ? StepJson(effort.too_heavy) : StepJson(nullptr)},
          {"stand_taking", word(effort.taking)},
          {"stand_letting_go", word(effort.letting_go)},
          {"effort", effort_sentences(plan, step)},
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

StepJson figure_json(const std::optional<Quantity>& figure) {
  if (!figure) return nullptr;
  if (const auto* sides = std::get_if<Sides>(&*figure))
    return {{"across_mm", millimetres(sides->length)}, {"high_mm", millimetres(sides->width)}};
  return {{"mm", millimetres(std::get<Length>(*figure))}};
}

StepJson meanwhile_json(const Plan& plan, const Conversion& conversion, const Meanwhile& one) {
  const Finding& finding = one.finding;
  StepJson where = StepJson::array();
  for (const Point3& at : finding.where) where.push_back(place_in<StepJson>(at));
  return {{"rule", finding.rule.text()},
          {"status", word(term_of(finding.status), English::american)},
          {"from_step", one.from},
          {"until_step", one.until},
          {"worst_after_step", one.worst},
          {"subjects", finding.subjects},
          {"measured", figure_json(finding.measured)},
          {"compared", figure_json(finding.compared)},
          {"margin_mm", finding.margin ? StepJson(millimetres(*finding.margin)) : StepJson(nullptr)},
          {"at_start", figure_json(one.at_start)},
          {"at_end", figure_json(one.at_end)},
          {"where", where},
          {"source", source_in<StepJson>(finding.source)},
          {"override_reason", finding.override_reason},
          {"sentence", meanwhile_sentence(plan, conversion, one)}};
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
                             {"by_places", stuck.by_places},
                             {"sentence", stuck_sentence(plan, conversion, stuck)}});
  json["meanwhile"] = StepJson::array();
  for (const Meanwhile& one : conversion.meanwhile)
    json["meanwhile"].push_back(meanwhile_json(plan, conversion, one));
  json["bedding"] = bedding_sentences(plan, conversion);
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
  json["looked_at"] = looked_at_meanwhile();
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright
