#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include <berthwright/exact/length.h>
#include <berthwright/exact/mass.h>

namespace berthwright {

/// A sheet of foam that the shop has or can buy.
struct PricedFoam {
  Length length;
  Length width;
  Length thickness;
  std::int64_t price = 0;  ///< of the whole sheet, in hundredths of the plan's own money
};

/// What a shop asks of new cushions, in place of the usual limits. None: the usual one.
struct CushionWishes {
  std::optional<Length> thickness{};
  std::optional<Length> least_back{};
  std::optional<Length> most_back{};
  std::optional<Length> least_side{};
  std::optional<Length> longest_side{};
  std::optional<int> fillers{};
  std::optional<Length> gap{};        ///< at most, where nothing closes exactly
  std::optional<Mass> lift{};         ///< what one cushion may weigh
  std::optional<int> foam_density{};  ///< tenths of a pound per cubic foot
  std::vector<PricedFoam> foam_stock{};
};

}  // namespace berthwright
