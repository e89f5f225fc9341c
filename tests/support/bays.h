#pragma once

#include <berthwright/solve/split/split.h>

namespace berthwright::support {

/// Two benches that face each other along the trailer, the board between them: lids `depth` deep and `width`
/// wide.
NightBay facing_benches(Length depth, Length span, Length width);

/// A lounge around three sides of a board: two benches along the side walls, one along the rear wall between
/// them; the wheel arch rises through the left one's corner at the wall.
NightBay lounge_of_three(Length length, Length width, Length depth, Length arch_length, Length arch_width);

/// A lounge around one corner: a bench of this depth along the left wall, one along the rear wall beside it,
/// the board in the corner between them.
NightBay lounge_of_two(Length length, Length width, Length depth);

/// The bay seen in a mirror in y = 0, and moved.
NightBay mirrored(const NightBay& bay, Vector by);

}  // namespace berthwright::support
