#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Nothing soft belongs this near before an alarm (our own choice).
inline constexpr Length before_an_alarm = 12_in;

/// Where a smoke, CO or gas alarm hangs.
struct AlarmPlace {
  enum class Mount { ceiling, outside_wall, inside, unknown };
  const Fixture* alarm = nullptr;
  /// On the ceiling when its top is within 1/4 in of the roof; else on whatever lies within 1/2 in of its
  /// widest side: a wall of the room, of equal sides rather than a fixture.
  Mount mount = Mount::unknown;
  std::optional<Wall> faces;    ///< away from what it hangs on, unless that is the ceiling
  Length below_ceiling;         ///< its top to the lowest roof over it; zero: it touches or stands in it
  std::string nearest_cooking;  ///< id of the nearest cooktop or oven; empty: there is none
  Length to_cooking;            ///< in space, rounded down
};
/// In the order of the plan.
std::vector<AlarmPlace> alarm_places(const Plan& plan);

/// Curtains and soft pieces that hang or stand before an alarm, within 12 in of its front (our own choice; on
/// every side where the plan does not show what it hangs on): ids in order.
std::vector<std::string> covering(const Arrangement& arrangement, const AlarmPlace& place);

}  // namespace berthwright
