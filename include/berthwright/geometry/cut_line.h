#pragma once

#include <vector>

#include <berthwright/geometry/solid.h>

namespace berthwright {

/// A straight line in plan parallel to an axis, and the upright plane over it. Places along it are measured
/// by x or y as in plan.
struct CutLine {
  enum class Along { x, y };
  Along along = Along::x;
  Length at;  ///< the y of a line along x, the x of one along y
  friend bool operator==(const CutLine&, const CutLine&) = default;
};

/// A closed stretch of a line; of no length where a line only touches a corner.
struct Interval {
  Length from;
  Length to;
  friend bool operator==(const Interval&, const Interval&) = default;
};

/// Where the line meets the closed region: disjoint stretches that do not touch each other, ascending. Exact
/// where edges cross the line on the lattice, else rounded outward to the tick, so never too short (and two
/// that the rounding joins are one). O(n log n).
std::vector<Interval> cut(const Region& region, const CutLine& line);

/// What stands behind the line as a person sees it who looks toward greater y (line along x) or smaller x
/// (line along y), so that the drawing reads from the left: stretches of positive length along the line.
std::vector<Interval> behind(const Region& region, const CutLine& line);

/// What the upright plane cuts out of the solid, as upright boxes: `x` along the line, `y` the height. It is
/// what lies at once behind the plane (see `behind`): of two solids that meet in the plane one is cut.
std::vector<Rect> cut(const Solid& solid, const CutLine& line);

/// How far behind the line, in the same sense, the nearest point of the region that is not before it lies;
/// zero when the line meets the region. std::invalid_argument when the whole region is before the line.
Length distance_behind(const Region& region, const CutLine& line);

}  // namespace berthwright
