#include "solve/site/outlet_reach.h"

#include <algorithm>

#include <berthwright/solve/heat/plugged.h>

#include "exact/required.h"
#include "plan/box_sides.h"

namespace berthwright {
namespace {

// The exit with the corner at the origin, so that a shift of it is a place.
CordExit exit_at_origin(const SiteScene& scene, const Appliance& appliance, Wall way) {
  const Stance stance = appliance.stance(way);
  return {{{}, {stance.along, stance.across}},
          scene.base,
          turned(required(appliance.piece->cord).leaves_at, appliance.turn(way))};
}

}  // namespace

std::vector<OutletReach> outlet_reaches(const Plan& plan, const SiteScene& scene,
                                        const Appliance& appliance) {
  std::vector<OutletReach> reaches;
  if (appliance.piece == nullptr || !appliance.piece->cord) return reaches;
  const Length cord = appliance.piece->cord->length;
  const Region shunned = united(scene.walkways, under_bedding(scene.beddings, scene.level));
  const Region floor = cord_floor(plan, scene.arrangement, appliance.id, scene.level, shunned);
  const std::optional<CordExit> now = scene.now ? cord_exit(*scene.now) : std::nullopt;
  for (const Fixture& fixture : plan->fixtures) {
    if (fixture.kind != Fixture::Kind::outlet) continue;
    const CordReach cords(plan, scene.arrangement, appliance.id, {scene.level, floor}, fixture);
    OutletReach reach{&fixture, {}, std::nullopt};
    for (std::size_t i = 0; i < all_ways.size(); ++i)
      reach.places[i] = cords.places(cord, exit_at_origin(scene, appliance, all_ways[i]));
    if (now && now->base == scene.base) reach.now = cords.from(*now);
    reaches.push_back(std::move(reach));
  }
  return reaches;
}

}  // namespace berthwright
