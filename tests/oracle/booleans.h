#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Borders of Booleans by CGAL, the second opinion on our own: made on exact fractions; each corner is then
/// rounded once to the nearest tick, half toward plus infinity. The interior lies on the left. Rounded rings
/// may cross or touch each other by less than a tick: `wound_round` makes a region of them. Tens of
/// microseconds a corner.
std::vector<Edge> border_of_united(std::span<const Region> regions);
std::vector<Edge> border_of_common(const Region& a, const Region& b);
std::vector<Edge> border_of_without(const Region& a, const Region& b);

}  // namespace berthwright
