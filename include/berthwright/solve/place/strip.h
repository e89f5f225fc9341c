#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// A rectangle for a strip.
struct StripPart {
  Length length;  ///< along the strip
  Length width;
  bool turns = false;  ///< may lie turned by a quarter
};

struct StripPlace {
  std::size_t part = 0;
  Rect at;
};

/// All parts on a strip of one width, without kerf, cut freely.
struct StripPlacing {
  Length length;                     ///< of the strip that they take
  Length bound;                      ///< no less: by area, and by the longest part
  std::vector<StripPlace> places{};  ///< in the order in which they are laid
  std::size_t rounds = 0;
};

/// The lowest gap of the skyline is filled with the part that fits it best, the first of several in a row of
/// all parts; the row is shuffled by exchanging two, and kept where the strip becomes no longer (best fit on
/// a skyline with a random walk, after Leung, Zhang & Sim 2011). The same rounds and seed give the same
/// strip. std::invalid_argument: a part without size, or wider than the strip as it may lie.
StripPlacing placed_on_strip(Length width, const std::vector<StripPart>& parts, std::size_t rounds,
                             std::uint64_t seed = 1);

}  // namespace berthwright
