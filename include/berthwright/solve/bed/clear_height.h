#pragma once

#include <array>
#include <string>
#include <vector>

#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// Clear heights at which what one can do on a bed changes: below the first not even feet fit, from the first
/// feet do, from the second a head and chest, from the third about half of all men sit up (ANSUR II).
inline constexpr std::array clear_height_bands{12_in, 24_in, 36_in};

/// One part of a bed over which one thing hangs lowest, all of it in one band.
struct ClearHeight {
  Region region;
  Length height;         ///< the least over the region, from the uncompressed level up
  std::string what;      ///< id of the fixture or piece; "roof"; "wall" where the room ends
  std::size_t band = 0;  ///< how many of `clear_height_bands` it reaches
};

/// The closed surface of a bed divided by what hangs above it: parts do not overlap and together cover the
/// surface; lowest band first, then lowest height, then name. Exact in a rectilinear room; where profiles or
/// outlines are slanted a border is rounded to the tick. A thing that stands in the bed, and the wall, leave
/// a height of 0; a roof below the level a negative one. Empty for an empty surface.
std::vector<ClearHeight> clear_heights(const Plan& plan, const Arrangement& arrangement,
                                       const Mattress& mattress);

/// Where the closed surface has at least `clear` (positive) above it: the lying space for 24 in.
Region clear_over(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Length clear);

}  // namespace berthwright
