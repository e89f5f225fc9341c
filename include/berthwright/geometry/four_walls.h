#pragma once

#include <array>
#include <optional>

#include <berthwright/exact/result.h>
#include <berthwright/geometry/point.h>

namespace berthwright {

/// What a tape gives of a room with four straight walls that need not be square.
struct MeasuredWalls {
  Length front;
  Length rear;
  Length left;
  Length right;
  std::optional<Length> from_front_left{};   ///< diagonal to the rear right corner
  std::optional<Length> from_front_right{};  ///< diagonal to the rear left corner
};

/// The room that fits the measures best: with the least sum of squared misfits.
struct FittedWalls {
  /// Front left, rear left, rear right, front right, on the lattice; the front wall along x = 0, the box
  /// around the room at the origin.
  std::array<Point, 4> corners{};
  /// Measured less fitted, each to the tick: front, rear, left, right, and the two diagonals; of a diagonal
  /// that was not measured zero.
  std::array<Length, 6> misfits{};
};

/// At least one diagonal is needed; with one the measures fit exactly. Problems "walls.no-diagonal",
/// "walls.no-room" (sizes that no room with four corners has: a diagonal as long as two walls together, a
/// wall of no length).
Result<FittedWalls> fitted(const MeasuredWalls& measured);

}  // namespace berthwright
