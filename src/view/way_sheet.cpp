#include "view/way_sheet.h"

#include <algorithm>
#include <array>

#include <berthwright/solve/way/walkways.h>
#include <berthwright/view/words.h>

#include "plan/wall_names.h"
#include "view/alerts.h"
#include "view/called.h"
#include "view/lettering.h"
#include "view/plan_notes.h"
#include "view/signs.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr std::array way_rules{std::string_view{"way."}, std::string_view{"alarm."}};
constexpr std::array measured_ways{std::string_view{"way.aisle"}, std::string_view{"way.second"},
                                   std::string_view{"way.opening"}};
constexpr std::array all_else{std::string_view{"way.none"},       std::string_view{"way.sill"},
                              std::string_view{"way.swing"},      std::string_view{"way.dwelling-window"},
                              std::string_view{"way.not-stated"}, std::string_view{"alarm."}};
constexpr Length thinnest = 1_in;  // half of what is left off
// Corners that stray less on paper are not seen.
constexpr std::int64_t seen_bend_um = 60;

std::string way_figure(const Plan& plan, Length length, Rounding rounding) {
  return plan->unit == Unit::inch ? imperial(length, {.rounding = rounding}) : metric(length, rounding);
}

std::string bed_called(const Bed& bed) { return bed.name.empty() ? bed.id.text() : bed.name; }

// The line of the disc's middle, without the corners that nobody sees.
Path middle_line(const WayOut& way, const PlanView& view) {
  Path path{Ink::way_path, view(way.way.path.front()), {}, false};
  PaperPoint last = path.from;
  for (std::size_t i = 1; i < way.way.path.size(); ++i) {
    const PaperPoint next = view(way.way.path[i]);
    const bool ends = i + 1 == way.way.path.size();
    const std::int64_t far =
        std::max(std::abs((next.x - last.x).micrometres()), std::abs((next.y - last.y).micrometres()));
    if (next == last || (!ends && far < seen_bend_um)) continue;
    path.stretches.push_back({next, {}, false});
    last = next;
  }
  return path;
}

/// Beds whose ways are narrowest at the same place.
struct Narrowest {
  const WayOut* way = nullptr;
  std::vector<const BedAnswer*> beds;
};

std::vector<Narrowest> narrowest_places(const DrawnConfiguration& of) {
  std::vector<Narrowest> places;
  for (const BedAnswer& bed : of.answer->beds) {
    const WayOut* way = widest(bed.exits.ways);
    if (way == nullptr) continue;
    const auto same = std::ranges::find_if(places, [&](const Narrowest& other) {
      const WidestWay& a = other.way->way;
      return a.left == way->way.left && a.right == way->way.right && other.way->width == way->width;
    });
    if (same != places.end())
      same->beds.push_back(&bed);
    else
      places.push_back({way, {&bed}});
  }
  return places;
}

// "A1: Rear bed: 1' 8" ≥ 1' 0": met", with the tags of alerts.
std::string width_words(const DrawnConfiguration& of, const Narrowest& place) {
  const Plan& plan = *of.plan;
  std::vector<std::string> names;
  std::vector<const Finding*> findings;
  for (const BedAnswer* bed : place.beds) {
    names.push_back(bed_called(*bed->bed));
    for (const Finding& finding : of.findings)
      if (finding.rule.text() == "way.aisle" && finding.bed == bed->bed->id) findings.push_back(&finding);
  }
  const std::string tags = tags_of(of, findings);
  std::string words = (tags.empty() ? "" : tags + ": ") + listed_with_and(names) + ": " +
                      way_figure(plan, place.way->width, Rounding::down);
  if (findings.empty()) return words;
  const Finding& finding = *findings.front();
  if (!finding.compared) return words;
  const Length asked = std::get<Length>(*finding.compared);
  return words + (place.way->width >= asked ? " ≥ " : " < ") + way_figure(plan, asked, Rounding::up) + ": " +
         std::string(word(term_of(finding.status), plan->english));
}

std::string pinch_words(const Plan& plan, const WayOut& way) {
  if (way.left == way.door && way.right == way.door) return "in " + name_of(plan, way.door) + " itself";
  if (way.left == way.right) return "within " + name_of(plan, way.left);
  return "between " + name_of(plan, way.left) + " and " + name_of(plan, way.right);
}

// The line across with its two heads, which point at what pinches.
std::vector<Path> pinch_marks(const WayOut& way, const PlanView& view) {
  const PaperPoint left = view(way.way.left);
  const PaperPoint right = view(way.way.right);
  if (left == right) return {};
  return {straight(Ink::pinch, left, right), arrow_head(left, right), arrow_head(right, left)};
}

