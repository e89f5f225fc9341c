#pragma once

#include <vector>

#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// Of a conversion that has its steps and standing places; by their beginning, then rule and subjects.
std::vector<Meanwhile> found_meanwhile(const Plan& plan, const Conversion& conversion);

/// The same of the conversion undone, which has as many steps.
Meanwhile undone(Meanwhile meanwhile, std::size_t steps);

}  // namespace berthwright
