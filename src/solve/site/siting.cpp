#include <berthwright/solve/site/siting.h>

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/solve/open/road.h>

#include "solve/site/scope.h"

namespace berthwright {
namespace {

// Coordinates fit the lattice up to here: every zone lies within as much again on either side.
constexpr Length largest_field = 16'000_mm;

std::vector<Appliance> heaters_of(const Plan& plan) {
  std::vector<Appliance> heaters;
  for (const Piece& piece : plan->pieces)
    if (piece.heat) heaters.push_back(appliance_of(piece));
  for (const Fixture& fixture : plan->fixtures)
    if (fixture.kind == Fixture::Kind::heater && fixture.heat) heaters.push_back(appliance_of(fixture));
  return heaters;
}

bool is_chosen(const Configuration& configuration, std::span<const ConfigurationId> chosen) {
  if (chosen.empty()) return !is_on_the_road(configuration);
  return std::ranges::find(chosen, configuration.id) != chosen.end();
}

// The floor, and what poses of the chosen configurations name to stand on.
std::vector<std::string> surfaces_for(const Appliance& heater, const std::vector<Arrangement>& arrangements) {
  if (heater.fixture != nullptr) return {""};
  std::vector<std::string> surfaces{"floor"};
  for (const Arrangement& arrangement : arrangements)
    for (const Pose& pose : arrangement.configuration->poses) {
      if (pose.piece != heater.piece->id || pose.on.empty()) continue;
      if (std::ranges::find(surfaces, pose.on.front()) == surfaces.end()) surfaces.push_back(pose.on.front());
    }
  return surfaces;
}

Problems too_far_apart(const Plan& plan, const std::vector<Arrangement>& arrangements) {
  Rect all = plan->interior.outline.polygon().bounds();
  for (const Arrangement& arrangement : arrangements)
    for (const Placed& thing : arrangement.things) all = hull(all, thing.solid.outline().bounds());
  const Length reach = all.width() + all.height();
  if (reach <= largest_field) return {};
  return {{.id = "site.too-large",
           .pointer = plan->interior.origin.pointer,
           .line = plan->interior.origin.line,
           .column = plan->interior.origin.column,
           .message = "the room and what stands in it are too large to look for places of a heater",
           .found = both(reach, plan->unit) + " in length and width together",
           .allowed = "at most " + both(largest_field, plan->unit),
           .cure = "correct what reaches that far"}};
}

Siting siting_on(const Plan& plan, const Appliance& heater, const std::string& surface,
                 const std::vector<Arrangement>& arrangements) {
  std::vector<SceneWithParts> scenes;
  for (const Arrangement& arrangement : arrangements) {
    SiteScene scene = scene_without(plan, arrangement, heater, surface);
    SceneParts parts = parts_of(plan, scene, heater);
    scenes.push_back({std::move(scene), std::move(parts)});
  }
  Siting siting;
  siting.stands_on = surface;
  std::vector<const SceneWithParts*> all;
  std::vector<const SceneWithParts*> standing;
  for (const SceneWithParts& one : scenes) {
    siting.scopes.push_back(scope_of(plan, heater, {&one}));
    all.push_back(&one);
    if (one.scene.now) standing.push_back(&one);
  }
  const auto& at_once = standing.empty() ? all : standing;
  const auto same = std::ranges::find_if(siting.scopes, [&](const SiteScope& scope) {
    return at_once.size() == 1 && scope.configurations.front() == at_once.front()->scene.configuration;
  });
  siting.together = same != siting.scopes.end() ? *same : scope_of(plan, heater, at_once);
  return siting;
}

std::vector<SiteRule> lacking(const Plan& plan, const Appliance& heater) {
  std::vector<SiteRule> rules;
  const bool outlets = std::ranges::any_of(
      plan->fixtures, [](const Fixture& fixture) { return fixture.kind == Fixture::Kind::outlet; });
  if (heater.piece != nullptr && !(heater.piece->cord && outlets)) rules.push_back(SiteRule::cord);
  const DataPlate* plate = heater.plate;
  if (plate == nullptr || !plate->front || !plate->back || !plate->sides || !plate->top)
    rules.push_back(SiteRule::data_plate);
  return rules;
}

}  // namespace

std::optional<Length> SitePlace::least_margin() const {
  if (margins.empty()) return std::nullopt;
  return std::ranges::min(margins, {}, &SiteMargin::margin).margin;
}

bool HeaterPlaces::has_place() const {
  return std::ranges::any_of(sitings, [](const Siting& siting) { return siting.together.has_place(); });
}

Result<std::vector<HeaterPlaces>> heater_places(const Plan& plan, std::span<const ConfigurationId> chosen) {
  std::vector<Arrangement> arrangements;
  Problems problems;
  for (const Configuration& configuration : plan->configurations) {
    if (!is_chosen(configuration, chosen)) continue;
    Result<Arrangement> arrangement = arranged(plan, configuration);
    if (arrangement)
      arrangements.push_back(std::move(arrangement).value());
    else
      problems.insert(problems.end(), arrangement.problems().begin(), arrangement.problems().end());
  }
  if (problems.empty()) problems = too_far_apart(plan, arrangements);
  if (!problems.empty()) return problems;
  std::vector<HeaterPlaces> heaters;
  if (arrangements.empty()) return heaters;
  for (const Appliance& heater : heaters_of(plan)) {
    HeaterPlaces places;
    places.heater = heater.id;
    for (const std::string& surface : surfaces_for(heater, arrangements))
      places.sitings.push_back(siting_on(plan, heater, surface, arrangements));
    if (heater.piece != nullptr) places.stowing = stow_fits(plan, *heater.piece);
    places.not_compared = lacking(plan, heater);
    heaters.push_back(std::move(places));
  }
  return heaters;
}

int exit_code(std::span<const HeaterPlaces> heaters) {
  if (!std::ranges::all_of(heaters, &HeaterPlaces::has_place)) return 1;
  const bool known =
      std::ranges::all_of(heaters, [](const HeaterPlaces& h) { return h.not_compared.empty(); });
  return known && !heaters.empty() ? 0 : 2;
}

}  // namespace berthwright
