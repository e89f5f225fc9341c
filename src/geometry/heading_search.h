#pragma once

#include <vector>

#include "geometry/slab_search.h"

namespace berthwright {

/// A rectangle of great value at a heading that is none of the axes.
struct Candidate {
  Heading heading;
  Span2 span;
  double value = 0;
};

/// Headings other than the axes that may hold more than `floors[g]` of goal g, the best first, at most
/// six a goal: every edge direction and one direction a degree are tried for all goals at once, then
/// the peaks are followed to about 1e-7 rad. A width is sought with `turning_slack` to spare, so that corners
/// may be rounded; where that costs over a hundredth of the length, the direction itself is offered with half
/// of `turning_slack` missing, unless it is an axis to within 1e-6 rad. Deterministic.
std::vector<std::vector<Candidate>> turned_candidates(const Border& border, const std::vector<Goal>& goals,
                                                      const std::vector<double>& floors);

}  // namespace berthwright
