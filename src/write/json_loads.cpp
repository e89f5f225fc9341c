#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/load_words.h"
#include "write/in_json.h"
#include "write/json_figures.h"

namespace berthwright {
namespace {

using Json = nlohmann::ordered_json;

std::string_view status_word(Status status) { return word(term_of(status), English::american); }

Json weighed_thing_json(const Balance& balance, std::size_t i) {
  const WeighedThing& thing = balance.things[i];
  return {
      {"id", thing.id},
      {"name", thing.name},
      {"weight", span_in<Json>(thing.weight)},
      {"known_by", word(thing.basis)},
      {"along", span_in<Json>(thing.place.along)},
      {"across", span_in<Json>(thing.place.across)},
      {"moved_since_weighed", thing.on_scales.has_value() && !thing.may_differ},
      {"may_differ_since_weighed", thing.may_differ},
      {"on_coupling", balance.on_coupling.empty() ? Json(nullptr) : span_in<Json>(balance.on_coupling[i])}};
}

Json share_json(const Plan& plan, const Balance& balance) {
  if (!balance.share) return nullptr;
  const ShareRange& range = share_range(plan->chassis->range);
  constexpr double hundred = 100;
  return {{"from_percent", static_cast<double>(balance.share->low) / hundred},
          {"to_percent", static_cast<double>(balance.share->high) / hundred},
          {"of", range.of_plate ? "plate" : "whole"},
          {"range_from_percent", range.least},
          {"range_to_percent", range.most},
          {"source", source_in<Json>(range.source)},
          {"status", status_word(balance.share->status)}};
}

Json balance_json(const Plan& plan, const Balance& balance) {
  Json json{{"tanks", word(balance.tanks)}};
  json["things"] = Json::array();
  for (std::size_t i = 0; i < balance.things.size(); ++i)
    json["things"].push_back(weighed_thing_json(balance, i));
  json["added"] = span_in<Json>(balance.added);
  json["added_along"] = span_in<Json>(balance.along);
  json["added_across"] = span_in<Json>(balance.across);
  json["coupling_change"] = span_in<Json>(balance.coupling_change);
  json["side_change"] = span_in<Json>(balance.side_change);
  json["whole"] = span_in<Json>(balance.whole);
  json["coupling"] = span_in<Json>(balance.coupling);
  json["axle"] = span_in<Json>(balance.axle);
  json["whole_along"] = span_in<Json>(balance.whole_along);
  json["whole_across"] = span_in<Json>(balance.whole_across);
  json["share"] = share_json(plan, balance);
  json["right_less_left"] = span_in<Json>(balance.side);
  json["cargo_left"] = span_in<Json>(balance.cargo_left);
  return json;
}

Json breaker_json(const BreakerFigures& figures, int volts) {
  constexpr double hundred = 100;
  return {{"breaker_a", figures.breaker},
          {"for_hours_a", static_cast<double>(figures.breaker * 8) / 10},
          {"continuous_w", figures.continuous},
          {"others_w", figures.others},
          {"counted_w", static_cast<double>(figures.counted) / hundred},
          {"most_w", figures.most_watts ? Json(*figures.most_watts) : Json(nullptr)},
          {"allowed_w", figures.breaker * volts},
          {"too_large_for_a_plug", figures.too_large},
          {"status", status_word(figures.status)}};
}

Json supply_json(const Plan& plan, const SupplyFigures& supply) {
  Json json{{"volts", plan->supply->volts}, {"status", status_word(supply.status)}};
  json["loads"] = Json::array();
  for (const CircuitLoad& load : supply.loads)
    json["loads"].push_back(
        {{"name", load.name},
         {"watts", load.draw.watts},
         {"continuous", load.draw.continuous},
         {"plugged", load.plugged},
         {"outlet", load.outlet.empty() ? Json(nullptr) : Json(load.outlet)},
         {"cord_mm", load.cord ? Json(millimetres(*load.cord)) : Json(nullptr)},
         {"circuit", load.circuit ? Json(plan->supply->circuits[*load.circuit].id) : Json(nullptr)}});
  json["circuits"] = Json::array();
  for (std::size_t i = 0; i < supply.circuits.size(); ++i) {
    Json circuit{{"id", plan->supply->circuits[i].id}};
    circuit.update(breaker_json(supply.circuits[i], plan->supply->volts));
    json["circuits"].push_back(std::move(circuit));
  }
  json["whole"] = supply.whole ? breaker_json(*supply.whole, plan->supply->volts) : Json(nullptr);
  json["together"] = supply.together;
  json["unconnected"] = supply.unconnected;
  json["no_figure"] = supply.no_figure;
  json["source"] = source_in<Json>(continuous_source());
  return json;
}

Json warm_up_json(const Plan& plan, const WarmUp& warm_up) {
  const Warming& warming = *plan->warming;
  const auto celsius = [](Temperature at) {
    return static_cast<double>(at.units()) / temperature_units_per_kelvin;
  };
  constexpr double litre = 1e9;
  return {{"from_c", celsius(warming.from)},
          {"to_c", celsius(warming.to)},
          {"outside_c", celsius(warming.outside)},
          {"insulation", warming.insulation ? Json(insulation_text(*warming.insulation)) : Json(nullptr)},
          {"heaters", warm_up.heaters},
          {"no_figure", warm_up.no_figure},
          {"watts", warm_up.watts},
          {"room_l", static_cast<double>(warm_up.room.units()) / litre},
          {"air_alone_s", warm_up.air_alone ? Json(*warm_up.air_alone) : Json(nullptr)},
          {"seconds", span_in<Json>(warm_up.seconds)},
          {"never_reached", warm_up.is_never_reached},
          {"hold_w", span_in<Json>(warm_up.hold)}};
}

Json loads_of_json(const Plan& plan, const Loads& loads) {
  Json json{{"configuration", loads.configuration->id.text()}};
  json["balances"] = Json::array();
  for (const Balance& balance : loads.balances) json["balances"].push_back(balance_json(plan, balance));
  json["supply"] = loads.supply ? supply_json(plan, *loads.supply) : Json(nullptr);
  json["warming"] = loads.warm_up ? warm_up_json(plan, *loads.warm_up) : Json(nullptr);
  json["compared"] = Json::array();
  for (const LoadVerdict& verdict : verdicts_on(plan, loads))
    json["compared"].push_back({{"what", word(verdict.kind)},
                                {"tanks", word(verdict.tanks)},
                                {"status", status_word(verdict.status)}});
  json["sentences"] = Json::array();
  for (const auto& sentences :
       {weight_sentences(plan, loads), supply_sentences(plan, loads), warm_up_sentences(plan, loads)})
    for (const std::string& sentence : sentences) json["sentences"].push_back(sentence);
  return json;
}

}  // namespace

std::string loads_json(const Plan& plan, const std::vector<Loads>& shown) {
  Json json{{"schema_version", schema_version},
            {"title", plan->title.title},
            {"unit", plan->unit == Unit::inch ? "in" : "mm"},
            {"exit_code", exit_code(plan, shown)}};
  json["configurations"] = Json::array();
  for (const Loads& loads : shown) json["configurations"].push_back(loads_of_json(plan, loads));
  json["supposed"] = load_grounds(plan, shown);
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright
