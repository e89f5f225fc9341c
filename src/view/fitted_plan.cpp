#include "view/fitted_plan.h"

#include <set>

#include "view/page.h"

namespace berthwright {
namespace {

constexpr std::size_t scales_tried = 2;

}  // namespace

std::vector<Draft> fitted_drafts(const DrawnConfiguration& of, const std::vector<Layout>& layouts,
                                 const FittedTitle& title, const std::vector<Note>& certain,
                                 const std::function<PlanDrawing(const Layout&)>& drawn_at) {
  const Layout* chosen = nullptr;
  PlanDrawing drawn;
  SetNotes notes;
  const auto draw = [&](const Layout& layout) {
    chosen = &layout;
    drawn = drawn_at(layout);
    notes = set_notes(drawn.notes, layout.page.columns);
  };
  std::set<std::int64_t> scales;
  bool whole = false;
  for (const Layout& layout : layouts) {
    scales.insert(layout.scale.ratio);
    if (whole || scales.size() > scales_tried) break;
    if (!set_notes(certain, layout.page.columns).rest.empty()) continue;
    draw(layout);
    whole = notes.rest.empty();
  }
  if (!whole && chosen != &layouts.front()) draw(layouts.front());
  const Plan& plan = *of.plan;
  Draft draft = draft_of(plan, title.drawing, std::string(chosen->scale.words), chosen->page);
  draft.subject = title.subject;
  draft.sides = title.sides;
  draft.sheet.scale = chosen->scale.ratio;
  draft.id = title.id;
  draft.suffix = title.suffix;
  draft.sheet.description = description_of(title.told, drawn.notes);
  for (Group& group : drawn.groups) draft.sheet.groups.push_back(std::move(group));
  for (Group& group : foot_groups(plan, chosen->page, chosen->scale.ratio))
    draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back({"Notes", std::move(notes.marks), 0});
  std::vector<Draft> drafts{draft};
  add_notes_pages(drafts, plan, draft, std::move(notes.rest));
  return drafts;
}

}  // namespace berthwright
