#pragma once

#include <optional>

#include "geometry/slab_search.h"

namespace berthwright {

/// A room with its cuts: all heights are linear from `left` (at 0) to `right` (at 1).
struct Bay {
  double left;
  double right;
  double low_left;
  double low_right;
  double high_left;
  double high_right;

  double x(double at) const { return left + (right - left) * at; }
  double low(double at) const { return low_left + (low_right - low_left) * at; }
  double high(double at) const { return high_left + (high_right - high_left) * at; }
};

/// A rectangle's two ends lie in two bays, and between the bays it must keep to low .. high.
struct Pair {
  Bay first;
  Bay last;
  bool same = false;  ///< both ends in one room
  double low = 0;
  double high = 0;
};

/// The largest rectangle of a pair. Its area is the product of two concave functions of the two ends, so it
/// has one peak: sought by sections for the first end, in closed form for the last.
Span2 largest_of(const Pair& pair, int sections);

/// The longest rectangle at least `width` high: a linear programme in the two ends. None when it is empty.
std::optional<Span2> longest_of(const Pair& pair, double width);

}  // namespace berthwright
