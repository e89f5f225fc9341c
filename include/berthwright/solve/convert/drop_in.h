#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/leaf.h>
#include <berthwright/solve/convert/steps.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// How a table or board that lies on ledges fits between what is built in around it.
struct DropIn {
  /// Along the trailer (x) or across it (y).
  struct Direction {
    bool along = true;
    Length size;  ///< of the board
    /// To what stands before its front or left side and its rear or right one, at its own heights; none: it
    /// is open there. Negative: it reaches into it.
    std::optional<Length> before;
    std::optional<Length> behind;
    std::string thing_before;  ///< id of a fixture, or "room"
    std::string thing_behind;
    /// Of the board's section in this direction, rounded up: what a gap must have so that it can be set
    /// down one side first.
    Length diagonal;
    /// Where it is larger than the gap: the least whole degrees by which it must be tilted to pass. None: it
    /// passes level, or not even upright.
    std::optional<int> tilt;

    std::optional<Length> gap() const;
  };
  std::string board;
  ConfigurationId configuration;
  std::vector<std::string> ledges;
  std::array<Direction, 2> directions;  ///< along, across
  std::optional<Hold> held_by;
};

/// Boards and tables that fixtures of kind ledge carry, in the order of the arrangement.
std::vector<DropIn> drop_ins(const Plan& plan, const Arrangement& arrangement);

/// What holds a piece where it stands in a configuration and is undone before it is taken up: a board or
/// table that fixtures of kind ledge carry, and a leg under what it carries, each by its own `held_by` if that
/// is a snap, hook and loop, a strap (not of a leg: straps hold legs on the road), a latch, a hook or screws.
std::optional<Hold> fastened_at(const Plan& plan, const PiecePlace& place);

/// The least whole degrees, at most 90, by which a slab of this length and thickness must be tilted so that
/// it is no wider than the gap: length x cosine + thickness x sine. None: not at any. Decided on the rational
/// point of the turn, which is within 1e-8 degree.
std::optional<int> least_tilt(Length length, Length thickness, Length gap);

}  // namespace berthwright
