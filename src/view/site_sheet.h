#pragma once

#include "view/site_places.h"

namespace berthwright {

/// Where a heater may stand: the regions of its corner, the place with most to spare, or the best that can be
/// had where no place is left; the outlets and its cord.
QuietSheet site_sheet(const SitedScope& of);

/// What is warned of beside any drawing of such places.
std::vector<Note> site_warning(const SitedScope& of);

}  // namespace berthwright
