#pragma once

#include "view/draft.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// The configuration in a raised view, the walls before it and all that is higher than 48 in cut away, with
/// the names of what is seen.
std::vector<Draft> raised_drafts(const DrawnConfiguration& of);

}  // namespace berthwright
