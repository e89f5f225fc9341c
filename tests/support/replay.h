#pragma once

#include <string>

#include <berthwright/solve/convert/steps.h>

#include "oracle/carried_samples.h"

namespace berthwright::support {

oracle::PlainPrism plain(const std::string& name, const Solid& solid, double gives);

oracle::PlainMotion plain_motion(const Motion& motion, double gives);

/// Follows every step of the conversion with the slow oracle: each movement begins where the one before it
/// ended, meets nothing and stays inside the room; at the end everything stands as the configuration says.
/// The first fault in words; empty: none.
std::string replayed(const Plan& plan, const Conversion& conversion);

}  // namespace berthwright::support
