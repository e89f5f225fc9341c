#include "view/small_view.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/sheets.h>

#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength small_air = paper_mm(2);

SmallLayout small_layout_at(const Plan& plan, std::int64_t ratio, Length height, Beside beside) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  const PaperLength left = beside(plan, Wall::front, ratio) + small_air;
  const PaperLength right = beside(plan, Wall::rear, ratio) + small_air;
  const PaperLength top = beside(plan, Wall::right, ratio) + small_air;
  const PaperLength bottom = beside(plan, Wall::left, ratio) + small_air;
  SmallLayout layout{ratio, {}, {}};
  layout.above = {on_paper(room.width(), ratio) + left + right,
                  on_paper(room.height(), ratio) + top + bottom,
                  {left - on_paper(room.low.x, ratio), top + on_paper(room.high.y, ratio)}};
  const RaisedView flat{ratio, {}};
  const PaperPoint low = flat(room.low, {});
  const PaperPoint high = flat(room.high, height);
  // Doors open outward on any side, people stand before them: as much air as beside the plan.
  layout.raised = {
      high.x - low.x + left + right, low.y - high.y + top + bottom, {left - low.x, top - high.y}};
  return layout;
}

}  // namespace

SmallLayout small_layout(const Plan& plan, Length height, PaperLength widest, Beside beside) {
  for (const Scale& scale : scales(plan->unit)) {
    SmallLayout layout = small_layout_at(plan, scale.ratio, height, beside);
    if (std::max(layout.above.width, layout.raised.width) <= widest) return layout;
  }
  throw std::logic_error("no scale is small enough for a small drawing");
}

SmallLayout filling_layout(const Plan& plan, PaperLength widest, Beside beside) {
  constexpr std::int64_t largest = 5;
  constexpr std::int64_t smallest = 1000;
  for (std::int64_t ratio = largest; ratio < smallest; ++ratio) {
    SmallLayout layout = small_layout_at(plan, ratio, {}, beside);
    if (layout.above.width <= widest) return layout;
  }
  throw std::logic_error("no scale is small enough for a small drawing");
}

Sheet small_sheet(std::string title, const SmallBox& box, std::int64_t ratio, std::vector<Group> groups) {
  Sheet sheet;
  sheet.title = std::move(title);
  sheet.width = box.width;
  sheet.height = box.height;
  sheet.scale = ratio;
  sheet.groups = std::move(groups);
  if (const std::vector<std::string> faults = lettering_faults(sheet); !faults.empty())
    throw std::logic_error(sheet.title + ": " + faults.front());
  return sheet;
}

LabelWish name_wish(const std::string& name, const std::vector<PaperRing>& home, PaperPoint target) {
  PaperBox box = bounds(home.front());
  LabelWish wish;
  wish.wordings = name_wordings(name, box.height() > box.width());
  wish.home = home;
  wish.target = target;
  wish.may_stand_off = true;
  wish.key = name;
  return wish;
}

}  // namespace berthwright
