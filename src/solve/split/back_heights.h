#pragma once

#include <vector>

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// Every height of a back that is looked at, rising: the steps within the limits, and what n backs (1 to 4)
/// leave between corners of the bay, less up to two depths of seats.
std::vector<Length> back_heights(const NightBay& bay, const SplitLimits& limits);

/// All ways to give `lids` lids one height; or one, or two different ones. For no lid the one way to do so.
std::vector<std::vector<Length>> one_of(const std::vector<Length>& heights, std::size_t lids);
std::vector<std::vector<Length>> one_or_two_of(const std::vector<Length>& heights, std::size_t lids);

/// Of a back that stays behind its seat: 16 in, or more where it would else rise less than 12 in above the
/// seat, or what of the limits is nearest to that (common practice, no source).
Length height_of_ease(const SplitLimits& limits);
/// 14 to 18 in.
bool is_at_ease(Length back);

}  // namespace berthwright
