#pragma once

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Play counted at most: where nothing stops a piece, it is not taken to wander any farther.
inline constexpr Length most_play = Length::inches(1, 2);

/// How far a rigid piece can be shoved in plan before something rigid or a wall stops it at its own heights.
class Shove {
 public:
  Shove(const Plan& plan, const Arrangement& arrangement, const Placed& piece);

  /// Square away from the edge of the piece's outline, to the tick; zero where it overlaps something already.
  Length play(const Edge& edge) const;
  /// The displacement by `distance` square away from the edge, into the piece.
  static Vector inward(const Edge& edge, Length distance);

 private:
  Region outline_;
  Region stops_;
};

}  // namespace berthwright
