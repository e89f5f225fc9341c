#pragma once

#include <berthwright/solve/way/clear_opening.h>
#include <berthwright/solve/way/way_out.h>

namespace berthwright {

/// How near an opening must be to a bed to be got out of from it (NFPA 1192, 6.2.1.3).
inline constexpr Length in_reach = 24_in;
/// No body gets through what is narrower than this (our own choice).
inline constexpr Length bodily = 12_in;

/// The openings of the plan that may serve to get out, in one configuration: doors that open, and whatever
/// the plan marks as a way out; in the order of the plan.
struct ExitOpening {
  ClearOpening clear;
  InwardSwing swing;
  bool is_door() const { return clear.opening->kind == Opening::Kind::door; }
  bool opens() const { return clear.opening->swing != Opening::Swing::fixed && swing.is_free(); }
};
std::vector<ExitOpening> exit_openings(const Plan& plan, const Arrangement& arrangement);

/// A bed and what lies on it.
struct BedPlace {
  const Bed& bed;
  const Mattress& mattress;
};
/// Whether a body gets from the bed to the opening: within 24 in of it in plan, open over at least 17 in of
/// height above the mattress (the height a body takes, NFPA 1192), and not beginning above another bed that
/// lies over this one.
bool is_reached_from(const Plan& plan, const Arrangement& arrangement, const BedPlace& place,
                     const Opening& opening);

/// How people get out of one bed.
struct BedExits {
  std::vector<WayOut> ways;  ///< to each door
  std::vector<Length> away;  ///< of each of the configuration's exit openings from the bed
  std::vector<bool> reached;  ///< and whether it is reached from the bed (`is_reached_from`)
  /// Ids, sorted: doors reached by a way as wide as the rule "way.aisle" asks, and openings that are reached
  /// from the bed that hold 24 x 17 in; those that do not open here are left out.
  std::vector<std::string> counted;
  /// The same for ways and openings of at least 12 in: where there is none, nobody gets out.
  std::vector<std::string> passable;
};
BedExits exits_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed, const Mattress& mattress,
                  const std::vector<ExitOpening>& openings);

}  // namespace berthwright
