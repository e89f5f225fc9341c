#pragma once

#include <optional>
#include <span>

#include <berthwright/solve/heat/plugged.h>
#include <berthwright/solve/way/way_out.h>

namespace berthwright {

/// The walkway along the widest of the ways out of the bed; none: no door is reached.
std::optional<Walkway> walkway_of(const Bed& bed, std::span<const WayOut> ways);

/// The floor that a disc as wide as the way sweeps as it goes along it: the way at its true width, too wide by
/// at most 0.13 % where it runs aslant. Empty unless the door is reached.
Region swept_floor(const WayOut& way);

}  // namespace berthwright
