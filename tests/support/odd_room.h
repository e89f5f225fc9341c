#pragma once

#include "support/drawn_room.h"

namespace berthwright {

/// A room with rounded or clipped corners, doors and windows, and 2 to 40 things of all kinds and odd shapes,
/// some over others, with names of all lengths and scripts; all of it made from `seed`.
DrawnRoom odd_room(unsigned seed);

}  // namespace berthwright
