#pragma once

#include "view/draft.h"

namespace berthwright {

/// The sections of one configuration, on one sheet at the largest standard scale that holds them all; on
/// more where that would be much smaller than each alone could be. None without a bed or seat.
std::vector<Draft> section_drafts(const DrawnConfiguration& of);

}  // namespace berthwright
