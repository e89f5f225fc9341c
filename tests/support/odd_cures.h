#pragma once

#include <vector>

#include "support/trailer_text.h"

namespace berthwright {

/// Trailers whose findings are mended in ways that those of `plans_of_every_status` never need, or not at all.
std::vector<TrailerText> plans_with_odd_cures();

}  // namespace berthwright
