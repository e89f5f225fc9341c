#pragma once

#include <span>
#include <string>
#include <vector>

#include <berthwright/geometry/widest_way.h>
#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// The widest way from the free edges of a bed to one door, in one configuration.
struct WayOut {
  enum class End { reached, no_free_edge, no_way };
  std::string door;
  End end = End::no_way;
  Length width;   ///< to print and compare: rounded down, less 0.05 mm for an arc at either side; else zero
  WidestWay way;  ///< as drawn with chords; empty unless the door is reached
  std::string left;  ///< what stands at `way.left`: id of a fixture, a piece or the door, or "the left wall"…
  std::string right;

  bool reached() const { return end == End::reached; }
};

/// Free floor (design 4.15) is less every solid that meets heights from 4 to 72 in.
bool stands_in_the_way(const Solid& solid);

/// One for each door that opens, in the order of the plan. Free floor (design 4.15) is the room where it is
/// clear from 4 to 36 in, since a person stoops under what curves in above, less every solid that meets 4 to
/// 72 in, but for curtains, which give way; the bed itself always stands on it. Free edges are those of the
/// bed and of low things (no higher than its level) that stick out from under it by up to 4 in, measured
/// along the walls (our own choice).
std::vector<WayOut> ways_out(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                             const Mattress& mattress);

/// The same from where a person stands upon the floor, instead of from a bed: the disc begins where the
/// middle of the place lies on its border. `no_free_edge`: not all of the place is free floor.
std::vector<WayOut> ways_out(const Plan& plan, const Arrangement& arrangement, const Rect& standing);

/// The widest of those that reach a door, of equal ones that of the least id; nullptr: none does.
const WayOut* widest(std::span<const WayOut> ways);

}  // namespace berthwright
