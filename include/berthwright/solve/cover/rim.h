#pragma once

#include <optional>
#include <vector>

#include <berthwright/geometry/outline.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// One stretch of a cushion's edge from corner to corner, walked counter-clockwise as it lies unturned.
struct RimEdge {
  std::vector<Point> path;         ///< from its first corner to its last; two points where it is straight
  std::optional<Length> radius{};  ///< of a rounded corner, a quarter circle
  Length start{};                  ///< along the rim
  Length length{};                 ///< finished; rounded up to the tick
  std::optional<Wall> looks{};     ///< straight and along an axis: where it looks unturned
  bool on_box = false;             ///< such an edge that lies on a side of the box around the outline

  bool is_straight() const { return path.size() == 2; }
  Length end() const { return start + length; }
};

/// The whole edge: its stretches in order, from `start` 0, and their sum.
struct Rim {
  std::vector<RimEdge> edges;
  Length perimeter;
};

/// A corner is where the edge turns by 30 degrees or more, or at all beside a straight piece of 4 in or more
/// (own choice: anything less is sewn as one curve); a rounded corner is a stretch of its own, as long as its
/// arc. An outline that turns nowhere is one stretch that ends where it begins.
Rim rim_of(const Outline& outline);

/// A quarter of the circle's circumference, rounded up to the tick.
Length quarter_arc(Length radius);

}  // namespace berthwright
