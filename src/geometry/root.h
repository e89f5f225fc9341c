#pragma once

namespace berthwright {

/// The square root of `square` >= 0 by Newton's steps from above, the same on every machine.
inline double root(double square) {
  if (square <= 0) return 0;
  double above = square + 1;
  for (double last = above + 1; above < last;) {
    last = above;
    above = (above + square / above) / 2;
  }
  return above;
}

}  // namespace berthwright
