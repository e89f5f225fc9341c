#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// What the plan does not say of the road: ids in the order of the plan, leaves last. A piece that is stowed
/// in a leaf, or in a fixture that opens, is held as that is, and so not named apart.
struct RoadHolds {
  const Configuration* configuration = nullptr;  ///< none: the plan has no configuration "road"
  std::vector<std::string> loose;                ///< pieces and leaves of which no hold is named
  std::vector<std::string> on_edge;  ///< of these the pieces that stand on edge; not among `loose`
  std::vector<std::string> heaters;  ///< and the heaters that stand about; not among `loose`

  std::vector<std::string>
      running;  ///< heaters that the plan does not call off under way, held or not; nowhere else

  bool all_named() const { return loose.empty() && on_edge.empty() && heaters.empty() && running.empty(); }
};

/// The trailer is under way in it: all is shut, and nobody sits in it.
bool is_on_the_road(const Configuration& configuration);

RoadHolds holds_on_the_road(const Plan& plan);

}  // namespace berthwright
