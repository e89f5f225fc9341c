#pragma once

#include <vector>

#include "solve/seat/facing.h"

namespace berthwright {

/// A cushion that may be sat on.
struct Sitting {
  const Placed* cushion = nullptr;
  Facing facing;
};
/// Cushions side by side that face one way; a single one may face no known way.
using SeatRow = std::vector<Sitting>;

inline constexpr Length lowest_seat = 10_in;

/// Flat cushions in no bed of the configuration, 10 in above the floor or more, not covered over half of
/// their area, joined to rows where tops differ by at most 1/2 in, fronts and joints by at most 1 in. Rows
/// and what is in them stand in the order they are laid.
std::vector<SeatRow> seat_rows(const Plan& plan, const Arrangement& arrangement);

}  // namespace berthwright
