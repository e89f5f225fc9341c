#include "solve/clearing.h"

#include <algorithm>
#include <array>
#include <vector>

#include "plan/wall_names.h"
#include "solve/comparing.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

constexpr Length least_left = 2_in;

struct WayClear {
  Length by;
  Wall toward = Wall::front;
};

// The ways out of the place, the shortest first.
std::array<WayClear, 4> ways_clear(const Rect& thing, const Rect& place, Unit unit) {
  std::array<WayClear, 4> ways{{{thing.high.x - place.low.x, Wall::front},
                                {place.high.x - thing.low.x, Wall::rear},
                                {thing.high.y - place.low.y, Wall::left},
                                {place.high.y - thing.low.y, Wall::right}}};
  for (WayClear& way : ways) way.by = marked_out(way.by, unit);
  std::ranges::stable_sort(ways, {}, &WayClear::by);
  return ways;
}

Vector toward(Wall wall, Length by) {
  switch (wall) {
    case Wall::front:
      return {-by, Length{}};
    case Wall::rear:
      return {by, Length{}};
    case Wall::left:
      return {Length{}, -by};
    default:
      return {Length{}, by};
  }
}

Length extent(const Rect& box, Wall side) { return is_end_wall(side) ? box.width() : box.height(); }

}  // namespace

bool has_room_to_move(const Plan& plan, const Arrangement& arrangement, const Placed& thing, Wall wall,
                      Length by) {
  const Solid there(moved(thing.solid.outline(), toward(wall, by)), thing.solid.base(), thing.solid.top());
  if (!contains(room_between(plan->interior, there.base(), there.top()), there.outline())) return false;
  return std::ranges::none_of(arrangement.things, [&](const Placed& other) {
    if (&other == &thing || other.is_curtain()) return false;
    return std::ranges::find(other.carried_by, thing.id) != other.carried_by.end() ||
           overlaps(there, other.solid);
  });
}

Cure clearing(const Plan& plan, const Arrangement& arrangement, const Placed& thing, const Rect& place) {
  if (thing.is_soft()) return {Cure::Kind::set_aside, thing.id, {}};
  const Rect box = thing.solid.outline().bounds();
  const std::array<WayClear, 4> ways = ways_clear(box, place, plan->unit);
  for (const WayClear& way : ways)
    if (has_room_to_move(plan, arrangement, thing, way.toward, way.by))
      return {.kind = Cure::Kind::shift, .subject = thing.id, .by = way.by, .side = way.toward};
  if (thing.fixture != nullptr)
    for (const WayClear& way : ways)
      if (way.by + least_left <= extent(box, way.toward))
        return {.kind = Cure::Kind::shorten, .subject = thing.id, .by = way.by, .side = opposite(way.toward)};
  return {Cure::Kind::set_aside, thing.id, {}};
}

std::optional<Cure> clearing(const Plan& plan, const Arrangement& arrangement,
                             std::span<const std::string> things, const Rect& place) {
  std::optional<Cure> cure;
  for (const std::string& id : things) {
    const Placed* thing = arrangement.find(id);
    if (thing != nullptr) add_step(cure, clearing(plan, arrangement, *thing, place));
  }
  return cure;
}

}  // namespace berthwright
