#pragma once

#include <optional>
#include <vector>

#include "solve/convert/spot_ways.h"

namespace berthwright {

/// Whether nothing built in, and no wall, meets one of the boxes. `met`: what does, the room as "room".
bool is_clear_of_fixtures(const RoomAround& surroundings, const std::vector<Solid>& sweep,
                          std::string* met = nullptr);
/// Spots of other pieces that one of the boxes meets.
SpotSet spots_met(const std::vector<SpotEntry>& entries, std::size_t at, const SpotOverlaps& overlaps,
                  const std::vector<Solid>& sweep);

/// The least tilt, in steps of 4 degrees, by which a board comes from its spot up to a height of its
/// underside, past what is built in: with one side down and shifted to that side not at all or till it meets
/// something, at most 6 in. None: none of these.
std::optional<Tilt> tilt_out(const RoomAround& surroundings, const PiecePlace& spot, Length to_base);

}  // namespace berthwright
