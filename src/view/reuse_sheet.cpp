#include <berthwright/view/sheets.h>

#include <stdexcept>

#include "view/bay_marks.h"
#include "view/draft.h"
#include "view/notes.h"
#include "view/reuse_words.h"
#include "view/split_words.h"
#include "view/title_block.h"

namespace berthwright {
namespace {

std::vector<Mark> relaid_marks(const Plan& plan, const BayReuse& of, const PlanView& view) {
  std::vector<Mark> marks;
  for (const Rect& part : of.bay.parts) marks.emplace_back(closed_path(Ink::quiet, box_in(view, part)));
  const auto paths = [&](const Region& region, Ink ink) {
    for (Path& path : paths_of(view, region, {}, ink)) marks.emplace_back(std::move(path));
  };
  for (const RelaidCushion& laid : of.reuse.laid)
    paths(region_of(of.reuse, laid), laid.stays ? Ink::still_piece : Ink::moved_piece);
  paths(of.reuse.open, Ink::gap);
  const PaperBox bay = box_in(view, of.bay.bounds());
  for (const RelaidCushion& laid : of.reuse.laid) {
    const OwnCushion& own = of.reuse.cushions[laid.cushion];
    const Rect box = own.outline.bounds();
    const Region cut_out = without(Region(laid.at), region_of(of.reuse, laid));
    add_letter(marks, own.id.text(), short_size(plan, box.width(), box.height()),
               box_in(view, beside_cut(laid.at, cut_out)), bay);
  }
  return marks;
}

std::vector<Note> notes_of_reuse(const Plan& plan, const BayReuse& of) {
  const auto note = [](Note::Kind kind, std::string words) {
    return Note{kind, std::move(words), 0, false, std::nullopt};
  };
  std::vector<Note> notes{
      note(Note::Kind::text,
           bay_heading(plan, of.bay) +
               ". Grey: cushions where they lie now by night. Blue: those laid anew. White: "
               "what rises through. Yellow: what stays open."),
      note(Note::Kind::heading, reuse_heading(plan, of.reuse))};
  for (const std::string& words : shortfall_sentences(plan, of.reuse))
    notes.push_back(note(Note::Kind::text, words));
  for (const std::string& words : relaid_sentences(plan, of.reuse))
    notes.push_back(note(Note::Kind::text, words));
  return notes;
}

Draft reuse_draft(const Plan& plan, const BayReuse& of, std::size_t number) {
  const Rect bounds = of.bay.bounds();
  const Page page = strip_page(plan, false);
  const PaperBox& box = page.drawing;
  SetNotes said = set_notes(notes_of_reuse(plan, of), {box});
  const PaperLength top = bottom_of(said.marks, box.low.y) + beside_picture * 2;
  for (const Scale& scale : scales(plan->unit)) {
    const PaperLength width = on_paper(bounds.width(), scale.ratio);
    const PaperLength height = on_paper(bounds.height(), scale.ratio);
    if (width + beside_picture * 2 > box.width() || top + height + beside_picture > box.high.y) continue;
    Draft draft =
        draft_of(plan, "Own cushions, bay " + std::to_string(number), std::string(scale.words), page);
    draft.id = "own-cushions";
    draft.suffix = "-bay-" + std::to_string(number);
    draft.sheet.scale = scale.ratio;
    draft.sheet.description = bay_heading(plan, of.bay) + ". " + reuse_heading(plan, of.reuse);
    const PlanView view{scale.ratio,
                        {box.low.x + (box.width() - width) / 2 - on_paper(bounds.low.x, scale.ratio),
                         top + height + on_paper(bounds.low.y, scale.ratio)}};
    draft.sheet.groups.push_back({"The bay", std::move(said.marks), 0});
    draft.sheet.groups.push_back({"By night", relaid_marks(plan, of, view), 0});
    for (Group& group : foot_groups(plan, page, scale.ratio)) draft.sheet.groups.push_back(std::move(group));
    return draft;
  }
  throw std::logic_error("no scale is small enough for a bay");
}

}  // namespace

std::vector<Sheet> reuse_sheets(const Plan& plan, const std::vector<BayReuse>& bays) {
  std::vector<Draft> drafts;
  for (const BayReuse& of : bays) drafts.push_back(reuse_draft(plan, of, drafts.size() + 1));
  return finished(plan, std::move(drafts));
}

}  // namespace berthwright
