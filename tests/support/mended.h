#pragma once

#include <optional>

#include "support/trailer_text.h"

namespace berthwright {

/// The plan with a finding's cure done to it, all that is `then` to do included, as a shop would and in no other
/// way; none where a plan cannot show it (something to be found out, or words without a figure).
std::optional<Plan> mended(const Answered& before, const Finding& finding);

/// The finding of the same rule, bed, configuration and first subject that is not met or unknown; none: it is
/// mended.
std::optional<Finding> still_open(const Answered& after, const Finding& finding);

}  // namespace berthwright
