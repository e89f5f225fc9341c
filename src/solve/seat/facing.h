#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Which way one sits on a cushion, and the back cushions that say so.
struct Facing {
  std::optional<Wall> faces;
  std::vector<const Placed*> backs;
};

/// As told at `Seat::faces`. Of equal claims along the trailer and across it the one along it; of equal ones
/// against each other none.
Facing facing_of(const Plan& plan, const Arrangement& arrangement, const Placed& cushion);

}  // namespace berthwright
