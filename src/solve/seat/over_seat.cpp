#include "solve/seat/over_seat.h"

#include <algorithm>
#include <array>

#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

bool is_table(const Placed* thing) {
  return thing != nullptr && thing->piece != nullptr && thing->piece->kind == Piece::Kind::table;
}

// Small things on walls are told as head bumps, where they are near a head.
bool may_hang_over(const Placed& thing, const Arrangement& arrangement) {
  if (thing.fixture == nullptr)
    return !is_table(&thing) && std::ranges::none_of(thing.carried_by, [&](const std::string& carrier) {
      return is_table(arrangement.find(carrier));
    });
  using Kind = Fixture::Kind;
  constexpr std::array small{Kind::outlet,     Kind::smoke_alarm, Kind::co_alarm, Kind::gas_alarm,
                             Kind::protrusion, Kind::curtain,     Kind::leg,      Kind::ledge};
  return std::ranges::find(small, thing.fixture->kind) == small.end();
}

Point middle_of(const Region& region) {
  const Rect box = region.bounds();
  return {half(box.low.x + box.high.x), half(box.low.y + box.high.y)};
}

}  // namespace

std::optional<HeadRoom> head_room_over(const Plan& plan, const Arrangement& arrangement, const Seat& seat,
                                       const Region& place) {
  const Region inside = common(place, room_at(plan->interior, seat.top));
  if (inside.empty()) return std::nullopt;
  const Length roof = roof_over(plan->interior, inside, seat.top);
  // Where the roof is lowest: what is left when the places a little higher are taken away.
  const Region lowest = without(inside, room_between(plan->interior, seat.top, roof + Length::inches(1, 64)));
  HeadRoom room{roof - seat.sits_at, {}, middle_of(lowest.empty() ? inside : lowest)};
  for (const Placed& thing : arrangement.things) {
    const Length height = thing.solid.base() - seat.sits_at;
    if (thing.solid.base() <= seat.top + stands_on_it || height > room.height) continue;
    if (height == room.height && room.under < thing.id) continue;  // the roof, or one of two that hang alike
    if (!may_hang_over(thing, arrangement)) continue;
    const Region beneath = common(thing.solid.outline(), inside);
    if (!beneath.empty()) room = {height, thing.id, middle_of(beneath)};
  }
  return room;
}

}  // namespace berthwright
