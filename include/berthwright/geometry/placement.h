#pragma once

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/outline.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// A rigid move in plan: mirror in the x axis when `flipped`, then turn about the origin, then shift.
struct Placement {
  bool flipped = false;
  Turn turn;
  Vector shift;

  Point operator()(Point p) const;  ///< rounded once to the lattice unless `turn` is a quarter
  Polygon operator()(const Polygon& polygon) const;
  Arc operator()(const Arc& arc) const;
  Region operator()(const Region& region) const;
};

}  // namespace berthwright
