#pragma once

#include <span>

#include <berthwright/solve/site/siting.h>

#include "view/quiet_sheet.h"

namespace berthwright {

/// Where each heater may stand in a configuration, a sheet for each surface: the regions of its corner, the
/// place with most to spare, or the best that can be had where no place is left; the outlets and its cord.
std::vector<QuietSheet> site_sheets(const DrawnConfiguration& of, std::span<const HeaterPlaces> heaters);

}  // namespace berthwright
