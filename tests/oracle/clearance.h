#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright::oracle {

/// Distance in ticks from a place to the nearest border, negative outside. Plain doubles and even-odd rays
/// over every ring: shares no code with the solvers.
double clearance(const Region& region, double x, double y);

}  // namespace berthwright::oracle
