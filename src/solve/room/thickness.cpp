#include "solve/room/thickness.h"

#include <optional>
#include <stdexcept>

#include <berthwright/geometry/disc.h>

#include "geometry/segment.h"

namespace berthwright {

namespace {

// The disc is at most two ticks short of the true one, its centre as far beside the true centre.
constexpr Length disc_error = 4 * one_tick;

bool is_parallel(const Edge& a, const Edge& b) {
  const Vector u = a.to - a.from;
  const Vector v = b.to - b.from;
  return Int128{u.x.ticks()} * v.y.ticks() == Int128{u.y.ticks()} * v.x.ticks();
}

SquaredLength squared_distance_of_lines(const Edge& a, const Edge& parallel) {
  const Int128 across = cross(a.from, a.to, parallel.from);
  const Vector u = a.to - a.from;
  return {across * across, Int128{u.x.ticks()} * u.x.ticks() + Int128{u.y.ticks()} * u.y.ticks()};
}

// The distance of two parallel edges that the disc touches on both sides.
std::optional<Length> between_parallels(const Region& region, const Disc& disc) {
  std::vector<Edge> touched;
  for (const Edge& edge : edges(region))
    if (squared_distance(disc.centre, edge) <= SquaredLength::of(disc.radius + disc_error))
      touched.push_back(edge);
  std::optional<Length> least;
  for (std::size_t i = 0; i < touched.size(); ++i)
    for (std::size_t j = i + 1; j < touched.size(); ++j) {
      if (!is_parallel(touched[i], touched[j])) continue;
      const Length across = squared_distance_of_lines(touched[i], touched[j]).ceiling();
      if (across < 2 * disc.radius || across > 2 * (disc.radius + disc_error)) continue;
      if (!least || across < *least) least = across;
    }
  return least;
}

}  // namespace

Thickness thickness_of(const Region& region) {
  if (region.empty()) throw std::invalid_argument("an empty region has no thickness");
  const std::optional<Disc> disc = largest_disc(region);
  if (!disc) return {one_tick, region.faces().front().outer.vertices().front()};
  if (const std::optional<Length> exact = between_parallels(region, *disc)) return {*exact, disc->centre};
  return {2 * disc->radius + disc_error + one_tick, disc->centre};
}

}  // namespace berthwright
