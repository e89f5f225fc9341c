#pragma once

namespace berthwright {

/// The square root of `square` >= 0 by Newton's steps from above, the same on every machine.
inline double root(double square) {
  if (square <= 0) return 0;
  double above = square + 1;
  for (double last = 2 * above; above < last;) {
    last = above;
    above = (above + square / above) / 2;
  }
  return above;
}

/// Length of the vector (x, y), exact along an axis, where the root may miss the last digit.
inline double length_of(double x, double y) {
  if (x == 0) return y < 0 ? -y : y;
  if (y == 0) return x < 0 ? -x : x;
  return root(x * x + y * y);
}

}  // namespace berthwright
