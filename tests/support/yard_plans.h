#pragma once

#include <string>

namespace berthwright {

/// Whole plan files for the verbs, one for each way a check can end.
std::string plan_that_meets();       ///< 0: every alert met or close
std::string plan_that_does_not();    ///< 1: an alert not met: a bunk whose carrier is 31 in up, without rails
std::string plan_with_an_unknown();  ///< 2: none not met, one unknown: a cooktop without a data plate
std::string plan_that_is_broken();   ///< 65: a comma in a length, on line 2
std::string plan_that_falls();       ///< 65: reads well, but a piece stands on what is not beneath it

}  // namespace berthwright
