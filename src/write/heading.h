#pragma once

#include <string>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// Title, shop, owner and date of the plan, as the first line of a report.
std::string heading(const Plan& plan);

}  // namespace berthwright
