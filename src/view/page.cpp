#include "view/page.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "view/lettering.h"
#include "view/title_block.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength margin = paper_mm(130, 10);       // to the middle of the frame's line
constexpr PaperLength foot_height = paper_mm(105, 10);  // the strip with scale bar and arrow
constexpr PaperLength around_drawing = paper_mm(3);
constexpr PaperLength least_column = paper_mm(52);
constexpr PaperLength least_beside =
    paper_mm(40);  // the last row of a drawing, rather than a smaller drawing
constexpr PaperLength best_column = paper_mm(80);
constexpr PaperLength least_notes_below = paper_mm(24);

PaperSize paper_of(const Plan& plan, bool landscape) {
  PaperSize size;
  switch (plan->paper) {
    case Paper::letter:
      size = {paper_mm(2159, 10), paper_mm(2794, 10)};
      break;
    case Paper::tabloid:
      size = {paper_mm(2794, 10), paper_mm(4318, 10)};
      break;
    case Paper::a4:
      size = {paper_mm(210), paper_mm(297)};
      break;
    case Paper::a3:
      size = {paper_mm(297), paper_mm(420)};
      break;
  }
  return landscape ? PaperSize{size.height, size.width} : size;
}

Page bare_page(const Plan& plan, bool landscape) {
  const PaperSize size = paper_of(plan, landscape);
  Page page{size.width, size.height, {{margin, margin}, {size.width - margin, size.height - margin}},
            {},         {},          {}};
  return page;
}

// `count` columns side by side in `box`.
std::vector<PaperBox> columns_in(const PaperBox& box, std::int64_t count) {
  const PaperLength gutter = paper_mm(5);
  const PaperLength width = (box.width() - gutter * (count - 1)) / count;
  std::vector<PaperBox> columns;
  for (std::int64_t i = 0; i < count; ++i) {
    const PaperLength x = box.low.x + (width + gutter) * i;
    columns.push_back({{x, box.low.y}, {x + width, box.high.y}});
  }
  return columns;
}

std::int64_t columns_that_fit(PaperLength width) {
  return std::max<std::int64_t>(1, width.micrometres() / least_column.micrometres());
}

// The drawing's own needs.
PaperSize needs_of(const DrawnConfiguration& of, const Surroundings& around, std::int64_t ratio) {
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const auto depth = [&](Wall wall) { return around.lanes.at(wall).depth; };
  return {on_paper(room.width(), ratio) + depth(Wall::front) + depth(Wall::rear),
          on_paper(room.height(), ratio) + depth(Wall::left) + depth(Wall::right)};
}

// What the frame leaves for drawing, foot strip and notes.
PaperBox open_box(const Plan& plan, const Page& page) {
  const PaperBox& frame = page.frame;
  const PaperLength bottom = frame.high.y - title_block_height(plan, frame.width());
  return {{frame.low.x + around_drawing, frame.low.y + around_drawing},
          {frame.high.x - around_drawing, bottom}};
}

// The room in the middle of the drawing's box, its chains around it.
PlanView centred(const DrawnConfiguration& of, const Layout& layout, const PaperSize& needs) {
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const PaperBox& box = layout.page.drawing;
  const std::int64_t ratio = layout.scale.ratio;
  const PaperLength left =
      box.low.x + (box.width() - needs.width) / 2 + layout.around.lanes.at(Wall::front).depth;
  const PaperLength top =
      box.low.y + (box.height() - needs.height) / 2 + layout.around.lanes.at(Wall::right).depth;
  return {ratio, {left - on_paper(room.low.x, ratio), top + on_paper(room.high.y, ratio)}};
}

constexpr PaperLength widest_bar = paper_mm(122);  // with its figures
constexpr PaperLength before_bar = paper_mm(42);   // for the arrow of travel

// Four divisions, and one more left of zero that is divided into parts.
struct Bar {
  Length division;
  int parts;
};
constexpr int divisions = 4;
constexpr std::array inch_bars{Bar{10_ft, 5}, Bar{5_ft, 5}, Bar{2_ft, 4}, Bar{1_ft, 4},
                               Bar{6_in, 6},  Bar{3_in, 3}, Bar{1_in, 4}};
constexpr std::array metric_bars{Bar{5000_mm, 5}, Bar{2000_mm, 4}, Bar{1000_mm, 5}, Bar{500_mm, 5},
                                 Bar{200_mm, 4},  Bar{100_mm, 5},  Bar{50_mm, 5},   Bar{20_mm, 4}};

