#pragma once

#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// The ledges that carry the thing, whether it lies on them or on boards that do; empty where anything else
/// carries it, since a bench or a floor is not moved for a cushion.
std::vector<const Placed*> ledges_beneath(const Arrangement& arrangement, const Placed& thing);

/// Whether what carries something may be made higher or lower for it: a piece, or a bench, ledge, cabinet,
/// locker, shelf or counter without a source of heat; an arch, a tank or a heater stays as it is.
bool can_change_height(const Arrangement& arrangement, const std::string& carrier);

/// How the top of `thing` comes up by `by` (down when negative): its ledges are set anew, to which height;
/// where it has none a filler goes under it; what lies too high on something built in, that is lowered, or
/// where it must stay the cushion made thinner.
Cure cure_of_height(const Arrangement& arrangement, const Placed& thing, Length by);

/// What makes two neighbours level. The ledges under the lower one go up, or those under the higher one down,
/// but not past the height at which both rest alike: a ledge does not rise above its bench. What thickness is
/// still missing is a filler or thicker foam for the lower one, as it is where there are no ledges.
Cure cure_of_ridge(const Arrangement& arrangement, const Placed& lower, const Placed& higher);

}  // namespace berthwright
