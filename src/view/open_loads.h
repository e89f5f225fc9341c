#pragma once

#include <span>
#include <string>
#include <vector>

#include <berthwright/solve/load/loads.h>

namespace berthwright {

/// One sentence for each figure of the loads that is not met or not known, in the order of the loads; what is
/// told of some configurations alone begins with them. Nothing of a plan that gives no reason to compare any.
std::vector<std::string> open_load_sentences(const Plan& plan, std::span<const Loads> all);

}  // namespace berthwright
