#include "view/on_screen.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/sheets.h>

#include "view/draft.h"
#include "view/frame.h"
#include "view/frame_words.h"
#include "view/plan_page.h"
#include "view/section_lines.h"

namespace berthwright {
namespace {

StageDrawing stage_drawing(const FrameStep& of, const SmallLayout& layout) {
  StageDrawing drawing;
  const std::string name = pair_words(*of.conversion) + ", " +
                           (of.number == 0 ? "at the start" : "after step " + std::to_string(of.number));
  Frame frame = plan_frame(of, layout.plan_view(), layout.plan_area());
  if (of.number > 0)
    for (const Note& note : frame_notes(*of.plan, *of.conversion, of.number))
      if (note.kind != Note::Kind::heading) drawing.words.push_back(note.words);
  for (const Note& key : frame.keys)
    drawing.words.push_back((key.number > 0 ? std::to_string(key.number) + " " : "") + key.words);
  std::string told;
  for (const std::string& words : drawing.words) told += (told.empty() ? "" : " ") + words;
  drawing.above = small_sheet(name + ", from above", layout.above, layout.ratio, {std::move(frame.group)});
  drawing.raised = small_sheet(name + ", raised view", layout.raised, layout.ratio,
                               {raised_frame(of, layout.raised_view())});
  drawing.above.description = drawing.raised.description = told;
  drawing.carried = carried_moments(of, layout);
  return drawing;
}

}  // namespace

std::vector<PlanSheet> plan_sheets(const Plan& plan, const Answer& answer) {
  std::vector<DrawnConfiguration> drawn;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    drawn.push_back({&plan, &configuration, answer.findings, {}});
  const std::vector<std::vector<SectionCut>> cuts = section_cuts(drawn);
  std::vector<Draft> drafts;
  std::vector<std::string> configurations;
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    drawn[i].cuts = cuts[i];
    for (Draft& draft : plan_drafts(drawn[i])) {
      drafts.push_back(std::move(draft));
      configurations.push_back(drawn[i].answer->configuration->id.text());
    }
  }
  std::vector<PlanSheet> out;
  std::vector<Sheet> sheets = finished(plan, std::move(drafts));
  for (std::size_t i = 0; i < sheets.size(); ++i)
    out.push_back({std::move(sheets[i]), std::move(configurations[i])});
  return out;
}

std::optional<PaperPoint> place_on(const Sheet& sheet, const Plan& plan, Point point) {
  std::optional<PaperBox> floor;
  for (const Group& group : sheet.groups)
    for (const Mark& mark : group.marks) {
      const Path* path = std::get_if<Path>(&mark);
      if (path == nullptr || path->ink != Ink::floor) continue;
      if (floor) return std::nullopt;
      floor = PaperBox{path->from, path->from};
      for (const Stretch& stretch : path->stretches) floor = hull(*floor, {stretch.to, stretch.to});
    }
  if (!floor || sheet.scale == 0) return std::nullopt;
  const Rect& room = plan->interior.outline.polygon().bounds();
  return PaperPoint{floor->low.x + on_paper(point.x - room.low.x, sheet.scale),
                    floor->high.y - on_paper(point.y - room.low.y, sheet.scale)};
}

std::vector<StageDrawing> stage_drawings(const Plan& plan, const Conversion& conversion, PaperLength widest) {
  std::vector<StageDrawing> out;
  if (conversion.verdict != Conversion::Verdict::order || conversion.steps.empty()) return out;
  const SmallLayout layout = small_layout(plan, highest_drawn(plan, conversion), widest, beside_frame);
  for (std::size_t number = 0; number <= conversion.steps.size(); ++number)
    out.push_back(stage_drawing({&plan, &conversion, number}, layout));
  return out;
}

}  // namespace berthwright
