#pragma once

#include <array>

#include "view/dimensions.h"
#include "view/plan_things.h"

namespace berthwright {

inline constexpr std::array four_walls{Wall::front, Wall::rear, Wall::left, Wall::right};

/// Lines nearer than this on paper read as one.
inline constexpr PaperLength least_split = paper_mm(7, 10);

/// The thing stands against the wall, within an inch.
bool stands_along(const Rect& thing, const Rect& room, Wall wall);
/// Benches, cabinets, lockers and the like, whose measures a shop needs.
bool is_furniture(const PlanThing& thing);

/// The chains outside one wall, nearest first: its openings; what stands along it and is seen, from end to
/// end; and, on the left and the front wall, the whole. No chain says again what another says. Of stops
/// nearer than `least_split` at the scale one stands: that of a wall before that of a piece, of a longer
/// piece before that of a shorter one, and of what is built in last.
std::vector<DimensionChain> chains_along(const Plan& plan, const std::vector<PlanThing>& things, Wall wall,
                                         std::int64_t ratio);

}  // namespace berthwright
