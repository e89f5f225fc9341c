#pragma once

#include "view/draft.h"
#include "view/site_places.h"

namespace berthwright {

/// Why a heater may stand where it may: a small plan for each rule with the places that it takes, all of one
/// way to look, and one with what all of them leave and the best that can be had. No sheet where the heater
/// is larger than the room; a second one where the first is full.
std::vector<Draft> rule_drafts(const SitedScope& of);

/// "37 %", rounded so that a rule takes no less and leaves no more; "nothing", "less than 1 %",
/// "more than 99 %", "all". The whole must not be empty.
std::string share_text(Area part, Area whole, Rounding rounding);

}  // namespace berthwright
