#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright {

/// What a disc of this radius cannot enter is an opening between two things (design 4.15).
inline constexpr Length opening_radius = 3_in;

/// The places outside `things` from which, looking square away from some straight edge of theirs (at least 1
/// in long, within `near`), one sees that edge behind and another part of `things` ahead, less than 6 in
/// apart. A free corner of a right angle or more has none.
Region straight_across(const Region& things, const Rect& near);

}  // namespace berthwright
