#include "view/draft.h"

#include <stdexcept>

#include <berthwright/view/sheets.h>

#include "view/title_block.h"

namespace berthwright {

Draft draft_of(const Plan& plan, const std::string& drawing, const std::string& scale, const Page& page) {
  Draft draft;
  draft.page = page;
  draft.drawing = drawing;
  draft.scale = scale;
  draft.sheet.width = page.width;
  draft.sheet.height = page.height;
  draft.sheet.title = plan->title.title.empty() ? drawing : plan->title.title + ": " + drawing;
  draft.sheet.groups.push_back({"Frame", {closed_path(Ink::frame, page.frame)}, 0});
  return draft;
}

std::string description_of(std::string lead, const std::vector<Note>& notes) {
  std::string words = std::move(lead);
  for (const Note& note : notes) {
    if (note.swatch) continue;
    if (note.kind == Note::Kind::heading || note.kind == Note::Kind::alert) {
      words += " " + note.words + ":";
      continue;
    }
    words += " " + (note.number > 0 ? std::to_string(note.number) + " " : "") + note.words;
  }
  return words;
}

void add_notes_pages(std::vector<Draft>& drafts, const Plan& plan, const Draft& drawing,
                     std::vector<Note> rest) {
  add_text_pages(drafts, plan, {drawing.drawing + ", notes", drawing.id, drawing.suffix + "-notes"},
                 std::move(rest));
}

void add_text_pages(std::vector<Draft>& drafts, const Plan& plan, const TextPages& pages,
                    std::vector<Note> rest) {
  while (!rest.empty()) {
    const Page page = notes_page(plan);
    Draft draft = draft_of(plan, pages.drawing, "none", page);
    draft.id = pages.id;
    draft.suffix = pages.suffix;
    SetNotes set = set_notes(rest, page.columns);
    if (set.rest.size() == rest.size()) throw std::logic_error("a note that fits no page");
    draft.sheet.description = description_of("Notes.", rest);
    draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
    draft.sheet.scale = 0;
    rest = std::move(set.rest);
    drafts.push_back(std::move(draft));
  }
}

std::string plain_stem(const std::string& id) {
  std::string out;
  for (const char c : id.substr(0, 24)) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    out += plain ? c : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : '-';
  }
  return out;
}

std::string name_of(const Configuration& configuration) {
  return configuration.name.empty() ? configuration.id.text() : configuration.name;
}

std::vector<Sheet> finished(const Plan& plan, std::vector<Draft> drafts) {
  std::vector<Sheet> out;
  const int count = static_cast<int>(drafts.size());
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    Draft& draft = drafts[i];
    const int number = static_cast<int>(i) + 1;
    draft.sheet.file = std::to_string(number) + "-" + plain_stem(draft.id) + draft.suffix;
    draft.sheet.groups.push_back(
        {"Title block",
         title_block_marks(plan, {draft.drawing, draft.subject, draft.scale, draft.sides, number, count},
                           draft.page.frame),
         0});
    const std::vector<std::string> faults = lettering_faults(draft.sheet);
    if (!faults.empty()) throw std::logic_error("sheet " + draft.sheet.file + ": " + faults.front());
    out.push_back(std::move(draft.sheet));
  }
  return out;
}

}  // namespace berthwright
