#pragma once

#include "view/label_candidates.h"

namespace berthwright {

/// For each wish its candidates, cheapest first.
using LabelChoices = std::vector<std::vector<LabelCandidate>>;

/// One candidate for each wish such that no two conflict, at the least total cost; nullptr for a wish that
/// finds no place. The least for certain where few compete; else the best that a bounded search and repairs
/// find. Points into `choices`, which may lose candidates that cannot be part of a better answer.
std::vector<const LabelCandidate*> chosen_labels(LabelChoices& choices);

}  // namespace berthwright
