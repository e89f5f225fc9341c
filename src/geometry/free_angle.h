#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// What is free around a place of a region's border: counter-clockwise from the ray to `out` to the ray to
/// `in`, both of them free too.
struct FreeAngle {
  Point at;
  Point out;
  Point in;

  bool juts() const { return cross(at, out, in) < 0; }  ///< more than half a turn is free
  bool holds(Point toward) const;
};

/// Of every corner of the border; a point where parts touch has several. In the order of the corners.
std::vector<FreeAngle> free_angles(std::span<const Edge> border);

/// Of a place on the border, corner or not; none of a place that is not on it.
std::vector<FreeAngle> free_angles_at(Point place, std::span<const Edge> border);

/// Whether the open segment neither crosses an edge nor passes a corner. With free angles at both ends that
/// hold it, it stays in the region.
bool is_clear(Point from, Point to, std::span<const Edge> border);

}  // namespace berthwright
