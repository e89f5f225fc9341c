#pragma once

#include "support/trailer_text.h"

namespace berthwright {

/// A dinette across the rear of a room of 120 x 76 x 76 in: benches of 38 x 22 in, 14 high, 32 apart, each
/// with a ledge 13 1/4 high; a table of 37 3/4 x 31 3/4 x 3/4 in, by day on a leg 27 in high that stands
/// between the benches, by night on the ledges; the leg is then in the left bench, under its lid, which is
/// 30 x 16 in. A door of 26 x 68 in in the right wall.
TrailerText dinette();

/// The same with a seat cushion and a back on each bench; by night the backs lie on the table.
TrailerText dinette_with_cushions();

}  // namespace berthwright
