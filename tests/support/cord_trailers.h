#pragma once

#include <vector>

#include "support/trailer_text.h"

namespace berthwright {

/// A room of 120 x 76 in. A heater of 10 x 10 x 10 in stands in it, from 60 to 70 in from the front and 30 to
/// 40 from the left, looks to the rear and has a cord of `cord` in at its back, if that is not empty: it
/// comes out at (60, 35). Before it an outlet, 14 to 18 in above the floor, whose face looks to the rear at
/// (24, 35).
TrailerText cord_trailer(const std::string& cord);

/// The same with a bed across the rear, its level 18 in high, its bedding hanging 2 in before the bench, to
/// 88 in; by night the heater stands as by day. A door in the right wall from 60 to 86 in.
TrailerText cord_and_bed(const std::string& cord);

/// The same, but by night the heater stands at the left wall, the outlet is on the right one at 60 in, and
/// the door of 26 in begins `door_from` in from the front.
TrailerText across_the_walkway(const std::string& cord, const std::string& door_from);

/// As a fixture of the plan.
std::string cabinet(const std::string& id, const std::string& front, const std::string& left,
                    const std::string& length, const std::string& width, const std::string& base = "0",
                    const std::string& top = "36");
std::string outlet(const std::string& id, const std::string& front, const std::string& left,
                   const std::string& faces);

/// Trailers whose findings hold every rule on cords in every status that it can have.
std::vector<TrailerText> cords_of_every_status();

}  // namespace berthwright
