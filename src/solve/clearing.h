#pragma once

#include <span>

#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Whether the thing, moved by `by` toward a wall, stands in the room and in the space of no other thing, and
/// carries nothing that would have to come along. Curtains give way.
bool has_room_to_move(const Plan& plan, const Arrangement& arrangement, const Placed& thing, Wall wall,
                      Length by);

/// What brings the thing out of a place in plan where it stands too: of the four ways the shortest in which
/// it has room to move; a piece that has none is set aside, as a soft one always is, a fixture cut back if 2
/// in or more of it are left (our own choice), else set aside. Lengths as a shop marks them out.
Cure clearing(const Plan& plan, const Arrangement& arrangement, const Placed& thing, const Rect& place);

/// The same of several things, one cure after the other; none for none.
std::optional<Cure> clearing(const Plan& plan, const Arrangement& arrangement,
                             std::span<const std::string> things, const Rect& place);

}  // namespace berthwright
