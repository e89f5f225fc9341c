#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright {

/// How thick a region is: the diameter of its largest disc, and that disc's centre.
struct Thickness {
  Length width;
  Point where;
};

/// The width is exact where the disc lies between parallel edges, else rounded up by at most five ticks.
/// std::invalid_argument when the region is empty.
Thickness thickness_of(const Region& region);

}  // namespace berthwright
