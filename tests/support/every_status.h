#pragma once

#include <vector>

#include "support/trailer_text.h"

namespace berthwright {

/// Trailers whose findings, taken together, hold every rule in every status that it can have.
std::vector<TrailerText> plans_of_every_status();

}  // namespace berthwright
