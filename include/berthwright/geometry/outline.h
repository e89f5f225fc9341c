#pragma once

#include <array>
#include <variant>
#include <vector>

#include <berthwright/geometry/polygon.h>

namespace berthwright {

/// What a shop does to one corner of a rectangle.
struct SquareCorner {};
struct Notch {
  Length along;
  Length across;
};  ///< cut out along x and along y
struct Clip {
  Length along;
  Length across;
};  ///< straight cut from x to y
struct Round {
  Length radius;
};
using Corner = std::variant<SquareCorner, Notch, Clip, Round>;

/// A rectangle with worked corners: x is `length`, y is `width`. Corners in the order front-left (the
/// origin), rear-left, rear-right, front-right, that is counter-clockwise from (0, 0) in plan axes.
struct WorkedRectangle {
  Length length;
  Length width;
  std::array<Corner, 4> corners;
};

/// A circular arc of an outline, exact, for drawing: counter-clockwise from `from` to `to` when `left`.
struct Arc {
  Point from;
  Point to;
  Length radius;
  bool left = true;
};

/// A polygon that stands for a shape with arcs: its vertices lie on the arcs, error at most 0.05 mm (chords
/// of convex arcs lie inside). `arcs` empty for straight shapes.
class Outline {
 public:
  /// Problems: "outline.size" (not positive), "outline.corner" (a corner larger than the sides allow, the
  /// allowance in numbers).
  static Result<Outline> worked(const WorkedRectangle& rectangle);
  /// As Polygon::checked.
  static Result<Outline> free(std::vector<Point> corners);

  const Polygon& polygon() const& { return polygon_; }
  Polygon polygon() const&& { return polygon_; }
  const std::vector<Arc>& arcs() const& { return arcs_; }
  std::vector<Arc> arcs() const&& { return arcs_; }

  friend bool operator==(const Outline&, const Outline&);

 private:
  Outline(Polygon polygon, std::vector<Arc> arcs) : polygon_(std::move(polygon)), arcs_(std::move(arcs)) {}
  Polygon polygon_;
  std::vector<Arc> arcs_;
};

}  // namespace berthwright
