#include <algorithm>
#include <optional>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/sheets.h>

#include "view/bay_marks.h"
#include "view/dimensions.h"
#include "view/draft.h"
#include "view/labels.h"
#include "view/lettering.h"
#include "view/notes.h"
#include "view/placing_words.h"

namespace berthwright {
namespace {

constexpr PaperLength first_sheet_chain = paper_mm(8);
constexpr PaperLength over_sheet = paper_mm(9);  // for the arrow of the grain
constexpr PaperLength arrow_length = paper_mm(14);

/// One piece of stock, to be drawn.
struct CutSheet {
  const Plan& plan;
  const StockList& stock;
  const StockJob& job;
  const StockCut& cut;
  std::string label;

  Rect whole() const { return {{}, {cut.length, job.task.stock[cut.kind].width}}; }
  Unit own() const { return plan->unit; }
  /// None where parts lie any way.
  std::optional<PartLay> lay() const {
    PartLay lay = PartLay::quarters;
    for (const StockPlace& place : cut.places) lay = std::max(lay, job.task.parts[place.part].lay);
    return lay == PartLay::quarters ? std::nullopt : std::optional(lay);
  }
};

/// The chains of a sheet's whole length and width at a scale.
struct SheetChains {
  ChainSetting along;
  ChainSetting across;
  Lanes along_lanes;
  Lanes across_lanes;
};

SheetChains chains_of(const CutSheet& sheet, std::int64_t ratio) {
  const auto chain = [&](Wall side, Length to) {
    return set_chain({side, {Length{}, to}, true, DimensionChain::Of::whole, false, false}, ratio,
                     sheet.own());
  };
  const Rect whole = sheet.whole();
  SheetChains chains{chain(Wall::left, whole.high.x), chain(Wall::front, whole.high.y), {}, {}};
  chains.along_lanes = lanes_of({chains.along}, first_sheet_chain);
  chains.across_lanes = lanes_of({chains.across}, first_sheet_chain);
  return chains;
}

Ink part_ink(StockGoods goods) {
  switch (goods) {
    case StockGoods::foam:
      return Ink::cushion;
    case StockGoods::board:
      return Ink::board;
    case StockGoods::cloth:
      return Ink::cushion;
  }
  throw std::logic_error("StockGoods out of range");
}

PaperRing ring_of(const PaperBox& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

std::string short_sawn(Length a, Length b, Unit own) {
  const auto one = [&](Length length) {
    return own == Unit::inch ? imperial(length, {.feet = false, .parts = 32}) : metric(length);
  };
  return one(a) + " × " + one(b);
}

LabelWish part_wish(const CutSheet& sheet, const StockPlace& place, const PlanView& view) {
  const StockPart& part = sheet.job.task.parts[place.part];
  const std::string number = std::to_string(place.part + 1);
  const std::string size = short_sawn(part.length, part.width, sheet.own());
  const PaperBox box = box_in(view, place.at);
  LabelWish wish;
  const bool tall = box.height() > box.width();
  // A strip too narrow for words has its number alone: words beside it would lie on a neighbour.
  const bool narrow = std::min(box.width(), box.height()) < lettering::label * 14 / 10;
  for (const bool upward : {tall, !tall}) {
    if (narrow) break;
    wish.wordings.push_back({{number + ": " + part.id, size}, lettering::label, upward, false});
    wish.wordings.push_back({{number, size}, lettering::label, upward, false});
    wish.wordings.push_back({{number + ": " + size}, lettering::label, upward, false});
  }
  wish.wordings.push_back({{number}, lettering::label, false, false});
  wish.home = {ring_of(box)};
  wish.target = box.centre();
  wish.may_stand_off = true;
  wish.weight = 4;
  wish.key = "part " + number + ", " + part.id;
  return wish;
}

LabelWish offcut_wish(const CutSheet& sheet, const Rect& offcut, const PlanView& view) {
  const PaperBox box = box_in(view, offcut);
  const std::string size = short_sawn(offcut.width(), offcut.height(), sheet.own());
  LabelWish wish;
  for (const bool upward : {false, true}) {
    wish.wordings.push_back({{"keep " + size}, lettering::label, upward, false});
    wish.wordings.push_back({{"keep", size}, lettering::label, upward, false});
  }
  wish.home = {ring_of(box)};
  wish.target = box.centre();
  wish.key = "keep " + size;
  return wish;
}

// The middle of the blade's way.
PaperLine line_of(const CutSheet& sheet, const ThroughCut& cut, const PlanView& view) {
  const Length middle = cut.at + half(sheet.job.task.kerf);
  return cut.crosswise ? PaperLine{view({middle, cut.piece.low.y}), view({middle, cut.piece.high.y})}
                       : PaperLine{view({cut.piece.low.x, middle}), view({cut.piece.high.x, middle})};
}

LabelWish cut_wish(const PaperLine& line, std::size_t number) {
  LabelWish wish;
  wish.wordings.push_back({{std::to_string(number)}, lettering::note, false, true});
  wish.target = {(line.from.x + line.to.x) / 2, (line.from.y + line.to.y) / 2};
  wish.may_stand_off = true;
  wish.may_touch = true;
  wish.weight = 2;
  wish.key = "cut " + std::to_string(number);
  return wish;
}

struct DrawnSheet {
  std::vector<Group> groups;
  std::vector<Note> keys;
};

void add_labels(const LabelField& field, std::vector<LabelWish> wishes, DrawnSheet& drawn) {
  Group group{"Numbers", {}, 0};
  const std::vector<PlacedLabel> placed = placed_labels(field, wishes);
  for (std::size_t i = 0; i < placed.size(); ++i) {
    add(group.marks, marks_of(placed[i]));
    if (placed[i].number > 0 || placed[i].wording.lines.empty())
      drawn.keys.push_back({Note::Kind::text, wishes[i].key, placed[i].number, false, std::nullopt});
  }
  drawn.groups.push_back(std::move(group));
}

std::vector<Mark> lay_arrow(PartLay lay, PaperPoint at) {
  const PaperPoint end{at.x + arrow_length, at.y};
  std::vector<Mark> marks{straight(Ink::direction, {at.x + paper_mm(1), at.y}, {end.x - paper_mm(1), at.y})};
  const auto head = [&](PaperPoint tip, PaperLength back) {
    marks.emplace_back(closed_path(
        Ink::move_head,
        PaperRing{tip, {tip.x + back, tip.y - paper_mm(1)}, {tip.x + back, tip.y + paper_mm(1)}}));
  };
  head(end, -paper_mm(3));
  if (lay == PartLay::grain) head(at, paper_mm(3));
  marks.emplace_back(Text{Ink::note,
                          {end.x + paper_mm(2), at.y + lettering::note * 3 / 10},
                          lettering::note,
                          Anchor::start,
                          false,
                          lay == PartLay::grain ? "grain" : "nap"});
  return marks;
}

std::vector<Mark> stock_marks(const CutSheet& sheet, const PlanView& view) {
  std::vector<Mark> marks{closed_path(Ink::fixture, box_in(view, sheet.whole()))};
  for (const Rect& offcut : sheet.cut.offcuts)
    marks.emplace_back(closed_path(Ink::opening, box_in(view, offcut)));
  for (const StockPlace& place : sheet.cut.places)
    marks.emplace_back(closed_path(part_ink(sheet.job.material->goods), box_in(view, place.at)));
  for (const Rect& defect : sheet.job.task.stock[sheet.cut.kind].defects) {
    const PaperBox box = box_in(view, defect);
    marks.emplace_back(closed_path(Ink::clash, box));
    marks.emplace_back(straight(Ink::clash, box.low, box.high));
    marks.emplace_back(straight(Ink::clash, {box.low.x, box.high.y}, {box.high.x, box.low.y}));
  }
  return marks;
}

DrawnSheet drawn_sheet(const CutSheet& sheet, const SheetChains& chains, const PlanView& view,
                       const PaperBox& area) {
  DrawnSheet drawn;
  const PaperBox whole = box_in(view, sheet.whole());
  drawn.groups.push_back({"Stock and parts", stock_marks(sheet, view), 0});
  Group cuts{"Cuts", {}, 0};
  std::vector<LabelWish> wishes;
  for (const StockPlace& place : sheet.cut.places) wishes.push_back(part_wish(sheet, place, view));
  for (const Rect& offcut : sheet.cut.offcuts) wishes.push_back(offcut_wish(sheet, offcut, view));
  for (std::size_t c = 0; c < sheet.cut.cuts.size(); ++c) {
    const PaperLine line = line_of(sheet, sheet.cut.cuts[c], view);
    cuts.marks.emplace_back(straight(Ink::sleeping_rectangle, line.from, line.to));
    wishes.push_back(cut_wish(line, c + 1));
  }
  drawn.groups.push_back(std::move(cuts));
  Group measures{"Measures", {}, 0};
  add(measures.marks, marks_of(chains.along, view, whole, chains.along_lanes.lines.front()));
  add(measures.marks, marks_of(chains.across, view, whole, chains.across_lanes.lines.front()));
  if (sheet.lay()) add(measures.marks, lay_arrow(*sheet.lay(), {whole.low.x, whole.low.y - paper_mm(5)}));
  drawn.groups.push_back(std::move(measures));
  LabelField field{area, {}, {}, {}, {}};
  for (const Group& group : drawn.groups) add_obstacles(field, group.marks);
  add_labels(field, std::move(wishes), drawn);
  return drawn;
}

Note said(std::string words) { return {Note::Kind::text, std::move(words), 0, false, std::nullopt}; }
Note heading_note(std::string words) {
  return {Note::Kind::heading, std::move(words), 0, false, std::nullopt};
}

std::vector<Note> sheet_notes(const CutSheet& sheet, const std::vector<Note>& keys) {
  const Unit own = sheet.own();
  std::vector<Note> notes{heading_note(sheet.label + ": " + stock_piece_words(sheet.job, sheet.cut, own)),
                          said(job_name(sheet.job, own) + ". " + job_manner(sheet.job, own))};
  for (std::size_t p = 0; p < sheet.job.task.parts.size(); ++p) {
    const StockPart& part = sheet.job.task.parts[p];
    const auto count = std::ranges::count(sheet.cut.places, p, &StockPlace::part);
    if (count == 0) continue;
    notes.push_back(said("Part " + std::to_string(p + 1) + ", " + part.id + ": " + std::to_string(count) +
                         " of " + sawn(part.length, part.width, own) + ", " + std::string(word(part.lay)) +
                         (sheet.job.parts[p].by_its_box ? ", the box around its shape." : ".")));
  }
  notes.insert(notes.end(), keys.begin(), keys.end());
  if (!sheet.cut.cuts.empty()) notes.push_back(heading_note("Cuts in their order"));
  for (std::size_t c = 0; c < sheet.cut.cuts.size(); ++c)
    notes.push_back(said(std::to_string(c + 1) + ". " + through_cut_sentence(sheet.cut.cuts[c], own)));
  if (sheet.cut.cuts.empty())
    for (const StockPlace& place : sheet.cut.places)
      notes.push_back(said("Part " + stock_place_sentence(sheet.job, place, own)));
  if (!sheet.cut.offcuts.empty()) notes.push_back(heading_note("Worth keeping"));
  for (const Rect& offcut : sheet.cut.offcuts)
    notes.push_back(said(sawn(offcut.width(), offcut.height(), own) + "."));
  notes.push_back(heading_note("How to read it"));
  notes.push_back(
      said("The end is at the left, the edge at the foot. Numbers in rings: cuts in their order. Grey: "
           "waste, kerf and "
           "trim. A box with a cross: a defect."));
  return notes;
}

PaperBox extent_of(const Group& group) {
  std::optional<PaperBox> all;
  for (const Mark& mark : group.marks) {
    std::optional<PaperBox> box;
    if (const Text* text = std::get_if<Text>(&mark)) box = box_of(*text);
    if (const Path* path = std::get_if<Path>(&mark)) {
      PaperRing ring{path->from};
      for (const Stretch& stretch : path->stretches) ring.push_back(stretch.to);
      box = bounds(ring);
    }
    if (box) all = all ? hull(*all, *box) : *box;
  }
  return all.value_or(PaperBox{});
}

/// A page on which the piece of stock is drawn.
struct SheetPage {
  Page page;
  Scale scale;
  SheetChains chains;
  PlanView view;
  Group bar;
};

std::optional<SheetPage> page_at(const CutSheet& sheet, const Scale& scale, bool landscape, NotesAt notes) {
  const Rect whole = sheet.whole();
  const SheetChains chains = chains_of(sheet, scale.ratio);
  if (chains.along.crowded || chains.across.crowded) return std::nullopt;
  const PaperSize needs{
      on_paper(whole.width(), scale.ratio) + chains.across_lanes.depth + paper_mm(8),
      on_paper(whole.height(), scale.ratio) + chains.along_lanes.depth + over_sheet + paper_mm(2)};
  std::optional<Page> page = page_for(sheet.plan, landscape, notes, needs);
  if (!page) return std::nullopt;
  Group bar =
      scale_bar(sheet.plan, scale.ratio, {page->foot.x + paper_mm(6), page->foot.y + paper_mm(25, 10)});
  const PaperBox bar_box = grown(extent_of(bar), paper_mm(1));
  for (const PaperBox& column : page->columns)
    if (overlaps(column, bar_box)) return std::nullopt;
  const PaperBox& box = page->drawing;
  const PlanView view{scale.ratio,
                      {box.low.x + (box.width() - needs.width) / 2 + chains.across_lanes.depth,
                       box.low.y + over_sheet + on_paper(whole.height(), scale.ratio)}};
  return SheetPage{*std::move(page), scale, chains, view, std::move(bar)};
}

bool holds_all(const SheetPage& at, const CutSheet& sheet) {
  return set_notes(sheet_notes(sheet, {}), at.page.columns).rest.empty();
}

// The largest scale; a smaller one, down to half as large, where all that is said then stands beside the
// drawing.
SheetPage page_of(const CutSheet& sheet) {
  std::optional<SheetPage> largest;
  for (const Scale& scale : scales(sheet.own()))
    for (const NotesAt notes : {NotesAt::right, NotesAt::below})
      for (const bool landscape : {true, false}) {
        std::optional<SheetPage> page = page_at(sheet, scale, landscape, notes);
        if (!page) continue;
        if (holds_all(*page, sheet)) return *std::move(page);
        if (!largest) largest = std::move(page);
        if (scale.ratio >= largest->scale.ratio * 2) return *std::move(largest);
      }
  if (!largest) throw std::logic_error("no scale is small enough for a piece of stock");
  return *std::move(largest);
}

void add_sheet(std::vector<Draft>& drafts, const CutSheet& sheet) {
  SheetPage at = page_of(sheet);
  DrawnSheet drawn = drawn_sheet(sheet, at.chains, at.view, at.page.drawing);
  Draft draft = draft_of(sheet.plan, "Cut sheet " + sheet.label, std::string(at.scale.words), at.page);
  draft.id = "stock";
  draft.suffix = "-" + plain_stem(sheet.label);
  draft.subject = job_name(sheet.job, sheet.own());
  draft.sides = "End at the left, edge at the foot";
  draft.sheet.scale = at.scale.ratio;
  const std::vector<Note> notes = sheet_notes(sheet, drawn.keys);
  draft.sheet.description = description_of("Cut sheet " + sheet.label + ".", notes);
  for (Group& group : drawn.groups) draft.sheet.groups.push_back(std::move(group));
  SetNotes set = set_notes(notes, at.page.columns);
  draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
  draft.sheet.groups.push_back(std::move(at.bar));
  drafts.push_back(draft);
  add_notes_pages(drafts, sheet.plan, draft, std::move(set.rest));
}

}  // namespace

std::vector<Sheet> placing_sheets(const Plan& plan, const StockList& stock, const StockJobs& jobs) {
  std::vector<Draft> drafts;
  for (std::size_t j = 0; j < jobs.jobs.size(); ++j)
    for (std::size_t c = 0; c < jobs.jobs[j].placing.cuts.size(); ++c)
      add_sheet(drafts, {plan, stock, jobs.jobs[j], jobs.jobs[j].placing.cuts[c], stock_label(j, c)});
  return finished(plan, std::move(drafts));
}

}  // namespace berthwright
