#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/load/loads.h>

#include "view/draft.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// Before every figure of loads: who comes before it.
std::vector<std::string> numbers_cautions(const Plan& plan);

/// The plan with its centre of gravity, axle and coupling; bars of the figures that are compared, the
/// circuits as a table, the rest in words. None where the plan states too little: `states_loads`.
std::vector<Draft> numbers_drafts(const DrawnConfiguration& of, const Loads& loads);

}  // namespace berthwright
