#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/seat/seats.h>

#include "solve/seat/seat_frame.h"

namespace berthwright {

/// One seat and where it stands, in its own frame.
struct SeatScene {
  const Plan& plan;
  const Arrangement& arrangement;
  SeatFrame frame;
  std::vector<const Placed*> cushions;
  Length back;      ///< x of the back cushion's face, or of the seat's rear edge
  Length front;     ///< x of the front line
  SeatSpan across;  ///< y of the ends
  Length top;
  Length sits_at;
  Length footing;  ///< height of what is under the feet
};

/// The table with the most of its edge before the seat, less than 12 in from its front line; of equal ones
/// the nearer. `knee_depth` is not shared yet.
std::optional<SeatTable> table_before(const SeatScene& scene);

/// As told at `Seat::way_in`: what stands within 12 in counts. In the way is what meets heights 4 to 48 in
/// over the footing, but for benches, ledges, wheel arches and cushions no higher than the seat: one slides
/// over them.
Length way_onto(const SeatScene& scene);

/// Raised fixtures all along the 12 in before the front line, at least 8 in below `top`: the highest top.
Length footing_before(const SeatScene& scene);

}  // namespace berthwright
