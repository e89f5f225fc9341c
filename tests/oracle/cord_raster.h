#pragma once

#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright::oracle {

/// How far it is over a floor of squares of one inch, of which those under `boxes` are taken, from one place
/// to another (both corners of squares): from middle to middle of squares up to five rows off, straight lines
/// being tried point by point. In inches; negative: there is no way, or all squares about an end are taken.
/// At most 1.1 % and the ends too long, and too short nowhere but at the ends. Plain doubles.
double raster_way(const std::vector<Rect>& boxes, const Rect& room, Point from, Point to);

/// How far the ends of a way may lie from the middles of their squares, both together, in inches.
inline constexpr double raster_ends = 1.42;

}  // namespace berthwright::oracle
