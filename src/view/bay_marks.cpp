#include "view/bay_marks.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/sheets.h>

#include "view/lettering.h"
#include "view/letters.h"

namespace berthwright {
namespace {

bool has_room_for_letter(const PaperBox& box) {
  return std::min(box.width(), box.height()) >= lettering::label * 14 / 10;
}

// The letter of a strip too narrow for it stands beyond the bay, at the nearer end of the strip, on a leader
// from its middle.
void add_letter_beyond(std::vector<Mark>& marks, const std::string& letter, const PaperBox& strip,
                       const PaperBox& bay) {
  constexpr PaperLength away = paper_mm(15, 10);
  const PaperPoint middle = strip.centre();
  const bool upright = strip.height() > strip.width();
  const bool at_low = upright ? strip.low.y - bay.low.y <= bay.high.y - strip.high.y
                              : strip.low.x - bay.low.x <= bay.high.x - strip.high.x;
  const auto set = [&](PaperPoint end, PaperPoint at, Anchor anchor) {
    marks.emplace_back(straight(Ink::leader, middle, end));
    marks.emplace_back(Text{Ink::label, at, lettering::label, anchor, false, letter});
  };
  const PaperLength rise = lettering::label * 3 / 10;
  if (upright && at_low)
    set({middle.x, bay.low.y - away / 2}, {middle.x, bay.low.y - away}, Anchor::middle);
  else if (upright)
    set({middle.x, bay.high.y + away / 2}, {middle.x, bay.high.y + away + lettering::label * 7 / 10},
        Anchor::middle);
  else if (at_low)
    set({bay.low.x - away / 2, middle.y}, {bay.low.x - away, middle.y + rise}, Anchor::end);
  else
    set({bay.high.x + away / 2, middle.y}, {bay.high.x + away, middle.y + rise}, Anchor::start);
}

// The letter, and the size where there is room for it; upright or reading upward.
std::vector<Mark> label_of(const std::string& letter, const std::string& size, const PaperBox& box) {
  std::vector<Mark> marks;
  const bool upward = box.height() > box.width();
  const PaperLength along = upward ? box.height() : box.width();
  const PaperLength across = upward ? box.width() : box.height();
  const PaperLength room = along - paper_mm(2);
  const PaperPoint middle = box.centre();
  const auto set = [&](const std::string& words, PaperLength aside) {
    const PaperPoint at =
        upward ? PaperPoint{middle.x + aside, middle.y} : PaperPoint{middle.x, middle.y + aside};
    marks.emplace_back(Text{Ink::label, at, lettering::label, Anchor::middle, upward, words});
  };
  const std::string both_words = letter + "  " + size;
  const PaperLength rise = lettering::label * 3 / 10;
  if (text_width(both_words, lettering::label) <= room) {
    set(both_words, rise);
  } else if (text_width(size, lettering::label) <= room && across > lettering::label * 3) {
    set(letter, rise - lettering::label * 65 / 100);
    set(size, rise + lettering::label * 65 / 100);
  } else if (text_width(letter, lettering::label) <= room) {
    set(letter, rise);
  }
  return marks;
}

}  // namespace

std::string short_size(const Plan& plan, Length a, Length b) {
  const auto one = [&](Length length) {
    return plan->unit == Unit::inch ? imperial(length, {.feet = false}) : metric(length);
  };
  return one(std::max(a, b)) + " × " + one(std::min(a, b));
}

void add_letter(std::vector<Mark>& marks, const std::string& letter, const std::string& size,
                const PaperBox& box, const PaperBox& bay) {
  if (has_room_for_letter(box))
    std::ranges::move(label_of(letter, size, box), std::back_inserter(marks));
  else
    add_letter_beyond(marks, letter, box, bay);
}

Rect beside_cut(const Rect& at, const Region& cut_out) {
  if (cut_out.empty()) return at;
  const Rect cut = cut_out.bounds();
  const Rect parts[] = {{at.low, {cut.low.x, at.high.y}},
                        {{cut.high.x, at.low.y}, at.high},
                        {at.low, {at.high.x, cut.low.y}},
                        {{at.low.x, cut.high.y}, at.high}};
  const auto least = [](const Rect& r) { return std::min(r.width(), r.height()); };
  return *std::ranges::max_element(parts, {}, least);
}

PaperBox box_in(const PlanView& view, const Rect& rect) {
  return {view({rect.low.x, rect.high.y}), view({rect.high.x, rect.low.y})};
}

PaperLength bottom_of(const std::vector<Mark>& marks, PaperLength top) {
  PaperLength bottom = top;
  for (const Mark& mark : marks)
    if (const Text* text = std::get_if<Text>(&mark)) bottom = std::max(bottom, text->at.y + paper_mm(1));
  return bottom;
}

}  // namespace berthwright
