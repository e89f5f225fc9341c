#include <algorithm>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"
#include "view/cushion_key.h"
#include "view/cushion_words.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/shape_words.h"

namespace berthwright {
namespace {

constexpr PaperLength label_height = paper_mm(40);
constexpr std::int64_t label_columns = 3;
constexpr PaperLength label_air = paper_mm(2);
constexpr PaperLength letter_column = paper_mm(13);
constexpr PaperLength big_letter = paper_mm(9);

/// One label: words beside a letter.
struct CushionLabel {
  std::string letter;
  std::string name;
  std::vector<std::string> lines;
};

std::string edge_of_zip(const Plan& plan, const Cover& cover) {
  if (!has_zip_edge(cover)) return {};
  return capital_first(cover_terms(plan->english).zip) + ": " +
         edge_name(cover.rim.edges.at(cover.zip.place.edge)) + ".";
}

CushionLabel cover_label(const Plan& plan, const Cover& cover, const std::string& letter) {
  const Piece& piece = *cover.piece;
  CushionLabel label{
      letter,
      piece.name,
      {"Cover. " + cut_size({piece.length, piece.width, piece.thickness}, plan->unit) + " finished."}};
  if (const std::string& fabric = cover.sewing.fabric.name; !fabric.empty())
    label.lines.push_back("Fabric: " + fabric + ".");
  label.lines.push_back(edge_of_zip(plan, cover));
  label.lines.push_back(up_sentence(cover));
  return label;
}

CushionLabel foam_label(const Plan& plan, const Cover& cover, const std::string& letter) {
  CushionLabel label{letter, cover.piece->name, {}};
  label.lines.push_back("Foam. " + capital_first(foam_sentence(plan, cover)));
  label.lines.push_back(edge_of_zip(plan, cover));
  label.lines.emplace_back("Stick it on the top, its foot to the left edge as the piece lies unturned.");
  return label;
}

std::vector<Mark> label_marks(const Plan& plan, const CushionLabel& label, const PaperBox& box) {
  std::vector<Mark> marks{closed_path(Ink::rule, box)};
  const PaperBox inner = grown(box, -label_air);
  const bool beside = text_width(label.letter, big_letter) <= letter_column - label_air;
  if (beside)
    marks.emplace_back(Text{Ink::label,
                            {inner.low.x, inner.low.y + big_letter * 8 / 10},
                            big_letter,
                            Anchor::start,
                            false,
                            label.letter});
  const PaperBox words{{inner.low.x + (beside ? letter_column : PaperLength{}), inner.low.y}, inner.high};
  const auto cut = [&](const std::string& text, std::int64_t lines) {
    return shortened(text, lettering::note, words.width() * lines * 8 / 10);
  };
  std::vector<Note> notes{{Note::Kind::heading, cut(label.name, 2), 0, false, std::nullopt}};
  for (const std::string& line : label.lines)
    if (!line.empty()) notes.push_back({Note::Kind::text, cut(line, 4), 0, false, std::nullopt});
  if (!plan->title.title.empty())
    notes.push_back({Note::Kind::text, cut(plan->title.title, 1), 0, false, std::nullopt});
  // What finds no room stands on the key.
  add(marks, set_notes(notes, {words}).marks);
  return marks;
}

}  // namespace

std::vector<Draft> label_drafts(const Plan& plan, std::span<const Cover> covers) {
  const std::vector<std::string> letters = cover_letters(plan, covers);
  std::vector<CushionLabel> labels;
  for (std::size_t i = 0; i < covers.size(); ++i) {
    labels.push_back(cover_label(plan, covers[i], letters[i]));
    labels.push_back(foam_label(plan, covers[i], letters[i]));
  }
  std::vector<Draft> drafts;
  auto next = labels.begin();
  while (next != labels.end()) {
    const Page page = strip_page(plan, false);
    const PaperBox& box = page.drawing;
    Draft draft = draft_of(plan, "Cushions, labels", "none", page);
    draft.id = "cushions";
    draft.suffix = "-labels";
    draft.sheet.scale = 0;
    draft.sheet.description =
        "Labels to cut out along the lines: one to sew into each cover, one to stick on its foam.";
    SetNotes over = set_notes({{Note::Kind::text, draft.sheet.description, 0, false, std::nullopt}}, {box});
    PaperLength top = last_baseline(over.marks, box.low.y) + paper_mm(3);
    draft.sheet.groups.push_back({"What they are for", std::move(over.marks), 0});
    const PaperLength width = box.width() / label_columns;
    for (; next != labels.end() && top + label_height <= page.foot.y; top = top + label_height)
      for (std::int64_t i = 0; i < label_columns && next != labels.end(); ++i, ++next) {
        const PaperPoint corner{box.low.x + width * i, top};
        draft.sheet.groups.push_back(
            {next->letter + ", " + next->lines.front(),
             label_marks(plan, *next, {corner, {corner.x + width, top + label_height}}), 0});
      }
    drafts.push_back(std::move(draft));
  }
  return drafts;
}

}  // namespace berthwright
