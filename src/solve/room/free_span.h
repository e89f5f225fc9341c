#pragma once

#include <berthwright/solve/room/support.h>

namespace berthwright {

/// The opening between bearings in the direction of the piece's length or width, as told at `FreeSpan`; what
/// is narrower than an inch is none. None where no line in that direction has two bearings.
std::optional<FreeSpan> free_span(const Placed& piece, const Region& bearing, Piece::Grain across);

}  // namespace berthwright
