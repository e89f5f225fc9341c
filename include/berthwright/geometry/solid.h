#pragma once

#include <berthwright/exact/squared_length.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// An upright prism: a plan outline between two heights above the floor. `base` < `top`.
class Solid {
 public:
  /// std::invalid_argument when the outline is empty or base >= top.
  Solid(Region outline, Length base, Length top);
  const Region& outline() const& { return outline_; }
  Region outline() const&& { return outline_; }
  Length base() const { return base_; }
  Length top() const { return top_; }
  Length height() const { return top_ - base_; }
  friend bool operator==(const Solid&, const Solid&) = default;

 private:
  Region outline_;
  Length base_;
  Length top_;
};

/// Interiors meet: outlines and height ranges overlap by more than a border.
bool overlaps(const Solid& a, const Solid& b);

/// Least distance between two things and where it is attained. Of equal pairs the least by (from, to).
/// `squared` is exact; the points are rounded to the nearest tick.
struct Nearest {
  SquaredLength squared;
  Point3 from;
  Point3 to;
};
/// Distance in space; zero when they meet. Cannot fail. O(edges x edges).
Nearest nearest(const Solid& a, const Solid& b);
/// Distance in plan (z = 0 in both points). std::invalid_argument when either region is empty.
Nearest nearest(const Region& a, const Region& b);

}  // namespace berthwright
