#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/tape_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using Json = nlohmann::ordered_json;

Json tape_measure_json(const TapeMeasure& measure) {
  return {{"measure", measure.name},
          {"also", measure.also},
          {"state", word(measure.state)},
          {"mm", millimetres(measure.length)},
          {"tolerance_mm", millimetres(measure.tolerance)}};
}

Json moved_json(const TapedPlan& plan, const MovedMeasure& moved) {
  return {{"measure", plan.measures()[moved.measure].name}, {"mm", millimetres(moved.to)}};
}

Json tape_side_json(const Finding& finding) {
  return {{"status", word(term_of(finding.status), English::american)},
          {"margin_mm", finding.margin ? Json(millimetres(*finding.margin)) : Json(nullptr)}};
}

Json decider_json(const TapedPlan& plan, const Decider& decider) {
  const std::string& name = plan.measures()[decider.measure].name;
  return {{"measure", name},
          {"end", decider.longer ? "longer" : "shorter"},
          {"effect_mm", millimetres(decider.effect)},
          {"holds_to_mm", decider.turns ? Json(millimetres(decider.turns->holds)) : Json(nullptr)},
          {"turned_at_mm", decider.turns ? Json(millimetres(decider.turns->turned)) : Json(nullptr)}};
}

Json worst_case_json(const TapedPlan& plan, const WorstCase& one) {
  const Rule& rule = *find_rule(one.written.rule.text());
  Json json{{"rule", one.written.rule.text()},
            {"weight", word(term_of(rule.weight), English::american)},
            {"configuration", one.written.configuration.text()},
            {"bed", one.written.bed.text()},
            {"subjects", one.written.subjects},
            {"variant", one.written.variant},
            {"standing", word(one.standing)},
            {"arises", one.arises},
            {"vanishes", one.vanishes},
            {"as_written", one.arises ? Json(nullptr) : tape_side_json(one.written)},
            {"at_worst", tape_side_json(one.at_worst)}};
  json["with"] = Json::array();
  for (const MovedMeasure& moved : one.moved) json["with"].push_back(moved_json(plan, moved));
  json["deciders"] = Json::array();
  for (const Decider& decider : one.deciders) json["deciders"].push_back(decider_json(plan, decider));
  json["adds_up"] = one.adds_up;
  json["root_of_squares_mm"] = one.adds_up ? Json(millimetres(root_of_squares(one.deciders))) : Json(nullptr);
  json["sentence"] = sentence(plan.plan(), one.at_worst);
  return json;
}

}  // namespace

std::string tape_json(const TapedPlan& plan, const WorstCases& worst) {
  Json json{{"schema_version", schema_version},
            {"title", plan.plan()->title.title},
            {"unit", plan.plan()->unit == Unit::inch ? "in" : "mm"},
            {"exit_code", exit_code(worst)},
            {"plans_looked_at", worst.looked_at},
            {"combinations_not_stood_up", worst.not_stood_up}};
  json["measures"] = Json::array();
  for (const TapeMeasure& one : plan.measures()) json["measures"].push_back(tape_measure_json(one));
  json["findings"] = Json::array();
  for (const WorstCase& one : worst.cases) json["findings"].push_back(worst_case_json(plan, one));
  json["measure_again"] = Json::array();
  for (const TakeAgain& one : worst.again)
    json["measure_again"].push_back(
        {{"measure", plan.measures()[one.measure].name}, {"findings", one.findings}});
  json["not_stood_up"] = Json::array();
  for (const Untried& one : worst.untried) {
    Json untried = moved_json(plan, one.moved);
    untried["reason"] = one.reason;
    json["not_stood_up"].push_back(untried);
  }
  json["caution"] = caution_line(plan.plan()->english);
  return text_of(json);
}

}  // namespace berthwright
