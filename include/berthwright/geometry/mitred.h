#pragma once

#include <optional>

#include <berthwright/geometry/polygon.h>

namespace berthwright {

/// The outline with every edge moved outward by `by` (inward where negative) and the corners kept sharp, as a
/// seam allowance is drawn; only a tip of less than about 41 degrees is cut off square, `by` beyond its
/// corner. Exact along the axes, else corners are rounded once to the tick. None where that leaves no simple
/// outline with the same edges: a slit narrower than twice `by`, or nothing left within.
std::optional<Polygon> mitred(const Polygon& outline, Length by);

}  // namespace berthwright
