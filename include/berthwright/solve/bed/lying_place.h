#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include <berthwright/geometry/rectangle_in_region.h>

namespace berthwright {

/// Common practice, no source: over the last 24 in at the foot end 12 in of clear height are enough, and
/// there a person is 16 in wide.
inline constexpr Length foot_length = 24_in;
inline constexpr Length foot_width = 16_in;
inline constexpr Length foot_clear_height = 12_in;

/// Where people lie: `head` has the full clear height, `foot` at least `foot_clear_height`; `head` lies in
/// `foot`.
struct LyingSpace {
  Region head;
  Region foot;
};

/// A place for one person, or for several side by side with their heads at one end: a rectangle as wide as
/// their shoulders in the head space, and beyond it for each a rectangle as wide as the feet and at most 24
/// in long in the foot space, anywhere within the width of the shoulders.
struct LyingPlace {
  Turn turn;                               ///< the way the feet point
  Length length;                           ///< of the whole place, rounded down
  Length width;                            ///< at the shoulders, `turning_slack` apart
  std::array<Point, 4> shoulders;          ///< corners, counter-clockwise
  std::vector<std::array<Point, 4>> feet;  ///< one for each person; none where the shoulders take it all
  Region region;                           ///< what the people take in all
};

/// The longest place for people of these shoulder widths, in this order across. It always lies inside
/// (checked on exact numbers) and is never shorter than the longest rectangle of their summed width. In
/// rectilinear spaces none along the axes is longer; turned ones are sought along edges of 4 in and more and
/// along that rectangle: a lower bound. Feet wider than shoulders count as wide as these. None: no width fits
/// at all.
std::optional<LyingPlace> longest_place(const LyingSpace& space, std::span<const Length> shoulders);

}  // namespace berthwright
