#pragma once

#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Whether a cure may ask that the thing be moved, cut back or taken away for the sake of something else: a
/// piece of none of the beds of this configuration that carries nothing, or a cabinet, locker, shelf or
/// counter on which no piece lies and that guards no bunk in any configuration. Not so what gives heat, what
/// bears or guards people, and what belongs to the trailer (our own choice: a cure may not trade one danger
/// for another).
bool gives_way(const Plan& plan, const Arrangement& arrangement, const Placed& thing);

/// A heater that stands loose in the room: where it is in the way, it is switched off and stowed, never
/// moved, since any other place would have to be looked at anew.
bool is_portable_heater(const Placed& thing);

/// Whether so much of a fixture may be cut off at that side: no other fixture stands on it or is let into it.
bool may_be_cut_back(const Plan& plan, const Fixture& fixture, Wall side, Length by);

/// Whether the thing, moved by `by` toward a wall, stands in the room, in the space of no other thing, and no
/// nearer to what gives heat than it does now, or 36 in from it; carries nothing that would have to come
/// along, and, built in, stays at the walls it stands at. Curtains give way.
bool has_room_to_move(const Plan& plan, const Arrangement& arrangement, const Placed& thing, Wall wall,
                      Length by);

}  // namespace berthwright
