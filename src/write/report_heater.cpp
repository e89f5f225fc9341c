#include <berthwright/write/outputs.h>

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/siting_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

constexpr Indent under_place{"      ", "        "};

// Where several configurations are asked about, each margin is told with its own.
std::string margin_lines(const Plan& plan, const SiteScope& scope, const SitePlace& place) {
  std::string text;
  for (const SiteMargin& margin : place.margins) {
    const Configuration* when = plan.configuration(margin.configuration.text());
    const bool several = scope.configurations.size() > 1 && when != nullptr;
    text += wrapped((several ? when_of(*when) + ": " : "") + margin_text(plan, margin) + ".", under_place);
  }
  return text.empty() ? wrapped("Nothing that can burn lies in the room.", under_place) : text;
}

std::string place_lines(const Plan& plan, const SiteScope& scope, const std::string& lead,
                        const SitePlace& place) {
  return wrapped(lead + ", " + place_text(plan, place) + ":", under_item) + margin_lines(plan, scope, place);
}

std::string found_lines(const Plan& plan, const SiteScope& scope) {
  std::string text;
  for (const std::string& places : free_texts(plan, scope))
    text += wrapped("Free, " + places + ".", under_item);
  return text + place_lines(plan, scope, "Most to spare", *scope.best);
}

std::string relief_lines(const Plan& plan, const SiteScope& scope) {
  std::string text;
  for (const SiteRelief& relief : scope.reliefs)
    if (relief.best)
      text += place_lines(plan, scope, "At best, without " + rules_text(relief.rules), *relief.best);
  return text;
}

std::string now_lines(const Plan& plan, const SiteScope& scope) {
  if (!scope.now) return {};
  return place_lines(plan, scope, "As the plan stands it", scope.now->place) +
         wrapped("There it " + breaks_text(*scope.now) + ".", under_place);
}

std::string scope_lines(const Plan& plan, const HeaterPlaces& heater, const SiteScope& scope,
                        const std::string& when) {
  const std::string stowed = scope.stowed ? " (the plan stows it there)" : "";
  std::string text = wrapped(when + stowed + ": " + verdict_text(heater, scope) + ".", item);
  text += now_lines(plan, scope);
  if (scope.has_place()) return text + found_lines(plan, scope);
  text += relief_lines(plan, scope);
  const std::string before_bed = stow_before_bed(plan, heater, scope);
  return before_bed.empty() ? text : text + wrapped("So: " + before_bed, under_item);
}

std::string outlet_lines(const Plan& plan, const HeaterPlaces& heater, const SiteScope& scope,
                         const OutletSite& site) {
  std::string text = when_of(*scope.configurations.front()) + ", " + name_of(plan, site.outlet->id.text());
  if (site.now)
    text += ": as the plan stands " + name_of(plan, heater.heater) + ", " +
            run_text(plan, heater.heater, *site.now);
  text += ". ";
  if (!site.best) return wrapped(text + "It reaches from no place where the heater may stand.", item);
  return wrapped(text + "The best place in reach has " + place_text(plan, *site.best) + ":", item) +
         margin_lines(plan, scope, *site.best);
}

std::string outlets_part(const Plan& plan, const HeaterPlaces& heater, const Siting& siting) {
  std::string text;
  for (const SiteScope& scope : siting.scopes)
    for (const OutletSite& site : scope.outlets) text += outlet_lines(plan, heater, scope, site);
  return text.empty() ? text : "\n" + wrapped(outlets_heading(plan, heater.heater), {}) + text;
}

std::string siting_lines(const Plan& plan, const HeaterPlaces& heater, const Siting& siting) {
  const std::string surface = surface_text(plan, siting.stands_on);
  std::string text = outlets_part(plan, heater, siting) + "\n" + wrapped(surface, {});
  for (const SiteScope& scope : siting.scopes)
    text += scope_lines(plan, heater, scope, when_of(*scope.configurations.front()));
  if (siting.together.configurations.size() > 1)
    text +=
        scope_lines(plan, heater, siting.together, "One place for " + configurations_text(siting.together));
  return text;
}

std::string stowing_lines(const Plan& plan, const HeaterPlaces& heater) {
  if (heater.stowing.empty()) return {};
  std::string text = "\nOff and stowed\n";
  for (const StowFit& fit : heater.stowing) text += wrapped(stow_sentence(plan, fit), item);
  return text +
         wrapped("Let it cool first: a heater stowed warm among bedding is a hazard of its own.", item);
}

std::string heater_lines(const Plan& plan, const HeaterPlaces& heater) {
  std::string text = "\n" + wrapped(asked_text(plan, heater.heater), {});
  for (const std::string& lacking : lacking_sentences(plan, heater))
    text += wrapped("Unknown: " + lacking, item);
  for (const Siting& siting : heater.sitings) text += siting_lines(plan, heater, siting);
  return text + stowing_lines(plan, heater);
}

std::string verdict_on(const Plan& plan, const HeaterPlaces& heater) {
  const std::string name = name_of(plan, heater.heater);
  if (!heater.has_place()) return name + ": no place keeps every rule.";
  return name + (heater.not_compared.empty()
                     ? ": a place keeps every rule."
                     : ": a place keeps every rule that could be compared; not all could.");
}

}  // namespace

std::string heater_text(const Plan& plan, const std::vector<HeaterPlaces>& heaters) {
  std::string text = heading(plan);
  if (heaters.empty()) text += "\nThe plan shows no heater, so no place was sought.\n";
  for (const HeaterPlaces& heater : heaters) text += heater_lines(plan, heater);
  text += "\n";
  for (const HeaterPlaces& heater : heaters) text += wrapped(verdict_on(plan, heater), {});
  return text + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright
