#include "oracle/touched_corners.h"

#include <algorithm>

#include "geometry/ring.h"

namespace berthwright {

std::vector<Point> corners_of(const Face& face) {
  std::vector<Point> result(face.outer.vertices().begin(), face.outer.vertices().end());
  for (const Polygon& hole : face.holes) std::ranges::copy(hole.vertices(), std::back_inserter(result));
  return result;
}

std::vector<Point> with_corners_on_edges(const Polygon& ring, std::span<const Point> corners) {
  std::vector<Point> result;
  const auto own = ring.vertices();
  for (std::size_t i = 0; i < own.size(); ++i) {
    const Point from = own[i];
    const Point to = own[(i + 1) % own.size()];
    std::vector<Point> way{from};
    for (const Point& p : corners)
      if (p != from && p != to && cross(from, to, p) == 0 && between(from, to, p)) way.push_back(p);
    std::ranges::sort(way);
    way.erase(std::unique(way.begin(), way.end()), way.end());
    if (to < from) std::ranges::reverse(way);
    std::ranges::copy(way, std::back_inserter(result));
  }
  return result;
}

}  // namespace berthwright
