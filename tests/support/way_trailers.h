#pragma once

#include "support/trailer_text.h"

namespace berthwright {

/// A room of 120 x 76 x 80 in with a bed of 38 x 76 in across the front, "bed" by night, a door of 26 in in
/// the right wall, and a window in the left one, marked as a way out, 30 x 20 in with its sill at 34 in, of
/// which 8 in are beside the bed.
TrailerText way_trailer();

/// A smoke alarm of 5 x 2 in, its top `top` in above the floor (the ceiling is at 80), on a cabinet against
/// the rear wall.
std::string smoke_alarm(const std::string& base, const std::string& top);

/// Trailers whose findings hold every rule on ways out and alarms in every status that it can have.
std::vector<TrailerText> ways_of_every_status();

}  // namespace berthwright
