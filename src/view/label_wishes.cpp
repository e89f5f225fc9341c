#include "view/label_wishes.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/alerts.h"
#include "view/bed_marks.h"
#include "view/called.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/walls.h"

namespace berthwright {
namespace {

// `name` in at most `count` lines of about the same length; fewer when it does not divide.
std::vector<std::string> in_lines(const std::string& name, int count, PaperLength height) {
  const PaperLength whole = text_width(name, height);
  const std::string held = unbroken_measures(name);
  for (int share = 100; share <= 190; share += 10) {
    std::vector<std::string> lines = wrapped(held, height, whole * share / (std::int64_t{100} * count));
    for (std::string& line : lines) line = plain_blanks(line);
    if (static_cast<int>(lines.size()) <= count) return lines;
  }
  return {name};
}

// Words are not torn to make them fit: a number says it better.
bool is_whole(const std::vector<std::string>& lines, const std::string& words) {
  std::string joined;
  for (const std::string& line : lines) joined += (joined.empty() ? "" : " ") + line;
  return joined == plain_blanks(words);
}

Wording bed_wording(std::vector<std::string> lines, bool upward) {
  return {std::move(lines), lettering::bed, upward};
}
Wording note_wording(std::vector<std::string> lines) { return {std::move(lines), lettering::label, false}; }

std::string place_text(const Plan& plan, const Solid& solid) {
  const Rect box = solid.outline().bounds();
  const Unit own = plan->unit;
  return both(half(box.low.x + box.high.x), own) + " from the front, " +
         both(half(box.low.y + box.high.y), own) + " from the left wall";
}

std::string place_text(const Plan& plan, Point at) {
  return both(at.x, plan->unit) + " from the front, " + both(at.y, plan->unit) + " from the left wall";
}

// A point just within the side of the bed that looks to the middle of the room: a leader from the aisle ends
// there.
PaperPoint beside_the_aisle(const DrawnConfiguration& of, const PlanView& view, const Region& surface) {
  const Rect& whole = (*of.plan)->interior.outline.polygon().bounds();
  const PaperPoint middle = view({half(whole.low.x + whole.high.x), half(whole.low.y + whole.high.y)});
  const PaperBox box = grown(hull({view(surface.bounds().low), view(surface.bounds().low)},
                                  {view(surface.bounds().high), view(surface.bounds().high)}),
                             -paper_mm(15, 10));
  const PaperPoint c = box.centre();
  PaperPoint best = c;
  std::optional<std::int64_t> least;
  for (const PaperPoint side :
       {PaperPoint{c.x, box.low.y}, {c.x, box.high.y}, {box.low.x, c.y}, {box.high.x, c.y}}) {
    const std::int64_t x = (side.x - middle.x).micrometres();
    const std::int64_t y = (side.y - middle.y).micrometres();
    if (!inside(view(surface), side) || (least && *least <= x * x + y * y)) continue;
    best = side;
    least = x * x + y * y;
  }
  return best;
}

LabelWish mark_wish(const DrawnConfiguration& of, const PlanView& view, Point where,
                    const std::string& words) {
  LabelWish wish = place_wish(of, view, where);
  add_wordings(wish, words, lettering::label);
  wish.key = words;
  return wish;
}

std::vector<PaperRing> room_on_paper(const DrawnConfiguration& of, const PlanView& view) {
  return view(Region((*of.plan)->interior.outline.polygon()));
}

}  // namespace

LabelWish place_wish(const DrawnConfiguration& of, const PlanView& view, Point where) {
  LabelWish wish;
  wish.target = view(where);
  wish.within = room_on_paper(of, view);
  wish.may_stand_off = true;
  wish.place = place_text(*of.plan, where);
  return wish;
}

void add_wordings(LabelWish& wish, const std::string& words, PaperLength height) {
  for (int count = 1; count <= 3; ++count) {
    std::vector<std::string> lines = in_lines(words, count, height);
    if (static_cast<int>(lines.size()) == count && is_whole(lines, words))
      wish.wordings.push_back({std::move(lines), height, false});
  }
}

std::vector<Wording> name_wordings(const std::string& name, bool tall) {
  std::vector<Wording> out;
  for (const PaperLength height : {lettering::label, lettering::note})
    for (const bool upward : {tall, !tall})
      for (int count = 1; count <= 4; ++count) {
        std::vector<std::string> lines = in_lines(name, count, height);
        if (static_cast<int>(lines.size()) != count) continue;
        if (is_whole(lines, name)) out.push_back({std::move(lines), height, upward});
      }
  return out;
}

std::string sides_text(Length length, Length width, Unit unit, Rounding rounding) {
  const LengthStyle style{.rounding = rounding, .feet = false};
  switch (unit) {
    case Unit::inch:
      return imperial(length, style) + " × " + imperial(width, style);
    case Unit::millimetre:
      return metric(length, rounding) + " × " + metric(width, rounding);
  }
  throw std::logic_error("Unit out of range");
}

std::string short_size(const Plan& plan, Length size) {
  const LengthStyle style{.rounding = Rounding::up, .feet = false};
  return plan->unit == Unit::inch ? imperial(size, style) : metric(size, Rounding::up);
}

std::string tag_of(const Plan& plan, const Opening& opening) {
  int number = 0;
  for (const Opening& other : plan->openings) {
    number += other.kind == opening.kind;
    if (other.id == opening.id) break;
  }
  switch (opening.kind) {
    case Opening::Kind::door:
      return "D" + std::to_string(number);
    case Opening::Kind::window:
      return "W" + std::to_string(number);
    case Opening::Kind::hatch:
      return "H" + std::to_string(number);
  }
  throw std::logic_error("Opening::Kind out of range");
}

std::vector<LabelWish> bed_wishes(const DrawnConfiguration& of, const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (const BedAnswer& answer : of.answer->beds) {
    const Region& surface = answer.mattress.closed;
    if (surface.empty()) continue;
    const std::string tags = tags_of(of, alerts_about(of, *answer.bed));
    const std::string name = (tags.empty() ? "" : tags + ": ") +
                             (answer.bed->name.empty() ? answer.bed->id.text() : answer.bed->name);
    const Rect box = surface.bounds();
    const Unit own = (*of.plan)->unit;
    const std::string size = sides_text(std::max(box.width(), box.height()),
                                        std::min(box.width(), box.height()), own, Rounding::down) +
                             in_parts(answer);
    LabelWish wish;
    if (answer.room.largest && !is_one_rectangle(answer)) {
      const std::string largest = "rectangle " + sides_text(answer.room.largest->length,
                                                            answer.room.largest->width, own, Rounding::down);
      wish.wordings.push_back(bed_wording({name, size, largest}, false));
      wish.wordings.push_back(bed_wording({name, size, largest}, true));
    }
    wish.wordings.push_back(bed_wording({name, size}, false));
    wish.wordings.push_back(bed_wording({name, size}, true));
    wish.wordings.push_back(bed_wording({name + ": " + size}, false));
    wish.wordings.push_back(bed_wording({name + ": " + size}, true));
    wish.weight = weight_of_figures;
    wish.home = view(surface);
    wish.target = beside_the_aisle(of, view, surface);
    wish.within = room_on_paper(of, view);
    wish.may_stand_off = true;
    wish.key = name + ": " + size;
    wish.place = place_text(*of.plan, Point{half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::vector<LabelWish> heat_wishes(const DrawnConfiguration& of, const std::vector<HeatLine>& lines,
                                   const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (const HeatLine& line : lines) {
    const Point middle{half(line.from.plan.x + line.to.plan.x), half(line.from.plan.y + line.to.plan.y)};
    LabelWish wish = place_wish(of, view, middle);
    wish.weight = weight_of_figures;
    const std::vector<std::string> figures = heat_figures(of, line);
    for (const std::string& figure : figures)
      if (figure.size() > figures.back().size()) add_wordings(wish, figure, lettering::label);
    if (wish.wordings.empty()) wish.wordings.push_back(note_wording({figures.back()}));
    wish.may_touch = true;
    wish.key =
        name_of(*of.plan, line.source) + " to " + name_of(*of.plan, line.nearest_to) + ": " + figures.front();
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::vector<LabelWish> thing_wishes(const std::vector<PlanThing>& things, const DrawnConfiguration& of,
                                    const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (std::size_t i = 0; i < things.size(); ++i) {
    const PlanThing& thing = things[i];
    if (!thing.seen) continue;
    const std::string name = name_of(*thing.placed) + (thing.overhead ? " (above)" : "");
    LabelWish wish;
    wish.wordings = name_wordings(name, thing.bounds.height() > thing.bounds.width());
    wish.home = thing.rings;
    wish.within = room_on_paper(of, view);
    wish.may_stand_off = is_alarm(*thing.placed);
    for (std::size_t j = 0; j < things.size(); ++j) {
      if (things[j].overhead || i == j || !overlaps(things[j].bounds, thing.bounds)) continue;
      if (thing.overhead)
        wish.avoid.push_back(things[j].rings);
      else if (j > i)
        wish.covers.push_back(things[j].rings);
    }
    wish.target = *thing.seen;
    wish.key = name;
    wish.place = place_text(*of.plan, thing.placed->solid);
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::vector<LabelWish> opening_wishes(const DrawnConfiguration& of, const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (const Opening& opening : (*of.plan)->openings) {
    const std::string tag = tag_of(*of.plan, opening);
    LabelWish wish;
    wish.wordings.push_back(note_wording({tag}));
    wish.target = tag_of(view, *of.plan, opening);
    wish.may_touch = true;
    wish.may_stand_off = true;
    wish.key = tag;
    wish.place = "see openings";
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::vector<LabelWish> seam_wishes(const DrawnConfiguration& of, const PlanView& view) {
  std::vector<LabelWish> wishes;
  const auto figure = [&](Length length) { return short_size(*of.plan, length); };
  for (const BedAnswer& answer : of.answer->beds) {
    for (const Gap& gap : answer.mattress.gaps)
      if (!gap.at_corner)
        wishes.push_back(
            mark_wish(of, view, gap.where, (gap.at_wall ? "gap to wall " : "gap ") + figure(gap.width)));
    for (const Ridge& ridge : answer.mattress.ridges)
      wishes.push_back(mark_wish(of, view, ridge.where, "ridge " + figure(ridge.step)));
    const Region low = off_level(of, answer);
    if (!low.empty()) wishes.push_back(no_mattress_wish(of, view, answer, low));
  }
  return wishes;
}

}  // namespace berthwright
