#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// A way from corner to corner of what stands around, straight in between.
struct ShortestWay {
  Length length;            ///< each straight part rounded up to the tick, so never too short
  std::vector<Point> path;  ///< from the start to the goal
};

/// The shortest ways to one goal inside a closed region, whose border may be followed. Where two parts of the
/// region only touch in a point, none leads through it. Region as Booleans make them: parts that share an
/// edge are one. Which of equally long ways is taken is the same on every machine, but not in a mirror.
class ShortestWays {
 public:
  /// O(c x c x n) for n edges, c of whose corners jut into the region.
  ShortestWays(Region free, Point goal);

  /// None: the start or the goal lies outside of the region, or they lie in different parts. O(c x n).
  std::optional<ShortestWay> from(Point start) const;

  /// Places from which a way of at most `length` leads to the goal; with `heading`, a vector along one axis,
  /// only by ways that do not set out against it. Never too large: circles are polygons of 64 sides that stay
  /// inside of them, and `length` is taken a micrometre short for the rounding of corners to the tick.
  Region within(Length length, std::optional<Vector> heading = std::nullopt) const;

  const Region& free() const { return free_; }
  Point goal() const { return goal_; }

 private:
  /// A corner that juts into the region: the free angle runs counter-clockwise from the ray to `out` to the
  /// ray to `in`.
  struct Bend {
    Point at;
    Point out;
    Point in;
    std::optional<Length> to_goal;
    std::optional<std::size_t> next;  ///< none: straight to the goal
  };

  void measure();
  Point after(const Bend& bend) const { return bend.next ? bends_[*bend.next].at : goal_; }
  Region lit_by(const Bend& bend, Length length, const std::optional<Vector>& heading) const;

  Region free_;
  Point goal_;
  std::vector<Edge> border_;
  std::vector<Bend> bends_;
};

}  // namespace berthwright
