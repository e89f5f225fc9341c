#include "geometry/segment.h"

namespace berthwright {
namespace {

// Coordinates lie within 25 m, so differences fit 32 bits and a sum of two products fits 63.
std::int64_t dot(Vector a, Vector b) { return a.x.ticks() * b.x.ticks() + a.y.ticks() * b.y.ticks(); }

SquaredLength squared_distance(Point a, Point b) { return {dot(b - a, b - a), 1}; }

// numerator >= 0 is not required; denominator > 0.
std::int64_t rounded_quotient(Int128 numerator, Int128 denominator) {
  const Int128 doubled = 2 * numerator + denominator;
  Int128 quotient = doubled / (2 * denominator);
  if (quotient * 2 * denominator > doubled) --quotient;
  return static_cast<std::int64_t>(quotient);
}

}  // namespace

SquaredLength squared_distance(Point point, const Edge& edge) {
  const Vector along = edge.to - edge.from;
  const std::int64_t reach = dot(point - edge.from, along);
  if (reach <= 0) return squared_distance(point, edge.from);
  const std::int64_t squared = dot(along, along);
  if (reach >= squared) return squared_distance(point, edge.to);
  const Int128 twice_area = cross(edge.from, edge.to, point);
  return {twice_area * twice_area, squared};
}

Point nearest_point(Point point, const Edge& edge) {
  const Vector along = edge.to - edge.from;
  const std::int64_t reach = dot(point - edge.from, along);
  if (reach <= 0) return edge.from;
  const std::int64_t squared = dot(along, along);
  if (reach >= squared) return edge.to;
  return edge.from + Vector{Length::from_ticks(rounded_quotient(Int128{along.x.ticks()} * reach, squared)),
                            Length::from_ticks(rounded_quotient(Int128{along.y.ticks()} * reach, squared))};
}

}  // namespace berthwright
