#pragma once

#include <vector>

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// The seats and backs of all lids by day, their places by night not yet known.
struct DaySeats {
  std::vector<BackManner> manners;
  std::vector<Length> heights;
  bool short_backs = false;
  std::vector<SplitPiece> pieces;
  bool possible = true;  ///< false: a seat or back is under the least side
};

/// Every choice of a manner for each lid. On a lid through whose rear something rises, the back does not
/// stand behind the seat.
std::vector<std::vector<BackManner>> all_manners(const NightBay& bay);
bool manners_fit(const NightBay& bay, const std::vector<BackManner>& manners);

DaySeats day_seats(const NightBay& bay, const SplitLimits& limits, const std::vector<BackManner>& manners,
                   const std::vector<Length>& heights, bool short_backs);

/// What a back takes of its lid by day, `thickness` deep along the side away from the front.
Rect behind_seat(const Lid& lid, Length thickness);

}  // namespace berthwright
