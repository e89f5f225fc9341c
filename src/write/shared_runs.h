#pragma once

#include <cstddef>
#include <vector>

namespace berthwright {

/// What is drawn always together in the same order, so that it can be written once and referred to as one.
/// `drawn` holds the rows of numbers, each below `numbers`, that follow each other in the drawings. Returned
/// are runs in which every number stands once: wherever one of them is drawn, all of its run are, in that
/// order. A number that has no such neighbour is a run of its own; runs come in the order of their first
/// numbers.
std::vector<std::vector<std::size_t>> shared_runs(const std::vector<std::vector<std::size_t>>& drawn,
                                                  std::size_t numbers);

}  // namespace berthwright
