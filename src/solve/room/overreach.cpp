#include <algorithm>

#include <berthwright/solve/room/collisions.h>

#include "solve/room/farthest_outside.h"
#include "solve/room/outlines_met.h"
#include "solve/room/room_shape.h"
#include "solve/room/rows.h"
#include "solve/room/squeezes.h"

namespace berthwright {

namespace {

/// One way in which a thing leaves the room.
struct Excess {
  const Placed* thing;
  Outlier outlier;
  Point3 where;
  Rect plan;  ///< where it leaves, in plan
};

// Tanks and batteries may hang under the floor or stand on the hitch.
bool may_be_outside(const Placed& thing) {
  return thing.fixture != nullptr &&
         (thing.fixture->kind == Fixture::Kind::tank || thing.fixture->kind == Fixture::Kind::battery);
}

std::optional<Excess> beyond_outline(const Placed& thing, const Outline& room) {
  const Region inside(room.polygon());
  if (contains(inside, thing.solid.outline())) return std::nullopt;
  const Region outside =
      without_arc_slivers(without(thing.solid.outline(), inside), drawn(thing), {inside, room.arcs()});
  if (outside.empty()) return std::nullopt;
  const Outlier outlier = farthest_outside(outside, room.polygon());
  return Excess{&thing, outlier, {outlier.where, thing.solid.base()}, outside.bounds()};
}

std::optional<Excess> beyond_profile(const Placed& thing, const Polygon& profile, bool across) {
  const Region outside = outside_profile(thing.solid, profile, across);
  if (outside.empty()) return std::nullopt;
  const Outlier outlier = farthest_outside(outside, profile);
  Rect plan = thing.solid.outline().bounds();
  const Point middle{half(plan.low.x + plan.high.x), half(plan.low.y + plan.high.y)};
  const Rect left = outside.bounds();
  if (across)
    plan.low.y = left.low.x, plan.high.y = left.high.x;
  else
    plan.low.x = left.low.x, plan.high.x = left.high.x;
  const Point place = across ? Point{middle.x, outlier.where.x} : Point{outlier.where.x, middle.y};
  return Excess{&thing, outlier, {place, outlier.where.y}, plan};
}

std::vector<Excess> excesses(const Interior& room, const Placed& thing) {
  std::vector<Excess> found;
  if (may_be_outside(thing)) return found;
  const auto add = [&](std::optional<Excess> excess) {
    if (excess) found.push_back(*excess);
  };
  add(beyond_outline(thing, room.outline));
  add(beyond_profile(thing, room.side_profile.polygon(), false));
  if (room.cross_profile) add(beyond_profile(thing, room.cross_profile->polygon(), true));
  return found;
}

// A wall presses on a cushion as a thing that stands where the cushion leaves the room.
std::vector<Placed> walls_pressing(const std::vector<Excess>& excesses) {
  std::vector<Placed> walls;
  for (const Excess& excess : excesses) {
    const Solid& solid = excess.thing->solid;
    walls.push_back({"", nullptr, nullptr, nullptr, Solid(excess.plan, solid.base(), solid.top()), {}, {}});
  }
  return walls;
}

std::vector<std::size_t> tolerated(const Arrangement& arrangement, const std::vector<Excess>& excesses) {
  const std::vector<Placed> walls = walls_pressing(excesses);
  std::vector<Squeeze> squeezes;
  for (std::size_t i = 0; i < excesses.size(); ++i)
    if (excesses[i].thing->is_soft())
      squeezes.push_back(
          {i, excesses[i].thing, &walls[i], excesses[i].plan, excesses[i].outlier.depth.ceiling()});
  if (squeezes.empty()) return {};
  for (Squeeze squeeze : side_squeezes(arrangement, find_collisions(arrangement))) {
    squeeze.number += excesses.size();
    squeezes.push_back(squeeze);
  }
  return tolerated_squeezes(squeezes);
}

}  // namespace

std::vector<Overreach> find_overreach(const Plan& plan, const Arrangement& arrangement) {
  std::vector<Excess> all;
  for (const Placed& thing : arrangement.things)
    for (const Excess& excess : excesses(plan->interior, thing)) all.push_back(excess);
  const std::vector<std::size_t> given_way = tolerated(arrangement, all);
  std::vector<Overreach> overreach;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Excess& excess = all[i];
    const bool gives = std::ranges::find(given_way, i) != given_way.end();
    const Length by = excess.outlier.depth.ceiling();
    if (overreach.empty() || overreach.back().thing != excess.thing->id) {
      overreach.push_back({excess.thing->id, by, excess.where, gives});
      continue;
    }
    Overreach& worst = overreach.back();
    worst.tolerated = worst.tolerated && gives;
    if (by > worst.by) worst.by = by, worst.where = excess.where;
  }
  return overreach;
}

}  // namespace berthwright
