#pragma once

#include <berthwright/exact/squared_length.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// The point of `part` that lies deepest outside `room`, and how deep.
struct Outlier {
  SquaredLength depth;
  Point where;
};

/// Exact when the room is convex; else the depth is too great by at most 1/64 in. `part` is not empty and
/// lies outside the room.
Outlier farthest_outside(const Region& part, const Polygon& room);

}  // namespace berthwright
