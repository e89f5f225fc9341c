#pragma once

#include <array>
#include <cstddef>
#include <stdexcept>

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/point.h>
#include <berthwright/plan/names.h>

#include "plan/wall_names.h"

namespace berthwright {

/// The way a side of a box looks, one tick long.
constexpr Vector outward(Wall side) {
  switch (side) {
    case Wall::front:
      return {-one_tick, Length{}};
    case Wall::rear:
      return {one_tick, Length{}};
    case Wall::left:
      return {Length{}, -one_tick};
    case Wall::right:
      return {Length{}, one_tick};
  }
  throw std::logic_error("Wall out of range");
}

/// What lies before one side of a box, up to `depth` away.
constexpr Rect beyond_side(const Rect& box, Wall side, Length depth) {
  switch (side) {
    case Wall::front:
      return {{box.low.x - depth, box.low.y}, {box.low.x, box.high.y}};
    case Wall::rear:
      return {{box.high.x, box.low.y}, {box.high.x + depth, box.high.y}};
    case Wall::left:
      return {{box.low.x, box.low.y - depth}, {box.high.x, box.low.y}};
    case Wall::right:
      return {{box.low.x, box.high.y}, {box.high.x, box.high.y + depth}};
  }
  throw std::logic_error("Wall out of range");
}

/// How long one side is, and its middle, an odd tick rounded toward the front or the left.
constexpr Length side_length(const Rect& box, Wall side) {
  return is_end_wall(side) ? box.height() : box.width();
}
constexpr Point middle_of_side(const Rect& box, Wall side) {
  const Rect line = beyond_side(box, side, Length{});
  return {line.low.x + half(line.width()), line.low.y + half(line.height())};
}

/// The way a side looks once its thing is turned; seen from above, a quarter turn takes rear to right, right
/// to front, front to left. `turn` must be a quarter turn.
constexpr Wall turned(Wall side, Turn turn) {
  constexpr std::array counter_clockwise{Wall::rear, Wall::right, Wall::front, Wall::left};
  std::size_t at = 0;
  while (counter_clockwise[at] != side) ++at;
  std::size_t quarters = 0;
  while (Turn::quarters(static_cast<int>(quarters)) != turn) ++quarters;
  return counter_clockwise[(at + quarters) % 4];
}

}  // namespace berthwright
