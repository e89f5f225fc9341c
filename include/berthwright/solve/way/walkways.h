#pragma once

#include <optional>
#include <span>

#include <berthwright/solve/heat/plugged.h>
#include <berthwright/solve/way/way_out.h>

namespace berthwright {

/// The walkway along the widest of the ways out of the bed; none: no door is reached.
std::optional<Walkway> walkway_of(const Bed& bed, std::span<const WayOut> ways);

}  // namespace berthwright
