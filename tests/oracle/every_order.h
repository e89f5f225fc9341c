#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace berthwright::oracle {

/// A spot as plain numbers: whose it is, what must be taken while it is, and ways that join by number and are
/// barred by spots taken by others.
struct PlainSpot {
  std::size_t piece = 0;
  std::vector<std::size_t> needs;
  std::vector<std::pair<std::size_t, std::vector<std::size_t>>> ways;
};

/// Least number of moves by looking at every stage, nearest first; none: there is no order.
std::optional<std::size_t> fewest_moves(const std::vector<PlainSpot>& spots, std::vector<std::size_t> start,
                                        const std::vector<std::size_t>& goal);

}  // namespace berthwright::oracle
