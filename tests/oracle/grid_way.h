#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright::oracle {

/// The widest way by flooding a grid of `step` ticks from its widest places down: the clearance of the
/// narrowest place on the best chain of neighbours from a place where a disc touches one of `from` to `goal`;
/// negative when there is none. Plain doubles, shares no code with the solver. Off by about one step.
double widest_clearance(const Region& free, const std::vector<Edge>& from, const Rect& goal, double step);

}  // namespace berthwright::oracle
