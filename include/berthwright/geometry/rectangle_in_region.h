#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

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

/// At a rotation other than a quarter turn a rectangle may be short of a width asked for by this much (0.2
/// micrometres): outlines turned to such a rotation had their corners rounded to the lattice.
inline constexpr Length turning_slack = Length::from_ticks(8);

/// The side at right angles to the one that is nearest to `width`: along it a person of that width lies.
constexpr Length side_beside(const TurnedRectangle& rectangle, Length width) {
  const bool along = abs(rectangle.width - width) <= abs(rectangle.length - width);
  return along ? rectangle.length : rectangle.width;
}

/// A rectangle of great area in the region at any rotation. It always lies inside (checked on exact
/// numbers); in a rectilinear region none that is parallel to the axes is larger. At other rotations the
/// search takes every edge direction and one direction a degree, then refines the best: a lower bound.
/// Of areas equal to 0.01 mm in a side: parallel to the axes, then longer, then less turned. Empty: none.
std::optional<TurnedRectangle> largest_rectangle(const Region& region);

/// The largest rectangle parallel to the axes: in a rectilinear region none is larger, else a lower bound.
std::optional<TurnedRectangle> largest_upright_rectangle(const Region& region);

/// The longest rectangle of exactly `width` (which may exceed its length) in the region; guarantees as for
/// `largest_rectangle`, `turning_slack` apart. None when no rectangle of that width fits.
/// std::invalid_argument when `width` is not positive.
std::optional<TurnedRectangle> longest_rectangle(const Region& region, Length width);
/// The same for several widths at once, which costs less.
std::vector<std::optional<TurnedRectangle>> longest_rectangles(const Region& region,
                                                               std::span<const Length> widths);

}  // namespace berthwright
