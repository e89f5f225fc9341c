#pragma once

#include <cstdint>
#include <optional>

#include <berthwright/exact/length.h>
#include <berthwright/plan/rules.h>

namespace berthwright {

/// Strips cut across a roll, and how much of the roll they take.
struct RollStrips {
  std::int64_t count = 0;
  Length of_roll;
};

/// Strips of `width` across a roll of `fabric_width` that give `length`, every join between two of them
/// taking `lost` of it. std::invalid_argument where a strip is no longer than what a join takes.
RollStrips roll_strips(Length length, Length width, Length fabric_width, Length lost);

/// How much bias strip of `width` a square of `side` gives, cut in one spiral: side x side / width, rounded
/// down; joins not counted.
Length bias_from_square(Length side, Length width);
/// The least square of whole inches that gives `length`.
Length square_for_bias(Length length, Length width);
/// The roll that bias strips of `width` and `length` take by area: length x width / fabric width, rounded up.
Length bias_of_roll(Length length, Length width, Length fabric_width);

/// A cut rounded up to whole repeats of the pattern. `repeat` above zero, else std::invalid_argument.
Length whole_repeats(Length cut, Length repeat);

/// What pattern repeats add to the yardage of plain goods 54 in wide, in whole percent, by the sum of the
/// vertical and the horizontal repeat, rounded up to a whole inch. Where the two copies of the
/// table differ (44 and 45 in: 30 or 35; 52 to 54 in: none or 35), the greater. None: beyond 54 in.
std::optional<int> repeat_percent(Length sum);
/// The yardage of plain goods with what repeats of that sum add, rounded up; none as `repeat_percent`.
std::optional<Length> with_repeats(Length plain, Length sum);
const Source& repeat_source();

}  // namespace berthwright
