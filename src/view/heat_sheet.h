#pragma once

#include <optional>

#include "view/quiet_sheet.h"

namespace berthwright {

/// Around each heat source of a configuration the zones of the two yardsticks, the distances to what can burn
/// with both nearest points, and the cords of what is plugged in. None where nothing gives heat.
std::optional<QuietSheet> heat_sheet(const DrawnConfiguration& of);

/// A cord over the floor from the appliance to its outlet, as it is seen from above.
std::vector<Path> cord_paths(const CordRun& run, const PlanView& view);
/// Where the outlet's sign stands: at its place, within the room.
PaperPoint outlet_place(const Fixture& outlet, const DrawnConfiguration& of, const PlanView& view);

}  // namespace berthwright
