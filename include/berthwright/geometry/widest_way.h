#pragma once

#include <optional>
#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// A way for a disc through free space, and where it is narrowest.
struct WidestWay {
  Length width;  ///< diameter of the largest disc that passes; rounded down
  Point left;    ///< the two places of the border between which it is narrowest; rounded to the tick
  Point right;
  std::vector<Point> path;  ///< of the centre, for drawing; from the start to the goal
};

/// The widest way of a disc that keeps to `free`, starts where it touches one of the edges `from` (parts of
/// the border of `free`, to within two ticks) and ends with its centre in `goal`, a part of `free` that is
/// roomier than the way into it. None: no edge of `from` borders on `free`, or no way leads to `goal`.
/// The width is the distance of two parts of the border, exact but for rounding down; where the start itself
/// is the narrowest place, at most two ticks less. O(n log n + n x links).
std::optional<WidestWay> widest_way(const Region& free, std::span<const Edge> from, const Region& goal);

}  // namespace berthwright
