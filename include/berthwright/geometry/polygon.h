#pragma once

#include <span>
#include <vector>

#include <berthwright/exact/result.h>
#include <berthwright/geometry/point.h>

namespace berthwright {

enum class Side { inside, boundary, outside };

/// A simple polygon of at least three corners, counter-clockwise, without repeated or straight corners, its
/// first vertex the least one (by x, then y): equal shapes are equal values.
class Polygon {
 public:
  /// Accepts either winding; drops repeated and straight corners. Refuses fewer than three real corners
  /// ("polygon.flat") and self-crossing or self-touching outlines ("polygon.crossing", the message naming the
  /// two edges and the point where they meet). O(n log n) typical.
  static Result<Polygon> checked(std::vector<Point> corners);
  /// The caller promises a simple outline of positive area, of either winding; repeated and straight corners
  /// are dropped. For outlines that come from valid ones: O(n), nothing is checked.
  static Polygon promised(std::vector<Point> corners);
  /// Sides must be positive, else std::invalid_argument.
  static Polygon rectangle(const Rect& rect);

  std::span<const Point> vertices() const& { return vertices_; }
  std::span<const Point> vertices() const&& = delete;  ///< they would outlive a temporary
  std::size_t size() const { return vertices_.size(); }
  Area area() const;
  Rect bounds() const { return bounds_; }
  Side side_of(Point point) const;
  bool is_rectilinear() const;

  friend bool operator==(const Polygon& a, const Polygon& b) { return a.vertices_ == b.vertices_; }

 private:
  explicit Polygon(std::vector<Point> vertices);
  std::vector<Point> vertices_;
  Rect bounds_;
};

}  // namespace berthwright
