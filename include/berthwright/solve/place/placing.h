#pragma once

#include <berthwright/solve/place/stock.h>

namespace berthwright {

/// A part where it lies.
struct StockPlace {
  std::size_t part = 0;  ///< index among the parts of the task
  Rect at;               ///< finished size
  bool turned = false;   ///< its length lies across the stock
};

/// A cut through one piece from edge to edge. The blade takes the kerf beyond `at`.
struct ThroughCut {
  Rect piece;      ///< what is cut
  bool crosswise;  ///< parallel to y, at this x; else parallel to x, at this y
  Length at;
  std::size_t stage = 1;
};

/// One sheet or remnant with what is cut from it.
struct StockCut {
  std::size_t kind = 0;  ///< index among the stock of the task
  std::vector<StockPlace> places{};
  std::vector<ThroughCut> cuts{};  ///< in order; none with free cuts
  std::vector<Rect> offcuts{};     ///< worth keeping, the largest first; they do not overlap
};

/// Why a part has no place.
enum class PlacingFault { no_stock, larger_than_any_stock, too_little_stock };

struct UnplacedPart {
  std::size_t part = 0;
  std::size_t count = 0;
  PlacingFault fault = PlacingFault::no_stock;
};

/// A lower bound of the cost and where it is from.
enum class CostBoundKind { area, sizes, every_way };

struct Placing {
  std::vector<StockCut> cuts;
  std::vector<UnplacedPart> unplaced;
  std::int64_t cost = 0;
  std::int64_t bound = 0;  ///< for the parts that are placed: nobody cuts them for less
  CostBoundKind bound_kind = CostBoundKind::area;
  Area largest_offcut{};
  std::size_t rounds = 0;  ///< of taking out and putting in
  bool proven() const { return unplaced.empty() && cost == bound; }
};

struct PlacingEffort {
  std::size_t rounds = 20'000;     ///< for less cost, then as many for offcuts at most
  std::size_t merges = 2'000'000;  ///< of blocks, where every way is gone through
  std::uint64_t seed = 1;
};

/// Least cost found, then the largest offcut worth keeping. The same task and effort give the same placing.
///
/// Where parts are few the least cost of through-cuts is exact (`every_way`): a dynamic programme over the
/// parts still to be cut with, for each choice of parts, all sizes of blocks none of which is smaller both
/// ways. Else parts are taken out and put in again under a limit on the cost. The bound
/// is the least cost, in whole pieces of stock, that satisfies inequalities of areas and of dual feasible
/// functions (Fekete & Schepers 2004; Clautiaux, Alves & Valério de Carvalho 2010).
/// std::invalid_argument: a side of a part that is not positive, a kerf, trim or price below nothing.
Placing placed(const PlacingTask& task, const PlacingEffort& effort = {});

}  // namespace berthwright
