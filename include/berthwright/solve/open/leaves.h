#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// How far a leaf has come: doors, flaps and hinged lids turn, drawers slide, a loose lid is raised.
struct Reach {
  int degrees = 0;  ///< whole ones, rounded down; zero for what slides or is raised
  Length travel;    ///< zero for what turns
  friend auto operator<=>(const Reach&, const Reach&) = default;
};

/// Something that a leaf meets on its way.
struct LeafStop {
  std::string thing;  ///< id; empty: a wall, the roof or the floor of the room
  Reach at;           ///< the leaf gets as far as this before it meets the thing
  Point3 where;  ///< in what the two share at the next whole degree, or where a sliding leaf first meets it
};

/// How far one leaf opens among what stands there.
struct LeafReach {
  const Leaf* leaf = nullptr;
  bool known =
      true;  ///< false: a lid drawn over more than the top of its fixture has, so nothing is measured
  std::vector<std::string>
      lifted;                   ///< pieces on a lid, and what they carry, in the order they are lifted off
  Reach whole;                  ///< as the plan gives it
  Reach free;                   ///< `whole` where nothing stops it
  std::vector<LeafStop> stops;  ///< the first met first, else in the order of the arrangement, the room last

  bool is_full() const { return known && stops.empty(); }
};

/// How high a lid that lifts out must be raised before it can be tilted and carried away: our own choice.
inline constexpr Length lift_out = Length::inches(2);

/// Every leaf of the plan, in its order, with all others shut. A leaf has no thickness; its sweep is covered
/// from outside, by at most 0.05 mm up to a width of 5 m; touching stops nothing. Not in its way: its own
/// fixture, what that contains or is built into, curtains, and (a lid) what is lifted off it first.
std::vector<LeafReach> leaves_in(const Plan& plan, const Arrangement& arrangement);

/// The same among what is built in alone.
std::vector<LeafReach> leaves_of_fixtures(const Plan& plan);

/// The plan of what the leaf passes through on its whole way, as the plan says it opens, between two heights
/// above the floor (`low` < `high`); empty where it keeps below or above them. Never too small.
Region leaf_sweep(const Fixture& fixture, const Leaf& leaf, Length low, Length high);

}  // namespace berthwright
