#pragma once

#include <array>
#include <optional>

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// A rectangle at any rotation. `length` >= `width`, both rounded down; `corners` counter-clockwise on the
/// lattice, the first edge along the length; `turn` is the direction of the length, in [0, 180) degrees.
struct TurnedRectangle {
  std::array<Point, 4> corners;
  Turn turn;
  Length length;
  Length width;
};

/// A rectangle of great area in the region at any rotation. It always lies inside (checked on exact
/// numbers); in a rectilinear region none that is parallel to the axes is larger. At other rotations the
/// search takes every edge direction and one direction a degree, then refines the best: a lower bound.
/// Of equal areas the longer, then the less turned. Empty region: none.
std::optional<TurnedRectangle> largest_rectangle(const Region& region);

/// The longest rectangle of exactly `width` (which may exceed its length) in the region; guarantees as for
/// `largest_rectangle`. None when no rectangle of that width fits. `width` must be positive.
std::optional<TurnedRectangle> longest_rectangle(const Region& region, Length width);

}  // namespace berthwright
