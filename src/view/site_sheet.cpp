#include "view/site_sheet.h"

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/heat_sheet.h"
#include "view/lettering.h"
#include "view/seen.h"
#include "view/signs.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

// The regions that differ, each with the first way in which the front looks.
std::vector<const SiteRegions*> distinct_regions(const SiteScope& scope) {
  std::vector<const SiteRegions*> distinct;
  for (const SiteRegions& regions : scope.ways)
    if (!regions.free.empty() &&
        std::ranges::none_of(distinct, [&](const SiteRegions* other) { return other->free == regions.free; }))
      distinct.push_back(&regions);
  return distinct;
}

std::string ways_of(const Plan& plan, const SiteScope& scope, const SiteRegions& regions) {
  std::vector<std::string> ways;
  for (const SiteRegions& other : scope.ways)
    if (other.free == regions.free) ways.emplace_back(word(term_of(other.faces), plan->english));
  return ways.size() == 4 ? "any way" : "to the " + listed_with_and(ways);
}

std::string size_text(const Plan& plan, Length length, Rounding rounding) {
  return plan->unit == Unit::inch ? imperial(length, {.rounding = rounding}) : metric(length, rounding);
}

// " < 3' 0"".
std::string asked_figure(const Plan& plan, const SiteMargin& margin) {
  return (margin.margin < Length{} ? " < " : " ≥ ") + size_text(plan, margin.asked, Rounding::up);
}

/// One line from a place, with all that is compared with it.
struct MarginLine {
  Point3 from;
  Point3 to;
  std::string words;
};

// Once where both yardsticks are kept least at the same two points.
std::vector<MarginLine> margin_lines_of(const SitedScope& of, const ShownPlace& shown) {
  const Plan& plan = of.plan();
  std::vector<MarginLine> drawn;
  for (const SiteMargin& margin : shown.place->margins) {
    const bool by_plate = margin.yardstick == SiteRule::data_plate;
    const Nearest& nearest = by_plate ? margin.distance.plate_nearest : margin.distance.nearest;
    const std::string asked = asked_figure(plan, margin);
    const std::string when =
        of.together() ? ", " + name_of(*plan.configuration(margin.configuration.text())) : std::string{};
    const auto same = std::ranges::find_if(drawn, [&](const MarginLine& line) {
      return line.from.plan == nearest.from.plan && line.to.plan == nearest.to.plan;
    });
    if (same == drawn.end())
      drawn.push_back({nearest.from, nearest.to,
                       shown.letter + when + ": " +
                           size_text(plan, margin.asked + margin.margin, Rounding::down) + asked});
    else if (!same->words.ends_with(asked))
      same->words += "," + asked;
  }
  return drawn;
}

// Its largest part, less what other regions cover: there its name points.
Region part_to_name(const Region& region, const std::vector<const SiteRegions*>& all) {
  std::vector<Region> others;
  for (const SiteRegions* other : all)
    if (other->free != region) others.push_back(other->free);
  const Region own = without(region, united(others));
  const std::vector<Region> parts = (own.empty() ? region : own).parts();
  return *std::ranges::max_element(parts, {}, [](const Region& part) { return part.area(); });
}

void lay_regions(const SitedScope& of, const PlanView& view, Laid& laid) {
  Group borders{"Where the heater's corner may stand", {}, 0};
  bool rising = true;
  const std::vector<const SiteRegions*> distinct = distinct_regions(*of.scope);
  for (const SiteRegions* regions : distinct) {
    add(borders.marks, paths_of(view, regions->free, {}, Ink::site_region));
    laid.hatched.push_back({view(regions->free), Ink::site_region, Ink::site_hatch,
                            rising ? Diagonal::rising : Diagonal::falling});
    rising = !rising;
    const Region part = part_to_name(regions->free, distinct);
    LabelWish wish = place_wish(*of.in.front(), view, part.faces().front().outer.vertices().front());
    const std::string words = "looking " + ways_of(of.plan(), *of.scope, *regions);
    add_wordings(wish, words, lettering::label);
    wish.home = view(part);
    wish.target = middle_of_seen(wish.home, {}).value_or(wish.target);
    wish.key = words;
    laid.wishes.push_back(std::move(wish));
  }
  laid.above.push_back(std::move(borders));
}

void lay_margins(const SitedScope& of, const ShownPlace& shown, const PlanView& view, Group& lines_drawn,
                 Laid& laid) {
  for (const SiteMargin& margin : shown.place->margins) laid.named.insert(margin.distance.nearest_to);
  for (const MarginLine& line : margin_lines_of(of, shown)) {
    const PaperPoint from = view(line.from.plan);
    const PaperPoint to = view(line.to.plan);
    LabelWish wish =
        place_wish(*of.in.front(), view,
                   {half(line.from.plan.x + line.to.plan.x), half(line.from.plan.y + line.to.plan.y)});
    add_wordings(wish, line.words, lettering::label);
    wish.key = line.words;
    wish.may_touch = true;
    wish.weight = weight_of_figures;
    laid.wishes.push_back(std::move(wish));
    if (from != to) lines_drawn.marks.emplace_back(straight(Ink::heat_line, from, to));
    for (const PaperPoint end : {from, to})
      lines_drawn.marks.emplace_back(circle(Ink::leader_dot, end, paper_mm(9, 10)));
  }
}

