#include "view/height_map.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/bed/clear_height.h>

#include "view/called.h"
#include "view/hatching.h"
#include "view/label_wishes.h"
#include "view/lettering.h"
#include "view/plan_notes.h"
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

std::string figure_text(const Plan& plan, const ClearHeight& part) {
  if (part.height <= Length{}) return "no room";
  return both(part.height, plan->unit, {.rounding = Rounding::down});
}

LabelWish wish_of(const Plan& plan, const PlanView& view, const ClearHeight& part) {
  const std::string figure = figure_text(plan, part);
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

std::vector<Note> band_notes(const Plan& plan, const std::vector<ClearHeight>& parts) {
  std::vector<Note> notes{{Note::Kind::heading, "Clear height over the bed", 0, false, std::nullopt}};
  const auto say = [&](const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  say("Each part bears the least height over it, from the cushion not pressed down, rounded down, and what "
      "is "
      "lowest there.");
  const auto figure = [&](std::size_t band) { return both(clear_height_bands[band], plan->unit); };
  const auto used = [&](std::size_t band) {
    return std::ranges::any_of(parts, [&](const ClearHeight& part) { return part.band == band; });
  };
  if (used(0)) say("Crossed lines: less than " + figure(0) + ", too low even for feet.");
  if (used(1)) say("Close lines: less than " + figure(1) + ", enough over the feet.");
  if (used(2)) say("Wide lines: less than " + figure(2) + ", enough to lie, too low for many to sit up.");
  if (used(3)) say("No lines: " + figure(2) + " and more.");
  return notes;
}

struct Map {
  const BedAnswer* bed = nullptr;
  std::vector<ClearHeight> parts;
};

std::vector<ChainSetting> chains_of(const Plan& plan, const Rect& box, std::int64_t ratio) {
  return {set_chain({Wall::left, {box.low.x, box.high.x}, true}, ratio, plan->unit),
          set_chain({Wall::front, {box.low.y, box.high.y}, true}, ratio, plan->unit)};
}

struct MapAttempt {
  Draft draft;
  std::vector<Note> rest;
};

MapAttempt attempted(const DrawnConfiguration& of, const Map& map, const Scale& scale, const Page& page,
                     const std::vector<ChainSetting>& chains) {
  const Plan& plan = *of.plan;
  const Rect box = map.bed->mattress.closed.bounds();
  const PaperLength beside = lanes_of({chains[1]}, first_by_bed).depth;
  const PaperPoint low{page.drawing.low.x + beside,
                       page.drawing.low.y + on_paper(box.height(), scale.ratio) + paper_mm(2)};
  const PlanView view{scale.ratio,
                      {low.x - on_paper(box.low.x, scale.ratio), low.y + on_paper(box.low.y, scale.ratio)}};
  const PaperBox bed{{view(box.low).x, view(box.high).y}, {view(box.high).x, view(box.low).y}};
  Group dimensions{"Dimensions", {}, 0};
  for (const ChainSetting& chain : chains)
    for (Mark& mark : marks_of(chain, view, bed, lanes_of({chain}, first_by_bed).lines.front()))
      dimensions.marks.push_back(std::move(mark));
  Group outline{"Bed", {}, 0};
  for (Path& path : paths_of(view, map.bed->mattress.closed, {}, Ink::bed_outline))
    outline.marks.emplace_back(std::move(path));
  LabelField field{page.drawing, {}, {}, {}};
  std::vector<LabelWish> wishes;
  for (const ClearHeight& part : map.parts) {
    for (const Path& path : paths_of(view, part.region, {}, Ink::seen_behind))
      for (const PaperLine& line : lines(path)) field.light.push_back(line);
    wishes.push_back(wish_of(plan, view, part));
  }
  add_obstacles(field, dimensions.marks);
  add_obstacles(field, outline.marks);
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
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
  Group names{"Heights and what hangs there", {}, 0};
  for (const PlacedLabel& label : labels)
    for (Mark& mark : marks_of(label)) names.marks.push_back(std::move(mark));

  std::vector<Note> notes = band_notes(plan, map.parts);
  for (const Note& note : key_notes(labels, wishes)) notes.push_back(note);
  std::string told = "Clear heights over " + name_of(*map.bed->bed) + ", seen from above, front at the left.";
  for (const ClearHeight& part : map.parts)
    told += " " + figure_text(plan, part) + " " + what_text(plan, part) + ".";
  MapAttempt attempt{draft_of(plan, berthwright::name_of(*of.answer->configuration) + ", heights",
                              std::string(scale.words), page),
                     {}};
  Draft& draft = attempt.draft;
  SetNotes set = set_notes(notes, page.columns);
  attempt.rest = std::move(set.rest);
  draft.id = of.answer->configuration->id.text();
  draft.suffix = "-heights";
  draft.sheet.scale = scale.ratio;
  draft.sheet.title += " over " + name_of(*map.bed->bed);
  draft.sheet.description = description_of(told, notes);
  for (Group* group : {&parts, &outline, &dimensions, &names})
    draft.sheet.groups.push_back(std::move(*group));
  for (Group& group : foot_groups(plan, page, scale.ratio)) draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
  return attempt;
}

MapAttempt best_of(const DrawnConfiguration& of, const Map& map) {
  const Plan& plan = *of.plan;
  const Rect box = map.bed->mattress.closed.bounds();
  for (const Scale& scale : scales(plan->unit)) {
    // A bed fills a page at no useful scale larger than this.
    if (scale.ratio < 10) continue;
    const std::vector<ChainSetting> chains = chains_of(plan, box, scale.ratio);
    if (std::ranges::any_of(chains, &ChainSetting::crowded)) continue;
    const PaperSize needs{
        on_paper(box.width(), scale.ratio) + lanes_of({chains[1]}, first_by_bed).depth + paper_mm(4),
        on_paper(box.height(), scale.ratio) + lanes_of({chains[0]}, first_by_bed).depth + paper_mm(4)};
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
    Map map{&bed, bed.room.overhead};
    const bool full = std::ranges::all_of(
        map.parts, [](const ClearHeight& part) { return part.band >= clear_height_bands.size(); });
    if (full) continue;
    MapAttempt attempt = best_of(of, map);
    const Draft draft = attempt.draft;
    drafts.push_back(draft);
    add_notes_pages(drafts, *of.plan, draft, std::move(attempt.rest));
  }
  return drafts;
}

}  // namespace berthwright
