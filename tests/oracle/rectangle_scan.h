#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright::oracle {

/// Every axis-parallel rectangle of whole cells of a region whose corners are multiples of `step` within
/// 0 .. cells x step: the largest area, and the longest side beside one of at least `width`.
struct LatticeBest {
  Int128 area = 0;
  std::int64_t length = 0;
};
LatticeBest lattice_rectangles(const Region& region, int cells, std::int64_t step, Length width);

/// The same on a raster of cells x cells turned by `radians`: a cell is used only where it surely lies
/// inside, so that both numbers (in square ticks and ticks) are reached by a real rectangle.
struct ScanBest {
  double area = 0;
  double length = 0;
};
ScanBest scanned_rectangles(const Region& region, double radians, int cells, Length width);

}  // namespace berthwright::oracle
