#pragma once

#include <berthwright/solve/finding.h>
#include <berthwright/solve/heat/bedding.h>

namespace berthwright {

/// The distance of one heat source to one kind of thing that can burn, in one configuration. Other things are
/// fixtures that the plan says can burn.
struct HeatDistance {
  enum class Kind { bed, cushion, curtain, other };
  std::string source;      ///< id of the heater, oven…
  std::string nearest_to;  ///< id of the bed, cushion, curtain or other thing
  Nearest nearest;         ///< from the source to what can burn, as drawn with chords
  Nearest plate_nearest;   ///< where the plate's margin is least; valid when `plate_margin` is set
  Length distance;         ///< the one to print and compare: rounded down, less 0.05 mm an arc
  /// Least margin of the data plate: distance less the required one of the face, edge or corner region in
  /// which each point lies; rounded down, less 0.05 mm an arc. None when no face in question is given.
  std::optional<Length> plate_margin;
  std::optional<Length> plate_required;    ///< the distance required where the margin is least
  std::vector<ApplianceFace> plate_faces;  ///< before which that place lies: two of an edge, three of a
                                           ///< corner; none where it lies within the appliance
  std::vector<ApplianceFace>
      missing_faces;          ///< before which something lies and which the plate does not give
  Kind kind = Kind::cushion;  ///< of `nearest_to`
  bool made_up = false;       ///< bedding with overhang and drop
  /// Ids, sorted, of rigid things that do not burn and that together stand on every straight line of least
  /// distance; empty where a line is free. Told, and counted nowhere.
  std::vector<std::string> shielded_by;
  /// Something lies before a face the plate does not give, or the source does not stand upright and square to
  /// the room, as every plate means it to.
  bool plate_incomplete = false;
};

/// It gives heat and is not stowed: off but plugged in counts as running.
bool gives_heat(const Placed& thing);
/// What the trade calls a heater, portable or built in: of these alone the published 3 ft is asked.
bool is_heater(const Placed& source);

/// The data plate of what gives heat in this configuration; nullptr when it has none.
const DataPlate* plate_of(const Placed& source);

/// For each heat source that is not stowed (off but plugged in counts as running): its distances to each of
/// `beds`, bare and made up, to every curtain, every cushion that belongs to none of them, and every fixture
/// that the plan says can burn. For the plate a source counts as its box. Deterministic order: source,
/// nearest_to, bare first.
std::vector<HeatDistance> heat_distances(const Plan& plan, const Arrangement& arrangement,
                                         const std::vector<std::pair<const Bed*, Bedding>>& beds);

}  // namespace berthwright
