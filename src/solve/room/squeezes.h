#pragma once

#include <berthwright/solve/room/collisions.h>

#include "solve/room/rows.h"

namespace berthwright {

/// The collisions of soft against soft or against upright furniture; `number` is the place in `collisions`.
std::vector<Squeeze> side_squeezes(const Arrangement& arrangement, const std::vector<Collision>& collisions);

}  // namespace berthwright
