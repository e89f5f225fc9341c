#pragma once

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Two things that need the same space.
struct Collision {
  std::string first;  ///< ids in the order of the arrangement
  std::string second;
  Region shared;  ///< in plan
  Length base;    ///< height range they share
  Length top;
  Length depth;  ///< how far one must be moved to clear: the least thickness of what they share
  /// Soft against soft or upright furniture (wall, bench, cabinet, locker, wheel arch) by at most 1/4 in, in
  /// no row of joints that adds up to more than 1/2 in; or a high spot told in `pressed_by`.
  bool tolerated = false;
};

/// Pairs whose insides meet. Touching is none. Fixtures are not tested against each other.
std::vector<Collision> find_collisions(const Arrangement& arrangement);

/// A thing that reaches outside the room.
struct Overreach {
  std::string thing;
  Length by;  ///< greatest distance outside, rounded up
  Point3 where;
  bool tolerated = false;  ///< a cushion squeezed by at most 1/4 in, its row included by at most 1/2 in
};

/// Things that do not fit inside the plan outline, under the roof, or inside the profiles at their heights,
/// in the order of the arrangement. Tanks and batteries may be outside. Exact for convex rooms, else `by` is
/// too great by at most 1/64 in.
std::vector<Overreach> find_overreach(const Plan& plan, const Arrangement& arrangement);

}  // namespace berthwright
