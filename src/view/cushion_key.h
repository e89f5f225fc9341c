#pragma once

#include <berthwright/solve/cover/cover.h>
#include <span>
#include <vector>


#include "view/draft.h"

namespace berthwright {

/// The key to the cushions: of each its outline with all measures, the zip, foam, fabric and which edge is
/// up, and small plans of where it lies in every configuration off the road (the first four are drawn, all
/// are told). As many sheets as they need. `covers` are of the plan.
std::vector<Draft> key_drafts(const Plan& plan, std::span<const Cover> covers);

/// Labels to cut out, two for each cushion: one is sewn into the cover, one stuck on the foam.
std::vector<Draft> label_drafts(const Plan& plan, std::span<const Cover> covers);

}  // namespace berthwright
