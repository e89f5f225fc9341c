#pragma once

#include <berthwright/exact/squared_length.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// Exact distance of a point from a closed segment, squared; a segment may be a single point.
SquaredLength squared_distance(Point point, const Edge& edge);

/// The point of the closed segment nearest to `point`, each coordinate rounded to the nearest tick (a half
/// upward); exact when an end of the segment is nearest.
Point nearest_point(Point point, const Edge& edge);

}  // namespace berthwright
