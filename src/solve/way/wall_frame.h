#pragma once

#include <berthwright/geometry/region.h>
#include <berthwright/plan/interior.h>

namespace berthwright {

/// The place `along` a wall from its near end (the front, or the left) and `inward` from its line.
Point beside_wall(const Interior& room, Wall wall, Length along, Length inward);

/// The box over the width of an opening between two distances inward from the line of its wall.
Rect before_opening(const Interior& room, const Opening& opening, Length from, Length to);

/// The two ends of an opening in the line of its wall, the near one first.
Edge threshold(const Interior& room, const Opening& opening);

/// Whether the wall runs along x, as left and right do.
constexpr bool runs_along_x(Wall wall) { return wall == Wall::left || wall == Wall::right; }

}  // namespace berthwright
