#pragma once

#include <berthwright/geometry/solid.h>
#include <berthwright/plan/interior.h>

namespace berthwright {

/// The room in plan at one height: its outline less what the profiles take there. Where a slanted wall
/// crosses the height off the lattice, the place is rounded to the nearest tick. Empty above the roof.
Region room_at(const Interior& interior, Length height);

/// Where the room is clear all the way from `low` to `high`; `low` < `high`.
Region room_between(const Interior& interior, Length low, Length high);

/// The lowest point of the roof over the region, above `from`, at which the region must lie inside the room.
Length roof_over(const Interior& interior, const Region& region, Length from);

/// What leaves the profile when the solid is seen from the side: `profile` is in x-z, or in y-z if `across`.
Region outside_profile(const Solid& solid, const Polygon& profile, bool across);

}  // namespace berthwright
