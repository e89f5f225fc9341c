#pragma once

#include <string>
#include <vector>

#include "support/trailer_text.h"

namespace berthwright {

/// A guard rail on the right side of a bunk 75 x 24 in along the left wall.
struct Rail {
  std::string from = "15";  ///< the front
  std::string length = "60";
  std::string above = "5";  ///< the mattress
  std::string left = "24";
};
/// Such a bunk with 4 in of foam on a board of 1 in whose underside is at `underside`.
TrailerText railed(const std::string& underside, const Rail& rail = {});

/// A bed of 75 in by `width` for two; those of no stature are left without one.
TrailerText bed_for_two(const std::string& width, const std::string& first, const std::string& second);

/// A bed of one board 14 in high, with no cushion.
TrailerText bare_board();

/// A bed 75 x 38 in under a roof that begins at `front_height` and rises an inch an inch.
TrailerText under_a_slope(const std::string& front_height);

/// Trailers that hold every rule about sleepers, head room and rails in every status that it can have.
std::vector<TrailerText> plans_of_sleepers();

}  // namespace berthwright
