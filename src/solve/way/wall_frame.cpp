#include "solve/way/wall_frame.h"

#include <algorithm>
#include <stdexcept>

namespace berthwright {

Point beside_wall(const Interior& room, Wall wall, Length along, Length inward) {
  switch (wall) {
    case Wall::front:
      return {inward, along};
    case Wall::rear:
      return {room.length - inward, along};
    case Wall::left:
      return {along, inward};
    case Wall::right:
      return {along, room.width - inward};
  }
  throw std::logic_error("wall out of range");
}

Rect before_opening(const Interior& room, const Opening& opening, Length from, Length to) {
  const Point a = beside_wall(room, opening.wall, opening.from, from);
  const Point b = beside_wall(room, opening.wall, opening.from + opening.width, to);
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

Edge threshold(const Interior& room, const Opening& opening) {
  return {beside_wall(room, opening.wall, opening.from, Length{}),
          beside_wall(room, opening.wall, opening.from + opening.width, Length{})};
}

}  // namespace berthwright
