#pragma once

#include <berthwright/solve/room/support.h>

namespace berthwright {

/// 3 lb for a square foot an inch thick (softwood plywood, a trade association as quoted; hardwood is
/// heavier), rounded down. None where neither panel nor material says that the piece is plywood.
std::optional<Mass> plywood_weight(const Piece& piece);

/// Fills in hull, centroid, balance, overhang and the load that tips; `bearing` is set already.
void add_balance(const Region& outline, BoardSupport& support);

}  // namespace berthwright
