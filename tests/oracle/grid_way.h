#pragma once

#include <cstddef>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright::oracle {

/// One place of a grid: its distance from the nearest border, and whether a disc there touches the start or
/// has its centre in the goal.
struct FloodCell {
  double clearance;
  bool starts;
  bool ends;
};
/// The clearance of the narrowest place on the best chain of neighbours (eight to each) from a start to an
/// end; negative when there is none. Cell i x rows + k stands at column i, row k.
double flooded(const std::vector<FloodCell>& cells, std::size_t rows);

/// The widest way by flooding a grid of `step` ticks from its widest places down: the clearance of the
/// narrowest place on the best chain of neighbours from a place where a disc touches one of `from` to `goal`;
/// negative when there is none. Plain doubles, shares no code with the solver. Off by about one step.
double widest_clearance(const Region& free, const std::vector<Edge>& from, const Rect& goal, double step);

}  // namespace berthwright::oracle
