#include "view/site_sheet.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/heat_sheet.h"
#include "view/lettering.h"
#include "view/signs.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

/// One place that the sheet shows, with all that it is the best of.
struct ShownPlace {
  std::string letter;  ///< "P1"
  const SitePlace* place = nullptr;
  std::vector<std::string> best_of;
};

// Each place once, however many things it is the best of.
std::vector<ShownPlace> shown_places(const Plan& plan, const SiteScope& scope) {
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
  for (const OutletSite& site : scope.outlets)
    show(site.best, "the best in reach of " + name_of(plan, site.outlet->id.text()));
  return places;
}

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
std::vector<MarginLine> margin_lines_of(const Plan& plan, const ShownPlace& shown) {
  std::vector<MarginLine> drawn;
  for (const SiteMargin& margin : shown.place->margins) {
    const bool by_plate = margin.yardstick == SiteRule::data_plate;
    const Nearest& nearest = by_plate ? margin.distance.plate_nearest : margin.distance.nearest;
    const std::string asked = asked_figure(plan, margin);
    const auto same = std::ranges::find_if(drawn, [&](const MarginLine& line) {
      return line.from.plan == nearest.from.plan && line.to.plan == nearest.to.plan;
    });
    if (same == drawn.end())
      drawn.push_back(
          {nearest.from, nearest.to,
           shown.letter + ": " + size_text(plan, margin.asked + margin.margin, Rounding::down) + asked});
    else if (!same->words.ends_with(asked))
      same->words += "," + asked;
  }
  return drawn;
}

void lay_regions(const DrawnConfiguration& of, const SiteScope& scope, const PlanView& view, Laid& laid) {
  Group borders{"Where the heater's corner may stand", {}, 0};
  bool rising = true;
  for (const SiteRegions* regions : distinct_regions(scope)) {
    add(borders.marks, paths_of(view, regions->free, {}, Ink::site_region));
    laid.hatched.push_back({view(regions->free), Ink::site_region, Ink::site_hatch,
                            rising ? Diagonal::rising : Diagonal::falling});
    rising = !rising;
    const Region part = regions->free.parts().front();
    LabelWish wish = place_wish(of, view, part.faces().front().outer.vertices().front());
    const std::string words = "looking " + ways_of(*of.plan, scope, *regions);
    add_wordings(wish, words, lettering::label);
    wish.home = view(part);
    wish.key = words;
    laid.wishes.push_back(std::move(wish));
  }
  laid.above.push_back(std::move(borders));
}

