#include "solve/clearing.h"

#include <algorithm>
#include <array>

#include "plan/wall_names.h"
#include "solve/comparing.h"
#include "solve/gives_way.h"

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

Length extent(const Rect& box, Wall side) { return is_end_wall(side) ? box.width() : box.height(); }

}  // namespace

std::optional<Cure> clearing(const Plan& plan, const Arrangement& arrangement, const Placed& thing,
                             const Rect& place) {
  if (is_portable_heater(thing)) return Cure{Cure::Kind::set_aside, thing.id, {}};
  if (!gives_way(plan, arrangement, thing)) return std::nullopt;
  if (thing.is_soft()) return Cure{Cure::Kind::set_aside, thing.id, {}};
  const Rect box = thing.solid.outline().bounds();
  const std::array<WayClear, 4> ways = ways_clear(box, place, plan->unit);
  for (const WayClear& way : ways)
    if (has_room_to_move(plan, arrangement, thing, way.toward, way.by))
      return Cure{.kind = Cure::Kind::shift, .subject = thing.id, .by = way.by, .side = way.toward};
  if (thing.fixture == nullptr) return Cure{Cure::Kind::set_aside, thing.id, {}};
  for (const WayClear& way : ways)
    if (way.by + least_left <= extent(box, way.toward) &&
        may_be_cut_back(plan, *thing.fixture, opposite(way.toward), way.by))
      return Cure{
          .kind = Cure::Kind::shorten, .subject = thing.id, .by = way.by, .side = opposite(way.toward)};
  return std::nullopt;
}

Clearance clearing(const Plan& plan, const Arrangement& arrangement, std::span<const std::string> things,
                   const Rect& place) {
  Clearance clearance;
  for (const std::string& id : things) {
    const Placed* thing = arrangement.find(id);
    if (thing == nullptr) continue;
    if (std::optional<Cure> cure = clearing(plan, arrangement, *thing, place))
      add_step(clearance.cure, std::move(*cure));
    else
      clearance.staying.push_back(id);
  }
  return clearance;
}

}  // namespace berthwright
