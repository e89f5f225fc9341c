#pragma once

#include <vector>

#include <berthwright/geometry/solid.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// One movement within a step: the piece as an upright prism before and after it, and what it passes through.
struct Motion {
  enum class Kind {
    lift,   ///< straight up
    lower,  ///< straight down
    slide,  ///< level, in one straight line
    turn,   ///< a quarter turn about the vertical
    tip     ///< a quarter turn about one of its lower edges: stood on edge, or laid flat
  };
  Kind kind = Kind::lift;
  Solid before;
  Solid after;
  /// Covers every place that the piece passes through, `before` and `after` among them. In z exact.
  std::vector<Solid> sweep;
};

/// Straight up or down to another height of its underside: exact. std::invalid_argument: it is there already.
Motion raised(const Solid& piece, Length to_base);

/// Level and straight: in plan the Minkowski sum of outline and path, exact for a convex or rectilinear
/// outline, else too large by at most a tick at its inward corners. std::invalid_argument: not moved.
Motion slid(const Solid& piece, Vector by);

/// The box of the outline a quarter turn about the vertical through its middle (which may shift by half a
/// tick). The sweep is the square around the circle of its corners: nowhere beyond that circle by more than
/// 0.42 of its radius, at the corners of the square; along the axes by at most two ticks.
Motion quarter_turned(const Solid& piece);

/// The box of the solid a quarter turn about the lower edge that looks `over`: it comes to stand, or lie,
/// beyond that edge. The sweep is the box around it, exact along each axis but for two ticks in height.
Motion tipped(const Solid& piece, Wall over);

}  // namespace berthwright
