#pragma once

#include <span>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// Twice the signed area of a closed ring, positive when it runs counter-clockwise.
inline Int128 doubled_area(std::span<const Point> ring) {
  Int128 sum = 0;
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) sum += cross(ring[0], ring[i], ring[i + 1]);
  return sum;
}

/// Whether `p`, known to lie on the line through a and b, lies between them or on one of them.
constexpr bool between(Point a, Point b, Point p) {
  return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}

/// `span` times `along` / `whole`, rounded to the nearest tick, half toward plus infinity; `whole` not zero.
constexpr Length rounded_part(Length span, Int128 along, Int128 whole) {
  if (whole < 0) along = -along, whole = -whole;
  const Int128 doubled = Int128{2} * span.ticks() * along + whole;
  Int128 quotient = doubled / (2 * whole);
  if (quotient * 2 * whole > doubled) --quotient;
  return Length::from_ticks(static_cast<std::int64_t>(quotient));
}

/// Where the lines a-b and c-d cross, rounded once to the nearest tick; they are not parallel.
constexpr Point crossing_point(Point a, Point b, Point c, Point d) {
  const Int128 along = cross(c, d, a);
  const Int128 whole = along - cross(c, d, b);
  return a + Vector{rounded_part(b.x - a.x, along, whole), rounded_part(b.y - a.y, along, whole)};
}

}  // namespace berthwright
