#pragma once

#include <optional>
#include <span>
#include <vector>

#include "view/paper.h"

namespace berthwright {

/// The middle of what is seen of the rings under those painted above: of sampled points the one farthest from
/// all that is not seen. None when nothing is.
std::optional<PaperPoint> middle_of_seen(const std::vector<PaperRing>& rings,
                                         std::span<const std::vector<PaperRing>* const> above);

}  // namespace berthwright
