#pragma once

#include <string>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// "Ways out": for each bed the widest way to a door and the openings in its reach; empty without beds or
/// without anything to get out by.
std::string ways_part(const Plan& plan, const Answer& answer);

}  // namespace berthwright
