#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright::oracle {

/// Answers of GEOS, which computes in doubles and shares no code with us. Unit: the tick.
enum class Operation { unite, intersect, subtract };

bool geos_is_simple(const std::vector<Point>& corners);
double geos_area(const Region& region);
/// Area of the result of an operation.
double geos_area(Operation operation, const Region& a, const Region& b);
/// Area of the part that only one of the two regions has.
double geos_difference(const Region& a, const Region& b);
double geos_distance(const Region& a, const Region& b);
bool geos_interiors_meet(const Region& a, const Region& b);
bool geos_covers(const Region& outer, const Region& inner);
bool geos_is_valid(const Region& region);
/// Area of the offset with mitred corners.
double geos_mitred_area(const Region& region, double by);
/// Area of the Minkowski sum with a convex polygon: the union of the region, moved, and of what the polygon
/// covers along each edge.
double geos_swept_area(const Region& region, const Polygon& convex);
/// Area of the offset with arcs of 64 chords a quarter.
double geos_round_area(const Region& region, double by);
/// The shortest way inside the region between two of its places, from corner to corner wherever GEOS says
/// that the region covers the straight line; negative: there is none. It passes through points where parts
/// only touch.
double geos_way(const Region& region, Point from, Point to);
/// Radius of the largest inscribed disc, at most `tolerance` too small.
double geos_inscribed_radius(const Region& region, double tolerance);

}  // namespace berthwright::oracle
