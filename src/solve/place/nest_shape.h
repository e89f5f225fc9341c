#pragma once

#include <cstdint>
#include <vector>

namespace berthwright {

/// A place or a displacement in whole ticks. The search for a nesting makes millions of them.
struct NestPoint {
  std::int64_t x = 0;
  std::int64_t y = 0;
  friend constexpr bool operator==(NestPoint, NestPoint) = default;
};
constexpr NestPoint operator+(NestPoint a, NestPoint b) { return {a.x + b.x, a.y + b.y}; }
constexpr NestPoint operator-(NestPoint a, NestPoint b) { return {a.x - b.x, a.y - b.y}; }
constexpr std::int64_t cross(NestPoint u, NestPoint v) { return u.x * v.y - u.y * v.x; }

/// Corners of a closed outline; counter-clockwise round what is solid.
using NestRing = std::vector<NestPoint>;

/// A part as it lies in one of its turns, the low corner of its box at the origin.
struct NestShape {
  std::vector<NestRing> convex;  ///< convex pieces with disjoint interiors; their union is the part
  std::int64_t width = 0;        ///< of the box, along x
  std::int64_t height = 0;
  double area = 0;
};

/// Of the first ring, counter-clockwise, less the others, clockwise holes within it. Exact. std::logic_error
/// if the rings cross.
NestShape nest_shape(std::vector<NestRing> rings);

}  // namespace berthwright