// Less what is as narrow as a line on paper: beyond a core that keeps off the border, no more than a corner.
Region without_slivers(const Region& floor) {
  const Region core = shrunk(floor, thinnest);
  return common(floor, grown(core, 2 * thinnest));
}

// Where a person who goes stands, and no more: the disc begins with its middle on the edge of the bed.
Region without_things(const Region& band, const DrawnConfiguration& of) {
  std::vector<Region> things;
  for (const Placed& thing : of.answer->arrangement.things)
    if (thing.solid.base() < 72_in && thing.solid.top() > 4_in && !thing.is_curtain())
      things.push_back(thing.solid.outline());
  return without_slivers(
      without(common(band, Region((*of.plan)->interior.outline.polygon())), united(things)));
}

// Of each bed with a way out the floor that it takes.
std::vector<Region> floors_of(const DrawnConfiguration& of) {
  std::vector<Region> floors;
  for (const BedAnswer& bed : of.answer->beds)
    if (const WayOut* way = widest(bed.exits.ways)) floors.push_back(without_things(swept_floor(*way), of));
  return floors;
}

void lay_ways(const DrawnConfiguration& of, const std::vector<Region>& ways, const PlanView& view,
              Laid& laid) {
  Group bands{"Ways out", {}, 0};
  Group lines_drawn{"Middle of the ways, and where they are narrowest", {}, 0};
  std::vector<std::vector<PaperRing>> floors;
  auto next = ways.begin();
  for (const BedAnswer& bed : of.answer->beds) {
    const WayOut* way = widest(bed.exits.ways);
    if (way == nullptr) continue;
    const Region& floor = *next++;
    add(bands.marks, paths_of(view, floor, {}, Ink::way_band));
    if (!floor.empty()) floors.push_back(view(floor));
    const Path middle = middle_line(*way, view);
    if (middle.stretches.empty()) continue;
    const std::size_t count = middle.stretches.size();
    lines_drawn.marks.emplace_back(middle);
    lines_drawn.marks.emplace_back(
        arrow_head(middle.stretches.back().to, count > 1 ? middle.stretches[count - 2].to : middle.from));
  }
  for (const Narrowest& place : narrowest_places(of)) {
    const WidestWay& way = place.way->way;
    add(lines_drawn.marks, pinch_marks(*place.way, view));
    LabelWish wish = place_wish(of, view, {half(way.left.x + way.right.x), half(way.left.y + way.right.y)});
    const std::string words = width_words(of, place);
    const std::string pinched = words + " " + pinch_words(*of.plan, *place.way);
    add_wordings(wish, pinched, lettering::label);
    add_wordings(wish, words, lettering::label);
    wish.key = pinched;
    wish.never = floors;
    wish.weight = weight_of_figures;
    laid.wishes.push_back(std::move(wish));
    for (const std::string& id : {place.way->left, place.way->right}) laid.named.insert(id);
  }
  laid.beneath.push_back(std::move(bands));
  laid.above.push_back(std::move(lines_drawn));
}

bool serves(const ConfigurationAnswer& answer, const ExitOpening& exit) {
  if (!exit.opens()) return false;
  if (answer.beds.empty()) return exit.is_door() || exit.clear.holds_vehicle_opening();
  return std::ranges::any_of(answer.beds, [&](const BedAnswer& bed) {
    return std::ranges::binary_search(bed.exits.counted, exit.clear.opening->id.text());
  });
}

void lay_exits(const DrawnConfiguration& of, const PlanView& view, Laid& laid) {
  Group signs{"Openings to get out by", {}, 0};
  for (const ExitOpening& exit : of.answer->exit_openings) {
    const Opening& opening = *exit.clear.opening;
    const PaperLength beyond = reach_outside(opening, view.ratio) + sign_reach + paper_mm(22, 10);
    const PaperPoint at = clear_of(laid.signs, outward(opening.wall, tag_of(view, *of.plan, opening), beyond),
                                   is_end_wall(opening.wall) ? Wall::right : Wall::rear);
    add(signs.marks, serves(*of.answer, exit) ? exit_sign(at, opening.wall) : shut_sign(at));
    laid.signs.push_back(sign_box(at));
    for (const std::string& id : exit.clear.blocked_by) laid.named.insert(id);
    // Over the bed and out.
    if (exit.is_door() || of.answer->beds.empty() || !serves(*of.answer, exit)) continue;
    const PaperPoint from = outward(opening.wall, tag_of(view, *of.plan, opening), -paper_mm(11));
    const PaperPoint to = outward(opening.wall, from, paper_mm(115, 10));
    signs.marks.emplace_back(straight(Ink::way_path, from, to));
    signs.marks.emplace_back(arrow_head(to, from));
  }
  laid.above.push_back(std::move(signs));
}

