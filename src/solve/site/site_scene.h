#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/site/siting.h>

#include "solve/site/zones.h"

namespace berthwright {

/// The appliance, free of any place.
struct Appliance {
  std::string id;
  const Piece* piece = nullptr;      ///< exactly one of the two is set
  const Fixture* fixture = nullptr;  ///< of kind heater
  Length length;                     ///< along x, as it stands unturned (a fixture: as it is built in)
  Length width;
  Length height;
  Wall faces = Wall::rear;  ///< so standing
  const DataPlate* plate = nullptr;
  bool has_arcs = false;

  Stance stance(Wall way) const;  ///< turned so that its front looks that way
  Turn turn(Wall way) const;      ///< that takes it there
};
Appliance appliance_of(const Piece& piece);
Appliance appliance_of(const Fixture& fixture);

/// One configuration as the appliance finds it: all that stands there without it.
struct SiteScene {
  const Configuration* configuration = nullptr;
  Arrangement arrangement;  ///< without the appliance
  std::vector<std::pair<const Bed*, Bedding>> beddings;
  std::vector<Burnable> burnables;
  Length base;                    ///< of the appliance, above the floor
  std::optional<Region> surface;  ///< what it stands on, where it is not the floor; empty: not there
  CordLevel level;                ///< the same for its cord
  std::vector<Region> swings;     ///< of what opens, at the heights of the appliance
  Region walkways;                ///< from all beds
  std::optional<Placed> now;      ///< where the plan stands it; none: stowed
};

/// `stands_on` as in Siting. The arrangement must be of the plan.
SiteScene scene_without(const Plan& plan, Arrangement arrangement, const Appliance& appliance,
                        const std::string& stands_on);

/// How the yardsticks are kept with the appliance at a place: of each the least margin. Exact.
std::vector<SiteMargin> margins_at(const Plan& plan, const SiteScene& scene, const Appliance& appliance,
                                   const SitePlace& place);

}  // namespace berthwright
