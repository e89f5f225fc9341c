#pragma once

#include <optional>

#include <berthwright/solve/bed/mattress.h>
#include <berthwright/solve/finding.h>

namespace berthwright {

/// Where a person can sit up in bed: the place of the greatest head room, as our own choice a disc of 10 in
/// radius that lies within the closed surface, or on a bed narrower than that the largest disc it holds.
struct SittingUp {
  Length
      head_room;  ///< clear over all of the disc, from the cushion pressed down 1 in; rounded down to 1/64 in
  Disc place;
  Shares sit_upright;  ///< whose sitting height is at most the head room
};

/// None where the surface is empty or nothing is clear above it.
std::optional<SittingUp> sitting_up(const Plan& plan, const Arrangement& arrangement,
                                    const Mattress& mattress);

}  // namespace berthwright
