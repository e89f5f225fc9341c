#pragma once

#include <vector>

#include "solve/convert/spots.h"

namespace berthwright {

/// Adds places where pieces may be put aside: for each of the `wanted` (numbers of pieces) outside of every
/// door that opens, up to four on tops of furniture, cushions and boards and on the floor, those first where
/// it is in nobody's way, and up to two on another piece put aside. `entries` holds the spots of both
/// configurations; no more are added than a search can hold.
void add_parking(const RoomAround& surroundings, const std::vector<std::size_t>& wanted,
                 std::vector<SpotEntry>& entries);

}  // namespace berthwright
