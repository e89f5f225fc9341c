#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Where what can burn is nearer to one heat source than is asked, seen from above and at the heights of the
/// source itself; what lies higher or lower may be farther than it looks. Not cut off at the walls. Round
/// parts are polygons around the circle, so no zone is too small.
struct HeatZones {
  std::string source;
  /// Within the distance of the rule "heat.three-feet" from its outline; none: it is no heater.
  std::optional<Region> published;
  /// Within the distances of its data plate from its box, an edge taking the larger of its faces. None: the
  /// plan gives no distance of a face beside, or the source does not stand upright and square to the room.
  std::optional<Region> plate;
};

/// In the order of the arrangement, for everything that gives heat and is not stowed.
std::vector<HeatZones> heat_zones(const Plan& plan, const Arrangement& arrangement);

}  // namespace berthwright
