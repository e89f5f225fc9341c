#include "geometry/parts_inside.h"

#include <algorithm>

#include "geometry/ring.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

// Where the line meets the border, and its ends, in order from its start.
std::vector<Point> places_on_border(const Edge& line, const Region& region) {
  std::vector<Point> places{line.from, line.to};
  for (const Edge& edge : edges(region)) {
    const std::int64_t from = cross(line.from, line.to, edge.from);
    const std::int64_t to = cross(line.from, line.to, edge.to);
    if (from == 0 && between(line.from, line.to, edge.from)) places.push_back(edge.from);
    const std::int64_t start = cross(edge.from, edge.to, line.from);
    const std::int64_t end = cross(edge.from, edge.to, line.to);
    if ((from < 0) != (to < 0) && (start < 0) != (end < 0))
      places.push_back(crossing_point(line.from, line.to, edge.from, edge.to));
  }
  std::ranges::sort(places, {}, [&](Point p) { return squared_distance(p, {line.from, line.from}); });
  return places;
}

}  // namespace

std::vector<Edge> parts_inside(const Edge& line, const Region& region) {
  std::vector<Edge> parts;
  const std::vector<Point> places = places_on_border(line, region);
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Point a = places[i - 1];
    const Point b = places[i];
    const Point middle{a.x + half(b.x - a.x), a.y + half(b.y - a.y)};
    if (a != b && region.side_of(middle) == Side::inside) parts.push_back({a, b});
  }
  return parts;
}

}  // namespace berthwright
