#pragma once

#include <berthwright/solve/heat/cord.h>

namespace berthwright {

/// Whether a thing takes floor from a cord on the level.
bool takes_floor(const Placed& thing, const CordLevel& level);

/// The level without anything on it.
Region bare_level(const Plan& plan, const Arrangement& arrangement, const CordLevel& level);

/// What stands at a place where no cord can lie, `except` left out: of several things the highest, of equal
/// ones that of the least id; else the nearest wall.
std::string taker_of_floor(const Plan& plan, const Arrangement& arrangement, const CordLevel& level,
                           Point place, std::string_view except);

}  // namespace berthwright
