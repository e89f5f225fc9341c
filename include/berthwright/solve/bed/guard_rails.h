#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// One long side of a bed and what keeps a sleeper from falling out over it: guard rails, walls of the room
/// and fixtures (cabinets, lockers…) nearer than 1 in to the mattress, that begin no higher than its top.
struct GuardedSide {
  Wall side = Wall::left;
  Length open;  ///< the longest stretch of the side with nothing that rises above the mattress; exact
  Point open_from;
  Point open_to;
  /// The least height above the mattress of what guards the side; none where nothing does. A wall or fixture
  /// that is higher than a rail before it counts in the rail's place.
  std::optional<Length> height;
  std::string lowest;               ///< id of what is that low
  std::vector<std::string> guards;  ///< ids in the order of the arrangement; "wall"
};

/// The two long sides of the mattress's bounding box (of a square one: along the room), the one with less
/// open first. Ends are not looked at. None for an empty surface.
std::optional<std::array<GuardedSide, 2>> guarded_sides(const Plan& plan, const Arrangement& arrangement,
                                                        const Mattress& mattress);

/// Height above the floor of the underside of what carries the mattress: the lowest of what the cushions of
/// the surface stand on. What stands on the floor itself has its underside there.
Length underside_of(const Arrangement& arrangement, const Mattress& mattress);

}  // namespace berthwright
