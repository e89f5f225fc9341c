#pragma once

#include "view/draft.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// The configuration in a raised view, the walls before it and what is built in above `raised_height` cut
/// away, with the names of what is seen.
std::vector<Draft> raised_drafts(const DrawnConfiguration& of);

}  // namespace berthwright
