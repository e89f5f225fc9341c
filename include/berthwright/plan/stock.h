#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/exact/measure.h>
#include <berthwright/exact/result.h>
#include <berthwright/geometry/point.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// Stock of one size: sheets to be bought, or a remnant that is there. Its low corner is the origin; x runs
/// along the grain, the nap or the roll.
struct StockKind {
  std::string id;
  Length length;  ///< of a roll: what there is at most
  Length width;
  std::int64_t price = 0;              ///< of one, in hundredths; not negative
  std::optional<std::size_t> count{};  ///< how many there are; empty: as many as are wanted
  bool remnant = false;                ///< there already
  Length trim{};                       ///< taken off every edge before anything else
  std::vector<Rect> defects{};         ///< no part may lie there
  std::optional<Mass> weight{};        ///< of one whole; of a roll, of `sold_by`
  /// Of a roll: it is cut to length in steps of this, and `price` is that of one step.
  std::optional<Length> sold_by{};
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

enum class StockGoods { foam, board, cloth };

/// What there is and can be bought of one material, and how it is cut.
struct StockMaterial {
  std::string name;  ///< as plans call the foam's grade, the board's material or the fabric
  StockGoods goods = StockGoods::board;
  std::optional<Length> thickness{};  ///< none: cloth
  Length kerf{};                      ///< what a cut takes away
  CutManner manner = CutManner::through;
  /// How many times the direction of through-cuts may follow on another, trimming cuts counted; empty: any.
  std::optional<std::size_t> stages{};
  /// An offcut is worth keeping when no side is shorter; own choice.
  Length least_offcut = Length::inches(6);
  std::vector<StockKind> stock{};
  std::vector<StockPart> parts{};  ///< besides those of the plan
  Origin origin{};
};

/// A stock file.
struct StockList {
  std::string title;
  Unit unit = Unit::inch;
  std::string currency;  ///< as it is printed behind a price
  std::vector<StockMaterial> materials{};
  std::vector<std::string> notes{};
};

/// Reads a stock file (schema: plans/stock.schema.json); faults and limits as of `read_plan`.
Result<StockList> read_stock(std::string_view text);

}  // namespace berthwright
