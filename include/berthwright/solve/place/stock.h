#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// Stock of one size: sheets to be bought, or a remnant that is there. Its low corner is the origin; x runs
/// along the grain, the nap or the roll.
struct StockKind {
  std::string id;
  Length length;
  Length width;
  std::int64_t price = 0;              ///< of one, in the smallest coin; not negative
  std::optional<std::size_t> count{};  ///< how many there are; empty: as many as are wanted
  bool remnant = false;                ///< there already
  Length trim{};                       ///< taken off every edge before anything else
  std::vector<Rect> defects{};         ///< no part may lie there
};

/// How a part may lie: turned by quarters; along the grain, either end first; along the nap, one end first.
enum class PartLay { quarters, grain, nap };

/// Rectangles of one size to be cut, finished size.
struct StockPart {
  std::string id;
  Length length;  ///< along grain or nap
  Length width;
  std::size_t count = 1;
  PartLay lay = PartLay::quarters;
};

/// From edge to edge of what is cut, as on a saw; or any outline, as with a knife.
enum class CutManner { through, free };

/// Parts of one material and the stock they may be cut from.
struct PlacingTask {
  std::vector<StockKind> stock;
  std::vector<StockPart> parts;
  Length kerf{};  ///< what a cut takes away
  CutManner manner = CutManner::through;
  /// How many times the direction of through-cuts may follow on another, trimming cuts counted; empty: any.
  std::optional<std::size_t> stages{};
  Length least_offcut{};  ///< an offcut is worth keeping when no side is shorter
};

}  // namespace berthwright
