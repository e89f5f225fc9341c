#include "solve/way/doorway.h"

#include <algorithm>

#include "solve/way/wall_frame.h"

namespace berthwright {
namespace {

// Nobody asks whether a way is wider than this, and places stay well within `farthest`.
constexpr Length widest_asked = 2'000_mm;
constexpr Length reach_inside = 1_in;

// A band of the door's width, which reaches a little into the room: regions that only share a slanted border
// may keep a crack there.
Region out_to_the_wall(const Interior& interior, const Region& room, const Opening& door) {
  const Length across = runs_along_x(door.wall) ? interior.width : interior.length;
  const Region beyond = without(before_opening(interior, door, {}, across), room);
  const Edge line = threshold(interior, door);
  Length depth;
  for (const Region& part : beyond.parts()) {
    const Rect bounds = part.bounds();
    if (meets(bounds, Rect{line.from, line.to}))
      depth = std::max(depth, runs_along_x(door.wall) ? bounds.height() : bounds.width());
  }
  if (depth == Length{}) return {};
  return before_opening(interior, door, {}, std::min(depth + reach_inside, across));
}

}  // namespace

Doorway doorway_of(const Interior& interior, const Region& room, const Opening& door) {
  const Length flare = std::min(door.width, widest_asked);
  const auto at = [&](Length along, Length inward) {
    return beside_wall(interior, door.wall, along, inward);
  };
  const Length end = door.from + door.width;
  return {out_to_the_wall(interior, room, door),
          Polygon::promised(
              {at(door.from, {}), at(end, {}), at(end + flare, -flare), at(door.from - flare, -flare)})};
}

}  // namespace berthwright
