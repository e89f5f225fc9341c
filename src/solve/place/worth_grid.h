#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace berthwright {

/// A rectangle in one attitude, in whole units of any size.
struct WorthyBox {
  std::int64_t length = 0;
  std::int64_t width = 0;
  std::int64_t worth = 0;
  std::size_t part = 0;
};

/// Sums of sides up to the extent, rising from nothing, the extent itself last.
std::vector<std::int64_t> side_sums(const std::vector<std::int64_t>& sides, std::int64_t extent);

/// What through-cuts get out of every rectangle up to a sheet when numbers are unlimited (`inside`), and out
/// of what lies beyond such a rectangle in the corner of the sheet (`beside`). Exact on sums of sides.
class WorthGrid {
 public:
  WorthGrid(std::int64_t length, std::int64_t width, std::vector<WorthyBox> boxes);

  std::int64_t most() const { return inside_.back(); }
  /// Bound for a block of these sides in a corner. They must be sums of sides.
  std::int64_t beside(std::int64_t length, std::int64_t width) const;
  void with_beside();  ///< to be called before `beside`

  struct Spot {
    std::size_t box = 0;
    std::int64_t x = 0;
    std::int64_t y = 0;
  };
  /// Where the boxes of the best lie.
  std::vector<Spot> best() const;
  const std::vector<WorthyBox>& boxes() const { return boxes_; }

 private:
  std::int64_t& at(std::vector<std::int64_t>& table, std::size_t i, std::size_t j) const {
    return table[i * ys_.size() + j];
  }
  std::int64_t at(const std::vector<std::int64_t>& table, std::size_t i, std::size_t j) const {
    return table[i * ys_.size() + j];
  }
  void fill_single();
  void fill_inside();
  void trace(std::size_t i, std::size_t j, Spot from, std::vector<Spot>& spots) const;

  std::vector<WorthyBox> boxes_;
  std::vector<std::int64_t> xs_;
  std::vector<std::int64_t> ys_;
  std::vector<std::int64_t> single_;
  std::vector<std::int64_t> inside_;
  std::vector<std::int64_t> beside_;
};

}  // namespace berthwright
