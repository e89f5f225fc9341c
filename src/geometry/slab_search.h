#pragma once

#include <optional>
#include <vector>

#include "geometry/slabs.h"

namespace berthwright {

/// A rectangle in a heading's own axes: `x` along the heading.
struct Span2 {
  double x1 = 0;
  double x2 = 0;
  double y1 = 0;
  double y2 = 0;
};

/// What is sought: the greatest area, or, with a width, the greatest length x2 - x1 over y2 - y1 >= width.
struct Goal {
  std::optional<double> width;
};

struct Sought {
  Goal goal;
  double floor = 0;   ///< nothing up to this value is of interest
  bool fine = false;  ///< slanted rooms to the last tick instead of a few millionths of their length
};

/// The best rectangles of a heading, all within a relative 1e-12 of each other; empty when none beats the
/// floor. Every pair of rooms is either bounded below the best or solved, so in a rectilinear region along
/// an axis nothing is missed. O(cuts^2 x rooms a slab) at worst.
struct Best {
  double value = 0;
  std::vector<Span2> spans;
};
Best best_along(const Slabs& slabs, const Sought& sought);

}  // namespace berthwright
