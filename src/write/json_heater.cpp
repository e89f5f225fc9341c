#include <berthwright/write/outputs.h>

#include <stdexcept>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/siting_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using Json = nlohmann::ordered_json;

Json rules_json_of(const std::vector<SiteRule>& rules) {
  Json words = Json::array();
  for (const SiteRule rule : rules) words.push_back(word(rule));
  return words;
}

Json margin_json(const Plan& plan, const SiteMargin& margin) {
  const bool published = margin.yardstick == SiteRule::three_feet;
  const Nearest& nearest = published ? margin.distance.nearest : margin.distance.plate_nearest;
  return {{"yardstick", word(margin.yardstick)},
          {"configuration", margin.configuration.text()},
          {"nearest_to", margin.distance.nearest_to},
          {"made_up", margin.distance.made_up},
          {"distance_mm", millimetres(margin.asked + margin.margin)},
          {"asked_mm", millimetres(margin.asked)},
          {"margin_mm", millimetres(margin.margin)},
          {"from", place_in<Json>(nearest.from)},
          {"to", place_in<Json>(nearest.to)},
          {"sentence", margin_text(plan, margin)}};
}

Json site_place_json(const Plan& plan, const SitePlace& place) {
  Json json{{"corner", place_in<Json>(place.box.low)},
            {"opposite", place_in<Json>(place.box.high)},
            {"faces", word(term_of(place.faces), English::american)}};
  json["margins"] = Json::array();
  for (const SiteMargin& margin : place.margins) json["margins"].push_back(margin_json(plan, margin));
  return json;
}

Json cord_json(const CordRun& run) {
  Json route = Json::array();
  for (const Point3& at : run.route) route.push_back(place_in<Json>(at));
  return {{"length_mm", run.reached() ? Json(millimetres(run.length)) : Json(nullptr)},
          {"why_not", why_not(run.end)},
          {"blocked_by", run.blocked_by},
          {"route", route}};
}

Json scope_json(const Plan& plan, const SiteScope& scope) {
  Json json;
  json["configurations"] = Json::array();
  for (const Configuration* one : scope.configurations) json["configurations"].push_back(one->id.text());
  json["stowed"] = scope.stowed;
  json["now"] = nullptr;
  if (scope.now)
    json["now"] = {{"place", site_place_json(plan, scope.now->place)},
                   {"breaks", rules_json_of(scope.now->breaks)}};
  json["outlets"] = Json::array();
  for (const OutletSite& site : scope.outlets)
    json["outlets"].push_back({{"outlet", site.outlet->id.text()},
                               {"now", site.now ? cord_json(*site.now) : Json(nullptr)},
                               {"best", site.best ? site_place_json(plan, *site.best) : Json(nullptr)}});
  json["ways"] = Json::array();
  for (const SiteRegions& regions : scope.ways)
    json["ways"].push_back({{"faces", word(term_of(regions.faces), English::american)},
                            {"standing", region_in<Json>(regions.standing)},
                            {"three_feet", region_in<Json>(regions.three_feet)},
                            {"data_plate", region_in<Json>(regions.data_plate)},
                            {"free", region_in<Json>(regions.free)}});
  json["best"] = scope.best ? site_place_json(plan, *scope.best) : Json(nullptr);
  json["reliefs"] = Json::array();
  for (const SiteRelief& relief : scope.reliefs)
    json["reliefs"].push_back({{"without", rules_json_of(relief.rules)},
                               {"best", relief.best ? site_place_json(plan, *relief.best) : Json(nullptr)}});
  return json;
}

Json stow_json(const Plan& plan, const StowFit& fit) {
  const auto sides = [](Length along, Length across, Length up) {
    return Json{
        {"along_mm", millimetres(along)}, {"across_mm", millimetres(across)}, {"up_mm", millimetres(up)}};
  };
  const bool known = fit.inside.has_value();
  return {
      {"place", fit.place},
      {"stowed_in", fit.stowed_in},
      {"inside", known ? sides(fit.inside->length, fit.inside->width, fit.inside->height) : Json(nullptr)},
      {"laid", known ? sides(fit.laid.along, fit.laid.across, fit.laid.up) : Json(nullptr)},
      {"clearance", known ? sides(fit.clearance[0], fit.clearance[1], fit.clearance[2]) : Json(nullptr)},
      {"fits", known ? Json(fit.fits()) : Json(nullptr)},
      {"through", fit.through},
      {"too_small", fit.too_small},
      {"sentence", stow_sentence(plan, fit)}};
}

Json places_json(const Plan& plan, const HeaterPlaces& heater) {
  Json json{{"heater", heater.heater}, {"not_compared", rules_json_of(heater.not_compared)}};
  json["sitings"] = Json::array();
  for (const Siting& siting : heater.sitings) {
    Json one{{"stands_on", siting.stands_on}};
    one["scopes"] = Json::array();
    for (const SiteScope& scope : siting.scopes) one["scopes"].push_back(scope_json(plan, scope));
    one["together"] = scope_json(plan, siting.together);
    json["sitings"].push_back(std::move(one));
  }
  json["stowing"] = Json::array();
  for (const StowFit& fit : heater.stowing) json["stowing"].push_back(stow_json(plan, fit));
  return json;
}

}  // namespace

std::string heater_json(const Plan& plan, const std::vector<HeaterPlaces>& heaters) {
  Json json{{"schema_version", schema_version},
            {"title", plan->title.title},
            {"unit", plan->unit == Unit::inch ? "in" : "mm"},
            {"exit_code", exit_code(heaters)}};
  json["heaters"] = Json::array();
  for (const HeaterPlaces& heater : heaters) json["heaters"].push_back(places_json(plan, heater));
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright
