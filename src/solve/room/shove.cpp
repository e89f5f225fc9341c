#include "solve/room/shove.h"

#include "geometry/ring.h"
#include "solve/room/room_shape.h"

namespace berthwright {

Shove::Shove(const Plan& plan, const Arrangement& arrangement, const Placed& piece)
    : outline_(piece.solid.outline()) {
  const Solid& solid = piece.solid;
  const Region frame(grown(outline_.bounds(), 2 * most_play));
  std::vector<Region> stops{without(frame, room_between(plan->interior, solid.base(), solid.top()))};
  for (const Placed& thing : arrangement.things)
    if (&thing != &piece && !thing.is_soft() && thing.solid.base() < solid.top() &&
        solid.base() < thing.solid.top())
      stops.push_back(common(thing.solid.outline(), frame));
  stops_ = united(stops);
}

Vector Shove::inward(const Edge& edge, Length distance) {
  const Vector along = edge.to - edge.from;
  const Int128 x = along.x.ticks();
  const Int128 y = along.y.ticks();
  const Int128 length = SquaredLength(x * x + y * y, 1).floor().ticks();
  return {rounded_part(distance, -y, length), rounded_part(distance, x, length)};
}

Length Shove::play(const Edge& edge) const {
  const auto stopped = [&](Length distance) {
    return overlaps(moved(outline_, inward(edge, distance)), stops_);
  };
  if (!stopped(most_play)) return most_play;
  if (stopped(Length{})) return {};
  Length clear;
  Length blocked = most_play;
  while (blocked - clear > one_tick) {
    const Length between = half(clear + blocked);
    (stopped(between) ? blocked : clear) = between;
  }
  return clear;
}

}  // namespace berthwright
