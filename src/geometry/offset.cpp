#include <algorithm>
#include <array>
#include <stdexcept>

#include <berthwright/geometry/region.h>

#include "geometry/overlay.h"

// Minkowski sums by the full convolution of the two outlines (Guibas, Ramshaw, Stolfi 1983): round a place x
// it winds as often as the region and the reflected polygon at x have common parts, less the holes in these.
// Its edges join sums of corners, so only their crossings can fall off the lattice.
namespace berthwright {
namespace {

using Ring = std::vector<Point>;

Ring ring_of(const Polygon& polygon) { return {polygon.vertices().begin(), polygon.vertices().end()}; }
Ring reversed(Ring ring) {
  std::ranges::reverse(ring);
  return ring;
}

std::int64_t cross(Vector a, Vector b) { return a.x.ticks() * b.y.ticks() - a.y.ticks() * b.x.ticks(); }
bool same_way(Vector a, Vector b) {
  return cross(a, b) == 0 && (a.x.ticks() > 0) == (b.x.ticks() > 0) &&
         (a.x.ticks() < 0) == (b.x.ticks() < 0) && (a.y.ticks() > 0) == (b.y.ticks() > 0);
}

// Which of two parallel directions counts as turned further left.
enum class Tie { corner_first, edge_first };

// 1 when a left turn from `in` to `out` passes the direction `way`, -1 when a right turn does, else 0.
int passed(Vector in, Vector out, Vector way, Tie tie) {
  const bool left = cross(in, out) > 0;
  const bool with_start = left == (tie == Tie::corner_first);
  if (same_way(way, in)) return with_start ? (left ? 1 : -1) : 0;
  if (same_way(way, out)) return with_start ? 0 : (left ? 1 : -1);
  const std::int64_t after = cross(in, way);
  const std::int64_t before = cross(way, out);
  if (left) return after > 0 && before > 0 ? 1 : 0;
  return after < 0 && before < 0 ? -1 : 0;
}

// Edges of `moving` at each corner of `fixed` whose turn passes them.
void add_edges(std::vector<Edge>& result, const Ring& fixed, const Ring& moving, Tie tie) {
  for (std::size_t i = 0; i < fixed.size(); ++i) {
    const Point here = fixed[i];
    const Vector in = here - fixed[(i + fixed.size() - 1) % fixed.size()];
    const Vector out = fixed[(i + 1) % fixed.size()] - here;
    const Vector shift = here - Point{};
    for (std::size_t k = 0; k < moving.size(); ++k) {
      const Point from = moving[k];
      const Point to = moving[(k + 1) % moving.size()];
      const int times = passed(in, out, to - from, tie);
      if (times > 0) result.push_back({from + shift, to + shift});
      if (times < 0) result.push_back({to + shift, from + shift});
    }
  }
}

void add_convolution(std::vector<Edge>& result, const Ring& a, const Ring& b) {
  add_edges(result, a, b, Tie::corner_first);
  add_edges(result, b, a, Tie::edge_first);
}

// Whether a box of the size of `small` fits into `large`.
bool fits(const Rect& small, const Rect& large) {
  return small.width() <= large.width() && small.height() <= large.height();
}

bool is_nothing(Length radius) {
  if (radius < Length{}) throw std::invalid_argument("a radius is not negative");
  return radius == Length{};
}

}  // namespace

// A hole into which the polygon does not fit is covered; elsewhere in it the sum winds zero times exactly
// where the polygon keeps clear of its border.
Region swept(const Region& region, const Polygon& polygon) {
  const Ring tool = ring_of(polygon);
  std::vector<Edge> result;
  for (const Face& face : region.faces()) {
    add_convolution(result, ring_of(face.outer), tool);
    for (const Polygon& hole : face.holes)
      if (fits(polygon.bounds(), hole.bounds())) add_convolution(result, reversed(ring_of(hole)), tool);
  }
  return overlaid(strands(result), [](Winding w) { return w.first > 0; });
}

Polygon disc_around(Length radius) {
  if (is_nothing(radius)) throw std::invalid_argument("a disc needs a radius");
  // cos and sin of (k + 1/2) pi / 32 over cos(pi / 64), times 2^31, rounded up.
  constexpr std::array<std::array<std::int64_t, 2>, 8> corners{{{2147483648, 105499107},
                                                                {2126802207, 315481306},
                                                                {2085638498, 522425248},
                                                                {2024388949, 724337949},
                                                                {1943643429, 919274879},
                                                                {1844179560, 1105358690},
                                                                {1726955234, 1280797292},
                                                                {1593099384, 1443901117}}};
  const auto scaled = [&](std::int64_t factor) {
    constexpr Int128 unit = Int128{1} << 31;
    return Length::from_ticks(static_cast<std::int64_t>((Int128{radius.ticks()} * factor + unit - 1) / unit));
  };
  std::vector<Point> ring;
  for (int quarter = 0; quarter < 4; ++quarter) {
    for (std::size_t k = 0; k < 16; ++k) {
      const bool low = k < 8;
      const auto& [along, across] = corners[low ? k : 15 - k];
      Point p{scaled(low ? along : across), scaled(low ? across : along)};
      for (int turns = 0; turns < quarter; ++turns) p = {-p.y, p.x};
      ring.push_back(p);
    }
  }
  // For radii of a few ticks rounding leaves corners that are none.
  std::vector<Point> convex;
  std::ranges::rotate(ring, std::ranges::min_element(ring));
  ring.push_back(ring.front());
  for (const Point& p : ring) {
    while (convex.size() > 1 && cross(convex[convex.size() - 2], convex.back(), p) <= 0) convex.pop_back();
    if (convex.empty() || convex.back() != p) convex.push_back(p);
  }
  convex.pop_back();
  return Polygon::promised(std::move(convex));
}

Region grown(const Region& region, Length radius) {
  return is_nothing(radius) ? region : swept(region, disc_around(radius));
}

// The outlines are convolved as borders of the outside, which winds once round every place beforehand: a
// place stays where the disc about it meets no part of the outside. A face that cannot hold the disc is left
// out.
Region shrunk(const Region& region, Length radius) {
  if (is_nothing(radius)) return region;
  const Polygon disc = disc_around(radius);
  const Ring tool = ring_of(disc);
  std::vector<Edge> result;
  const Region joined = region.faces().size() > 1 ? united(std::span(&region, 1)) : region;
  for (const Face& face : joined.faces()) {
    if (!fits(disc.bounds(), face.outer.bounds())) continue;
    add_convolution(result, reversed(ring_of(face.outer)), tool);
    for (const Polygon& hole : face.holes) add_convolution(result, ring_of(hole), tool);
  }
  return overlaid(strands(result), [](Winding w) { return w.first < 0; });
}

Region closed(const Region& region, Length radius) {
  return united(shrunk(grown(region, radius), radius), region);
}

}  // namespace berthwright
