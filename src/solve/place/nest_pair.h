#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "solve/place/nest_shape.h"

namespace berthwright {

/// A stretch of the border of the places that a second shape may not take beside a first: of the edge from
/// `at` along `way`, with those places on its left, the part from `low` to `high` (0 to 1).
struct NestBorder {
  NestPoint at;
  NestPoint way;
  double low = 0;
  double high = 1;
  double per_length = 0;  ///< 1 / length of `way`

  /// A single place, where the second shape fits without play.
  bool is_spot() const { return (high - low) < 0.5 * per_length; }
};

/// Where the second of two shapes must not lie, its low corner relative to that of the first: the union of
/// the open Minkowski sums of their convex pieces. Touching is allowed, and so is what fits without play.
class NestPair {
 public:
  NestPair(const NestShape& first, const NestShape& second);

  /// Whether their interiors meet. Exact.
  bool clash(NestPoint place) const;
  struct Depth {
    double depth = 0;                    ///< how far to the nearest place allowed; 0: allowed
    const NestBorder* border = nullptr;  ///< that place is on it
  };
  /// As `clash`, but for places within a tick of corners of the border.
  Depth depth(NestPoint place) const;
  std::span<const NestBorder> border() const { return border_; }

 private:
  struct Sum {
    NestRing ring;
    NestPoint low;
    NestPoint high;
  };
  void find_border();
  void drop_needless_spots();
  void rule_lines();
  void lay_grid();

  NestPoint low_;  // of the box of all sums
  NestPoint high_;
  std::vector<Sum> sums_;
  std::vector<NestBorder> border_;
  // Squares of 2^shift_ ticks; each names the stretches that can be nearest within it. None: it is all
  // allowed.
  int shift_ = 0;
  std::int64_t columns_ = 0;
  std::int64_t rows_ = 0;
  std::vector<std::uint32_t> first_;
  std::vector<std::uint16_t> near_;
  // A stretch as its line: of unit direction (ux, uy), from `low` to `high` along it.
  struct Line {
    double x, y, ux, uy, low, high;
  };
  std::vector<Line> lines_;
};

}  // namespace berthwright
