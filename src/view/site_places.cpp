#include "view/site_places.h"

#include <algorithm>
#include <stdexcept>

#include "view/called.h"
#include "view/signs.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

// The middle of the side that the front is.
PaperPoint front_of(const SitePlace& place, const PlanView& view) {
  const Rect& box = place.box;
  const Length x = half(box.low.x + box.high.x);
  const Length y = half(box.low.y + box.high.y);
  switch (place.faces) {
    case Wall::front:
      return view({box.low.x, y});
    case Wall::rear:
      return view({box.high.x, y});
    case Wall::left:
      return view({x, box.low.y});
    case Wall::right:
      return view({x, box.high.y});
  }
  throw std::logic_error("Wall out of range");
}

}  // namespace

std::vector<SitedScope> sited_scopes(const std::vector<DrawnConfiguration>& drawn,
                                     std::span<const HeaterPlaces> heaters) {
  std::vector<SitedScope> all;
  const auto add_scope = [&](const HeaterPlaces& heater, const Siting& siting, const SiteScope& scope) {
    SitedScope of{{}, &heater, &siting, &scope};
    for (const Configuration* wanted : scope.configurations)
      for (const DrawnConfiguration& one : drawn)
        if (one.answer->configuration->id == wanted->id) of.in.push_back(&one);
    if (of.in.size() == scope.configurations.size()) all.push_back(std::move(of));
  };
  for (const HeaterPlaces& heater : heaters)
    for (const Siting& siting : heater.sitings) {
      for (const SiteScope& scope : siting.scopes) add_scope(heater, siting, scope);
      if (siting.together.configurations.size() > 1) add_scope(heater, siting, siting.together);
    }
  return all;
}

std::vector<ShownPlace> shown_places(const Plan& plan, const SiteScope& scope, Outlets outlets) {
  std::vector<ShownPlace> places;
  const auto show = [&](const std::optional<SitePlace>& place, const std::string& best_of) {
    if (!place) return;
    const auto same = std::ranges::find_if(places, [&](const ShownPlace& shown) {
      return shown.place->box == place->box && shown.place->faces == place->faces;
    });
    if (same != places.end()) {
      same->best_of.push_back(best_of);
      return;
    }
    places.push_back({"P" + std::to_string(places.size() + 1), &*place, {best_of}});
  };
  show(scope.best, "most to spare of all places");
  for (const SiteRelief& relief : scope.reliefs)
    show(relief.best, "the best without " + rules_text(relief.rules));
  if (outlets == Outlets::left_out) return places;
  for (const OutletSite& site : scope.outlets)
    show(site.best, "the best in reach of " + name_of(plan, site.outlet->id.text()));
  return places;
}

std::vector<Path> place_paths(const SitePlace& place, const PlanView& view) {
  const PaperRing ring = view(Region(place.box)).front();
  return {closed_path(Ink::site_place, ring),
          arrow_head(front_of(place, view), bounds(ring).centre(), paper_mm(16, 10))};
}

LabelWish letter_wish(const DrawnConfiguration& of, const PlanView& view, const ShownPlace& shown) {
  const Rect& box = shown.place->box;
  LabelWish wish = place_wish(of, view, {half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
  wish.wordings = name_wordings(shown.letter, false);
  wish.home = view(Region(box));
  wish.key = shown.letter;
  wish.weight = weight_of_figures;
  return wish;
}

std::string margins_text(const SitedScope& of, const SitePlace& place) {
  if (place.margins.empty()) return "nothing that can burn lies in the room";
  std::string text;
  for (const SiteMargin& margin : place.margins) {
    text += text.empty() ? "" : ". ";
    if (of.together()) text += when_of(*of.plan().configuration(margin.configuration.text())) + " ";
    text += margin_text(of.plan(), margin);
  }
  return text;
}

std::string shown_text(const SitedScope& of, const ShownPlace& shown) {
  return shown.letter + ", " + listed_with_and(shown.best_of) + ": " + place_text(of.plan(), *shown.place) +
         ". " + margins_text(of, *shown.place) + ".";
}

std::string asked_of(const SitedScope& of) {
  const std::string stowed = of.scope->stowed ? " (the plan stows it there)" : "";
  return (of.together() ? "One place for " + configurations_text(*of.scope)
                        : when_of(*of.scope->configurations.front())) +
         stowed;
}

std::string when_title(const SitedScope& of) {
  constexpr std::size_t named = 2;
  if (of.in.size() > named) return std::to_string(of.in.size()) + " configurations";
  std::vector<std::string> names;
  for (const DrawnConfiguration* one : of.in) names.push_back(name_of(*one->answer->configuration));
  return listed_with_and(names);
}

std::string when_id(const SitedScope& of) {
  return of.together() ? "together" : of.in.front()->answer->configuration->id.text();
}

std::string subject_of(const SitedScope& of) {
  const std::string& on = of.siting->stands_on;
  const std::string where = on.empty()      ? ", as high as now"
                            : on == "floor" ? ", on the floor"
                                            : ", on " + name_of(of.plan(), on);
  return name_of(of.plan(), of.heater->heater) + where;
}

std::vector<Group> bedding_groups(const SitedScope& of, const PlanView& view) {
  std::vector<Group> groups;
  for (const DrawnConfiguration* one : of.in) groups.push_back(bedding_group(*one, view));
  return groups;
}

}  // namespace berthwright
