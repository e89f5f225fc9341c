#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/solve/heat/bedding.h>
#include <berthwright/solve/heat/cord.h>

namespace berthwright {

/// The floor on which people walk from one bed to the door.
struct Walkway {
  std::string bed;
  Region floor;
};
/// A band of `width`, or of 18 in where that is less (design 4.15), along `path`; corners of the path that
/// stray less than 1/16 in are left out.
Region walkway_along(const std::vector<Point>& path, Length width);

/// How much of a cord lies on a region, and where it first meets it.
struct CordOn {
  Length length;  ///< rounded up
  Point first;
};
/// None: it does not, or only touches its border.
std::optional<CordOn> cord_on(const std::vector<Point>& path, const Region& region);

/// What of a level lies under made-up bedding that begins less than 36 in above it (our own choice), and half
/// of `cord_room` around: a cord is no line.
Region under_bedding(const std::vector<std::pair<const Bed*, Bedding>>& beds, const CordLevel& level);

/// What stands and hangs before an outlet.
struct OutletFront {
  /// Free depth before its face, over the whole face: to the nearest thing that is rigid, soft or made-up
  /// bedding, or to the wall. Zero: something touches it or reaches over it. None: the plan does not say
  /// where it faces.
  std::optional<Length> depth;
  std::string met;  ///< id of that thing or bed; else the wall
  /// The nearest made-up bedding that lies before the face, within 45 degrees of straight ahead in plan (our
  /// own choice), at any height; from the middle of the face. None: none does, or the face is unknown.
  std::optional<Nearest> bedding;
  std::string bed;
};
OutletFront outlet_front(const Plan& plan, const Arrangement& arrangement,
                         const std::vector<std::pair<const Bed*, Bedding>>& beds, const Fixture& outlet);

/// The cord of one appliance that stands in the room in one configuration.
struct PluggedIn {
  std::string appliance;
  std::optional<Length> cord;       ///< none: the plan does not give its length
  const Fixture* outlet = nullptr;  ///< the one named, else the one the cord comes to soonest; nullptr: none
  bool named = false;
  std::optional<CordRun> run;  ///< none: no cord, no outlet, or the appliance lies on its side
  std::optional<CordOn> under_bedding;
  std::vector<std::pair<std::string, Point>> crossings;  ///< bed whose walkway it crosses, and where first
  std::vector<std::string> walkways;                     ///< beds that have a walkway, crossed or not
  OutletFront front;
};

/// In the order of the arrangement, for every portable appliance that is not stowed; running or not, it is
/// taken as plugged in. A run that keeps off walkways and from under bedding (made up, lower than 36 in above
/// the level, our own choice) is taken where the cord is long enough for it, else the shortest.
std::vector<PluggedIn> plugged_in(const Plan& plan, const Arrangement& arrangement,
                                  const std::vector<std::pair<const Bed*, Bedding>>& beds,
                                  const std::vector<Walkway>& walkways);

}  // namespace berthwright
