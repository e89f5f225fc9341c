#pragma once

#include <berthwright/geometry/region.h>
#include <berthwright/plan/interior.h>

namespace berthwright {

/// The space of a door, as wide as its clear opening.
struct Doorway {
  Region inner;   ///< where the room curves away from the line of the wall: from a little inside out to that
                  ///< line; mostly empty
  Region before;  ///< what lies outside: it widens, so that nothing there is narrower than the door
};
Doorway doorway_of(const Interior& interior, const Region& room, const Opening& door);

}  // namespace berthwright