void lay_alarms(const DrawnConfiguration& of, const PlanView& view, Laid& laid) {
  Group signs{"Alarms", {}, 0};
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  for (const Placed& thing : of.answer->arrangement.things) {
    if (!is_alarm(thing)) continue;
    const Rect box = thing.solid.outline().bounds();
    const Point middle{half(box.low.x + box.high.x), half(box.low.y + box.high.y)};
    const PaperPoint low{view(room.low).x + sign_reach, view(room.high).y + sign_reach};
    const PaperPoint high{view(room.high).x - sign_reach, view(room.low).y - sign_reach};
    const PaperPoint within{std::max(low.x, std::min(view(middle).x, high.x)),
                            std::max(low.y, std::min(view(middle).y, high.y))};
    const PaperPoint at =
        clear_of(laid.signs, within, within.x < high.x - paper_mm(12) ? Wall::rear : Wall::front);
    add(signs.marks, alarm_square(at));
    laid.signs.push_back(sign_box(at));
    LabelWish wish = place_wish(of, view, middle);
    wish.target = at;
    add_wordings(wish, name_of(*of.plan, thing.id), lettering::label);
    wish.key = name_of(*of.plan, thing.id);
    laid.wishes.push_back(std::move(wish));
  }
  laid.above.push_back(std::move(signs));
}

std::vector<Note> exit_notes(const DrawnConfiguration& of) {
  std::vector<Note> notes;
  const Plan& plan = *of.plan;
  const auto say = [&](const std::string& words) {
    if (notes.empty()) notes.push_back({Note::Kind::heading, "From each bed", 0, false, std::nullopt});
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  for (const BedAnswer& bed : of.answer->beds) {
    for (std::size_t i = 0; i < of.answer->exit_openings.size(); ++i) {
      const ExitOpening& exit = of.answer->exit_openings[i];
      const std::string& id = exit.clear.opening->id.text();
      if (std::ranges::binary_search(bed.exits.counted, id)) continue;
      const std::string away =
          i < bed.exits.away.size()
              ? ", " + both(bed.exits.away[i], plan->unit, {.rounding = Rounding::up}) + " from it"
              : std::string{};
      say(bed_called(*bed.bed) + ": " + tag_of(plan, *exit.clear.opening) + " " + name_of(plan, id) + away +
          ", does not count as a way out.");
    }
    if (bed.exits.ways.empty())
      say(bed_called(*bed.bed) + ": the plan shows no door that opens, so no way was measured.");
  }
  if (of.answer->beds.empty()) say("No bed is made here, so no way was measured.");
  return notes;
}

std::string ways_told(const DrawnConfiguration& of) {
  std::string text;
  for (const Narrowest& place : narrowest_places(of))
    text += width_words(of, place) + " " + pinch_words(*of.plan, *place.way) + ". ";
  return text;
}

}  // namespace

std::optional<QuietSheet> way_sheet(const DrawnConfiguration& of) {
  const ConfigurationAnswer& answer = *of.answer;
  if (is_on_the_road(*answer.configuration)) return std::nullopt;
  if (answer.beds.empty() && answer.exit_openings.empty() &&
      std::ranges::none_of(answer.arrangement.things, is_alarm))
    return std::nullopt;
  QuietSheet sheet;
  sheet.kind = "ways out";
  sheet.told = "The widest ways out of the beds, openings and alarms. " + ways_told(of);
  sheet.notes = warning_notes(
      *of.plan,
      {"Nothing is put into a way out or before a window that counts, by night least of all. Whoever "
       "sleeps here has tried the door and each such window in the dark, and has tested each alarm as its "
       "maker says (common practice, no source)."});
  for (const auto& notes :
       {alert_notes(of, way_rules), exit_notes(of), told_notes(of, "Compared", measured_ways, Told::all),
        told_notes(of, "Not met, close or unknown", all_else, Told::not_met), opening_notes(of)})
    sheet.notes.insert(sheet.notes.end(), notes.begin(), notes.end());
  sheet.laid = [&of, floors = floors_of(of)](const PlanView& view) {
    Laid laid;
    lay_ways(of, floors, view, laid);
    lay_exits(of, view, laid);
    lay_alarms(of, view, laid);
    Group beds{"Beds", {}, 0};
    for (const BedAnswer& bed : of.answer->beds)
      add(beds.marks, paths_of(view, bed.mattress.closed, {}, Ink::bed_outline));
    laid.above.insert(laid.above.begin(), std::move(beds));
    for (LabelWish& wish : bed_name_wishes(of, view)) laid.wishes.push_back(std::move(wish));
    return laid;
  };
  return sheet;
}

}  // namespace berthwright
