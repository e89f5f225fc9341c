#include "view/heat_sheet.h"

#include <algorithm>
#include <array>
#include <map>

#include <berthwright/solve/heat/heat_zones.h>

#include "view/alerts.h"
#include "view/called.h"
#include "view/heat_lines.h"
#include "view/lettering.h"
#include "view/plan_notes.h"
#include "view/signs.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

constexpr PaperLength filled_edge = paper_mm(4);
constexpr std::array heat_rules{std::string_view{"heat."}, std::string_view{"cord."}};

Region room_of(const DrawnConfiguration& of) { return Region((*of.plan)->interior.outline.polygon()); }

// The stretches of the zone's border within the room.
std::vector<std::vector<Point>> edges_within(const Region& zone, const Region& room) {
  std::vector<std::vector<Point>> chains;
  for (const Edge& edge : edges(common(zone, room))) {
    const Point middle{half(edge.from.x + edge.to.x), half(edge.from.y + edge.to.y)};
    if (room.side_of(middle) != Side::inside) continue;
    if (chains.empty() || edge.from != chains.back().back()) chains.push_back({edge.from});
    chains.back().push_back(edge.to);
  }
  return chains;
}

// The point of the zone's border in the room that is farthest from the walls and from the places `told`,
// where other zones have their names; none: the whole room lies within it.
std::optional<Point> middle_of_edge(const Region& zone, const Region& room, const std::vector<Point>& told) {
  std::optional<Point> best;
  SquaredLength most;
  const Region outside = without(grown(room.bounds(), 12_in), room);
  const auto dot = [](Point p) { return Region(Rect{p, p + Vector{one_tick, one_tick}}); };
  for (const Edge& edge : edges(common(zone, room))) {
    const Point middle{half(edge.from.x + edge.to.x), half(edge.from.y + edge.to.y)};
    if (room.side_of(middle) != Side::inside) continue;
    SquaredLength clear = nearest(dot(middle), outside).squared;
    for (const Point other : told) clear = std::min(clear, nearest(dot(middle), dot(other)).squared);
    if (best && clear <= most) continue;
    best = middle;
    most = clear;
  }
  return best;
}

struct DrawnZone {
  std::string words;
  Region region;
  Region source;
  Ink ink = Ink::zone_published;
  std::vector<std::vector<Point>> edges{};  // within the room
  std::optional<Point> told{};              // where it is named; none: the whole room lies within it
};

// Large areas are filled along their edges only, and what gives the heat not at all.
Region along_the_edge(const DrawnZone& zone, const Region& room, std::int64_t ratio) {
  const Length depth = in_nature(filled_edge, ratio);
  // What lies farther beyond the room leaves its mark nowhere in it.
  const Region near = common(zone.region, Region(grown(room.bounds(), 2 * depth)));
  return common(room, without(near, united(shrunk(near, depth), zone.source)));
}

/// What is filled of each zone, by the ratio of the drawing: of one ratio several pages may be tried.
using FilledZones = std::map<std::int64_t, std::vector<Region>>;

std::vector<DrawnZone> zones_of(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  std::vector<DrawnZone> zones;
  for (const HeatZones& one : heat_zones(plan, of.answer->arrangement)) {
    const Length three_feet = plan.limit(*find_rule("heat.three-feet"));
    const std::string figure = plan->unit == Unit::inch ? imperial(three_feet, {.rounding = Rounding::up})
                                                        : metric(three_feet, Rounding::up);
    const std::string name = name_of(plan, one.source);
    const Region& outline = of.answer->arrangement.find(one.source)->solid.outline();
    if (one.published && *one.published != outline)
      zones.push_back({name + ": published, " + figure, *one.published, outline, Ink::zone_published});
    const std::vector<std::string> missing = missing_faces(plan, one.source);
    if (one.plate && *one.plate != outline)
      zones.push_back(
          {name + ": data plate" + (missing.empty() ? "" : ", " + listed_with_and(missing) + " unknown"),
           *one.plate, outline, Ink::zone_plate});
  }
  const Region room = room_of(of);
  std::vector<Point> told;
  for (DrawnZone& zone : zones) {
    zone.edges = edges_within(zone.region, room);
    zone.told = middle_of_edge(zone.region, room, told);
    if (zone.told) told.push_back(*zone.told);
  }
  return zones;
}

