#pragma once

#include <optional>

#include <berthwright/geometry/region.h>

namespace berthwright {

struct Disc {
  Point centre;
  Length radius;
};

/// A largest disc in the region (its interior keeps clear of the border and the holes); the radius is rounded
/// down to a tick and is at most two ticks short of the true one. Empty region: none. Of equal discs the
/// one with the least centre. O(n log n + candidates x n).
std::optional<Disc> largest_disc(const Region& region);

}  // namespace berthwright
