#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// What winds round the Minkowski sum of the region and the polygon, some places more than once. Of a convex
/// polygon exact; else rounded as those of booleans.h.
std::vector<Edge> border_of_swept(const Region& region, const Polygon& polygon);

/// The same by the guest, for any polygon: many times as slow.
std::vector<Edge> guest_border_of_swept(const Region& region, const Polygon& polygon);

}  // namespace berthwright
