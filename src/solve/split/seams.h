#pragma once

#include <cstddef>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

struct Seams {
  Length all;
  Length under_hips;       ///< across the bed, 44 to 60 % of its length from the foot
  Length under_shoulders;  ///< 76 to 88 %
  std::size_t lines = 0;   ///< straight lines on which they all lie
};

/// Where cushions that cover a bed without overlap meet. People lie along the longer side of `bed`, heads at
/// the end that puts fewer seams under hips, then under shoulders; of a square bed, along the trailer.
Seams seams_of(const std::vector<Rect>& cushions, const Rect& bed);

}  // namespace berthwright
