#pragma once

#include <optional>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// What a person is drawn from. The measures of one drawn figure come from one percentile of ANSUR II each;
/// together they are no real person's: figures illustrate, nothing is measured on them.
struct Build {
  Length stature;
  Length sitting_height;
  Length popliteal_height;
  Length buttock_popliteal;
  Length buttock_knee;
  Length knee_height;
  Length thigh_clearance;
  Length abdominal_depth;
  Length shoulder_breadth;
  Length hip_breadth;
};
Build large_man();    ///< 95th percentile
Build small_woman();  ///< 5th percentile

/// A person on a seat, seen from the side, in a section: `x` along the cut, `y` the height. The back leans
/// on the upright at `back`. The feet stand on the floor at height 0; on a seat too high for that the toes
/// reach down for it, on one too low the feet stand forward of the knees.
struct SeatUnder {
  Length back;
  Length height;             ///< of the cushion as it is pressed down
  bool looks_onward = true;  ///< toward growing x
  /// The feet stay this side of it, the knees rise for that; as far as the legs can bend.
  std::optional<Length> toes_before = std::nullopt;
};
Region seated_figure(const Build& build, const SeatUnder& seat);
/// How far the toes reach where nothing is in their way.
Length toes_of(const Build& build, const SeatUnder& seat);
/// The middle of that head.
Point seated_head(const Build& build, const SeatUnder& seat);

/// A person on the back at height `level`, crown and heels at these places; foreshortened when they are
/// nearer than the stature. std::invalid_argument when they are less than a foot apart.
Region lying_figure(const Build& build, Length crown, Length heels, Length level);
/// The same seen from the feet: what is painted one over the other.
std::vector<Region> figure_from_the_feet(const Build& build, Length middle, Length level);
/// Head and trunk of a person who sits, seen from before or behind, on a cushion pressed down to `level`.
Region trunk_figure(const Build& build, Length middle, Length level);
/// The legs that belong to it: knees before the cushion, feet as in `SeatUnder`.
std::vector<Region> legs_from_before(const Build& build, Length middle, Length level);

}  // namespace berthwright
