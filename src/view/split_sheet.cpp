#include <berthwright/view/sheets.h>

#include <algorithm>
#include <optional>
#include <stdexcept>

#include "view/bay_marks.h"
#include "view/draft.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/notes.h"
#include "view/split_words.h"
#include "view/title_block.h"

namespace berthwright {
namespace {

constexpr PaperLength between_pictures = paper_mm(8);
constexpr PaperLength between_proposals = paper_mm(5);
constexpr PaperLength least_words = paper_mm(9);

struct ProposalRow {
  const BaySplits* of = nullptr;
  std::size_t index = 0;
  std::vector<CushionName> names;
  const Split& split() const { return of->best[index]; }
};

Ink ink_of(SplitPiece::Use use) {
  switch (use) {
    case SplitPiece::Use::seat:
      return Ink::still_piece;
    case SplitPiece::Use::back:
      return Ink::parked_piece;
    case SplitPiece::Use::filler:
      return Ink::moved_piece;
  }
  throw std::logic_error("Use out of range");
}

// A back that stands is too thin for lettering: its letter stands outside, at the wall.
Mark letter_beside(const std::string& letter, const Lid& lid, const PaperBox& back) {
  const PaperPoint middle = back.centre();
  const PaperLength rise = lettering::label * 3 / 10;
  const PaperLength away = paper_mm(15, 10);
  const auto text = [&](PaperPoint at, Anchor anchor) {
    return Text{Ink::label, at, lettering::label, anchor, false, letter};
  };
  switch (lid.faces) {
    case Wall::rear:
      return text({back.low.x - away, middle.y + rise}, Anchor::end);
    case Wall::front:
      return text({back.high.x + away, middle.y + rise}, Anchor::start);
    case Wall::right:
      return text({middle.x, back.high.y + away + lettering::label * 7 / 10}, Anchor::middle);
    case Wall::left:
      return text({middle.x, back.low.y - away}, Anchor::middle);
  }
  throw std::logic_error("Wall out of range");
}

std::vector<Mark> picture_marks(const Plan& plan, const ProposalRow& row, const PlanView& view, bool night) {
  std::vector<Mark> marks;
  for (const Rect& part : row.of->bay.parts) marks.emplace_back(closed_path(Ink::quiet, box_in(view, part)));
  const Split& split = row.split();
  if (night && split.gap) add(marks, paths_of(view, Region(*split.gap), {}, Ink::gap));
  // Backs stand on seats, so they are drawn after them.
  for (const auto use : {SplitPiece::Use::seat, SplitPiece::Use::filler, SplitPiece::Use::back})
    for (const SplitPiece& piece : split.pieces) {
      if (piece.use != use || (!night && !piece.by_day)) continue;
      const Region lying = without(Region(night ? piece.by_night : *piece.by_day), piece.kept_out);
      add(marks, paths_of(view, lying, {}, ink_of(use)));
    }
  for (std::size_t i = 0; i < split.pieces.size(); ++i) {
    const SplitPiece& piece = split.pieces[i];
    if (!night && !piece.by_day) continue;
    Rect at = night ? piece.by_night : *piece.by_day;
    const auto lid = std::ranges::find(row.of->bay.lids, piece.bench, &Lid::bench);
    if (piece.use == SplitPiece::Use::back && (!night || piece.stays())) {
      marks.push_back(letter_beside(row.names[i].id, *lid, box_in(view, at)));
      continue;
    }
    // What a back standing on a seat leaves to be seen.
    if (!night && piece.use == SplitPiece::Use::seat) {
      const auto index = static_cast<std::size_t>(lid - row.of->bay.lids.begin());
      if (split.manners[index] == BackManner::on_seat) {
        const Length thick = row.of->limits.thickness;
        if (lid->faces == Wall::rear) at.low.x += thick;
        if (lid->faces == Wall::front) at.high.x -= thick;
        if (lid->faces == Wall::right) at.low.y += thick;
        if (lid->faces == Wall::left) at.high.y -= thick;
      }
    }
    add_letter(marks, row.names[i].id, short_size(plan, piece.length, piece.width),
               box_in(view, beside_cut(at, piece.kept_out)), box_in(view, row.of->bay.bounds()));
  }
  return marks;
}

struct SaidOver {
  std::vector<Mark> marks;
  PaperLength height;
};

SaidOver said_over(const Plan& plan, const ProposalRow& row, const PaperBox& box) {
  const NightBay& bay = row.of->bay;
  const std::vector<Note> notes{
      {Note::Kind::heading,
       "Proposal " + std::to_string(row.index + 1) + ". By day at the left, by night at the right.", 0, false,
       std::nullopt},
      {Note::Kind::text, split_heading(plan, bay, row.split()) + " " + split_reasons(plan, row.split()), 0,
       false, std::nullopt}};
  SetNotes set = set_notes(notes, {box});
  const PaperLength height = bottom_of(set.marks, box.low.y) - box.low.y;
  return {std::move(set.marks), std::max(least_words, height)};
}

/// Proposals beside and under each other.
struct SplitLayout {
  Scale scale;
  PaperSize picture;            ///< with room for letters beside it
  std::vector<PaperBox> cells;  ///< of each proposal
  std::vector<SaidOver> said;
};

std::optional<SplitLayout> layout_at(const Plan& plan, const Scale& scale,
                                     const std::vector<ProposalRow>& rows, const PaperBox& box,
                                     std::size_t columns) {
  const Rect bounds = rows.front().of->bay.bounds();
  SplitLayout layout{scale,
                     {on_paper(bounds.width(), scale.ratio) + beside_picture * 2,
                      on_paper(bounds.height(), scale.ratio) + beside_picture * 2},
                     {},
                     {}};
  const auto count = static_cast<std::int64_t>(columns);
  const PaperLength width = (box.width() - between_pictures * (count - 1)) / count;
  if (layout.picture.width * 2 + between_pictures > width) return std::nullopt;
  PaperLength top = box.low.y;
  PaperLength bottom = top;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto column = static_cast<std::int64_t>(i % columns);
    if (column == 0) top = bottom;
    const PaperPoint corner{box.low.x + (width + between_pictures) * column, top};
    layout.said.push_back(said_over(plan, rows[i], {corner, {corner.x + width, box.high.y}}));
    const PaperLength foot = top + layout.said.back().height + layout.picture.height;
    layout.cells.push_back({corner, {corner.x + width, foot}});
    bottom = std::max(bottom, foot + between_proposals);
  }
  if (bottom > box.high.y) return std::nullopt;
  return layout;
}

SplitLayout layout_for(const Plan& plan, const std::vector<ProposalRow>& rows, const PaperBox& box) {
  for (const Scale& scale : scales(plan->unit))
    for (const std::size_t columns : {std::size_t{1}, std::size_t{2}})
      if (std::optional<SplitLayout> layout = layout_at(plan, scale, rows, box, columns)) return *layout;
  throw std::logic_error("no scale is small enough for a bay");
}

Draft bay_draft(const Plan& plan, const BaySplits& splits, std::size_t number,
                const std::vector<std::string>& others) {
  const NightBay& bay = splits.bay;
  const Rect bounds = bay.bounds();
  const Page page = strip_page(plan, false);
  const PaperBox& box = page.drawing;
  SetNotes over = set_notes(
      {{Note::Kind::text,
        bay_heading(plan, bay) +
            ". Grey: seats. Yellow with a heavy edge: backs. Blue: fillers. "
            "White: the board by day, or what rises through. Letters outside are of backs that stand "
            "and of strips too narrow for theirs." +
            (splits.best.front().gap ? " Bright yellow: what stays open." : ""),
        0, false, std::nullopt}},
      {box});
  std::vector<ProposalRow> rows;
  for (std::size_t i = 0; i < splits.best.size(); ++i)
    rows.push_back({&splits, i, cushion_names(plan, bay, splits.best[i], others)});
  const PaperPoint under{box.low.x, bottom_of(over.marks, box.low.y) + paper_mm(3)};
  SplitLayout layout = layout_for(plan, rows, {under, box.high});
  const std::int64_t ratio = layout.scale.ratio;
  Draft draft =
      draft_of(plan, "Cushions, bay " + std::to_string(number), std::string(layout.scale.words), page);
  draft.id = "cushions";
  draft.suffix = "-bay-" + std::to_string(number);
  draft.sheet.scale = ratio;
  draft.sheet.description = bay_heading(plan, bay) + ".";
  draft.sheet.groups.push_back({"The bay", std::move(over.marks), 0});
  for (const ProposalRow& row : rows) {
    const PaperBox& cell = layout.cells[row.index];
    const std::string name = "Proposal " + std::to_string(row.index + 1);
    draft.sheet.description += " " + name + ": " + split_heading(plan, bay, row.split());
    draft.sheet.groups.push_back({name, std::move(layout.said[row.index].marks), 0});
    const PaperLength spare = cell.width() - layout.picture.width * 2 - between_pictures;
    for (const bool night : {false, true}) {
      const PaperLength left = cell.low.x + spare / 2 + beside_picture +
                               (night ? layout.picture.width + between_pictures : PaperLength{});
      const PlanView view{ratio,
                          {left - on_paper(bounds.low.x, ratio),
                           cell.high.y - beside_picture + on_paper(bounds.low.y, ratio)}};
      draft.sheet.groups.push_back(
          {name + (night ? " by night" : " by day"), picture_marks(plan, row, view, night), 0});
    }
  }
  for (Group& group : foot_groups(plan, page, ratio)) draft.sheet.groups.push_back(std::move(group));
  return draft;
}

}  // namespace

std::vector<Sheet> split_sheets(const Plan& plan, const std::vector<BaySplits>& bays) {
  std::vector<Draft> drafts;
  std::vector<std::string> others;
  std::size_t number = 0;
  for (const BaySplits& splits : bays) {
    ++number;
    if (splits.best.empty()) continue;
    drafts.push_back(bay_draft(plan, splits, number, others));
    add_ids(others, plan, splits);
  }
  return finished(plan, std::move(drafts));
}

}  // namespace berthwright
