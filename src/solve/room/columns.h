#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// What an upright line meets of a region between two neighbouring cuts: trapezoids with their ends at both
/// cuts.
struct Trapezoid {
  Length low_from;
  Length low_to;
  Length high_from;
  Length high_to;
};
struct Column {
  Length from;
  Length to;
  std::vector<Trapezoid> stretches;  ///< from low to high
};

/// The x of every corner of the regions and `more`, ascending, each once.
std::vector<Length> cuts_through(const std::vector<const Region*>& regions, std::vector<Length> more = {});

/// The region between neighbouring cuts, which must hold every x at which it has a corner. Where a slanted
/// edge meets a cut off the lattice the place is rounded to the nearest tick. O(cuts x edges).
std::vector<Column> columns_of(const Region& region, const std::vector<Length>& cuts);

}  // namespace berthwright
