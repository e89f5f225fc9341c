#pragma once

#include <vector>

#include "solve/split/day_pieces.h"

namespace berthwright {

struct BayClosing {
  /// The best of all tilings of these seats and backs with so many fillers, one for each number of seats
  /// moved.
  std::vector<Split> splits{};
  std::size_t stages = 0;
  std::size_t pruned = 0;
  bool complete = true;
};

/// Lays these seats and backs and exactly so many fillers over the bay by night.
BayClosing best_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                        std::size_t fillers);

}  // namespace berthwright
