#pragma once

#include <berthwright/geometry/region.h>

#include "geometry/ring.h"

namespace berthwright {

/// The middle of an area as an exact fraction, relative to a corner of its bounds: things up to 25 m stay
/// within 128 bits.
class Centroid {
 public:
  /// `outline` is not empty.
  explicit Centroid(const Region& outline) : origin_(outline.bounds().low) {
    for (const Edge& edge : edges(outline)) {
      const Vector a = edge.from - origin_;
      const Vector b = edge.to - origin_;
      const Int128 twice = cross(origin_, edge.from, edge.to);
      x_ += twice * (a.x + b.x).ticks();
      y_ += twice * (a.y + b.y).ticks();
      whole_ += 3 * twice;
    }
  }

  Point nearest() const {
    return origin_ + Vector{rounded_part(one_tick, x_, whole_), rounded_part(one_tick, y_, whole_)};
  }
  /// `whole` times the double area of the triangle from the edge to the centroid: positive on its left.
  Int128 cross_from(Point a, Point b) const {
    const Vector start = a - origin_;
    return (b.x - a.x).ticks() * (y_ - start.y.ticks() * whole_) -
           (b.y - a.y).ticks() * (x_ - start.x.ticks() * whole_);
  }
  Int128 whole() const { return whole_; }

 private:
  Point origin_;
  Int128 x_ = 0;
  Int128 y_ = 0;
  Int128 whole_ = 0;
};

}  // namespace berthwright
