#pragma once

#include "view/fitted_plan.h"

namespace berthwright {

/// The plan of one configuration, and pages for those of its notes that found no room beside it.
std::vector<Draft> plan_drafts(const DrawnConfiguration& of);

}  // namespace berthwright
