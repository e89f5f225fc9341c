#pragma once

#include <array>

#include <berthwright/solve/room/arrangement.h>

#include "view/dimensions.h"

namespace berthwright {

inline constexpr std::array four_walls{Wall::front, Wall::rear, Wall::left, Wall::right};

/// The chains outside one wall, nearest first: the things along it from end to end, then, on the left and the
/// front wall, the whole. No chain says again what another says.
std::vector<DimensionChain> chains_along(const Plan& plan, const Arrangement& arrangement, Wall wall);

}  // namespace berthwright
