#pragma once

#include <optional>

#include "support/trailer_text.h"

namespace berthwright {

/// The plan with a finding's cure done to it, all that is `then` to do included, as a shop would and in no
/// other way; none where a plan cannot show it (something to be found out, or words without a figure).
/// `away`: which way a thing goes of which the cure only says that it moves away: toward a wall, up, down, or
/// straight from what it is too near.
enum class Away { front, rear, left, right, up, down, straight };
std::optional<Plan> mended(const Answered& before, const Finding& finding, Away away);

/// The finding of the same rule, bed, configuration and things that is not met, or still unknown; none: it is
/// mended.
std::optional<Finding> still_open(const Answered& after, const Finding& finding);

}  // namespace berthwright
