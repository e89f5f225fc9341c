#include "solve/site/forbidden.h"

#include <algorithm>
#include <stdexcept>

#include "geometry/convex.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

Region clear_floor(const Plan& plan, const SiteScene& scene, Length top) {
  Region clear = room_between(plan->interior, scene.base, top);
  return scene.surface ? common(clear, *scene.surface) : clear;
}

std::vector<Polygon> swept_with(const std::vector<Polygon>& parts, const Stance& stance) {
  const Polygon footprint = Polygon::rectangle({{-stance.along, -stance.across}, {}});
  std::vector<Polygon> polygons;
  for (const Polygon& part : parts) polygons.push_back(convex_sum(part, footprint));
  return polygons;
}

std::size_t index_of(Wall way) {
  return static_cast<std::size_t>(std::ranges::find(all_ways, way) - all_ways.begin());
}

void append(std::vector<Polygon>& all, std::vector<Polygon> more) {
  all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace

SceneParts parts_of(const Plan& plan, const SiteScene& scene, const Appliance& appliance) {
  const Length top = scene.base + appliance.height;
  SceneParts parts;
  const Region frame(plan->interior.outline.polygon().bounds());
  parts.outside = convex_parts(without(frame, clear_floor(plan, scene, top)));
  std::vector<Region> solids;
  for (const Placed& thing : scene.arrangement.things)
    if (thing.solid.base() < top && scene.base < thing.solid.top()) solids.push_back(thing.solid.outline());
  parts.solids = convex_parts(united(solids));
  parts.swings = convex_parts(united(scene.swings));
  parts.walkways = convex_parts(scene.walkways);
  parts.outlets = outlet_reaches(plan, scene, appliance);
  parts.burning = burn_groups(scene.burnables, scene.base, top, appliance.has_arcs);
  return parts;
}

ForbiddenPlaces::ForbiddenPlaces(const Plan& plan, const Appliance& appliance,
                                 std::vector<const SceneParts*> scenes)
    : appliance_(appliance),
      scenes_(std::move(scenes)),
      room_(plan->interior.outline.polygon().bounds()),
      three_feet_(plan.limit(*find_rule("heat.three-feet"))),
      plate_more_(plan.limit(*find_rule("heat.data-plate"))) {
  Rect all = room_;
  for (const SceneParts* scene : scenes_)
    for (const BurnGroup& group : scene->burning)
      for (const Polygon& part : group.parts) all = hull(all, part.bounds());
  everywhere_ = all.width() + all.height();
}

std::optional<Rect> ForbiddenPlaces::frame(Wall way) const {
  const Stance stance = appliance_.stance(way);
  const Rect frame{room_.low, room_.high - Vector{stance.along, stance.across}};
  return frame.low.x < frame.high.x && frame.low.y < frame.high.y ? std::optional(frame) : std::nullopt;
}

std::vector<Polygon> ForbiddenPlaces::zones(SiteRule rule, Wall way, Length more) const {
  const Stance stance = appliance_.stance(way);
  std::vector<Polygon> all;
  for (const SceneParts* scene : scenes_) {
    switch (rule) {
      case SiteRule::room:
        append(all, swept_with(scene->outside, stance));
        break;
      case SiteRule::solids:
        append(all, swept_with(scene->solids, stance));
        break;
      case SiteRule::swings:
        append(all, swept_with(scene->swings, stance));
        break;
      case SiteRule::walkway:
        append(all, swept_with(scene->walkways, stance));
        break;
      case SiteRule::cord:
        break;
      case SiteRule::three_feet:
        append(all, too_near(scene->burning, stance, three_feet_ + more, everywhere_));
        break;
      case SiteRule::data_plate:
        if (appliance_.plate != nullptr)
          append(all, too_near_for_plate(scene->burning, stance, *appliance_.plate, plate_more_ + more,
                                         everywhere_));
        break;
    }
  }
  return all;
}

Region ForbiddenPlaces::region(SiteRule rule, Wall way) const {
  const std::optional<Rect> within = frame(way);
  if (!within) return {};
  if (rule == SiteRule::cord) return out_of_reach(*within, way);
  std::vector<Region> regions;
  for (Polygon& zone : zones(rule, way))
    if (overlaps(zone.bounds(), *within)) regions.emplace_back(std::move(zone));
  return common(united(regions), *within);
}

// In each scene it may be plugged in elsewhere.
Region ForbiddenPlaces::out_of_reach(const Rect& frame, Wall way) const {
  std::vector<Region> out;
  for (const SceneParts* scene : scenes_) {
    if (scene->outlets.empty()) continue;
    std::vector<Region> reached;
    for (const OutletReach& outlet : scene->outlets) reached.push_back(outlet.places[index_of(way)]);
    out.push_back(without(frame, united(reached)));
  }
  return united(out);
}

Region ForbiddenPlaces::within_reach(std::size_t index, Wall way) const {
  Region places = scenes_.front()->outlets.at(index).places[index_of(way)];
  for (const SceneParts* scene : scenes_)
    places = common(places, scene->outlets.at(index).places[index_of(way)]);
  return places;
}

Length ForbiddenPlaces::most_asked() const {
  Length most = three_feet_;
  if (appliance_.plate != nullptr)
    for (const auto& face :
         {appliance_.plate->front, appliance_.plate->back, appliance_.plate->sides, appliance_.plate->top})
      most = std::max(most, face.value_or(Length{}) + plate_more_);
  return most;
}

bool ForbiddenPlaces::any_burns() const {
  return std::ranges::any_of(scenes_, [](const SceneParts* scene) { return !scene->burning.empty(); });
}

Region left_of(Region from, std::span<const Polygon> polygons) {
  for (const Polygon& polygon : polygons) {
    if (from.empty()) break;
    from = without(from, Region(polygon));
  }
  return from;
}

}  // namespace berthwright
