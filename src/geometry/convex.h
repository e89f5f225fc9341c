#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Corners of the convex hull, counter-clockwise, none of them straight; empty for fewer than three.
std::vector<Point> convex_hull(std::vector<Point> points);

/// Convex polygons that together cover the region, cut along x through its inward corners. Exact where the
/// cuts meet the border on the lattice (a convex or rectilinear region); else too large by at most a tick.
std::vector<Polygon> convex_parts(const Region& region);

/// The Minkowski sum of two convex polygons: exact, on the lattice. O(n + m).
Polygon convex_sum(const Polygon& a, const Polygon& b);

}  // namespace berthwright
