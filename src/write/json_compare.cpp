#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/compare_words.h"
#include "view/load_words.h"
#include "write/json_figures.h"

namespace berthwright {
namespace {

using Json = nlohmann::ordered_json;

std::string_view compared_status(Status status) { return word(term_of(status), English::american); }

Json finding_side(const ComparedPlan& plan, const Finding& finding) {
  const Unit own = (*plan.plan)->unit;
  const bool at_least = find_rule(finding.rule.text())->at_least;
  const auto figure = [&](const std::optional<Quantity>& value, bool up) {
    return value ? quantity_in<Json>(*value, own, up ? Rounding::up : Rounding::down) : Json(nullptr);
  };
  return {{"status", compared_status(finding.status)},
          {"figure", figure(finding.measured, !at_least)},
          {"compared", figure(finding.compared, at_least)},
          {"margin_mm", finding.margin ? Json(millimetres(*finding.margin)) : Json(nullptr)},
          {"bed", finding.bed.text()},
          {"subjects", finding.subjects},
          {"variant", finding.variant},
          {"source", source_in<Json>(finding.source)},
          {"override_reason", finding.override_reason}};
}

struct LoadFigureIn {
  Json operator()(Never) const { return {{"never", true}}; }
  Json operator()(AtLeast count) const { return {{"least", count.low}, {"most", nullptr}}; }
  template <class Span>
  Json operator()(const Span& span) const {
    return span_in<Json>(span);
  }
};

Json load_side(const LoadFigure& load) {
  return {{"status", load.status ? Json(compared_status(*load.status)) : Json(nullptr)},
          {"figure", load.value ? std::visit(LoadFigureIn{}, *load.value) : Json(nullptr)}};
}

Json side_json(const ComparedPlan& plan, const std::optional<FigureSide>& side) {
  if (!side) return nullptr;
  Json json = side->finding != nullptr ? finding_side(plan, *side->finding)
              : side->load             ? load_side(*side->load)
                           : Json{{"status", nullptr}, {"figure", {{"mm", millimetres(*side->length)}}}};
  json["text"] = compared_side(plan, side);
  return json;
}

Json figure_json(const Comparison& of, const ComparedFigure& figure) {
  const FigureSide& side = figure.either();
  const std::string rule = compared_rule(figure);
  return {{"what", compared_name(of, figure)},
          {"rule", rule.empty() ? Json(nullptr) : Json(rule)},
          {"weight", side.finding != nullptr ? Json(word(term_of(find_rule(rule)->weight), English::american))
                                             : Json(nullptr)},
          {"circuit", side.load && !side.load->circuit.empty() ? Json(side.load->circuit) : Json(nullptr)},
          {"tanks", side.load ? Json(word(side.load->tanks)) : Json(nullptr)},
          {"first", side_json(*of.first, figure.first)},
          {"second", side_json(*of.second, figure.second)},
          {"verdict", word(figure.verdict)},
          {"because",
           figure.because == ComparedFigure::Because::nothing ? Json(nullptr) : Json(word(figure.because))},
          {"sentence", compared_verdict(of, figure)}};
}

Json name_json(const Configuration* configuration) {
  return configuration != nullptr ? Json(configuration->id.text()) : Json(nullptr);
}

Json plan_json(const ComparedPlan& plan, const std::string& name) {
  return {{"name", name},
          {"title", (*plan.plan)->title.title},
          {"unit", (*plan.plan)->unit == Unit::inch ? "in" : "mm"}};
}

Json ids_json(const std::vector<ConfigurationId>& ids) {
  Json json = Json::array();
  for (const ConfigurationId& id : ids) json.push_back(id.text());
  return json;
}

}  // namespace

std::string compare_json(const Comparison& of, const ComparedNames& names) {
  Json json{{"schema_version", schema_version},
            {"exit_code", exit_code(of)},
            {"first", plan_json(*of.first, names.first)},
            {"second", plan_json(*of.second, names.second)}};
  json["pairs"] = Json::array();
  for (const ComparedPair& pair : of.pairs) {
    Json figures = Json::array();
    for (const ComparedFigure& figure : pair.figures) figures.push_back(figure_json(of, figure));
    json["pairs"].push_back({{"first", name_json(pair.first)},
                             {"second", name_json(pair.second)},
                             {"alike", pair.alike},
                             {"figures", std::move(figures)}});
  }
  json["only_first"] = ids_json(of.only_first);
  json["only_second"] = ids_json(of.only_second);
  json["supposed"] = compared_caution();
  json["caution"] = caution_line((*of.first->plan)->english);
  return text_of(json);
}

}  // namespace berthwright
