#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Whether `shields` together stand on every straight line of least distance from the source to `solids`: ids
/// of those that stand on one, sorted; empty where a line is free. Between faces that look at each other
/// there are many such lines, and which of them is drawn does not matter here. Where such faces are neither
/// square to the room nor level, or where one lies above the other and they only touch in plan, nothing is told.
/// O(edges x edges).
std::vector<std::string> shielding(const std::vector<const Placed*>& shields, const Solid& source,
                                   const std::vector<Solid>& solids);

}  // namespace berthwright
