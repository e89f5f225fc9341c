#include "oracle/rectangle_scan.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "oracle/clearance.h"

namespace berthwright::oracle {
namespace {

/// free[x][y] summed up, so that a block of cells is free when its sum is its size.
class RoomRaster {
 public:
  explicit RoomRaster(int cells) : cells_(cells), sums_(at(cells, cells) + 1, 0) {}

  template <typename IsFree>
  void fill(const IsFree& is_free) {
    for (int x = 0; x < cells_; ++x)
      for (int y = 0; y < cells_; ++y)
        sums_[at(x + 1, y + 1)] =
            sums_[at(x, y + 1)] + sums_[at(x + 1, y)] - sums_[at(x, y)] + (is_free(x, y) ? 1 : 0);
  }
  bool is_free(int x1, int x2, int y1, int y2) const {
    return sums_[at(x2, y2)] - sums_[at(x1, y2)] - sums_[at(x2, y1)] + sums_[at(x1, y1)] ==
           (x2 - x1) * (y2 - y1);
  }
  /// Calls take(width, height) for free blocks that cannot grow upward.
  template <typename Take>
  void each_block(const Take& take) const {
    for (int x1 = 0; x1 < cells_; ++x1)
      for (int x2 = x1 + 1; x2 <= cells_; ++x2)
        for (int y = 0; y < cells_;) {
          int top = y;
          while (top < cells_ && is_free(x1, x2, top, top + 1)) ++top;
          if (top > y) take(x2 - x1, top - y);
          y = top + 1;
        }
  }

 private:
  std::size_t at(int x, int y) const {
    return static_cast<std::size_t>(x) * static_cast<std::size_t>(cells_ + 1) + static_cast<std::size_t>(y);
  }
  int cells_;
  std::vector<int> sums_;
};

}  // namespace

LatticeBest lattice_rectangles(const Region& region, int cells, std::int64_t step, Length width) {
  const auto side = static_cast<double>(step);
  RoomRaster raster(cells);
  raster.fill([&](int x, int y) { return clearance(region, (x + 0.5) * side, (y + 0.5) * side) > 0; });
  LatticeBest best;
  raster.each_block([&](int across, int up) {
    best.area = std::max(best.area, Int128{across} * up * step * step);
    if (across * step >= width.ticks()) best.length = std::max(best.length, up * step);
    if (up * step >= width.ticks()) best.length = std::max(best.length, across * step);
  });
  return best;
}

ScanBest scanned_rectangles(const Region& region, double radians, int cells, Length width) {
  const Rect bounds = region.bounds();
  const double wide = static_cast<double>(bounds.width().ticks());
  const double high = static_cast<double>(bounds.height().ticks());
  const double middle_x = static_cast<double>(bounds.low.x.ticks()) + wide / 2;
  const double middle_y = static_cast<double>(bounds.low.y.ticks()) + high / 2;
  const double side = std::sqrt(wide * wide + high * high) / cells;
  const double cosine = std::cos(radians), sine = std::sin(radians);
  RoomRaster raster(cells);
  raster.fill([&](int i, int k) {
    const double x = (i + 0.5 - cells / 2.0) * side, y = (k + 0.5 - cells / 2.0) * side;
    return clearance(region, middle_x + cosine * x - sine * y, middle_y + sine * x + cosine * y) >
           side * 0.7072;
  });
  ScanBest best;
  const auto least = static_cast<double>(width.ticks());
  raster.each_block([&](int across, int up) {
    best.area = std::max(best.area, across * side * up * side);
    if (across * side >= least) best.length = std::max(best.length, up * side);
    if (up * side >= least) best.length = std::max(best.length, across * side);
  });
  return best;
}

}  // namespace berthwright::oracle
