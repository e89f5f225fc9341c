#pragma once

#include "view/draft.h"

namespace berthwright {

/// For each bed of the configuration over which something hangs within 36 in: the bed seen from above at the
/// largest standard scale, divided by what hangs over it, each part with its least clear height.
std::vector<Draft> height_drafts(const DrawnConfiguration& of);

}  // namespace berthwright
