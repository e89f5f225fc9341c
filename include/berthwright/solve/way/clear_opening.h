#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/bed/mattress.h>
#include <berthwright/solve/finding.h>

namespace berthwright {

/// What two published tests ask of an opening through which a person gets out.
inline constexpr Sides vehicle_opening{24_in, 17_in};  ///< NFPA 1192: across and high, a body lying level
/// What stands this near inside of an opening takes of it (our own choice: the height a body needs).
inline constexpr Length before_an_opening = 17_in;
inline constexpr Length dwelling_side = 22_in;         ///< 24 CFR 3280.404: smallest side, and area
inline constexpr Area dwelling_area = Area::rectangle(60_in, 12_in);

/// How much of an opening is clear in one configuration: seen square to its wall, less everything that
/// stands within 17 in inside of it (our own choice: the height of the opening a body needs), but for
/// curtains. `length` of sides is across, `width` is high.
struct ClearOpening {
  const Opening* opening = nullptr;
  /// Of the level rectangles that are clear the one that comes nearest to, or is most to spare of, 24 x 17
  /// in; so on the careful side, as an ellipse may find room in a corner where no rectangle does. Zero: none.
  Sides for_vehicle;
  Sides for_dwelling;                   ///< the same for a smallest side of 22 in, of equal ones the largest
  std::vector<std::string> blocked_by;  ///< ids of what covers a part of it, in order

  bool holds_vehicle_opening() const;  ///< 24 in across and 17 in high, no less
  bool holds_dwelling_opening() const;
};
ClearOpening clear_opening(const Plan& plan, const Arrangement& arrangement, const Opening& opening);

/// How far an opening lies from a bed in plan, rounded up; zero: beside or over it. Measured to the line of
/// its wall.
Length distance_from_bed(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                         const Opening& opening);

/// An opening that turns inward about one of its sides, and what stands in the quarter circle of its leaf.
struct InwardSwing {
  const Opening* opening = nullptr;
  std::vector<std::string> blocked_by;  ///< ids, in order; of a leaf without hinge: about either side
  bool known = true;  ///< false: the plan names no hinge, and about one side or the other something is met

  bool is_free() const { return known && blocked_by.empty(); }
};
/// The leaf as a polygon around its quarter circle, too large by at most 0.13 %; its thickness is not known.
/// One about its hinge, or about each of its sides where the plan names no hinge.
std::vector<Solid> inward_sweeps(const Interior& room, const Opening& opening);
InwardSwing inward_swing(const Plan& plan, const Arrangement& arrangement, const Opening& opening);

}  // namespace berthwright
