#pragma once

#include <berthwright/solve/heat/bedding.h>

namespace berthwright {

/// The distance of one heat source to one kind of thing that can burn, in one configuration.
struct HeatDistance {
  std::string source;                 ///< id of the heater, oven…
  std::string nearest_to;             ///< id of the bed or cushion
  bool made_up = false;               ///< bedding with overhang and drop
  Nearest nearest;                    ///< from the source to what can burn
  /// Least margin of the data plate: distance less the required one of the face, edge or corner region in
  /// which each point lies; rounded down. None when the plan gives no plate.
  std::optional<Length> plate_margin;
  std::optional<Length> plate_required;  ///< the distance required where the margin is least
  Nearest plate_nearest;                 ///< where it is least; valid when `plate_margin` is set
  bool plate_incomplete = false;         ///< something lies before a face the plate does not give
};

/// For each heat source that is not stowed: its distances to each bed (bare and made up, in the configuration
/// the bed belongs to) and to every other cushion. Deterministic order: source, nearest_to, bare first.
std::vector<HeatDistance> heat_distances(const Plan& plan, const Arrangement& arrangement,
                                         const std::vector<std::pair<const Bed*, Bedding>>& beds);

}  // namespace berthwright
