#pragma once

#include <random>

#include <berthwright/solve/place/placing.h>
#include <berthwright/solve/place/strip.h>

#include "oracle/cut_check.h"

namespace berthwright {

/// A placing as the independent check takes it.
oracle::CutCase checked_case(const PlacingTask& task, const Placing& placing);

oracle::CutCase checked_strip(Length width, const std::vector<StripPart>& parts, const StripPlacing& placing);

/// A job of a seed: whole, half and quarter sheets of board, kerf 3 mm, parts of 100 to 750 by 75 to 400 mm
/// in multiples of 5 mm, one to four of each, two thirds of which turn. Prices and sizes are invented.
PlacingTask generated_job(unsigned seed, std::size_t parts);

}  // namespace berthwright
