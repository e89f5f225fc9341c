#pragma once

#include "support/trailer_text.h"

namespace berthwright {

/// A bunk of `length` x `width` in, 4 in of foam on a board whose underside is at `underside`, in the front
/// left corner of a room 96 in high.
TrailerText bunk(const std::string& length, const std::string& width, const std::string& underside,
                 const std::string& top);

/// Two cushions of 75 x 24 in on two benches, the left one 14 in high, `gap` apart; three sleepers, a heater.
TrailerText two_benches(const std::string& gap, const std::string& right_top);

/// One bed of three cushions: a small one 1/2 in below the level, a small one 1/2 in above it, side by side.
TrailerText three_heights();

/// A galley whose door of 13 in turns toward a heater `before` it by as many inches, and a bench whose lid
/// lies under a cushion, which is the bed by night. Neither says what holds it on the road.
TrailerText what_opens(const std::string& before);

}  // namespace berthwright
