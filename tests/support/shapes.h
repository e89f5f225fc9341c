#pragma once

#include <random>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright::support {

inline Point at(std::int64_t x, std::int64_t y) { return {Length::from_ticks(x), Length::from_ticks(y)}; }
inline Rect box(std::int64_t left, std::int64_t bottom, std::int64_t right, std::int64_t top) {
  return {at(left, bottom), at(right, top)};
}
inline Polygon polygon(std::vector<Point> corners) { return Polygon::checked(std::move(corners)).value(); }
inline double number(Area area) { return static_cast<double>(area.doubled()) / 2; }

/// A simple polygon of up to `corners` corners on the lattice points 0..`cells` times `step`.
Polygon random_polygon(std::mt19937_64& random, int corners, int cells, std::int64_t step);
/// The union of a few rectangles on the same lattice less a few others: holes, islands, touching corners.
Region random_boxes(std::mt19937_64& random, int count, int cells, std::int64_t step);
/// The union of polygons less others.
Region random_region(std::mt19937_64& random, int cells, std::int64_t step);

}  // namespace berthwright::support
