#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "solve/site/outlet_reach.h"

namespace berthwright {

/// What each rule forbids in one scene, ready to be swept with a stance.
struct SceneParts {
  std::vector<Polygon> outside;  ///< of the room or surface; convex, as are the others
  std::vector<Polygon> solids;
  std::vector<Polygon> swings;
  std::vector<Polygon> walkways;
  std::vector<OutletReach> outlets;
  std::vector<BurnGroup> burning;
};
SceneParts parts_of(const Plan& plan, const SiteScene& scene, const Appliance& appliance);

/// The places that rules forbid in one or several scenes at once. Points into its arguments.
class ForbiddenPlaces {
 public:
  ForbiddenPlaces(const Plan& plan, const Appliance& appliance, std::vector<const SceneParts*> scenes);

  /// Where the corner may be at all, for the way the front looks; none: the appliance is longer than the
  /// room.
  std::optional<Rect> frame(Wall way) const;
  /// Polygons that together cover what the rule forbids, with `more` asked of a yardstick; of any but the
  /// cord's, which is not made of them.
  std::vector<Polygon> zones(SiteRule rule, Wall way, Length more = {}) const;
  /// What the rule forbids within the frame.
  Region region(SiteRule rule, Wall way) const;
  /// The places from which the cord comes to the outlet in every scene; `index` among those of a scene.
  Region within_reach(std::size_t index, Wall way) const;
  /// Less than what any yardstick asks by this: then no zone is left.
  Length most_asked() const;
  /// Length and width together of all that is looked at: no distance in plan is greater.
  Length everywhere() const { return everywhere_; }
  /// Something burns in one of the scenes.
  bool any_burns() const;

 private:
  Region out_of_reach(const Rect& frame, Wall way) const;

  const Appliance& appliance_;
  std::vector<const SceneParts*> scenes_;
  Rect room_;
  Length three_feet_;
  Length plate_more_;
  Length everywhere_;
};

/// What is left of `from` outside of all polygons; an early end once nothing is.
Region left_of(Region from, std::span<const Polygon> polygons);

}  // namespace berthwright