void lay_margins(const DrawnConfiguration& of, const ShownPlace& shown, const PlanView& view,
                 Group& lines_drawn, Laid& laid) {
  for (const SiteMargin& margin : shown.place->margins) laid.named.insert(margin.distance.nearest_to);
  for (const MarginLine& line : margin_lines_of(*of.plan, shown)) {
    const PaperPoint from = view(line.from.plan);
    const PaperPoint to = view(line.to.plan);
    LabelWish wish = place_wish(
        of, view, {half(line.from.plan.x + line.to.plan.x), half(line.from.plan.y + line.to.plan.y)});
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

void lay_places(const DrawnConfiguration& of, const std::vector<ShownPlace>& places, bool has_region,
                const PlanView& view, Laid& laid) {
  Group outlines{"The heater at the best places", {}, 0};
  Group lines_drawn{"Distances from there", {}, 0};
  for (const ShownPlace& shown : places) {
    const std::vector<PaperRing> rings = view(Region(shown.place->box));
    outlines.marks.emplace_back(closed_path(Ink::site_place, rings.front()));
    const PaperPoint front = front_of(*shown.place, view);
    outlines.marks.emplace_back(arrow_head(front, bounds(rings.front()).centre(), paper_mm(16, 10)));
    if (has_region)
      outlines.marks.emplace_back(circle(Ink::site_region, view(shown.place->box.low), paper_mm(12, 10)));
    LabelWish wish = place_wish(of, view,
                                {half(shown.place->box.low.x + shown.place->box.high.x),
                                 half(shown.place->box.low.y + shown.place->box.high.y)});
    wish.wordings = name_wordings(shown.letter, false);
    wish.home = rings;
    wish.key = shown.letter;
    wish.weight = weight_of_figures;
    laid.wishes.push_back(std::move(wish));
    lay_margins(of, shown, view, lines_drawn, laid);
  }
  laid.above.push_back(std::move(outlines));
  laid.above.push_back(std::move(lines_drawn));
}

void lay_outlets(const DrawnConfiguration& of, const SiteScope& scope, const PlanView& view, Laid& laid) {
  Group cords{"Its cord, as the plan stands it", {}, 0};
  Group outlets{"Outlets", {}, 0};
  for (const Fixture& fixture : (*of.plan)->fixtures) {
    if (fixture.kind != Fixture::Kind::outlet) continue;
    const PaperPoint at = outlet_place(fixture, of, view);
    add(outlets.marks, outlet_sign(at));
    laid.signs.push_back(sign_box(at, paper_mm(19, 10)));
    laid.named.insert(fixture.id.text());
  }
  for (const OutletSite& site : scope.outlets)
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

std::string margins_text(const Plan& plan, const SitePlace& place) {
  if (place.margins.empty()) return "nothing that can burn lies in the room";
  std::string text;
  for (const SiteMargin& margin : place.margins)
    text += (text.empty() ? "" : ". ") + margin_text(plan, margin);
  return text;
}

std::vector<Note> site_notes(const Plan& plan, const HeaterPlaces& heater, const Siting& siting,
                             const SiteScope& scope, const std::vector<ShownPlace>& places) {
  SiteNotes notes(warning_notes(
      plan,
      {scope.has_place()
           ? "Only where the blue lines are every figure that could be compared is kept, for what the plan "
             "shows and no more."
           : "No place keeps every figure. What is drawn is the best that can be had, with what it falls "
             "short of.",
       "Whoever moves the heater, a cushion or the bedding measures again."}));
  notes.head(surface_text(plan, siting.stands_on));
  const std::string stowed = scope.stowed ? " (the plan stows it there)" : "";
  notes.say(when_of(*scope.configurations.front()) + stowed + ": " + verdict_text(heater, scope) + ".");
  for (const std::string& lacking : lacking_sentences(plan, heater)) notes.say("Unknown: " + lacking);
  for (const std::string& free : free_texts(plan, scope)) notes.say("Free, " + free + ".");
  for (const ShownPlace& shown : places)
    notes.say(shown.letter + ", " + listed_with_and(shown.best_of) + ": " + place_text(plan, *shown.place) +
              ". " + margins_text(plan, *shown.place) + ".");
  if (scope.now)
    notes.say("As the plan stands it: " + place_text(plan, scope.now->place) + ". " +
              margins_text(plan, scope.now->place) + ". There it " + breaks_text(*scope.now) + ".");
  if (!scope.outlets.empty()) notes.head(outlets_heading(plan, heater.heater));
  for (const OutletSite& site : scope.outlets) {
    std::string text = name_of(plan, site.outlet->id.text());
    if (site.now) text += ", as the plan stands it: " + run_text(plan, heater.heater, *site.now);
    for (const ShownPlace& shown : places)
      if (site.best && shown.place->box == site.best->box && shown.place->faces == site.best->faces)
        text += (site.now ? ". Best" : ": best") + std::string(" from ") + shown.letter;
    notes.say(text + (site.best ? "." : ". It reaches from no place where the heater may stand."));
  }
  if (siting.together.configurations.size() > 1)
    notes.say("One place for " + configurations_text(siting.together) + ": " +
              verdict_text(heater, siting.together) + ".");
  notes.head("What is asked");
  notes.say(asked_text(plan, heater.heater));
  return std::move(notes).all();
}

std::string subject_end(const Plan& plan, const std::string& stands_on) {
  if (stands_on.empty()) return ", as high as now";
  return stands_on == "floor" ? ", on the floor" : ", on " + name_of(plan, stands_on);
}

QuietSheet sheet_of(const DrawnConfiguration& of, const HeaterPlaces& heater, const Siting& siting,
                    const SiteScope& scope) {
  const Plan& plan = *of.plan;
  const std::vector<ShownPlace> places = shown_places(plan, scope);
  QuietSheet sheet;
  sheet.kind = "site";
  sheet.subject = name_of(plan, heater.heater) + subject_end(plan, siting.stands_on);
  sheet.told = "Where " + name_of(plan, heater.heater) + " may stand.";
  sheet.notes = site_notes(plan, heater, siting, scope, places);
  sheet.strong = {heater.heater};
  sheet.laid = [&of, &scope, places, heater_id = heater.heater](const PlanView& view) {
    Laid laid;
    laid.above.push_back(bedding_group(of, view));
    lay_places(of, places, scope.has_place(), view, laid);
    lay_regions(of, scope, view, laid);
    lay_outlets(of, scope, view, laid);
    if (scope.now) laid.named.insert(heater_id);
    for (LabelWish& wish : bed_name_wishes(of, view)) laid.wishes.push_back(std::move(wish));
    return laid;
  };
  return sheet;
}

}  // namespace

std::vector<QuietSheet> site_sheets(const DrawnConfiguration& of, std::span<const HeaterPlaces> heaters) {
  std::vector<QuietSheet> sheets;
  for (const HeaterPlaces& heater : heaters)
    for (const Siting& siting : heater.sitings)
      for (const SiteScope& scope : siting.scopes)
        if (scope.configurations.front()->id == of.answer->configuration->id)
          sheets.push_back(sheet_of(of, heater, siting, scope));
  return sheets;
}

}  // namespace berthwright
