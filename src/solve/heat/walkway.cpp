#include <algorithm>
#include <cstddef>

#include <berthwright/solve/heat/plugged.h>

#include "geometry/parts_inside.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

constexpr Length widest_walkway = 18_in;
constexpr Length strays = Length::inches(1, 16);

Length straight(Point a, Point b) { return squared_distance(a, Edge{b, b}).ceiling(); }

// Of the corners between `first` and `last` those that the straight line leaves by more than `strays`.
void add_bends(const std::vector<Point>& path, std::size_t first, std::size_t last,
               std::vector<Point>& kept) {
  std::size_t farthest_off = first;
  SquaredLength most = SquaredLength::of(strays);
  for (std::size_t i = first + 1; i < last; ++i)
    if (const SquaredLength off = squared_distance(path[i], {path[first], path[last]}); off > most) {
      most = off;
      farthest_off = i;
    }
  if (farthest_off != first) {
    add_bends(path, first, farthest_off, kept);
    kept.push_back(path[farthest_off]);
    add_bends(path, farthest_off, last, kept);
  }
}

// The segment as a polygon one tick wide.
Region line(Point a, Point b) {
  const bool flat = abs(b.x - a.x) >= abs(b.y - a.y);
  const Vector aside = flat ? Vector{Length{}, one_tick} : Vector{one_tick, Length{}};
  return Polygon::promised({a, b, b + aside, a + aside});
}

}  // namespace

Region walkway_along(const std::vector<Point>& path, Length width) {
  if (path.size() < 2 || width <= Length{}) return {};
  std::vector<Point> bends{path.front()};
  add_bends(path, 0, path.size() - 1, bends);
  bends.push_back(path.back());
  std::vector<Region> bands;
  for (std::size_t i = 1; i < bends.size(); ++i)
    if (bends[i - 1] != bends[i])
      bands.push_back(grown(line(bends[i - 1], bends[i]), half(std::min(width, widest_walkway))));
  return united(bands);
}

std::optional<CordOn> cord_on(const std::vector<Point>& path, const Region& region) {
  if (region.empty()) return std::nullopt;
  std::optional<CordOn> on;
  for (std::size_t i = 1; i < path.size(); ++i)
    for (const Edge& part : parts_inside({path[i - 1], path[i]}, region)) {
      if (!on) on = CordOn{Length{}, part.from};
      on->length += straight(part.from, part.to);
    }
  return on;
}

}  // namespace berthwright
