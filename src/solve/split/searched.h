#pragma once

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// `splits_of` without cures.
BaySplits searched(const NightBay& bay, const SplitLimits& limits);

}  // namespace berthwright
