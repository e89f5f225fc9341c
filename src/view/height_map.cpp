#include "view/height_map.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/bed/clear_height.h>

#include "view/called.h"
#include "view/hatching.h"
#include "view/label_wishes.h"
#include "view/lettering.h"
#include "view/plan_notes.h"
#include "view/plan_things.h"
#include "view/seen.h"

namespace berthwright {
namespace {

constexpr PaperLength first_by_bed = paper_mm(8);  // from the bed to its dimension line

const std::string& name_of(const Bed& bed) { return bed.name.empty() ? bed.id.text() : bed.name; }

// The lines that say how much is clear; the most clear has none.
std::vector<Path> hatching_of(const std::vector<PaperRing>& rings, std::size_t band,
                              const std::vector<PaperBox>& lettering) {
  std::vector<Path> lines;
  if (band >= clear_height_bands.size()) return lines;
  const PaperLength pitch = band == 2 ? paper_mm(5) : paper_mm(2);
  lines = diagonals_in(rings, pitch, Diagonal::rising, lettering);
  if (band > 0) return lines;
  for (Path& line : diagonals_in(rings, pitch, Diagonal::falling, lettering))
    lines.push_back(std::move(line));
  return lines;
}

std::string what_text(const Plan& plan, const ClearHeight& part) {
  if (part.what == "roof") return "under the roof";
  if (part.what == "wall") return "at the wall";
  return "under " + name_of(plan, part.what);
}

/// A bed with what its map shows.
struct Map {
  const BedAnswer* bed = nullptr;
  std::vector<ClearHeight> parts;        // each in one piece
  std::vector<const Placed*> off_level;  // pieces of the bed that are no part of its surface
  Rect box;                              // of all that
};

Map map_of(const DrawnConfiguration& of, const BedAnswer& bed) {
  Map map{&bed, {}, {}, bed.mattress.closed.bounds()};
  for (const ClearHeight& part : bed.room.overhead)
    for (const Region& piece : part.region.parts())
      map.parts.push_back({piece, part.height, part.what, part.band});
  for (const PieceId& id : bed.mattress.dropped_out)
    if (const Placed* placed = of.answer->arrangement.find(id.text())) {
      map.off_level.push_back(placed);
      map.box = hull(map.box, placed->solid.outline().bounds());
    }
  return map;
}

// Under a roof that is not at its highest all over the part, more than the least is clear in places.
bool is_more_elsewhere(const Plan& plan, const Map& map, const ClearHeight& part) {
  return part.what == "roof" && map.bed->mattress.level + part.height < plan->interior.height;
}

std::string figure_text(const Plan& plan, const Map& map, const ClearHeight& part) {
  if (part.height <= Length{}) return "no room";
  const std::string figure = both(part.height, plan->unit, {.rounding = Rounding::down});
  return is_more_elsewhere(plan, map, part) ? figure + " and more" : figure;
}

LabelWish wish_of(const Plan& plan, const PlanView& view, const Map& map, const ClearHeight& part) {
  const std::string figure = figure_text(plan, map, part);
  const std::string what = what_text(plan, part);
  LabelWish wish;
  for (const PaperLength height : {lettering::label, lettering::note})
    for (const bool upward : {false, true}) {
      wish.wordings.push_back({{figure, what}, height, upward});
      wish.wordings.push_back({{figure + " " + what}, height, upward});
    }
  wish.home = view(part.region);
  wish.target = middle_of_seen(wish.home, {}).value_or(wish.home.front().front());
  wish.may_stand_off = true;
  wish.key = figure + " " + what;
  const Rect box = part.region.bounds();
  wish.place = both(half(box.low.x + box.high.x), plan->unit) + " from the front, " +
               both(half(box.low.y + box.high.y), plan->unit) + " from the left wall";
  return wish;
}

// "Left back lies 2 5/16\" lower"
std::string off_level_text(const Plan& plan, const Map& map, const Placed& piece) {
  const Length by = piece.solid.top() - map.bed->mattress.level;
  const LengthStyle style{.rounding = Rounding::up, .feet = false};
  const std::string size =
      plan->unit == Unit::inch ? imperial(abs(by), style) : metric(abs(by), Rounding::up);
  return "lies " + size + (by < Length{} ? " lower" : " higher");
}

LabelWish off_level_wish(const Plan& plan, const PlanView& view, const Map& map, const Placed& piece) {
  const std::string& name = name_of(piece);
  const std::string how = off_level_text(plan, map, piece);
  LabelWish wish;
  for (const PaperLength height : {lettering::label, lettering::note})
    for (const bool upward : {false, true}) {
      wish.wordings.push_back({{name, how}, height, upward});
      wish.wordings.push_back({{name + " " + how}, height, upward});
    }
  wish.home = view(piece.solid.outline());
  wish.target = middle_of_seen(wish.home, {}).value_or(wish.home.front().front());
  wish.may_stand_off = true;
  wish.key = name + " " + how;
  return wish;
}

std::string spread_text(const Plan& plan, const Rect& box) {
  const auto span = [&](Length from, Length to) {
    return both(from, plan->unit) + " to " + both(to, plan->unit);
  };
  return span(box.low.x, box.high.x) + " from the front, " + span(box.low.y, box.high.y) +
         " from the left wall";
}

std::vector<Note> band_notes(const Plan& plan, const Map& map) {
  const std::string& name = name_of(*map.bed->bed);
  std::vector<Note> notes{{Note::Kind::heading, "Clear height over " + name, 0, false, std::nullopt}};
  const auto say = [&](const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  say(name + " lies " + spread_text(plan, map.bed->mattress.closed.bounds()) + ", " +
      both(map.bed->mattress.level, plan->unit) + " above the floor.");
  say("Each part bears the least height over it, from the cushion not pressed down, rounded down, and what "
      "is "
      "lowest there.");
  const std::vector<ClearHeight>& parts = map.parts;
  if (std::ranges::any_of(parts, [&](const ClearHeight& part) { return is_more_elsewhere(plan, map, part); }))
    say("\"And more\": the roof slopes over that part and is as low at one edge of it.");
  const auto figure = [&](std::size_t band) { return both(clear_height_bands[band], plan->unit); };
  const auto used = [&](std::size_t band) {
    return std::ranges::any_of(parts, [&](const ClearHeight& part) { return part.band == band; });
  };
  if (used(0)) say("Crossed lines: less than " + figure(0) + ", too low even for feet.");
  if (used(1)) say("Close lines: less than " + figure(1) + ", enough over the feet.");
  if (used(2)) say("Wide lines: less than " + figure(2) + ", enough to lie, too low for many to sit up.");
  if (used(3)) say("No lines: " + figure(2) + " and more.");
  for (const Placed* piece : map.off_level)
    say(name_of(*piece) + " belongs to the bed but " + off_level_text(plan, map, *piece) +
        ": it is no part of the surface to lie on, and no height is told over it.");
  return notes;
}

// Where parts begin and end, in one direction; a tape cannot tell nearer ones apart.
std::vector<Length> borders_of(const Map& map, bool along) {
  constexpr Length same_border = Length::inches(1, 32);
  const auto low = [&](const Rect& box) { return along ? box.low.x : box.low.y; };
  const auto high = [&](const Rect& box) { return along ? box.high.x : box.high.y; };
  std::vector<Length> stops{low(map.box), high(map.box)};
  const auto take = [&](const Rect& box) {
    stops.push_back(low(box));
    stops.push_back(high(box));
  };
  for (const ClearHeight& part : map.parts) take(part.region.bounds());
  for (const Placed* piece : map.off_level) take(piece->solid.outline().bounds());
  std::ranges::sort(stops);
  const auto doubled = std::ranges::unique(stops, [&](Length a, Length b) { return b - a < same_border; });
  stops.erase(doubled.begin(), doubled.end());
  stops.back() = high(map.box);
  return stops;
}

// Nearest first; a chain of borders too crowded to be drawn is left out.
std::vector<ChainSetting> chains_of(const Plan& plan, const Map& map, Wall wall, std::int64_t ratio) {
  std::vector<ChainSetting> chains;
  const std::vector<Length> stops = borders_of(map, wall == Wall::left);
  if (stops.size() > 2) chains.push_back(set_chain({wall, stops, false}, ratio, plan->unit));
  std::erase_if(chains, &ChainSetting::crowded);
  chains.push_back(set_chain({wall, {stops.front(), stops.back()}, true}, ratio, plan->unit));
  return chains;
}

struct Chains {
  std::vector<ChainSetting> below;   // as along the left wall
  std::vector<ChainSetting> beside;  // as along the front wall
};

struct MapAttempt {
  Draft draft;
  std::vector<Note> rest;
};

Group map_dimensions(const PlanView& view, const PaperBox& bed, const Chains& chains) {
  Group dimensions{"Dimensions", {}, 0};
  for (const auto& set : {chains.below, chains.beside})
    for (std::size_t i = 0; i < set.size(); ++i)
      for (Mark& mark : marks_of(set[i], view, bed, lanes_of(set, first_by_bed).lines[i]))
        dimensions.marks.push_back(std::move(mark));
  // Lines first, so that the patches under figures clear those of every chain.
  std::ranges::stable_partition(dimensions.marks,
                                [](const Mark& mark) { return std::holds_alternative<Path>(mark); });
  return dimensions;
}

// The parts, hatched about the lettering.
Group hatched_parts(const Map& map, const PlanView& view, const std::vector<PlacedLabel>& labels) {
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  Group parts{"Clear heights", {}, 0};
  for (const ClearHeight& part : map.parts) {
    for (Path& path : paths_of(view, part.region, {}, Ink::seen_behind))
      parts.marks.emplace_back(std::move(path));
    for (Path& path : hatching_of(view(part.region), part.band, lettering))
      parts.marks.emplace_back(std::move(path));
  }
  return parts;
}

MapAttempt attempted(const DrawnConfiguration& of, const Map& map, const Scale& scale, const Page& page,
                     const Chains& chains) {
  const Plan& plan = *of.plan;
  const Rect& box = map.box;
  const PaperLength beside = lanes_of(chains.beside, first_by_bed).depth;
  const PaperPoint low{page.drawing.low.x + beside,
                       page.drawing.low.y + on_paper(box.height(), scale.ratio) + paper_mm(2)};
  const PlanView view{scale.ratio,
                      {low.x - on_paper(box.low.x, scale.ratio), low.y + on_paper(box.low.y, scale.ratio)}};
  const PaperBox bed{{view(box.low).x, view(box.high).y}, {view(box.high).x, view(box.low).y}};
  Group dimensions = map_dimensions(view, bed, chains);
  Group outline{"Bed", {}, 0};
  for (Path& path : paths_of(view, map.bed->mattress.closed, {}, Ink::bed_outline))
    outline.marks.emplace_back(std::move(path));
  LabelField field{page.drawing, {}, {}, {}, {}};
  std::vector<LabelWish> wishes;
  for (const ClearHeight& part : map.parts) {
    for (const Path& path : paths_of(view, part.region, {}, Ink::seen_behind))
      for (const PaperLine& line : lines(path)) field.light.push_back(line);
    wishes.push_back(wish_of(plan, view, map, part));
  }
  Group off_level{"Pieces off the level", {}, 0};
  for (const Placed* piece : map.off_level) {
    for (Path& path : paths_of(view, piece->solid.outline(), {}, Ink::overhead))
      off_level.marks.emplace_back(std::move(path));
    wishes.push_back(off_level_wish(plan, view, map, *piece));
  }
  add_obstacles(field, off_level.marks);
  add_obstacles(field, dimensions.marks);
  add_obstacles(field, outline.marks);
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  Group parts = hatched_parts(map, view, labels);
  Group names{"Heights and what hangs there", {}, 0};
  for (const PlacedLabel& label : labels)
    for (Mark& mark : marks_of(label)) names.marks.push_back(std::move(mark));

  std::vector<Note> notes = band_notes(plan, map);
  for (const Note& note : key_notes(labels, wishes)) notes.push_back(note);
  std::string told = "Clear heights over " + name_of(*map.bed->bed) + ", seen from above, front at the left.";
  for (const ClearHeight& part : map.parts)
    told += " " + figure_text(plan, map, part) + " " + what_text(plan, part) + ".";
  MapAttempt attempt{draft_of(plan, berthwright::name_of(*of.answer->configuration) + ", heights",
                              std::string(scale.words), page),
                     {}};
  Draft& draft = attempt.draft;
  SetNotes set = set_notes(notes, page.columns);
  attempt.rest = std::move(set.rest);
  draft.id = of.answer->configuration->id.text();
  draft.suffix = "-heights";
  draft.sheet.scale = scale.ratio;
  draft.subject = "over " + name_of(*map.bed->bed);
  draft.sheet.title += " " + draft.subject;
  draft.sheet.description = description_of(told, notes);
  for (Group* group : {&off_level, &parts, &outline, &dimensions, &names})
    draft.sheet.groups.push_back(std::move(*group));
  for (Group& group : foot_groups(plan, page, scale.ratio)) draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
  return attempt;
}

MapAttempt best_of(const DrawnConfiguration& of, const Map& map) {
  const Plan& plan = *of.plan;
  const Rect& box = map.box;
  for (const Scale& scale : scales(plan->unit)) {
    // A bed fills a page at no useful scale larger than this.
    if (scale.ratio < 10) continue;
    const Chains chains{chains_of(plan, map, Wall::left, scale.ratio),
                        chains_of(plan, map, Wall::front, scale.ratio)};
    if (chains.below.back().crowded || chains.beside.back().crowded) continue;
    const PaperSize needs{
        on_paper(box.width(), scale.ratio) + lanes_of(chains.beside, first_by_bed).depth + paper_mm(6),
        on_paper(box.height(), scale.ratio) + lanes_of(chains.below, first_by_bed).depth + paper_mm(6)};
    for (const bool landscape : {true, false})
      for (const NotesAt at : {NotesAt::right, NotesAt::below})
        if (const auto page = page_for(plan, landscape, at, needs)) {
          MapAttempt attempt = attempted(of, map, scale, *page, chains);
          if (attempt.rest.empty() || scale.ratio >= 48) return attempt;
        }
  }
  throw std::logic_error("no scale is small enough for a bed");
}

}  // namespace

std::vector<Draft> height_drafts(const DrawnConfiguration& of) {
  std::vector<Draft> drafts;
  for (const BedAnswer& bed : of.answer->beds) {
    if (bed.mattress.closed.empty()) continue;
    const bool full = std::ranges::all_of(
        bed.room.overhead, [](const ClearHeight& part) { return part.band >= clear_height_bands.size(); });
    if (full) continue;
    const Map map = map_of(of, bed);
    MapAttempt attempt = best_of(of, map);
    const Draft draft = attempt.draft;
    drafts.push_back(draft);
    add_notes_pages(drafts, *of.plan, draft, std::move(attempt.rest));
  }
  return drafts;
}

}  // namespace berthwright
