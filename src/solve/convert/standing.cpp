#include "solve/convert/standing.h"

#include <algorithm>
#include <array>

#include <berthwright/solve/way/way_out.h>

#include "solve/convert/sliding_plane.h"

namespace berthwright {
namespace {

constexpr Length lowest = 4_in;
constexpr Length stooping = 36_in;

Length apart(Length low, Length high, Length other_low, Length other_high) {
  return std::max({Length{}, other_low - high, low - other_high});
}

}  // namespace

std::optional<StandingPlace> standing_place(const RoomAround& surroundings, const Arrangement& stage,
                                            const Rect& reach) {
  const Rect room = surroundings.plan()->interior.outline.polygon().bounds();
  const Vector size{standing_side, standing_side};
  const Rect range{room.low, room.high - size};
  if (range.high.x < range.low.x || range.high.y < range.low.y) return std::nullopt;
  std::vector<Rect> taken = surroundings.beyond(lowest, stooping);
  for (const Placed& thing : stage.things) {
    if (thing.is_curtain() || !stands_in_the_way(thing.solid)) continue;
    const std::vector<Rect> over = rectangles_over(thing.solid.outline());
    taken.insert(taken.end(), over.begin(), over.end());
  }
  for (Rect& rect : taken) rect.low = rect.low - size;
  // Where the square is nearest it is level with a side of the reach, or stands beside one.
  const std::array marks{reach.low, reach.high, reach.low - size, reach.high - size};
  std::optional<StandingPlace> best;
  for (const Point low : SlidingPlane(range, taken, marks).free_crossings()) {
    const Rect square{low, low + size};
    const Length x = apart(square.low.x, square.high.x, reach.low.x, reach.high.x);
    const Length y = apart(square.low.y, square.high.y, reach.low.y, reach.high.y);
    const Length away = SquaredLength::of(x).plus_square_of(y).ceiling();
    if (!best || away < best->away) best = StandingPlace{square, away};
  }
  return best;
}

}  // namespace berthwright
