#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// The union of rectangles as rectangles that do not overlap: upright slabs from left to right, each cut
/// where it is free. Neighbouring slabs are not joined.
std::vector<Rect> disjoint_rects(std::span<const Rect> rects);

}  // namespace berthwright
