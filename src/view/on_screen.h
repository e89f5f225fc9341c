#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/answer.h>
#include <berthwright/solve/convert/steps.h>
#include <berthwright/view/scene.h>

#include "view/carried.h"

namespace berthwright {

/// A sheet and the configuration that it shows.
struct PlanSheet {
  Sheet sheet;
  std::string configuration;
};
/// The plans alone, with pages for those of their notes that found no room: the first of all `sheets`, but
/// numbered among themselves. `answer` is of `plan`.
std::vector<PlanSheet> plan_sheets(const Plan& plan, const Answer& answer);

/// Where a point of the room stands on a sheet that shows its floor once from above, front at the left; none
/// on any other sheet.
std::optional<PaperPoint> place_on(const Sheet& sheet, const Plan& plan, Point point);

/// One stage of a conversion as two small drawings without frame or notes.
struct StageDrawing {
  std::vector<std::string> words;  ///< what to do, what it asks, names that found no room; sentences
  Sheet above;
  Sheet raised;
  std::vector<CarriedMoment> carried;  ///< of the step's piece; at the start empty
};
/// Of a conversion of the plan with an order: as it stands at the start, then after each step. Empty where
/// there is no order, or nothing to do. No drawing is wider than `widest`.
std::vector<StageDrawing> stage_drawings(const Plan& plan, const Conversion& conversion,
                                         PaperLength widest = paper_mm(120));

}  // namespace berthwright
