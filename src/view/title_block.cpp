#include "view/title_block.h"

#include <array>
#include <stdexcept>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "view/lettering.h"
#include "view/letters.h"

namespace berthwright {
namespace {

constexpr PaperLength row = paper_mm(15);
constexpr PaperLength pad = paper_mm(18, 10);

std::vector<std::string> caution(const Plan& plan, PaperLength width) {
  return wrapped(caution_line(plan->english), lettering::note, width - pad * 2);
}

PaperLength title_height(const std::string& words, PaperLength room) {
  for (const PaperLength height : {lettering::title, lettering::smaller_title})
    if (text_width(words, height) <= room) return height;
  return lettering::label;
}

// One cell: small lines under each other, the first of them larger where `large` says so.
struct Cell {
  PaperLength width;
  bool large = false;
  std::vector<std::string> lines;
};

void add_cell(std::vector<Mark>& marks, const Cell& cell, PaperPoint corner) {
  PaperLength y = corner.y + paper_mm(17, 10);
  for (std::size_t i = 0; i < cell.lines.size(); ++i) {
    const PaperLength room = cell.width - pad * 2;
    const PaperLength h = cell.large && i == 0 ? title_height(cell.lines[i], room) : lettering::note;
    y = y + h * ascent_thousandths / 1000;
    const std::string words = shortened(cell.lines[i], h, room);
    if (!words.empty())
      marks.emplace_back(Text{cell.large && i == 0 ? Ink::title : Ink::note,
                              {corner.x + pad, y},
                              h,
                              Anchor::start,
                              false,
                              words});
    y = y + h * descent_thousandths / 1000 + (cell.large && i == 0 ? paper_mm(1) : paper_mm(9, 10));
  }
}

std::string joined(const std::string& a, const std::string& b) {
  return a.empty() || b.empty() ? a + b : a + " · " + b;
}

std::string labelled(const std::string& label, const std::string& value) {
  return value.empty() ? "" : label + value;
}

std::string units_line(Unit unit) {
  switch (unit) {
    case Unit::inch:
      return "Feet and inches [millimeters]";
    case Unit::millimetre:
      return "Millimetres [feet and inches]";
  }
  throw std::logic_error("Unit out of range");
}

}  // namespace

PaperLength title_block_height(const Plan& plan, PaperLength width) {
  const auto lines = static_cast<std::int64_t>(caution(plan, width).size());
  return row + lettering::note_pitch * lines + paper_mm(25, 10);
}

std::vector<Mark> title_block_marks(const Plan& plan, const SheetTitle& title, const PaperBox& box) {
  std::vector<Mark> marks;
  const PaperLength top = box.high.y - title_block_height(plan, box.width());
  const PaperPoint corner{box.low.x, top};
  marks.emplace_back(straight(Ink::frame, corner, {box.high.x, top}));
  const PaperLength below = top + row;
  marks.emplace_back(straight(Ink::rule, {box.low.x, below}, {box.high.x, below}));
  const Title& said = plan->title;
  std::string units = units_line(plan->unit);
  if (plan->english == English::british && plan->unit == Unit::inch) units = "Feet and inches [millimetres]";
  const std::string sheet = "Sheet " + std::to_string(title.number) + " of " + std::to_string(title.count);
  const Term left = plan->drives_on_right ? Term::street_side : Term::curb_side;
  const std::string as_plan = "Front at left, " + std::string(word(left, plan->english)) + " below";
  const std::string& sides = title.sides.empty() ? as_plan : title.sides;
  const PaperLength w = box.width();
  std::vector<std::string> drawing{title.drawing};
  if (!title.subject.empty()) drawing.push_back(title.subject);
  drawing.push_back(labelled("Drawn by ", said.drawn_by));
  const std::array cells{
      Cell{w * 36 / 100, true, {said.title, joined(said.shop, labelled("for ", said.owner))}},
      Cell{w * 20 / 100, true, std::move(drawing)},
      Cell{w * 28 / 100, false, {"Scale " + title.scale, units, sides}},
      Cell{w - w * 84 / 100, false, {sheet, said.date, labelled("Revision ", said.revision)}}};
  PaperLength x = box.low.x;
  for (const Cell& cell : cells) {
    if (x > box.low.x) marks.emplace_back(straight(Ink::rule, {x, top}, {x, below}));
    add_cell(marks, cell, {x, top});
    x = x + cell.width;
  }
  PaperLength y = below + paper_mm(12, 10) + lettering::note * ascent_thousandths / 1000;
  for (const std::string& line : caution(plan, box.width())) {
    marks.emplace_back(Text{Ink::caution, {box.low.x + pad, y}, lettering::note, Anchor::start, false, line});
    y = y + lettering::note_pitch;
  }
  return marks;
}

}  // namespace berthwright
