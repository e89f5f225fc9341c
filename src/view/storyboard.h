#pragma once

#include <berthwright/solve/convert/steps.h>

#include "view/draft.h"

namespace berthwright {

/// The storyboard of a conversion: one frame a step, in rows, on as many pages as it takes; of one without an
/// order a page that says so; nothing where nothing is to be done.
std::vector<Draft> story_drafts(const Plan& plan, const Conversion& conversion);

}  // namespace berthwright
