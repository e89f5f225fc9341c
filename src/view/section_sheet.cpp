#include "view/section_sheet.h"

#include <algorithm>
#include <stdexcept>

#include "view/section_drawing.h"
#include "view/section_labels.h"

namespace berthwright {
namespace {

constexpr PaperLength between_sections = paper_mm(6);
// A drawing smaller than this many hundredths of what each section alone could be is cut into more sheets.
constexpr std::int64_t least_share = 80;

// Sections in rows, as many in each as fit.
struct Rows {
  std::vector<PaperPoint> corners;  // relative to the first row's left end
  PaperSize size;
  PaperSize last;
};
std::optional<Rows> in_rows(const std::vector<DrawnSection>& sections, std::int64_t ratio,
                            PaperLength width) {
  Rows rows;
  PaperPoint at;
  PaperLength tallest;
  for (const DrawnSection& drawn : sections) {
    const PaperPoint size = size_of(drawn, ratio);
    if (size.x > width) return std::nullopt;
    if (at.x > PaperLength{} && at.x + size.x > width) {
      at = {{}, at.y + tallest + between_sections};
      tallest = {};
    }
    rows.corners.push_back(at);
    tallest = std::max(tallest, size.y);
    rows.size.width = std::max(rows.size.width, at.x + size.x);
    at.x = at.x + size.x + between_sections;
  }
  rows.size.height = at.y + tallest;
  rows.last = {at.x - between_sections, tallest};
  return rows;
}

// The pages that hold the rows, lying ones first.
std::vector<std::pair<Rows, Page>> pages_for(const Plan& plan, const std::vector<DrawnSection>& sections,
                                             std::int64_t ratio) {
  std::vector<std::pair<Rows, Page>> pages;
  for (const bool landscape : {true, false}) {
    for (const NotesAt at : {NotesAt::right, NotesAt::below}) {
      const auto rows = in_rows(sections, ratio, widest_drawing(plan, landscape, at));
      if (!rows) continue;
      if (const auto page = page_for(plan, landscape, at, rows->size)) pages.emplace_back(*rows, *page);
    }
    const auto rows = in_rows(sections, ratio, widest_drawing(plan, landscape, NotesAt::below));
    if (!rows) continue;
    if (const auto page = page_beside(plan, landscape, rows->size, rows->last))
      pages.emplace_back(*rows, *page);
  }
  return pages;
}

struct Attempt {
  Draft draft;
  bool whole = false;  // all notes found room
  std::vector<Note> rest;
  std::int64_t ratio = 0;
};

Attempt attempted(const DrawnConfiguration& of, const std::vector<DrawnSection>& sections, const Scale& scale,
                  const Page& page, const Rows& rows) {
  const Plan& plan = *of.plan;
  Attempt attempt;
  attempt.ratio = scale.ratio;
  attempt.draft =
      draft_of(plan, name_of(*of.answer->configuration) + ", sections", std::string(scale.words), page);
  Draft& draft = attempt.draft;
  std::vector<PaperPoint> corners;
  for (const PaperPoint corner : rows.corners)
    corners.push_back({page.drawing.low.x + corner.x, page.drawing.low.y + corner.y});
  SectionsDrawing drawn = sections_drawing(of, sections, corners, scale.ratio, page.drawing);
  SetNotes notes = set_notes(drawn.notes, page.columns);
  attempt.whole = notes.rest.empty();
  attempt.rest = std::move(notes.rest);
  draft.sheet.scale = scale.ratio;
  draft.sides = "Sections: heights from the floor";
  draft.id = of.answer->configuration->id.text();
  draft.suffix = "-sections";
  draft.sheet.description =
      description_of("Sections cut by upright planes; people are illustrations." + drawn.told, drawn.notes);
  for (Group& group : drawn.groups) draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back(
      scale_bar(plan, scale.ratio, {page.foot.x + paper_mm(6), page.foot.y + paper_mm(25, 10)}));
  draft.sheet.groups.push_back({"Notes", std::move(notes.marks), 0});
  return attempt;
}

// The first scale, and the ways to lay out its page, at which all sections fit with their notes; if the notes
// never do, of one section the largest at which it does, and of more perhaps none.
std::optional<Attempt> best_of(const DrawnConfiguration& of, const std::vector<DrawnSection>& sections,
                               std::int64_t least_ratio, std::int64_t most_ratio) {
  const Plan& plan = *of.plan;
  const std::vector<Note> certain = section_notes(plan, sections);
  std::optional<Attempt> best;
  for (const Scale& scale : scales(plan->unit)) {
    if (scale.ratio < least_ratio) continue;
    if (scale.ratio > most_ratio) break;
    for (const auto& [rows, page] : pages_for(plan, sections, scale.ratio)) {
      const bool in_vain = !set_notes(certain, page.columns).rest.empty();
      if (in_vain && (best || sections.size() > 1)) continue;
      Attempt attempt = attempted(of, sections, scale, page, rows);
      const bool whole = attempt.whole;
      if (!best || whole) best = std::move(attempt);
      if (whole) return best;
    }
  }
  return best;
}

std::int64_t smallest_ratio(const Plan& plan, const std::vector<DrawnSection>& sections) {
  for (const Scale& scale : scales(plan->unit))
    if (std::ranges::all_of(
            sections, [&](const DrawnSection& one) { return !pages_for(plan, {one}, scale.ratio).empty(); }))
      return scale.ratio;
  return scales(plan->unit).back().ratio;
}

}  // namespace

std::vector<Draft> section_drafts(const DrawnConfiguration& of) {
  std::vector<Draft> drafts;
  const std::vector<DrawnSection> all = drawn_sections(of);
  if (all.empty()) return drafts;
  const std::int64_t alone = smallest_ratio(*of.plan, all);
  for (std::size_t from = 0; from < all.size();) {
    std::size_t to = all.size();
    std::optional<Attempt> attempt;
    for (; to > from && !attempt; to -= attempt ? 0 : 1) {
      const std::vector<DrawnSection> some(all.begin() + static_cast<std::ptrdiff_t>(from),
                                           all.begin() + static_cast<std::ptrdiff_t>(to));
      const std::int64_t most =
          some.size() == 1 ? scales((*of.plan)->unit).back().ratio : alone * 100 / least_share;
      attempt = best_of(of, some, some.size() == 1 ? smallest_ratio(*of.plan, some) : alone, most);
      // Notes on a page of their own are worse than one more sheet.
      if (attempt && !attempt->whole && some.size() > 1) attempt.reset();
    }
    if (!attempt) throw std::logic_error("no scale is small enough for a section");
    Draft draft = std::move(attempt->draft);
    drafts.push_back(draft);
    add_notes_pages(drafts, *of.plan, draft, std::move(attempt->rest));
    from = to;
  }
  return drafts;
}

}  // namespace berthwright
