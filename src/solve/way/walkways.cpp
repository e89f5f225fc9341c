#include <berthwright/solve/way/walkways.h>

#include "geometry/convex.h"

namespace berthwright {

std::optional<Walkway> walkway_of(const Bed& bed, std::span<const WayOut> ways) {
  const WayOut* way = widest(ways);
  if (way == nullptr) return std::nullopt;
  return Walkway{bed.id.text(), walkway_along(way->way.path, way->width)};
}

Region swept_floor(const WayOut& way) {
  if (!way.reached() || way.width <= one_tick) return {};
  const Polygon disc = disc_around(half(way.width));
  std::vector<Region> parts;
  const std::vector<Point>& path = way.way.path;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const Point from = path[i == 0 ? 0 : i - 1];
    std::vector<Point> corners;
    for (const Point end : {from, path[i]})
      for (const Point p : disc.vertices()) corners.push_back(end + Vector{p.x, p.y});
    parts.emplace_back(Polygon::promised(convex_hull(std::move(corners))));
  }
  return united(parts);
}

}  // namespace berthwright
