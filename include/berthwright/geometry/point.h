#pragma once

#include <algorithm>
#include <compare>

#include <berthwright/exact/length.h>

namespace berthwright {

/// A place in plan: x from the front wall to the rear, y from the left wall to the right.
struct Point {
  Length x;
  Length y;
  friend constexpr auto operator<=>(const Point&, const Point&) = default;
};

/// A place in space: a plan point and its height above the finished floor.
struct Point3 {
  Point plan;
  Length z;
  friend constexpr auto operator<=>(const Point3&, const Point3&) = default;
};

/// A displacement in plan.
struct Vector {
  Length x;
  Length y;
  friend constexpr auto operator<=>(const Vector&, const Vector&) = default;
};

constexpr Point operator+(Point p, Vector v) { return {p.x + v.x, p.y + v.y}; }
constexpr Point operator-(Point p, Vector v) { return {p.x - v.x, p.y - v.y}; }
constexpr Vector operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }

/// Twice the signed area of the triangle; positive when a, b, c run counter-clockwise. Exact within
/// `farthest`.
constexpr std::int64_t cross(Point a, Point b, Point c) {
  return (b.x - a.x).ticks() * (c.y - a.y).ticks() - (b.y - a.y).ticks() * (c.x - a.x).ticks();
}

/// An axis-parallel closed box in plan; also used for x-z and y-z boxes. `low` <= `high` in both axes.
struct Rect {
  Point low;
  Point high;
  constexpr Length width() const { return high.x - low.x; }
  constexpr Length height() const { return high.y - low.y; }
  friend constexpr bool operator==(const Rect&, const Rect&) = default;
};

/// Share more than a border.
constexpr bool overlaps(const Rect& a, const Rect& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}
/// Share at least a border point.
constexpr bool meets(const Rect& a, const Rect& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}
constexpr Rect hull(const Rect& a, const Rect& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}
constexpr Rect grown(const Rect& r, Length by) { return {r.low - Vector{by, by}, r.high + Vector{by, by}}; }

}  // namespace berthwright
