#pragma once

#include <array>
#include <optional>
#include <vector>

#include "solve/site/site_scene.h"

namespace berthwright {

inline constexpr std::array all_ways{Wall::front, Wall::rear, Wall::left, Wall::right};

/// Where the cord of an appliance comes to one outlet, led off the walkways and from under bedding.
struct OutletReach {
  const Fixture* outlet = nullptr;
  std::array<Region, 4> places;  ///< of the corner, for each of `all_ways`; never too large
  std::optional<CordRun> now;    ///< from where the plan stands it
};

/// For every outlet of the plan; nothing where the length of the cord is not known.
std::vector<OutletReach> outlet_reaches(const Plan& plan, const SiteScene& scene, const Appliance& appliance);

}  // namespace berthwright
