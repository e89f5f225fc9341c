#pragma once

#include <optional>

#include <berthwright/solve/open/leaves.h>

namespace berthwright::oracle {

/// Moves a leaf in small steps (half a degree, a sixteenth of an inch) and asks at each whether one of
/// its points, a quarter of an inch apart, lies inside a solid of the arrangement or outside the room.
/// Degrees or inches of the first such step; none: it opens fully. Things named in `lifted` and the leaf's
/// own fixture are left out. Never before the true meeting, and later by what lies between the points.
std::optional<double> first_met(const Plan& plan, const Arrangement& arrangement, const Leaf& leaf,
                                const std::vector<std::string>& lifted);

}  // namespace berthwright::oracle
