#include "solve/site/scope.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "solve/site/greatest.h"

namespace berthwright {
namespace {

constexpr std::array yardsticks{SiteRule::three_feet, SiteRule::data_plate};

using Rules = std::vector<SiteRule>;

bool holds(std::span<const SiteRule> rules, SiteRule rule) {
  return std::ranges::find(rules, rule) != rules.end();
}

// All sets of that many of the rules, each in their order.
std::vector<Rules> sets_of(std::span<const SiteRule> rules, std::size_t size) {
  if (size == 0) return {{}};
  std::vector<Rules> sets;
  for (std::size_t first = 0; first + size <= rules.size(); ++first)
    for (Rules& rest : sets_of(rules.subspan(first + 1), size - 1)) {
      rest.insert(rest.begin(), rules[first]);
      sets.push_back(std::move(rest));
    }
  return sets;
}

class ScopeSearch {
 public:
  ScopeSearch(const Plan& plan, const Appliance& appliance, const std::vector<const SceneWithParts*>& scenes)
      : plan_(plan), appliance_(appliance), scenes_(scenes), forbidden_(plan, appliance, parts(scenes)) {}

  SiteScope answer() const {
    SiteScope scope;
    scope.stowed = true;
    for (const SceneWithParts* one : scenes_) {
      scope.configurations.push_back(one->scene.configuration);
      scope.stowed = scope.stowed && !one->scene.now;
    }
    std::vector<PlacesLeft> free;
    for (std::size_t i = 0; i < all_ways.size(); ++i) {
      scope.ways[i] = regions(all_ways[i]);
      free.push_back({all_ways[i], scope.ways[i].free});
    }
    scope.outlets = outlets(scope.ways);
    if (scenes_.size() == 1) scope.now = stands_now(scope.ways);
    scope.best = best_of(free, yardsticks, {});
    if (!scope.best) scope.reliefs = reliefs(scope.ways);
    return scope;
  }

 private:
  static std::vector<const SceneParts*> parts(const std::vector<const SceneWithParts*>& scenes) {
    std::vector<const SceneParts*> found;
    for (const SceneWithParts* one : scenes) found.push_back(&one->parts);
    return found;
  }

  SiteRegions regions(Wall way) const {
    SiteRegions regions;
    regions.faces = way;
    regions.frame = forbidden_.frame(way);
    for (const SiteRule rule : all_site_rules)
      regions.forbidden.emplace_back(rule, forbidden_.region(rule, way));
    regions.standing = left_without(regions, yardsticks);
    regions.three_feet = left_without(regions, std::array{SiteRule::data_plate});
    regions.data_plate = left_without(regions, std::array{SiteRule::three_feet});
    regions.free = left_without(regions, {});
    return regions;
  }

  SitePlace place_at(Point corner, Wall way) const {
    const Stance stance = appliance_.stance(way);
    SitePlace place{{corner, corner + Vector{stance.along, stance.across}}, way, {}};
    std::vector<SiteMargin> worst;
    for (const SceneWithParts* one : scenes_)
      for (SiteMargin& next : margins_at(plan_, one->scene, appliance_, place)) {
        const auto found = std::ranges::find(worst, next.yardstick, &SiteMargin::yardstick);
        if (found == worst.end())
          worst.push_back(std::move(next));
        else if (next.margin < found->margin)
          *found = std::move(next);
      }
    std::ranges::sort(worst, {}, &SiteMargin::yardstick);
    place.margins = std::move(worst);
    return place;
  }

  std::optional<StandsNow> stands_now(const std::array<SiteRegions, 4>& ways) const {
    const SiteScene& scene = scenes_.front()->scene;
    if (!scene.now || scene.now->solid.base() != scene.base) return std::nullopt;
    const std::optional<Wall> faces = way_of_front(*scene.now);
    if (!faces) return std::nullopt;
    const Point corner = scene.now->solid.outline().bounds().low;
    StandsNow now{place_at(corner, *faces), {}};
    const auto way = std::ranges::find(ways, *faces, &SiteRegions::faces);
    const bool inside = way->frame && Region(*way->frame).side_of(corner) != Side::outside;
    for (const auto& [rule, region] : way->forbidden) {
      const auto margin = std::ranges::find(now.place.margins, rule, &SiteMargin::yardstick);
      const bool broken = rule == SiteRule::cord ? !is_plugged_in()
                          : is_yardstick(rule)
                              ? margin != now.place.margins.end() && margin->margin < Length{}
                              : region.side_of(corner) == Side::inside;
      if (broken || (rule == SiteRule::room && !inside)) now.breaks.push_back(rule);
    }
    return now;
  }

