#pragma once

#include <optional>
#include <vector>

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/solid.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// How a box is turned about level axes, and shifted meanwhile, in the upright plane of its section: along
/// the trailer (x, z) or across it (y, z).
struct Swing {
  /// The box turned about its pivot, which is then at this place: x the way along the section, y the height.
  /// A positive turn takes what lies to the rear, or to the right, upward.
  struct Key {
    Turn turn;
    Point pivot;
  };
  bool along = true;
  Solid upright;          ///< the box as it is unturned
  Point pivot;            ///< of the unturned box: x the way along the section, y the height
  std::vector<Key> keys;  ///< from one to the next, turn and shift go on evenly; at most 2 degrees each
  int degrees = 0;        ///< the most by which it is turned, 0 to 180
};

/// One movement within a step: the piece as an upright prism before and after it, and what it passes through.
struct Motion {
  enum class Kind {
    lift,   ///< straight up
    lower,  ///< straight down
    slide,  ///< level, in one straight line
    turn,   ///< a quarter turn about the vertical
    tip,    ///< a quarter turn about one of its lower edges: stood on edge, or laid flat
    tilt,   ///< one end raised, then straight up or down so, then laid level again
    fold    ///< a quarter or half turn about a hinge
  };
  Kind kind = Kind::lift;
  Solid before;
  Solid after;
  /// Covers every place that the piece passes through, `before` and `after` among them. In z exact.
  std::vector<Solid> sweep;
  std::optional<Swing> swing{};  ///< of a tilt or a fold
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

/// How a board is tilted so that it passes what is narrower than it.
struct Tilt {
  Wall low = Wall::left;  ///< the side of the piece that stays down
  int degrees = 0;        ///< even, 2 to 88
  Length shift;           ///< first to that side, not negative
  friend bool operator==(const Tilt&, const Tilt&) = default;
};

/// The box of the solid shifted, tilted, raised or lowered so, and laid level again at another height. While
/// it turns, nothing of it goes beyond the line on which its low side then lies: for every 2 degrees it first goes
/// inward and then turns, so that it needs at most its thickness times the sine of 2 degrees more than its
/// length, or its diagonal. The sweep is a row of boxes:
/// of every 4 in of its length in every 2 degrees, each exact along its axes but for two ticks.
/// std::invalid_argument: it is at that height already, or the tilt is none.
Motion tilted(const Solid& piece, Length to_base, const Tilt& tilt);

/// The side of the box that stays down in a tilt.
Wall low_side(const Swing& tilt);

/// The turn about a level hinge that takes the one box to the other: a quarter, or half a turn by way of
/// standing up, where that does it. The hinge is within the thickness of the box at one of its ends. The
/// sweep as of `tilted`. None: no such turn does.
std::optional<Motion> folded(const Solid& before, const Solid& after);

}  // namespace berthwright
