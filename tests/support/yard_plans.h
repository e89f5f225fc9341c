#pragma once

#include <string>

namespace berthwright {

/// Whole plan files for the verbs, one for each way a check can end.
std::string plan_that_meets();       ///< 0: every alert met or close
std::string plan_that_does_not();    ///< 1: an alert not met: a bunk whose carrier is 31 in up, without rails
std::string plan_with_an_unknown();  ///< 2: none not met, one unknown: a cooktop without a data plate
std::string plan_with_room_for_a_heater();     ///< "Heater", stowed in both configurations
std::string plan_without_room_for_a_heater();  ///< the same in a shorter room: by day there is, by night none
std::string plan_with_a_heater_without_plate();  ///< "H"
std::string plan_that_is_broken();               ///< 65: a comma in a length, on line 2
std::string plan_that_falls();  ///< 65: reads well, but a piece stands on what is not beneath it

}  // namespace berthwright
