#pragma once

#include <optional>

#include <berthwright/solve/convert/steps.h>

#include "solve/convert/room_around.h"

namespace berthwright {

/// The nearest free floor to `reach` for a person who stands: as for ways out
/// (design 4.15), the room clear from 4 to 36 in, less what meets heights from 4 to 72 in. None: no floor of
/// 20 x 20 in is free.
std::optional<StandingPlace> standing_place(const RoomAround& surroundings, const Arrangement& stage,
                                            const Rect& reach);

}  // namespace berthwright
