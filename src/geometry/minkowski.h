#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The border of the Minkowski sum, rounded as those of booleans.h.
std::vector<Edge> border_of_swept(const Region& region, const Polygon& polygon);

}  // namespace berthwright
