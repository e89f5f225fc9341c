#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/solve/heat/cord.h>
#include <berthwright/solve/heat/distances.h>
#include <berthwright/solve/site/stowing.h>

namespace berthwright {

/// What a place of a heater must satisfy. Each rule forbids a set of places of its own.
enum class SiteRule {
  room,     ///< inside the room at all its heights; on a named surface, wholly over it
  solids,   ///< in no other thing's space
  swings,   ///< out of the way of doors, flaps, drawers, lids and of what opens inward, as far as it is made
            ///< to
  walkway,  ///< off the way from each bed to a door, taken 18 in wide (as for rule "cord.walkway")
  cord,     ///< plugged into an outlet by its own cord (rule "cord.reach"), led off the walkways and from
            ///< under bedding
  three_feet,  ///< the published distance to what can burn (rule "heat.three-feet")
  data_plate   ///< the maker's distances (rule "heat.data-plate")
};
inline constexpr std::array all_site_rules{SiteRule::room,      SiteRule::solids, SiteRule::swings,
                                           SiteRule::walkway,   SiteRule::cord,   SiteRule::three_feet,
                                           SiteRule::data_plate};
constexpr bool is_yardstick(SiteRule rule) {
  return rule == SiteRule::three_feet || rule == SiteRule::data_plate;
}

/// How one of the two yardsticks is kept at a place, where it is kept least.
struct SiteMargin {
  SiteRule yardstick = SiteRule::three_feet;
  ConfigurationId configuration;
  HeatDistance distance;
  Length asked;
  Length margin;  ///< what `distance` has to spare of what is asked; negative: the yardstick is not kept
};

/// The heater at one place. Margins are measured there exactly, as a check of the plan would.
struct SitePlace {
  Rect box;                         ///< in plan
  Wall faces = Wall::rear;          ///< the way its front looks
  std::vector<SiteMargin> margins;  ///< of each yardstick that could be compared with something
  std::optional<Length> least_margin() const;
};

/// Where the plan stands the heater, and the rules that it breaks there.
struct StandsNow {
  SitePlace place;
  std::vector<SiteRule> breaks;
};

/// Where the heater may stand while its front looks one way. A place is that of its corner nearest to the
/// front and the left wall. Round zones are polygons around the circle: no region is too large but for the
/// rounding of corners to the tick, and a place into which it fits to the tick is none.
struct SiteRegions {
  Wall faces = Wall::rear;
  std::optional<Rect>
      frame;  ///< all places within the room's length and width; none: it is longer than those
  std::vector<std::pair<SiteRule, Region>> forbidden;  ///< by each rule, of the places in the frame
  Region standing;                                     ///< what no rule but the yardsticks forbids
  Region three_feet;                                   ///< of these where the published distance is kept
  Region data_plate;                                   ///< and where the maker's are
  Region free;                                         ///< where both are
};

/// The places that every rule but those set aside leaves.
Region left_without(const SiteRegions& regions, std::span<const SiteRule> aside);

/// How an outlet of the plan does: whether the heater's own cord comes to it, and the best place from which
/// it does.
struct OutletSite {
  const Fixture* outlet = nullptr;
  std::optional<CordRun> now;  ///< from where the plan stands the heater; of one configuration
  /// Of the places in its reach that only the yardsticks may forbid: where their least margin is greatest.
  /// None: its cord comes here from no such place.
  std::optional<SitePlace> best;
};

/// A least set of rules without which some place would be left, and the best place then: where the least
/// margin of those yardsticks that are among them (else of both) is greatest. Walls and solids are among them
/// only where nothing else leaves a place, since nobody can set them aside.
struct SiteRelief {
  std::vector<SiteRule> rules;
  std::optional<SitePlace> best;
};

/// The answer for one configuration, or for several at once.
struct SiteScope {
  std::vector<const Configuration*> configurations;
  bool stowed = false;  ///< the plan stows the heater in (each of) them
  /// Of one configuration in which the plan stands it upright on this surface.
  std::optional<StandsNow> now;
  std::vector<OutletSite> outlets;  ///< in the order of the plan; none where the cord is not known
  std::array<SiteRegions, 4> ways;
  /// The free place where the least margin of both yardsticks is greatest: to within 3/16 in and, of what
  /// round zones decide, 0.13 % of its distance; one that a tape can mark, if there is such. None: no place
  /// is free.
  std::optional<SitePlace> best;
  std::vector<SiteRelief> reliefs;  ///< where no place is free: every least set, in the order of the rules

  bool has_place() const { return best.has_value(); }
};

/// One heater on one surface.
struct Siting {
  std::string stands_on;          ///< "floor", the id of what carries it, or empty: as high as it is built in
  std::vector<SiteScope> scopes;  ///< of each chosen configuration
  /// All at once in which the plan does not stow it (of none: all); of the only one the same as its scope.
  SiteScope together;
};

/// Everything asked about one heater.
struct HeaterPlaces {
  std::string heater;
  std::vector<Siting> sitings;   ///< on the floor, then on each surface that a pose names
  std::vector<StowFit> stowing;  ///< of a portable one
  /// Rules of which the plan lacks a figure (the data plate or a face of it, the cord or any outlet), so that
  /// what is free may not be.
  std::vector<SiteRule> not_compared;

  bool has_place() const;
};

/// For every heater of the plan, pieces first, in the configurations chosen (ids of the plan; none: all but
/// the road). Where the plan stows it, a configuration is answered as though it stood there. Beds count made
/// up. Problems as of `answered`. Points into `plan`.
Result<std::vector<HeaterPlaces>> heater_places(const Plan& plan, std::span<const ConfigurationId> chosen);

/// 0: each heater has a place that keeps every rule; 1: one has none; 2: each has, but a figure is lacking,
/// or the plan shows no heater.
int exit_code(std::span<const HeaterPlaces> heaters);

}  // namespace berthwright
