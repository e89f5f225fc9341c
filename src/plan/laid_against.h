#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/document.h"

namespace berthwright {

/// What a pose touches on the side from which its place is measured.
struct Touched {
  enum class Thing { fixture, pose, low_wall, high_wall };
  Thing thing = Thing::fixture;
  std::size_t index = 0;  ///< into the plan's fixtures, or the poses of the same configuration
  bool at_low = true;     ///< the low side of the pose touches; else its high side
};

/// Of one pose: what it is laid against along the room and across it, and the fixture whose top its base is.
struct LaidAgainst {
  std::size_t configuration = 0;
  std::size_t pose = 0;
  std::optional<Touched> along;
  std::optional<Touched> across;
  std::optional<std::size_t> held_level_with;
};

/// Every pose of the plan of `root` that touches something so, where the distance in the file is not zero: at
/// zero it touches a wall or a fixture anyhow. Cushions are laid against cushions sooner than against what is
/// rigid, rigid pieces against nothing soft, and pieces sooner than fixtures; nothing touches what begins
/// above 48 in.
std::vector<LaidAgainst> laid_against(const Plan& plan, const Node& root);

/// The parts with these poses moved up against the same things again. What would be laid against itself over
/// others stays.
PlanParts laid_again(PlanParts parts, const std::vector<LaidAgainst>& poses);

}  // namespace berthwright
