#pragma once

#include <berthwright/solve/body.h>

namespace berthwright {

/// Share of the people of ANSUR II (2012, NATICK/TR-15/007) whose stature is at most `stature`, by the normal
/// model of the survey's means and deviations; within 1.0 point of the raw shares, near the medians 1.8
/// points below. Computed from a series in plain arithmetic, so every machine prints the same digits.
Shares shares_up_to_stature(Length stature);

}  // namespace berthwright