void lay_places(const SitedScope& of, const std::vector<ShownPlace>& places, const PlanView& view,
                Laid& laid) {
  Group outlines{"The heater at the best places", {}, 0};
  Group lines_drawn{"Distances from there", {}, 0};
  for (const ShownPlace& shown : places) {
    add(outlines.marks, place_paths(*shown.place, view));
    if (of.scope->has_place())
      outlines.marks.emplace_back(circle(Ink::site_region, view(shown.place->box.low), paper_mm(12, 10)));
    laid.wishes.push_back(letter_wish(*of.in.front(), view, shown));
    lay_margins(of, shown, view, lines_drawn, laid);
  }
  laid.above.push_back(std::move(outlines));
  laid.above.push_back(std::move(lines_drawn));
}

void lay_outlets(const SitedScope& sited, const PlanView& view, Laid& laid) {
  const DrawnConfiguration& of = *sited.in.front();
  Group cords{"Its cord, as the plan stands it", {}, 0};
  Group outlets{"Outlets", {}, 0};
  for (const Fixture& fixture : (*of.plan)->fixtures) {
    if (fixture.kind != Fixture::Kind::outlet) continue;
    const PaperPoint at = outlet_place(fixture, of, view);
    add(outlets.marks, outlet_sign(at));
    laid.signs.push_back(sign_box(at, paper_mm(19, 10)));
    laid.named.insert(fixture.id.text());
  }
  for (const OutletSite& site : sited.scope->outlets)
    if (site.now && site.now->reached()) add(cords.marks, cord_paths(*site.now, view));
  laid.above.push_back(std::move(cords));
  laid.above.push_back(std::move(outlets));
}

class SiteNotes {
 public:
  explicit SiteNotes(std::vector<Note> notes) : notes_(std::move(notes)) {}
  void head(const std::string& words) {
    notes_.push_back({Note::Kind::heading, words, 0, false, std::nullopt});
  }
  void say(const std::string& words) { notes_.push_back({Note::Kind::text, words, 0, false, std::nullopt}); }
  std::vector<Note> all() && { return std::move(notes_); }

 private:
  std::vector<Note> notes_;
};

std::vector<Note> site_notes(const SitedScope& of, const std::vector<ShownPlace>& places) {
  const Plan& plan = of.plan();
  const HeaterPlaces& heater = *of.heater;
  const SiteScope& scope = *of.scope;
  SiteNotes notes(site_warning(of));
  notes.head(surface_text(plan, of.siting->stands_on));
  notes.say(asked_of(of) + ": " + verdict_text(heater, scope) + ".");
  if (of.together())
    notes.say(when_of(*scope.configurations.front()) +
              " all stands as drawn here; the beds of the others are laid over it.");
  for (const std::string& lacking : lacking_sentences(plan, heater)) notes.say("Unknown: " + lacking);
  for (const std::string& free : free_texts(plan, scope)) notes.say("Free, " + free + ".");
  for (const ShownPlace& shown : places) notes.say(shown_text(of, shown));
  if (scope.now)
    notes.say("As the plan stands it: " + place_text(plan, scope.now->place) + ". " +
              margins_text(of, scope.now->place) + ". There it " + breaks_text(*scope.now) + ".");
  if (!scope.outlets.empty()) notes.head(outlets_heading(plan, heater.heater));
  for (const OutletSite& site : scope.outlets) {
    std::string text = name_of(plan, site.outlet->id.text());
    if (site.now) text += ", as the plan stands it: " + run_text(plan, heater.heater, *site.now);
    for (const ShownPlace& shown : places)
      if (site.best && shown.place->box == site.best->box && shown.place->faces == site.best->faces)
        text += (site.now ? ". Best" : ": best") + std::string(" from ") + shown.letter;
    notes.say(text + (site.best ? "." : ". It reaches from no place where the heater may stand."));
  }
  const SiteScope& together = of.siting->together;
  if (!of.together() && together.configurations.size() > 1)
    notes.say("One place for " + configurations_text(together) + ": " + verdict_text(heater, together) +
              ". It has a sheet of its own.");
  notes.head("What is asked");
  notes.say(asked_text(plan, heater.heater));
  return std::move(notes).all();
}

}  // namespace

std::vector<Note> site_warning(const SitedScope& of) {
  return warning_notes(
      of.plan(),
      {of.scope->has_place()
           ? "Only where the blue lines are every figure that could be compared is kept, for what the plan "
             "shows and no more."
           : "No place keeps every figure. What is drawn is the best that can be had, with what it falls "
             "short of.",
       "Whoever moves the heater, a cushion or the bedding measures again."});
}

QuietSheet site_sheet(const SitedScope& of) {
  const std::vector<ShownPlace> places = shown_places(of.plan(), *of.scope, Outlets::too);
  QuietSheet sheet;
  sheet.kind = "site";
  sheet.when = when_title(of);
  sheet.id = when_id(of);
  sheet.subject = subject_of(of);
  sheet.told = "Where " + name_of(of.plan(), of.heater->heater) + " may stand.";
  sheet.notes = site_notes(of, places);
  sheet.strong = {of.heater->heater};
  sheet.laid = [of, places](const PlanView& view) {
    Laid laid;
    laid.above = bedding_groups(of, view);
    lay_places(of, places, view, laid);
    lay_regions(of, view, laid);
    lay_outlets(of, view, laid);
    if (of.scope->now || of.together()) laid.named.insert(of.heater->heater);
    for (const DrawnConfiguration* one : of.in)
      for (LabelWish& wish : bed_name_wishes(*one, view)) laid.wishes.push_back(std::move(wish));
    return laid;
  };
  return sheet;
}

}  // namespace berthwright
