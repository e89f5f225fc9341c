#include <berthwright/view/sheets.h>

#include <algorithm>
#include <stdexcept>

#include "view/draft.h"
#include "view/heat_sheet.h"
#include "view/height_map.h"
#include "view/section_lines.h"
#include "view/section_sheet.h"
#include "view/site_sheet.h"
#include "view/storyboard.h"
#include "view/title_block.h"
#include "view/way_sheet.h"

namespace berthwright {
namespace {

// Two scales are tried before the notes go over to a page of their own: a smaller drawing is the greater
// loss.
constexpr int scales_tried = 2;

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
  draft.id = of.answer->configuration->id.text();
  draft.sheet.description = description_of("Plan seen from above, front at the left.", drawn.notes);
  for (Group& group : drawn.groups) draft.sheet.groups.push_back(std::move(group));
  for (Group& group : foot_groups(plan, chosen->page, chosen->scale.ratio))
    draft.sheet.groups.push_back(std::move(group));
  draft.sheet.groups.push_back({"Notes", std::move(notes.marks), 0});
  drafts.push_back(draft);
  add_notes_pages(drafts, plan, draft, std::move(notes.rest));
}

void add_all(std::vector<Draft>& drafts, std::vector<Draft> more) {
  for (Draft& draft : more) drafts.push_back(std::move(draft));
}

}  // namespace

std::vector<Sheet> sheets(const Plan& plan, const Answer& answer, std::span<const HeaterPlaces> heaters,
                          std::span<const Conversion> conversions) {
  std::vector<Draft> drafts;
  std::vector<DrawnConfiguration> drawn;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    drawn.push_back({&plan, &configuration, answer.findings, {}});
  const std::vector<std::vector<SectionCut>> cuts = section_cuts(drawn);
  for (std::size_t i = 0; i < drawn.size(); ++i) drawn[i].cuts = cuts[i];
  for (const DrawnConfiguration& one : drawn) add_configuration(drafts, one);
  for (const DrawnConfiguration& one : drawn) add_all(drafts, section_drafts(one));
  for (const DrawnConfiguration& one : drawn) add_all(drafts, height_drafts(one));
  for (const DrawnConfiguration& one : drawn)
    if (const std::optional<QuietSheet> sheet = heat_sheet(one)) add_all(drafts, quiet_drafts(one, *sheet));
  for (const DrawnConfiguration& one : drawn)
    for (const QuietSheet& sheet : site_sheets(one, heaters)) add_all(drafts, quiet_drafts(one, sheet));
  for (const DrawnConfiguration& one : drawn)
    if (const std::optional<QuietSheet> sheet = way_sheet(one)) add_all(drafts, quiet_drafts(one, *sheet));
  for (const Conversion& conversion : conversions) add_all(drafts, story_drafts(plan, conversion));
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
