#pragma once

#include <vector>

#include <berthwright/solve/convert/steps.h>

#include "solve/convert/room_around.h"

namespace berthwright {

/// The conversion without the places where a person stands.
Conversion searched(const RoomAround& surroundings, const Arrangement& from, const Arrangement& to);

/// The same undone.
Conversion undone(const Conversion& conversion);

}  // namespace berthwright
