#pragma once

#include "solve/place/placing_search.h"

namespace berthwright {

/// So many pieces of each stock.
struct StockChoice {
  std::vector<std::size_t> counts{};
  std::int64_t cost = 0;
  Int128 room = 0;
};

/// Those that cost at least and at most that and whose room is enough for all parts, the roomiest first. Of
/// very many only some.
std::vector<StockChoice> stock_choices(const KerfTask& task, std::int64_t cheapest, std::int64_t dearest);

}  // namespace berthwright
