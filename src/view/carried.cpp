#include "view/carried.h"

#include <optional>

#include "view/frame.h"

namespace berthwright {
namespace {

/// An upright box.
struct CarriedBox {
  Rect plan;
  Length base;
  Length top;
  friend bool operator==(const CarriedBox&, const CarriedBox&) = default;
};

CarriedBox carried_box(const Solid& solid) { return {solid.outline().bounds(), solid.base(), solid.top()}; }

// Moved as a whole so that its middle comes to the point.
CarriedBox carried_to(const CarriedBox& box, Point3 middle) {
  const Length x = half(box.plan.width());
  const Length y = half(box.plan.height());
  const Length z = half(box.top - box.base);
  const Point low{middle.plan.x - x, middle.plan.y - y};
  return {{low, low + Vector{box.plan.width(), box.plan.height()}},
          middle.z - z,
          middle.z - z + (box.top - box.base)};
}

CarriedMoment moment_of(const CarriedBox& box, const SmallLayout& layout, bool followed) {
  const PlanView plan = layout.plan_view();
  const RaisedView raised = layout.raised_view();
  const PaperPoint foot = raised(box.plan.low, box.base);
  const PaperPoint along = raised({box.plan.high.x, box.plan.low.y}, box.base);
  const PaperPoint across = raised({box.plan.low.x, box.plan.high.y}, box.base);
  const PaperPoint up = raised(box.plan.low, box.top);
  const PaperPoint low = plan(box.plan.low);
  const PaperPoint high = plan(box.plan.high);
  return {{{low.x, high.y}, {high.x, low.y}},
          foot,
          along.x - foot.x,
          across.x - foot.x,
          foot.y - across.y,
          foot.y - up.y,
          followed};
}

}  // namespace

std::vector<CarriedMoment> carried_moments(const FrameStep& of, const SmallLayout& layout) {
  if (of.at_start()) return {};
  const Step& step = of.step();
  std::vector<CarriedBox> within;
  const auto come_to = [&](const Solid& solid) {
    const CarriedBox box = carried_box(solid);
    if (within.empty() || within.back() != box) within.push_back(box);
  };
  if (step.from.stands_in_room()) come_to(step.from.solid());
  for (const Motion& motion : step.motions) {
    come_to(motion.before);
    come_to(motion.after);
  }
  if (step.to.stands_in_room()) come_to(step.to.solid());
  if (within.empty()) return {};
  const std::vector<Point3> way = way_of(of);
  std::vector<CarriedMoment> moments;
  if (!step.from.stands_in_room())
    moments.push_back(moment_of(carried_to(within.front(), way.front()), layout, false));
  for (const CarriedBox& box : within)
    moments.push_back(
        moment_of(box, layout,
                  !moments.empty() && !step.bent && !(moments.size() == 1 && !step.from.stands_in_room())));
  if (!step.to.stands_in_room())
    moments.push_back(moment_of(carried_to(within.back(), way.back()), layout, false));
  return moments;
}

}  // namespace berthwright
