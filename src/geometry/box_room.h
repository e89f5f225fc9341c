#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Shifts that keep `box` inside of the closed region. Where it only just fits between two parts of the
/// border it is taken not to. Exact for rectilinear regions, else rounded as Booleans are.
Region shifts_inside(const Region& region, const Rect& box);

/// What upright squares of `side`, an even number of ticks, can cover inside the region: the region without
/// its cracks. Rectilinear ones keep their corners.
Region covered_by_squares(const Region& region, Length side);

}  // namespace berthwright
