#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The border of a region as edges without direction, cut wherever a corner lies on one; sorted.
std::vector<Edge> cut_border(const Region& region);

/// The same for a guest that needs edges which only touch: rounded corners may have pushed edges across each
/// other by a tick. Cut at rounded crossings, so only guesses may come from it.
std::vector<Edge> uncrossed(std::vector<Edge> border);

}  // namespace berthwright
