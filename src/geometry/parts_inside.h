#pragma once

#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The parts of a straight line that run through the inside of the region, from its start on; places where it
/// crosses the border are rounded to the nearest tick. What only follows or touches the border is left out.
std::vector<Edge> parts_inside(const Edge& line, const Region& region);

}  // namespace berthwright
