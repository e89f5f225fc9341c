#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The borders of the Minkowski sums of the region's faces, rounded as those of booleans.h: where faces meet
/// once swept, they wind round a place more than once.
std::vector<Edge> border_of_swept(const Region& region, const Polygon& polygon);

}  // namespace berthwright