  // Exactly, where regions of places are a little too small. True where the cord is not known.
  bool is_plugged_in() const {
    const std::vector<OutletReach>& outlets = scenes_.front()->parts.outlets;
    return outlets.empty() || std::ranges::any_of(outlets, [&](const OutletReach& reach) {
             return reach.now && reach.now->reached() && reach.now->length <= appliance_.piece->cord->length;
           });
  }

  std::vector<OutletSite> outlets(const std::array<SiteRegions, 4>& ways) const {
    constexpr std::array aside{SiteRule::cord, SiteRule::three_feet, SiteRule::data_plate};
    std::vector<Region> standing;
    for (const SiteRegions& way : ways) standing.push_back(left_without(way, aside));
    std::vector<OutletSite> sites;
    const std::vector<OutletReach>& reaches = scenes_.front()->parts.outlets;
    for (std::size_t i = 0; i < reaches.size(); ++i) {
      OutletSite site{reaches[i].outlet, scenes_.size() == 1 ? reaches[i].now : std::nullopt, std::nullopt};
      std::vector<PlacesLeft> places;
      for (std::size_t k = 0; k < ways.size(); ++k)
        places.push_back({ways[k].faces, common(standing[k], forbidden_.within_reach(i, ways[k].faces))});
      site.best = best_of(places, yardsticks, -forbidden_.most_asked());
      sites.push_back(std::move(site));
    }
    return sites;
  }

  // Beyond any distance where nothing that counts was compared.
  static Length margin_of(const SitePlace& place, std::span<const SiteRule> counted) {
    Length least = 2 * farthest;
    for (const SiteMargin& margin : place.margins)
      if (holds(counted, margin.yardstick)) least = std::min(least, margin.margin);
    return least;
  }

  std::optional<SitePlace> best_of(const std::vector<PlacesLeft>& from, std::span<const SiteRule> raised,
                                   Length at_least) const {
    std::optional<SitePlace> best;
    std::tuple<Length, Area> worth;
    for (const PlacesLeft& one : greatest_margin(forbidden_, from, raised, at_least)) {
      const Point middle = middle_of(one.places);
      SitePlace place = place_at(marked_near(middle, one.places, plan_->unit), one.way);
      // On the very border of the region the corner of a zone may have been rounded inward by a tick.
      if (margin_of(place, raised) < at_least) place = place_at(middle, one.way);
      const std::tuple next(margin_of(place, raised), one.places.area());
      if (best && next <= worth) continue;
      best = std::move(place);
      worth = next;
    }
    return best;
  }

  std::optional<SiteRelief> relief(const std::array<SiteRegions, 4>& ways, const Rules& aside) const {
    std::vector<PlacesLeft> places;
    for (const SiteRegions& way : ways) places.push_back({way.faces, left_without(way, aside)});
    Rules raised;
    std::ranges::copy_if(aside, std::back_inserter(raised), is_yardstick);
    const bool of_yardsticks = !raised.empty();
    if (!of_yardsticks) raised.assign(yardsticks.begin(), yardsticks.end());
    std::optional<SitePlace> best =
        best_of(places, raised, of_yardsticks ? -forbidden_.most_asked() : Length{});
    return best ? std::optional(SiteRelief{aside, std::move(best)}) : std::nullopt;
  }

  std::vector<SiteRelief> reliefs(const std::array<SiteRegions, 4>& ways) const {
    const std::span<const SiteRule> all(all_site_rules);
    constexpr std::size_t solid_rules = 2;  // room and solids come first
    for (const std::span<const SiteRule> rules : {all.subspan(solid_rules), all})
      for (std::size_t size = 1; size <= rules.size(); ++size) {
        std::vector<SiteRelief> found;
        for (const Rules& aside : sets_of(rules, size))
          if (std::optional<SiteRelief> one = relief(ways, aside)) found.push_back(*std::move(one));
        if (!found.empty()) return found;
      }
    return {{{SiteRule::room}, std::nullopt}};
  }

  const Plan& plan_;
  const Appliance& appliance_;
  const std::vector<const SceneWithParts*>& scenes_;
  ForbiddenPlaces forbidden_;
};

}  // namespace

Region left_without(const SiteRegions& regions, std::span<const SiteRule> aside) {
  if (!regions.frame) return {};
  std::vector<Region> taken;
  for (const auto& [rule, region] : regions.forbidden)
    if (!holds(aside, rule)) taken.push_back(region);
  return without(*regions.frame, united(taken));
}

SiteScope scope_of(const Plan& plan, const Appliance& appliance,
                   const std::vector<const SceneWithParts*>& scenes) {
  return ScopeSearch(plan, appliance, scenes).answer();
}

}  // namespace berthwright
