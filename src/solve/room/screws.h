#pragma once

#include <span>
#include <string_view>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// The wood of a cleat and of what it is screwed to, by its specific gravity.
enum class CleatWood { douglas_fir, spruce };  ///< 0.50, 0.42

/// What one wood screw carries sideways before any adjustment; it reaches ten diameters into the wood behind.
struct ScrewValue {
  std::string_view size;  ///< "#8"
  Length cleat;           ///< thickness of what is screwed on
  CleatWood wood;
  Mass load;
};

/// #6 to #12 through cleats of 1/2, 3/4 and 1 1/2 in.
std::span<const ScrewValue> screw_values();
/// The screw that is assumed where the plan does not say: #8 through 3/4 in of spruce.
const ScrewValue& assumed_screw();

/// 30 lb per sq ft of the area that leans on the ledge, rounded up.
Mass load_of_sleepers(Area leaning);
/// That and 250 lb beside the ledge.
Mass load_on_ledge(Area leaning);
/// The least count that carries it, never less than two.
Count screws_for(Mass load, const ScrewValue& screw);

}  // namespace berthwright
