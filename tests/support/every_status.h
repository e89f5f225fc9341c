#pragma once

#include <memory>
#include <vector>

#include "support/trailer_text.h"

namespace berthwright {

/// Trailers whose findings, taken together, hold every rule in every status that it can have.
std::vector<TrailerText> plans_of_every_status();
/// The same with their answers, made once in a process.
const std::vector<std::unique_ptr<const Answered>>& answers_of_every_status();

}  // namespace berthwright
