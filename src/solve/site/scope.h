#pragma once

#include <vector>

#include "solve/site/forbidden.h"

namespace berthwright {

/// The scenes of one or several configurations with what is forbidden in each; of one appliance.
struct SceneWithParts {
  SiteScene scene;
  SceneParts parts;
};

/// The answer for all scenes at once. At least one.
SiteScope scope_of(const Plan& plan, const Appliance& appliance,
                   const std::vector<const SceneWithParts*>& scenes);

}  // namespace berthwright