// The longest bar that leaves the strip some room.
Bar bar_for(Unit unit, std::int64_t ratio) {
  const auto bars = unit == Unit::inch ? std::span<const Bar>(inch_bars) : std::span<const Bar>(metric_bars);
  for (const Bar& bar : bars)
    if (on_paper(bar.division, ratio) * (divisions + 1) <= widest_bar - paper_mm(7)) return bar;
  return bars.back();
}

// Notes beside a small drawing would stand where the bar's last figure does.
bool has_room_for_bar(const Plan& plan, std::int64_t ratio, const Page& page) {
  const PaperLength bar = on_paper(bar_for(plan->unit, ratio).division, ratio) * (divisions + 1);
  const PaperLength end = page.foot.x + before_bar + bar + paper_mm(7);
  return std::ranges::all_of(page.columns, [&](const PaperBox& column) {
    return column.low.y >= page.foot.y + foot_height || end <= column.low.x;
  });
}

std::string bar_figure(Length length, Unit unit) {
  return unit == Unit::inch ? imperial(length) : metric(length);
}

}  // namespace

std::optional<Page> page_for(const Plan& plan, bool landscape, NotesAt notes, const PaperSize& needs) {
  Page page = bare_page(plan, landscape);
  const PaperBox open = open_box(plan, page);
  const PaperLength foot_top = open.high.y - foot_height;
  PaperBox notes_box;
  switch (notes) {
    case NotesAt::right: {
      if (needs.height > foot_top - open.low.y) return std::nullopt;
      const PaperLength rest = open.width() - needs.width - around_drawing * 2;
      if (rest < least_column) return std::nullopt;
      const PaperLength column = std::min(rest, best_column);
      notes_box = {{open.high.x - column, open.low.y}, {open.high.x, open.high.y - around_drawing}};
      page.drawing = {open.low, {notes_box.low.x - around_drawing * 2, foot_top}};
      page.foot = {open.low.x, foot_top};
      page.columns = columns_in(notes_box, 1);
      return page;
    }
    case NotesAt::below: {
      if (needs.width > open.width()) return std::nullopt;
      const PaperLength drawing_bottom = open.low.y + needs.height + around_drawing;
      const PaperLength rest = open.high.y - around_drawing - (drawing_bottom + foot_height);
      if (rest < least_notes_below) return std::nullopt;
      page.drawing = {open.low, {open.high.x, drawing_bottom}};
      page.foot = {open.low.x, drawing_bottom};
      notes_box = {{open.low.x, drawing_bottom + foot_height + around_drawing / 2},
                   {open.high.x, open.high.y - around_drawing}};
      page.columns = columns_in(notes_box, columns_that_fit(notes_box.width()));
      return page;
    }
  }
  throw std::logic_error("NotesAt out of range");
}

std::optional<Page> page_beside(const Plan& plan, bool landscape, const PaperSize& needs,
                                const PaperSize& last_row) {
  Page page = bare_page(plan, landscape);
  const PaperBox open = open_box(plan, page);
  const PaperLength foot_top = open.high.y - foot_height;
  const PaperLength left = open.low.x + last_row.width + around_drawing * 2;
  if (needs.width > open.width() || open.low.y + needs.height > foot_top) return std::nullopt;
  if (open.high.x - left < least_beside) return std::nullopt;
  page.drawing = {open.low, {open.high.x, open.low.y + needs.height}};
  page.foot = {open.low.x, page.drawing.high.y + around_drawing};
  const PaperLength top = page.drawing.high.y - last_row.height;
  const bool bar_reaches_in = last_row.width < widest_bar;
  page.columns = columns_in(
      {{left, top}, {open.high.x, bar_reaches_in ? page.foot.y : open.high.y - around_drawing}}, 1);
  return page;
}

Page strip_page(const Plan& plan, bool landscape) {
  Page page = bare_page(plan, landscape);
  const PaperBox open = open_box(plan, page);
  page.foot = {open.low.x, open.high.y - foot_height};
  page.drawing = {open.low, {open.high.x, page.foot.y}};
  return page;
}

PaperLength widest_drawing(const Plan& plan, bool landscape, NotesAt notes) {
  const PaperLength open = open_box(plan, bare_page(plan, landscape)).width();
  switch (notes) {
    case NotesAt::right:
      return open - least_column - around_drawing * 2;
    case NotesAt::below:
      return open;
  }
  throw std::logic_error("NotesAt out of range");
}

