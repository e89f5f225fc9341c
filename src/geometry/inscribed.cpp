#include "geometry/inscribed.h"

#include <algorithm>

#include <berthwright/exact/squared_length.h>

namespace berthwright {
namespace {

// Coordinates lie within 25 m (1e9 ticks): cross products fit 63 bits, their sums and products 127.
bool is_convex(const Corners& corners) {
  for (std::size_t i = 0; i < 4; ++i)
    if (cross(corners[i], corners[(i + 1) % 4], corners[(i + 2) % 4]) <= 0) return false;
  return true;
}

/// A parameter along an edge.
struct Fraction {
  Int128 numerator = 0;
  Int128 denominator = 1;
  friend bool operator<(const Fraction& a, const Fraction& b) {
    return a.numerator * b.denominator < b.numerator * a.denominator;
  }
};

// The part of the edge strictly left of all four sides is an open interval (or one with an end of the edge).
bool enters(const Edge& edge, const Corners& corners) {
  Fraction from{0, 1};
  Fraction to{1, 1};
  for (std::size_t i = 0; i < 4; ++i) {
    const Int128 at_0 = cross(corners[i], corners[(i + 1) % 4], edge.from);
    const Int128 at_1 = cross(corners[i], corners[(i + 1) % 4], edge.to);
    if (at_0 <= 0 && at_1 <= 0) return false;
    if (at_0 <= 0)
      from = std::max(from, Fraction{-at_0, at_1 - at_0});
    else if (at_1 <= 0)
      to = std::min(to, Fraction{at_0, at_0 - at_1});
  }
  return from < to;
}

// Winding number of the mean of the corners, all coordinates taken four times.
bool middle_is_inside(const Corners& corners, std::span<const Edge> border) {
  Int128 x = 0;
  Int128 y = 0;
  for (const Point& corner : corners) x += corner.x.ticks(), y += corner.y.ticks();
  int winding = 0;
  for (const Edge& edge : border) {
    const Int128 from_x = 4 * Int128{edge.from.x.ticks()} - x;
    const Int128 from_y = 4 * Int128{edge.from.y.ticks()} - y;
    const Int128 to_x = 4 * Int128{edge.to.x.ticks()} - x;
    const Int128 to_y = 4 * Int128{edge.to.y.ticks()} - y;
    if ((from_y <= 0) == (to_y <= 0)) continue;
    const Int128 left_of = from_x * to_y - from_y * to_x;
    if (from_y <= 0 && left_of > 0) ++winding;
    if (to_y <= 0 && left_of < 0) --winding;
  }
  return winding > 0;
}

// floor(|value| / |direction|) with the sign of value.
Length projected(Int128 value, std::int64_t squared) {
  const Length length = SquaredLength(value * value, squared).floor();
  return value < 0 ? -length : length;
}

Int128 floor_divided(Int128 a, Int128 positive) {
  const Int128 quotient = a / positive;
  return quotient * positive > a ? quotient - 1 : quotient;
}

/// The x of a slanted edge at a height between its ends, rounded down and up.
struct Bounds {
  std::int64_t low;
  std::int64_t high;
};
Bounds x_at(const Edge& edge, Length y) {
  const std::int64_t rise = (edge.to.y - edge.from.y).ticks();
  const Int128 run = Int128{(edge.to.x - edge.from.x).ticks()} * (y - edge.from.y).ticks();
  const Int128 signed_run = rise < 0 ? -run : run;
  const Int128 positive = rise < 0 ? -rise : rise;
  const std::int64_t x = edge.from.x.ticks();
  return {x + static_cast<std::int64_t>(floor_divided(signed_run, positive)),
          x - static_cast<std::int64_t>(floor_divided(-signed_run, positive))};
}

// What of the edge lies in the closed strip, which it enters.
Bounds within(const Edge& edge, const Rect& rect) {
  const auto [lower, upper] = std::minmax(edge.from.y, edge.to.y);
  if (lower == upper) {
    const auto [left, right] = std::minmax(edge.from.x, edge.to.x);
    return {left.ticks(), right.ticks()};
  }
  const Bounds a = x_at(edge, std::max(lower, rect.low.y));
  const Bounds b = x_at(edge, std::min(upper, rect.high.y));
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

bool enters_strip(const Edge& edge, Length low, Length high) {
  const auto [lower, upper] = std::minmax(edge.from.y, edge.to.y);
  return lower == upper ? low < lower && lower < high : lower < high && low < upper;
}

/// What of one edge lies in a strip, and what crossing its middle from the left does to the winding.
struct Blocked {
  Bounds extent;
  int winding;
};

int winding_across(const Edge& edge, Length middle) {
  if ((edge.from.y <= middle) == (edge.to.y <= middle)) return 0;
  return edge.to.y < edge.from.y ? 1 : -1;
}

}  // namespace

bool is_inscribed(const Corners& corners, std::span<const Edge> border) {
  if (!is_convex(corners)) return false;
  for (const Edge& edge : border)
    if (enters(edge, corners)) return false;
  return middle_is_inside(corners, border);
}

Held held_by(const Corners& corners) {
  const Vector along = corners[1] - corners[0];
  const auto dot = [&](std::size_t from, std::size_t to) {
    const Vector v = corners[to] - corners[from];
    return Int128{v.x.ticks()} * along.x.ticks() + Int128{v.y.ticks()} * along.y.ticks();
  };
  const auto left = [&](std::size_t from, std::size_t to) {
    const Vector v = corners[to] - corners[from];
    return Int128{along.x.ticks()} * v.y.ticks() - Int128{along.y.ticks()} * v.x.ticks();
  };
  const auto squared = static_cast<std::int64_t>(dot(0, 1));
  return {projected(std::min({dot(0, 1), dot(0, 2), dot(3, 1), dot(3, 2)}), squared),
          projected(std::min({left(0, 2), left(0, 3), left(1, 2), left(1, 3)}), squared)};
}

std::optional<FreeStretch> free_along_x(const Rect& rect, Length at, std::span<const Edge> border) {
  std::int64_t from = (-2 * farthest).ticks();
  std::int64_t to = (2 * farthest).ticks();
  for (const Edge& edge : border) {
    if (!enters_strip(edge, rect.low.y, rect.high.y)) continue;
    const Bounds blocked = within(edge, rect);
    if (blocked.high <= at.ticks())
      from = std::max(from, blocked.high);
    else if (blocked.low >= at.ticks())
      to = std::min(to, blocked.low);
    else
      return std::nullopt;
  }
  return FreeStretch{Length::from_ticks(from), Length::from_ticks(to)};
}

std::vector<FreeStretch> free_stretches(Length low, Length high, std::span<const Edge> border) {
  const Rect strip{{{}, low}, {{}, high}};
  const Length middle = half(low + high);
  std::vector<Blocked> blocked;
  for (const Edge& edge : border)
    if (enters_strip(edge, low, high)) blocked.push_back({within(edge, strip), winding_across(edge, middle)});
  std::sort(blocked.begin(), blocked.end(),
            [](const Blocked& a, const Blocked& b) { return a.extent.low < b.extent.low; });
  std::vector<FreeStretch> stretches;
  int winding = 0;
  std::int64_t reached = 0;
  for (std::size_t i = 0; i < blocked.size(); ++i) {
    if (i > 0 && winding > 0 && blocked[i].extent.low > reached)
      stretches.push_back({Length::from_ticks(reached), Length::from_ticks(blocked[i].extent.low)});
    reached = i == 0 ? blocked[i].extent.high : std::max(reached, blocked[i].extent.high);
    winding += blocked[i].winding;
  }
  return stretches;
}

}  // namespace berthwright
