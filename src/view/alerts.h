#pragma once

#include "view/label_wishes.h"

namespace berthwright {

/// The alerts of one configuration that are not met or not known, in their order; of several figures about
/// the same things (bare, made up) the worst.
std::vector<const Finding*> alerts_of(const DrawnConfiguration& of);

/// "A1", "A1, A3": how the margin calls those of `findings` that are alerts of this drawing; empty: none is.
/// All drawings of a plan count on, so no two alerts have one number.
std::string tags_of(const DrawnConfiguration& of, std::span<const Finding* const> findings);
std::string tag_of(const DrawnConfiguration& of, const Finding& finding);

/// Alerts about a bed, but for those about heat: its label carries their tags.
std::vector<const Finding*> alerts_about(const DrawnConfiguration& of, const Bed& bed);

/// The clashes of things that need the same space: outlined and crossed out, over everything else.
Group clash_group(const DrawnConfiguration& of, const PlanView& view);

/// Labels of clashes, and of the other alerts that have a place and no line to it.
std::vector<LabelWish> alert_wishes(const DrawnConfiguration& of, const PlanView& view);

}  // namespace berthwright
