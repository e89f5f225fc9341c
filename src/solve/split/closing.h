#pragma once

#include <cstdint>
#include <map>
#include <vector>

#include <berthwright/solve/split/tiling.h>

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

/// Tilings of one bay by what was laid in them: benches that change roles ask for the same.
using KnownTilings = std::map<std::vector<std::int64_t>, Tilings>;

/// Lays these seats and backs and exactly so many fillers over the bay by night; no filler heavier than may
/// be.
BayClosing best_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                        std::size_t fillers, KnownTilings& known);

/// Lays them so that one gap stays, no wider than `limits.most_gap`.
BayClosing nearest_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                           KnownTilings& known);

/// What seats leave of the bay for backs, before any is laid.
struct RoomForBacks {
  Int128 area = 0;
  std::vector<Length> lengths;  ///< of each lid's backs along its front; zero where they stay

  /// What backs of these heights leave in their turn; negative: they do not fit.
  Int128 left_by(const std::vector<Length>& heights) const;
};
RoomForBacks room_for_backs(const NightBay& bay, const SplitLimits& limits,
                            const std::vector<BackManner>& manners, bool short_backs);

}  // namespace berthwright
