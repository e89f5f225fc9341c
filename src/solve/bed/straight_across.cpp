#include "solve/bed/straight_across.h"

#include <berthwright/exact/squared_length.h>

#include "geometry/ring.h"

namespace berthwright {

namespace {

constexpr Length reach = 2 * opening_radius;
// Chords of arcs are shorter; they face nothing square.
constexpr Length shortest_edge = 1_in;

Length length_of(Vector v) {
  return SquaredLength(Int128{v.x.ticks()} * v.x.ticks() + Int128{v.y.ticks()} * v.y.ticks(), 1).floor();
}

// The way out of the region, square to the edge, as far as an opening can be wide.
Vector outward(const Edge& edge) {
  const Vector along = edge.to - edge.from;
  const Int128 length = length_of(along).ticks();
  return {rounded_part(reach, along.y.ticks(), length), rounded_part(reach, -along.x.ticks(), length)};
}

Region parallelogram(Point a, Point b, Vector by) {
  Result<Polygon> polygon = Polygon::checked({a, b, b + by, a + by});
  return polygon ? Region(std::move(polygon).value()) : Region();
}

// Everything the region passes over when it is shifted.
Region passed_over(const Region& region, Vector by) {
  std::vector<Region> parts{region};
  for (const Edge& edge : edges(region)) parts.push_back(parallelogram(edge.from, edge.to, by));
  return united(parts);
}

}  // namespace

Region straight_across(const Region& things, const Rect& near) {
  std::vector<Region> seen;
  for (const Edge& edge : edges(things)) {
    if (length_of(edge.to - edge.from) < shortest_edge) continue;
    const Vector out = outward(edge);
    const Region before = parallelogram(edge.from, edge.to, out);
    if (before.empty() || !overlaps(before.bounds(), near)) continue;
    const Region ahead = common(things, before);
    if (!ahead.empty()) seen.push_back(common(passed_over(ahead, {-out.x, -out.y}), before));
  }
  return without(united(seen), things);
}

}  // namespace berthwright
