#pragma once

#include <optional>

#include "view/quiet_sheet.h"

namespace berthwright {

/// The widest way out of each bed of a configuration at its true width, where it is narrowest, the openings
/// to get out by and the alarms. None on the road, and where there is neither a bed nor an opening nor an
/// alarm.
std::optional<QuietSheet> way_sheet(const DrawnConfiguration& of);

}  // namespace berthwright