PaperPoint sign_place(const Placed& source, const PlanView& view) {
  const Rect box = source.solid.outline().bounds();
  return view(Point{half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
}

std::string cord_words(const DrawnConfiguration& of, const PluggedIn& plugged) {
  const Plan& plan = *of.plan;
  const auto figure = [&](Length length, Rounding rounding) {
    return plan->unit == Unit::inch ? imperial(length, {.rounding = rounding}) : metric(length, rounding);
  };
  std::vector<const Finding*> told;
  for (const Finding& finding : of.findings)
    if (finding.rule.text().starts_with("cord.") && !finding.subjects.empty() &&
        finding.subjects.front() == plugged.appliance &&
        finding.configuration == of.answer->configuration->id)
      told.push_back(&finding);
  const std::string tags = tags_of(of, told);
  return (tags.empty() ? "" : tags + ": ") + "cord must be " + figure(plugged.run->length, Rounding::up) +
         ", is " + figure(*plugged.cord, Rounding::down);
}

void lay_zones(const std::vector<DrawnZone>& zones, FilledZones& filled, const DrawnConfiguration& of,
               const PlanView& view, Laid& laid) {
  const auto [at, is_new] = filled.try_emplace(view.ratio);
  if (is_new)
    for (const DrawnZone& zone : zones) at->second.push_back(along_the_edge(zone, room_of(of), view.ratio));
  Group edges_drawn{"Zones of the yardsticks", {}, 0};
  for (std::size_t i = 0; i < zones.size(); ++i) {
    const DrawnZone& zone = zones[i];
    for (const std::vector<Point>& chain : zone.edges) {
      Path path{zone.ink, view(chain.front()), {}, false};
      for (std::size_t j = 1; j < chain.size(); ++j) path.stretches.push_back({view(chain[j]), {}, false});
      edges_drawn.marks.emplace_back(std::move(path));
    }
    laid.hatched.push_back({view(at->second[i]), zone.ink, Ink::zone_hatch,
                            zone.ink == Ink::zone_plate ? Diagonal::falling : Diagonal::rising});
    if (!zone.told) continue;
    LabelWish wish = place_wish(of, view, *zone.told);
    add_wordings(wish, zone.words, lettering::note);
    wish.key = zone.words;
    laid.wishes.push_back(std::move(wish));
  }
  laid.above.push_back(std::move(edges_drawn));
}

void lay_sources(const DrawnConfiguration& of, const PlanView& view, Laid& laid) {
  Group signs{"Heat sources", {}, 0};
  for (const Placed& thing : of.answer->arrangement.things) {
    if (!gives_heat(thing) || is_outside(*of.plan, thing)) continue;
    laid.named.insert(thing.id);
    const PaperPoint at = clear_of(laid.signs, sign_place(thing, view), Wall::rear);
    add(signs.marks, heat_sign(at));
    laid.signs.push_back(sign_box(at));
  }
  laid.above.push_back(std::move(signs));
}

void lay_cords(const DrawnConfiguration& of, const PlanView& view, Laid& laid) {
  Group cords{"Cords", {}, 0};
  Group outlets{"Outlets", {}, 0};
  for (const PluggedIn& plugged : of.answer->plugged) {
    if (!plugged.run || !plugged.run->reached()) continue;
    add(cords.marks, cord_paths(*plugged.run, view));
    const std::vector<Point>& path = plugged.run->path;
    // Nearer to the outlet, where less is drawn than at the heater.
    const Point from = path[path.size() < 2 ? 0 : path.size() - 2];
    const Point to = path.back();
    LabelWish wish =
        place_wish(of, view, {to.x + half(half(from.x - to.x)), to.y + half(half(from.y - to.y))});
    const std::string words = cord_words(of, plugged);
    add_wordings(wish, words, lettering::label);
    wish.key = words;
    wish.may_touch = true;
    wish.weight = weight_of_figures - 1;  // distances first
    laid.wishes.push_back(std::move(wish));
  }
  for (const Fixture& fixture : (*of.plan)->fixtures) {
    if (fixture.kind != Fixture::Kind::outlet) continue;
    const PaperPoint at = outlet_place(fixture, of, view);
    add(outlets.marks, outlet_sign(at));
    laid.signs.push_back(sign_box(at, paper_mm(19, 10)));
  }
  laid.above.push_back(std::move(cords));
  laid.above.push_back(std::move(outlets));
}

void lay_distances(const DrawnConfiguration& of, const PlanView& view, Laid& laid) {
  Group lines_drawn{"Distances to heat", {}, 0};
  const std::vector<HeatLine> lines = heat_lines(of, NearestOf::beds_and_others);
  for (const HeatLine& line : lines) {
    add(lines_drawn.marks, marks_of(line, view));
    laid.named.insert(line.nearest_to);
  }
  laid.above.push_back(std::move(lines_drawn));
  const std::vector<LabelWish> figures = heat_wishes(of, lines, view);
  laid.wishes.insert(laid.wishes.begin(), figures.begin(), figures.end());
}

std::vector<Note> yardstick_notes(const DrawnConfiguration& of, const std::vector<DrawnZone>& zones) {
  const Plan& plan = *of.plan;
  std::vector<Note> notes{{Note::Kind::heading, "What is asked", 0, false, std::nullopt}};
  const auto say = [&](const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  bool heater = false;
  for (const Placed& thing : of.answer->arrangement.things) {
    if (!gives_heat(thing)) continue;
    heater = heater || is_heater(thing);
    say(name_of(plan, thing.id) + ", data plate: " + plate_text(plan, thing.id));
  }
  if (heater) say("Of every heater, all round: " + published_text(plan) + ".");
  for (const DrawnZone& zone : zones)
    if (!zone.told) say("The whole room lies within that distance, so no edge is drawn: " + zone.words + ".");
  say("Zones are drawn at the heights of what heats; higher or lower things may be farther than they look. "
      "The "
      "figures at the lines are taken in space and count.");
  return notes;
}

std::string distances_told(const DrawnConfiguration& of) {
  std::string text;
  for (const HeatLine& line : heat_lines(of, NearestOf::beds_and_others))
    text += name_of(*of.plan, line.source) + " to " + name_of(*of.plan, line.nearest_to) + ": " +
            heat_figures(of, line).front() + ". ";
  return text;
}

}  // namespace

std::vector<Path> cord_paths(const CordRun& run, const PlanView& view) {
  Path path{Ink::cord, view(run.path.front()), {}, false};
  for (std::size_t i = 1; i < run.path.size(); ++i)
    if (run.path[i] != run.path[i - 1]) path.stretches.push_back({view(run.path[i]), {}, false});
  if (path.stretches.empty()) return {};
  return {std::move(path)};
}

PaperPoint outlet_place(const Fixture& outlet, const DrawnConfiguration& of, const PlanView& view) {
  constexpr PaperLength reach = paper_mm(19, 10);
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const Rect box = outlet.solid.outline().bounds();
  const PaperPoint at = view(Point{half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
  const PaperPoint low{view(room.low).x + reach, view(room.high).y + reach};
  const PaperPoint high{view(room.high).x - reach, view(room.low).y - reach};
  return {std::max(low.x, std::min(at.x, high.x)), std::max(low.y, std::min(at.y, high.y))};
}

std::optional<QuietSheet> heat_sheet(const DrawnConfiguration& of) {
  if (std::ranges::none_of(of.answer->arrangement.things, gives_heat)) return std::nullopt;
  const Plan& plan = *of.plan;
  const std::vector<DrawnZone> zones = zones_of(of);
  QuietSheet sheet;
  sheet.kind = "heat";
  sheet.told = "What gives heat, and what can burn nearest to it. " + distances_told(of);
  sheet.notes = warning_notes(
      plan, {"Bedding, cushions and curtains near what heats can catch fire. Bedding hangs over its bed and "
             "slides: it is measured made up.",
             "Where a distance is not kept by night: off, unplugged and cold before the bed is made (off and "
             "unplugged when asleep or away: CPSC space-heater tips, NFPA heater sheet)."});
  for (const auto& notes : {alert_notes(of, heat_rules), told_notes(of, "Also found", heat_rules, Told::all),
                            yardstick_notes(of, zones)})
    sheet.notes.insert(sheet.notes.end(), notes.begin(), notes.end());
  for (const Placed& thing : of.answer->arrangement.things)
    if (gives_heat(thing)) sheet.strong.insert(thing.id);
  sheet.laid = [&of, zones, filled = FilledZones{}](const PlanView& view) mutable {
    Laid laid;
    lay_zones(zones, filled, of, view, laid);
    laid.above.push_back(bedding_group(of, view));
    lay_cords(of, view, laid);
    lay_sources(of, view, laid);
    lay_distances(of, view, laid);
    for (LabelWish& wish : bed_name_wishes(of, view)) laid.wishes.push_back(std::move(wish));
    return laid;
  };
  return sheet;
}

}  // namespace berthwright
