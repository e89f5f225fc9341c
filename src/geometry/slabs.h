#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The direction in which a rectangle is sought: angle 2 atan(half_tangent), a quarter turn more when
/// `quarter`. Only + - * / are needed to turn by it; (0, false) and (0, true) turn exactly.
struct Heading {
  double half_tangent = 0;
  bool quarter = false;
  bool along_an_axis() const { return half_tangent == 0; }
};

/// A place in ticks, not on the lattice.
struct Spot {
  double x = 0;
  double y = 0;
};

/// A region's edges relative to an origin near them, so that doubles hold turned coordinates to far below a
/// tick.
struct Border {
  std::vector<Edge> edges;
  Point origin;
};
Border border_of(const Region& region);

/// Plan to the heading's own axes (x along it) and back.
Spot turned(const Border& border, Point point, const Heading& heading);
Spot unturned(const Border& border, Spot spot, const Heading& heading);

/// One free trapezoid between two neighbouring cuts: heights of its floor and ceiling at both.
struct Room {
  double low_left;
  double low_right;
  double high_left;
  double high_right;
  std::size_t next_begin = 0;  ///< rooms of the next slab that share more than a point with this one
  std::size_t next_end = 0;
};

/// The region cut across a heading at every vertex: slab k lies between cuts k and k + 1 and holds the rooms
/// [starts[k], starts[k + 1]) from low to high.
struct Slabs {
  std::vector<double> cuts;
  std::vector<std::size_t> starts;
  std::vector<Room> rooms;
};
/// O(n log n + crossings of edges and cuts).
Slabs slabs_across(const Border& border, const Heading& heading);

}  // namespace berthwright
