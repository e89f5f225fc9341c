#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// A rectangle that is worth something when it is cut from a sheet.
struct WorthyPart {
  Length length;  ///< along the sheet's length
  Length width;
  std::int64_t worth = 0;             ///< in any unit, not negative
  std::optional<std::size_t> most{};  ///< how many at most; empty: as many as fit
  bool turns = false;                 ///< may lie turned by a quarter
};

/// One of them on the sheet, whose low corner is the origin.
struct WorthyPlace {
  std::size_t part = 0;  ///< index among those given
  Rect at;
};

/// The most that through-cuts of any number of stages, without kerf, get out of one sheet.
struct SheetWorth {
  std::int64_t worth = 0;
  std::vector<WorthyPlace> laid{};
  std::int64_t bound = 0;  ///< no through-cuts get more; equal to `worth` when the search ended by itself
  std::size_t blocks = 0;  ///< blocks looked at
  bool proven() const { return worth == bound; }
};

/// Where no number is limited: a dynamic programme over sums of sides. Else blocks of parts are joined, those
/// first whose worth with the most that the rest of the sheet could give (numbers unlimited) is greatest;
/// of blocks with the same parts only those are kept that are in neither direction larger than another.
/// At most `most_blocks` are joined. Memory grows with the sums of sides in either direction: for few sizes.
/// std::invalid_argument: a side that is not positive, a worth below nothing.
SheetWorth most_worth(Length length, Length width, const std::vector<WorthyPart>& parts,
                      std::size_t most_blocks = 200'000);

}  // namespace berthwright
