#pragma once

#include <berthwright/plan/plan.h>

namespace berthwright {

/// The poses that are not stowed, in the order in which they are laid: always the first of the list that
/// waits for nothing; a pose waits for the pieces its `on` names. Problems: "rest.on-stowed", "rest.circle".
Result<std::vector<const Pose*>> laying_order(const Configuration& configuration);

/// A Problem at the place where the pose is written.
Problem problem_at(const Pose& pose, std::string id, std::string message);

}  // namespace berthwright