std::vector<Layout> layouts_of(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  const std::vector<PlanThing> things =
      plan_things(PlanView{scales(plan->unit).front().ratio, {}}, plan, of.answer->arrangement);
  return layouts_of(of, [&](std::int64_t ratio) { return surroundings_of(of, things, ratio); });
}

std::vector<Layout> layouts_of(const DrawnConfiguration& of,
                               const std::function<Surroundings(std::int64_t)>& around_at) {
  const Plan& plan = *of.plan;
  std::vector<Layout> layouts;
  for (const Scale& scale : of.only_scales.empty() ? scales(plan->unit) : of.only_scales) {
    const Surroundings around = around_at(scale.ratio);
    const PaperSize needs = needs_of(of, around, scale.ratio);
    std::vector<Layout> same;
    for (const bool landscape : {true, false})
      for (const NotesAt notes : {NotesAt::right, NotesAt::below}) {
        const std::optional<Page> page = page_for(plan, landscape, notes, needs);
        if (!page || !has_room_for_bar(plan, scale.ratio, *page)) continue;
        Layout layout{*page, scale, around, {}};
        layout.view = centred(of, layout, needs);
        same.push_back(std::move(layout));
      }
    layouts.insert(layouts.end(), same.begin(), same.end());
  }
  if (layouts.empty()) throw std::logic_error("no scale is small enough for the plan");
  return layouts;
}

Page notes_page(const Plan& plan) {
  Page page = bare_page(plan, false);
  const PaperLength bottom = page.frame.high.y - title_block_height(plan, page.frame.width());
  const PaperBox box{{page.frame.low.x + around_drawing, page.frame.low.y + around_drawing},
                     {page.frame.high.x - around_drawing, bottom - around_drawing}};
  page.columns = columns_in(box, columns_that_fit(box.width()));
  return page;
}

Group travel_arrow(PaperPoint corner) {
  const PaperLength y = corner.y + paper_mm(35, 10);
  Group travel{"Direction of travel", {}, 0};
  const PaperLength left = corner.x + paper_mm(1);
  travel.marks.emplace_back(straight(Ink::direction, {left + paper_mm(3), y}, {left + paper_mm(16), y}));
  travel.marks.emplace_back(
      closed_path(Ink::leader_dot, PaperRing{{left, y},
                                             {left + paper_mm(45, 10), y - paper_mm(13, 10)},
                                             {left + paper_mm(45, 10), y + paper_mm(13, 10)}}));
  travel.marks.emplace_back(Text{
      Ink::note, {left, y + paper_mm(47, 10)}, lettering::note, Anchor::start, false, "direction of travel"});
  return travel;
}

Group scale_bar(const Plan& plan, std::int64_t ratio, PaperPoint low) {
  const Bar bar = bar_for(plan->unit, ratio);
  const PaperLength one = on_paper(bar.division, ratio);
  const PaperLength thick = paper_mm(2);
  Group group{"Scale bar", {}, bar.division.ticks() * (divisions + 1) / (ticks_per_mm / 1000)};
  const PaperLength zero = low.x + one;
  const auto box = [&](PaperLength from, PaperLength to, bool dark) {
    group.marks.emplace_back(closed_path(dark ? Ink::scale_bar_dark : Ink::scale_bar_light,
                                         PaperBox{{from, low.y}, {to, low.y + thick}}));
  };
  for (int i = 0; i < bar.parts; ++i)
    box(low.x + one * i / bar.parts, low.x + one * (i + 1) / bar.parts, i % 2 == 0);
  for (int i = 0; i < divisions; ++i)
    box(zero + on_paper(bar.division * i, ratio), zero + on_paper(bar.division * (i + 1), ratio), i % 2 == 1);
  const auto figure = [&](PaperLength x, const std::string& words) {
    group.marks.emplace_back(Text{
        Ink::note, {x, low.y + thick + paper_mm(27, 10)}, lettering::note, Anchor::middle, false, words});
  };
  figure(low.x, bar_figure(bar.division, plan->unit));
  figure(zero, "0");
  for (int i = 1; i <= divisions; ++i)
    if (i % 2 == 0)
      figure(zero + on_paper(bar.division * i, ratio), bar_figure(bar.division * i, plan->unit));
  return group;
}

std::vector<Group> foot_groups(const Plan& plan, const Page& page, std::int64_t ratio) {
  return {travel_arrow(page.foot),
          scale_bar(plan, ratio, {page.foot.x + before_bar, page.foot.y + paper_mm(25, 10)})};
}

}  // namespace berthwright
