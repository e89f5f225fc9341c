#include "view/on_screen.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/sheets.h>

#include "view/draft.h"
#include "view/frame.h"
#include "view/frame_words.h"
#include "view/plan_page.h"
#include "view/section_lines.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength widest_stage = paper_mm(120);  // so that lettering is read on a telephone
constexpr PaperLength stage_air = paper_mm(2);

struct StageBox {
  PaperLength width;
  PaperLength height;
  PaperPoint origin;  ///< of the room's corner x = 0, y = 0, on the floor
};

/// What both drawings of every stage of a conversion have in common.
struct StageLayout {
  std::int64_t ratio = 20;
  StageBox above;
  StageBox raised;
};

StageLayout stage_layout_at(const Plan& plan, std::int64_t ratio, Length height) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  const PaperLength left = beside_frame(plan, Wall::front, ratio) + stage_air;
  const PaperLength right = beside_frame(plan, Wall::rear, ratio) + stage_air;
  const PaperLength top = beside_frame(plan, Wall::right, ratio) + stage_air;
  const PaperLength bottom = beside_frame(plan, Wall::left, ratio) + stage_air;
  StageLayout layout{ratio, {}, {}};
  layout.above = {on_paper(room.width(), ratio) + left + right, on_paper(room.height(), ratio) + top + bottom,
                  {left - on_paper(room.low.x, ratio), top + on_paper(room.high.y, ratio)}};
  const RaisedView flat{ratio, {}};
  const PaperPoint low = flat(room.low, {});
  const PaperPoint high = flat(room.high, height);
  // Doors open outward on any side, people stand before them: as much air as beside the plan.
  layout.raised = {
      high.x - low.x + left + right, low.y - high.y + top + bottom, {left - low.x, top - high.y}};
  return layout;
}

StageLayout stage_layout(const Plan& plan, const Conversion& conversion) {
  const Length height = highest_drawn(plan, conversion);
  for (const Scale& scale : scales(plan->unit)) {
    StageLayout layout = stage_layout_at(plan, scale.ratio, height);
    if (std::max(layout.above.width, layout.raised.width) <= widest_stage) return layout;
  }
  throw std::logic_error("no scale is small enough for a stage");
}

Sheet stage_sheet(std::string title, const StageBox& box, std::int64_t ratio, Group group) {
  Sheet sheet;
  sheet.title = std::move(title);
  sheet.width = box.width;
  sheet.height = box.height;
  sheet.scale = ratio;
  sheet.groups.push_back(std::move(group));
  if (const std::vector<std::string> faults = lettering_faults(sheet); !faults.empty())
    throw std::logic_error(sheet.title + ": " + faults.front());
  return sheet;
}

StageDrawing stage_drawing(const FrameStep& of, const StageLayout& layout) {
  StageDrawing drawing;
  const std::string name = pair_words(*of.conversion) + ", " +
                           (of.number == 0 ? "at the start" : "after step " + std::to_string(of.number));
  Frame frame = plan_frame(of, {layout.ratio, layout.above.origin},
                           {{}, {layout.above.width, layout.above.height}});
  if (of.number > 0)
    for (const Note& note : frame_notes(*of.plan, *of.conversion, of.number))
      if (note.kind != Note::Kind::heading) drawing.words.push_back(note.words);
  for (const Note& key : frame.keys)
    drawing.words.push_back((key.number > 0 ? std::to_string(key.number) + " " : "") + key.words);
  std::string told;
  for (const std::string& words : drawing.words) told += (told.empty() ? "" : " ") + words;
  drawing.above = stage_sheet(name + ", from above", layout.above, layout.ratio, std::move(frame.group));
  drawing.raised = stage_sheet(name + ", raised view", layout.raised, layout.ratio,
                               raised_frame(of, {layout.ratio, layout.raised.origin}));
  drawing.above.description = drawing.raised.description = told;
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

std::vector<StageDrawing> stage_drawings(const Plan& plan, const Conversion& conversion) {
  std::vector<StageDrawing> out;
  if (conversion.verdict != Conversion::Verdict::order || conversion.steps.empty()) return out;
  const StageLayout layout = stage_layout(plan, conversion);
  for (std::size_t number = 0; number <= conversion.steps.size(); ++number)
    out.push_back(stage_drawing({&plan, &conversion, number}, layout));
  return out;
}

}  // namespace berthwright
