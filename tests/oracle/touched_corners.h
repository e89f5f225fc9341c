#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Every corner of a face, outer and holes.
std::vector<Point> corners_of(const Face& face);
/// The ring with a further corner wherever one of `corners` lies on an edge.
std::vector<Point> with_corners_on_edges(const Polygon& ring, std::span<const Point> corners);

}  // namespace berthwright
