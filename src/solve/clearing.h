#pragma once

#include <span>
#include <vector>

#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// What brings the thing out of a place in plan where it stands too: of the four ways the shortest in which
/// it has room to move; a piece that has none is set aside, as a soft one and a portable heater always are; a
/// fixture is cut back if 2 in or more of it are left (our own choice). None: it must stay (`gives_way`), or
/// nothing of this can be done with it. Lengths as a shop marks them out.
std::optional<Cure> clearing(const Plan& plan, const Arrangement& arrangement, const Placed& thing,
                             const Rect& place);

/// The same of several things.
struct Clearance {
  std::optional<Cure> cure;          ///< one step after the other; none: nothing of it can be cleared
  std::vector<std::string> staying;  ///< ids of what must stay
};
Clearance clearing(const Plan& plan, const Arrangement& arrangement, std::span<const std::string> things,
                   const Rect& place);

}  // namespace berthwright
