#include <berthwright/view/sheets.h>

#include <algorithm>
#include <stdexcept>

#include "view/letters.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/title_block.h"

namespace berthwright {
namespace {

// A sheet without its title block, which waits for the count of all sheets.
struct Draft {
  Sheet sheet;
  Page page;
  std::string drawing;
  std::string scale;
};

// Two scales are tried before the notes go over to a page of their own: a smaller drawing is the greater
// loss.
constexpr int scales_tried = 2;

std::string name_of(const Configuration& configuration) {
  return configuration.name.empty() ? configuration.id.text() : configuration.name;
}

std::string description_of(const std::vector<Note>& notes) {
  std::string words;
  for (const Note& note : notes) {
    if (note.swatch) continue;
    if (note.kind == Note::Kind::heading || note.kind == Note::Kind::alert) {
      words += (words.empty() ? "" : " ") + note.words + ":";
      continue;
    }
    words += " " + (note.number > 0 ? std::to_string(note.number) + " " : "") + note.words;
  }
  return words.empty() ? "Plan seen from above." : "Plan seen from above, front at the left. " + words;
}

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

void add_notes_pages(std::vector<Draft>& drafts, const Plan& plan, const std::string& drawing,
                     std::vector<Note> rest) {
  while (!rest.empty()) {
    const Page page = notes_page(plan);
    Draft draft = draft_of(plan, drawing + ", notes", "none", page);
    SetNotes set = set_notes(rest, page.columns);
    if (set.rest.size() == rest.size()) throw std::logic_error("a note that fits no page");
    draft.sheet.description = description_of(rest);
    draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
    draft.sheet.scale = 0;
    rest = std::move(set.rest);
    drafts.push_back(std::move(draft));
  }
}

void add_configuration(std::vector<Draft>& drafts, const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  const std::string drawing = name_of(*of.answer->configuration);
  const std::vector<Layout> layouts = layouts_of(of);
  const Layout* chosen = nullptr;
  PlanDrawing drawn;
  SetNotes notes;
  int tried = 0;
  std::int64_t last = 0;
  for (const Layout& layout : layouts) {
    tried += layout.scale.ratio != last;
    last = layout.scale.ratio;
    if (chosen != nullptr && tried > scales_tried) break;
    PlanDrawing attempt = plan_drawing(of, layout.view, layout.around, layout.page.drawing);
    SetNotes set = set_notes(attempt.notes, layout.page.columns);
    const bool whole = set.rest.empty();
    if (chosen == nullptr || whole) {
      chosen = &layout;
      drawn = std::move(attempt);
      notes = std::move(set);
    }
    if (whole) break;
  }
  Draft draft = draft_of(plan, drawing, std::string(chosen->scale.words), chosen->page);
  draft.sheet.scale = chosen->scale.ratio;
  draft.sheet.description = description_of(drawn.notes);
  for (Group& group : drawn.groups) draft.sheet.groups.push_back(std::move(group));
  for (Group& group : foot_groups(plan, *chosen)) draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back({"Notes", std::move(notes.marks), 0});
  drafts.push_back(std::move(draft));
  add_notes_pages(drafts, plan, drawing, std::move(notes.rest));
}

// Letters and digits of the configuration's id, so that no name of a person's choosing becomes a path.
std::string stem(int number, const std::string& id) {
  std::string out = std::to_string(number) + "-";
  for (const char c : id.substr(0, 24)) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    out += plain ? c : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : '-';
  }
  return out;
}

}  // namespace

std::vector<Sheet> sheets(const Plan& plan, const Answer& answer) {
  std::vector<Draft> drafts;
  std::vector<std::string> ids;
  for (const ConfigurationAnswer& configuration : answer.configurations) {
    add_configuration(drafts, {&plan, &configuration, answer.findings});
    while (ids.size() < drafts.size()) ids.push_back(configuration.configuration->id.text());
  }
  std::vector<Sheet> out;
  const int count = static_cast<int>(drafts.size());
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    Draft& draft = drafts[i];
    const int number = static_cast<int>(i) + 1;
    const bool notes_only = draft.sheet.scale == 0;
    draft.sheet.file = stem(number, ids[i]) + (notes_only ? "-notes" : "");
    draft.sheet.groups.push_back(
        {"Title block",
         title_block_marks(plan, {draft.drawing, draft.scale, number, count}, draft.page.frame), 0});
    const std::vector<std::string> faults = lettering_faults(draft.sheet);
    if (!faults.empty()) throw std::logic_error("sheet " + draft.sheet.file + ": " + faults.front());
    out.push_back(std::move(draft.sheet));
  }
  return out;
}

}  // namespace berthwright
