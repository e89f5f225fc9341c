#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

using Corners = std::array<Point, 4>;

/// Whether the corners are a strictly convex counter-clockwise quadrilateral whose open inside meets no
/// border edge and lies in the region the edges bound. Exact; touching the border is allowed. O(edges).
bool is_inscribed(const Corners& corners, std::span<const Edge> border);

/// The lengths of a rectangle inside the quadrilateral, parallel to its first edge: the gap between the
/// corners that face each other, rounded down. Zero or less when nothing is left.
struct Held {
  Length along;
  Length across;
};
Held held_by(const Corners& corners);

/// How far the open strip rect.low.y < y < rect.high.y is free to both sides of x = `at`, to whole ticks; the
/// x of `rect` is not read. None when an edge of the strip crosses or touches x = `at` within it.
struct FreeStretch {
  Length from;
  Length to;
};
std::optional<FreeStretch> free_along_x(const Rect& rect, Length at, std::span<const Edge> border);

/// The longest stretches of the open strip low < y < high that lie inside the region the edges bound, to
/// whole ticks toward shorter, from left to right. `low` < `high`. O(edges log edges).
std::vector<FreeStretch> free_stretches(Length low, Length high, std::span<const Edge> border);

}  // namespace berthwright
