#include "geometry/convex.h"

#include <algorithm>
#include <ranges>

namespace berthwright {
namespace {

void add_inward_corners(const Polygon& ring, bool is_hole, std::vector<Length>& heights) {
  const auto corners = ring.vertices();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const std::int64_t turn =
        cross(corners[i], corners[(i + 1) % corners.size()], corners[(i + 2) % corners.size()]);
    if ((turn < 0) != is_hole) heights.push_back(corners[(i + 1) % corners.size()].y);
  }
}

// Rounding of a cut may bend a part inward by a tick; its hull covers it.
Polygon hull_of(const Polygon& polygon) {
  return Polygon::promised(convex_hull({polygon.vertices().begin(), polygon.vertices().end()}));
}

}  // namespace

std::vector<Point> convex_hull(std::vector<Point> points) {
  std::ranges::sort(points);
  points.erase(std::ranges::unique(points).begin(), points.end());
  std::vector<Point> hull;
  const auto add = [&](Point point, std::size_t kept) {
    while (hull.size() >= kept + 2 && cross(hull[hull.size() - 2], hull.back(), point) <= 0) hull.pop_back();
    hull.push_back(point);
  };
  for (const Point point : points) add(point, 0);
  const std::size_t lower = hull.size();
  for (const Point point : std::views::reverse(points)) add(point, lower - 1);
  if (!hull.empty()) hull.pop_back();
  if (hull.size() < 3) hull.clear();
  return hull;
}

std::vector<Polygon> convex_parts(const Region& region) {
  std::vector<Polygon> parts;
  for (const Face& face : region.faces()) {
    std::vector<Length> heights;
    add_inward_corners(face.outer, false, heights);
    for (const Polygon& hole : face.holes) add_inward_corners(hole, true, heights);
    if (heights.empty()) {
      parts.push_back(face.outer);
      continue;
    }
    const Rect bounds = face.outer.bounds();
    heights.push_back(bounds.low.y);
    heights.push_back(bounds.high.y);
    std::ranges::sort(heights);
    heights.erase(std::ranges::unique(heights).begin(), heights.end());
    const Region whole = Region::from_faces({face});
    for (std::size_t i = 1; i < heights.size(); ++i) {
      const Region strip = common(whole, Rect{{bounds.low.x, heights[i - 1]}, {bounds.high.x, heights[i]}});
      for (const Face& part : strip.faces()) parts.push_back(hull_of(part.outer));
    }
  }
  return parts;
}

// Both rings begin at their least corner, so their edges run through the same directions in the same order.
Polygon convex_sum(const Polygon& a, const Polygon& b) {
  const auto first = a.vertices();
  const auto second = b.vertices();
  const auto step = [](std::span<const Point> ring, std::size_t i) {
    return ring[(i + 1) % ring.size()] - ring[i % ring.size()];
  };
  std::vector<Point> sum;
  std::size_t i = 0;
  std::size_t k = 0;
  while (i < first.size() || k < second.size()) {
    sum.push_back(first[i % first.size()] + (second[k % second.size()] - Point{}));
    const std::int64_t turn = i == first.size() ? -1
                              : k == second.size()
                                  ? 1
                                  : cross(Point{}, Point{} + step(first, i), Point{} + step(second, k));
    if (turn >= 0) ++i;
    if (turn <= 0) ++k;
  }
  return Polygon::promised(std::move(sum));
}

}  // namespace berthwright
