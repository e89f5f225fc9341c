#pragma once

#include <berthwright/solve/seat/seats.h>

namespace berthwright {

/// What begins lower than this above the seat stands on it.
inline constexpr Length stands_on_it = 4_in;

/// The lowest thing over `place`: the roof, fixtures but for small ones on walls, pieces but for tables and
/// what stands on them. `seat` has its heights. None where the place lies outside the room.
std::optional<HeadRoom> head_room_over(const Plan& plan, const Arrangement& arrangement, const Seat& seat,
                                       const Region& place);

}  // namespace berthwright
