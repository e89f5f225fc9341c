#include "view/section_drawing.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/label_wishes.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/plan_things.h"
#include "view/section_lines.h"
#include "view/section_marks.h"
#include "view/seen.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength gap = paper_mm(2);  // between walls, levels and titles
constexpr PaperLength arrow_room = paper_mm(28);
constexpr PaperLength name_height = lettering::bed;
constexpr PaperLength least_title = paper_mm(58);
// What stands behind is named only where its name finds room on it.
constexpr PaperLength least_named_width = paper_mm(7);
constexpr PaperLength least_named_height = paper_mm(45, 10);

std::string where_text(const Plan& plan, const CutLine& line) {
  const std::string far = both(line.at, plan->unit);
  if (line.along == CutLine::Along::x)
    return "Along the trailer, " + far + " from the left wall, looking to the right wall.";
  return "Across the trailer, " + far + " from the front, looking forward.";
}

struct Laid {
  const DrawnSection* drawn;
  PaperPoint corner;
  PlanView view;
  PaperBox room;  // without the walls
};

PaperLength block_width(const DrawnSection& drawn, PaperLength room) {
  const PaperLength walls = room + wall_band * 2;
  const PaperLength beside = drawn.levels.levels.empty() ? PaperLength{} : drawn.levels.width + gap / 2;
  return std::max(walls + beside, least_title + (is_long(drawn.section) ? arrow_room : PaperLength{}));
}

PaperLength title_width(const DrawnSection& drawn, PaperLength block) {
  return is_long(drawn.section) ? block - arrow_room : block;
}

std::vector<std::string> title_lines(const DrawnSection& drawn, PaperLength block) {
  return wrapped(unbroken_measures(drawn.where), lettering::note, title_width(drawn, block));
}

PaperLength title_height(const DrawnSection& drawn, PaperLength block) {
  const auto lines = static_cast<std::int64_t>(title_lines(drawn, block).size());
  const PaperLength words = name_height + paper_mm(1) + lettering::note_pitch * lines;
  return gap + std::max(words, is_long(drawn.section) ? paper_mm(9) : PaperLength{});
}

PaperLength room_height(const DrawnSection& drawn, std::int64_t ratio) {
  return std::max(on_paper(drawn.section.room.bounds().height(), ratio) + wall_band * 2,
                  least_height(drawn.levels));
}

Laid laid(const DrawnSection& drawn, PaperPoint corner, std::int64_t ratio) {
  const Rect room = drawn.section.room.bounds();
  const PaperPoint low{corner.x + wall_band, corner.y + room_height(drawn, ratio) - wall_band};
  const PlanView view{ratio, {low.x - on_paper(room.low.x, ratio), low.y + on_paper(room.low.y, ratio)}};
  const PaperPoint a = view(room.low);
  const PaperPoint b = view(room.high);
  return {&drawn, corner, view, {{a.x, b.y}, {b.x, a.y}}};
}

std::vector<Mark> title_marks(const Laid& at) {
  const DrawnSection& drawn = *at.drawn;
  const PaperLength block = block_width(drawn, at.room.width());
  PaperLength y = at.room.high.y + wall_band + gap + name_height * ascent_thousandths / 1000;
  std::vector<Mark> marks{Text{Ink::title,
                               {at.corner.x, y},
                               name_height,
                               Anchor::start,
                               false,
                               "Section " + drawn.letter + "–" + drawn.letter}};
  y = y + name_height * descent_thousandths / 1000 + paper_mm(1) +
      lettering::note * ascent_thousandths / 1000;
  for (const std::string& line : title_lines(drawn, block)) {
    marks.emplace_back(Text{Ink::note, {at.corner.x, y}, lettering::note, Anchor::start, false, line});
    y = y + lettering::note_pitch;
  }
  if (is_long(drawn.section))
    add(marks,
        travel_arrow({at.corner.x + title_width(drawn, block) + gap, at.room.high.y + wall_band}).marks);
  return marks;
}

// The inside of a drawn person in slices, which lettering keeps off.
void add_person(LabelField& field, const std::vector<PaperRing>& rings) {
  constexpr std::int64_t slices = 40;
  PaperBox box = bounds(rings.front());
  for (const PaperRing& ring : rings) box = hull(box, bounds(ring));
  for (std::int64_t i = 0; i < slices; ++i) {
    const PaperLength top = box.low.y + box.height() * i / slices;
    const PaperLength middle = box.low.y + box.height() * (2 * i + 1) / (2 * slices);
    std::vector<PaperLength> crossings;
    for (const PaperRing& ring : rings)
      for (const auto& [a, b] : lines(ring))
        if ((a.y > middle) != (b.y > middle))
          crossings.push_back(
              a.x + PaperLength::micrometres((b.x - a.x).micrometres() * (middle - a.y).micrometres() /
                                             (b.y - a.y).micrometres()));
    std::ranges::sort(crossings);
    for (std::size_t n = 0; n + 1 < crossings.size(); n += 2)
      field.taken.push_back({{crossings[n], top}, {crossings[n + 1], top + box.height() / slices}});
  }
}

PaperRing ring_of(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return ring;
}

// A door or window in the wall that is looked at bears its tag of the plan.
LabelWish opening_wish(const Laid& at, const Plan& plan, const Opening& opening,
                       const std::vector<std::vector<PaperRing>>& rings, std::size_t index) {
  LabelWish wish;
  wish.key = tag_of(plan, opening);
  wish.wordings.push_back({{wish.key}, lettering::label, false});
  wish.home = rings[index];
  for (std::size_t j = index + 1; j < rings.size(); ++j) wish.covers.push_back(rings[j]);
  std::vector<const std::vector<PaperRing>*> above;
  for (const auto& other : wish.covers) above.push_back(&other);
  wish.target = middle_of_seen(wish.home, above).value_or(bounds(wish.home.front()).centre());
  wish.place = "section " + at.drawn->letter;
  return wish;
}

// The largest cut of each thing is named, or else what is seen of it behind, if that is large enough.
std::vector<LabelWish> thing_wishes(const Laid& at, const Plan& plan) {
  const Section& section = at.drawn->section;
  std::vector<std::vector<PaperRing>> rings;
  for (const SectionShape& shape : section.shapes) rings.push_back({ring_of(outline_of(shape, at.view))});
  std::vector<std::vector<PaperRing>> people;
  for (const Region& person : at.drawn->people.outlines) people.push_back(at.view(person));
  const auto cut_first = [&](std::size_t i) {
    const SectionShape& shape = section.shapes[i];
    return std::tuple(shape.kind == SectionShape::Kind::cut,
                      Area::rectangle(shape.box.width(), shape.box.height()).doubled());
  };
  std::vector<LabelWish> wishes;
  for (std::size_t i = 0; i < section.shapes.size(); ++i) {
    const SectionShape& shape = section.shapes[i];
    if (shape.placed == nullptr) {
      wishes.push_back(opening_wish(at, plan, *shape.opening, rings, i));
      continue;
    }
    bool best = true;
    for (std::size_t j = 0; j < section.shapes.size(); ++j)
      best &= i == j || section.shapes[j].placed != shape.placed || cut_first(j) < cut_first(i) ||
              (cut_first(j) == cut_first(i) && i < j);
    const bool is_cut = shape.kind == SectionShape::Kind::cut;
    const PaperBox box = bounds(rings[i].front());
    if (!best || (!is_cut && (box.width() < least_named_width || box.height() < least_named_height)))
      continue;
    LabelWish wish;
    std::vector<const std::vector<PaperRing>*> above;
    for (std::size_t j = i + 1; j < rings.size(); ++j)
      if (overlaps(bounds(rings[j].front()), box)) above.push_back(&rings[j]);
    if (!is_cut)
      for (const auto& person : people) above.push_back(&person);
    const std::optional<PaperPoint> seen = middle_of_seen(rings[i], above);
    if (!seen) continue;
    for (const auto* other : above) wish.covers.push_back(*other);
    // A name beside its thing must not look like that of another.
    for (std::size_t j = 0; j < rings.size(); ++j)
      if (section.shapes[j].placed != shape.placed) wish.avoid.push_back(rings[j]);
    const std::string& name = name_of(*shape.placed);
    wish.wordings = name_wordings(name, box.height() > box.width());
    wish.home = rings[i];
    wish.target = *seen;
    wish.may_stand_off = is_cut;
    wish.key = name;
    wish.place = "section " + at.drawn->letter;
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::vector<LabelWish> head_room_wishes(const Laid& at, const Plan& plan) {
  std::vector<LabelWish> wishes;
  for (const HeadRoomLine& line : at.drawn->people.head_room) {
    const Length room = line.top - line.level;
    const LengthStyle down{.rounding = Rounding::down};
    const std::string figure = both(room, plan->unit, down);
    const std::string brief = plan->unit == Unit::inch ? imperial(room, down) : metric(room, Rounding::down);
    LabelWish wish;
    for (const bool upward : {true, false}) {
      wish.wordings.push_back({{"head room " + figure}, lettering::label, upward});
      wish.wordings.push_back({{"head room", figure}, lettering::label, upward});
    }
    wish.wordings.push_back({{"head room", brief}, lettering::label, false});
    wish.wordings.push_back({{brief}, lettering::label, false});
    const Length from = line.clear_of < line.top ? line.clear_of : line.level;
    wish.target = at.view({line.along, half(from + line.top)});
    wish.may_touch = true;
    wish.may_stand_off = true;
    wish.key = "head room over " + line.over + " " + figure;
    wish.place = "section " + at.drawn->letter;
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

std::string told(const DrawnSection& drawn, const Plan& plan) {
  std::string words = " Section " + drawn.letter + ": " + drawn.where;
  std::string things;
  for (const SectionShape& shape : drawn.section.shapes) {
    if (shape.kind != SectionShape::Kind::cut) continue;
    const std::string& name = name_of(*shape.placed);
    if (things.find(name) == std::string::npos) things += (things.empty() ? "" : ", ") + name;
  }
  if (!things.empty()) words += " It cuts " + things + ".";
  for (const HeadRoomLine& line : drawn.people.head_room)
    words += " Head room over " + line.over + ": " +
             both(line.top - line.level, plan->unit, {.rounding = Rounding::down}) + ".";
  for (const Level& level : drawn.levels.levels)
    if (level.height != Length{})
      words += " Level of " + level.name + ": " + both(level.height, plan->unit) + ".";
  return words;
}

std::vector<Note> people_notes(const std::vector<DrawnSection>& sections) {
  std::vector<Note> notes;
  const auto say = [&](Note::Kind kind, const std::string& words) {
    notes.push_back({kind, words, 0, false, std::nullopt});
  };
  const auto any = [&](auto has) { return std::ranges::any_of(sections, has); };
  if (any([](const DrawnSection& d) { return !d.people.outlines.empty(); })) {
    say(Note::Kind::heading, "People");
    say(Note::Kind::text,
        "Who sits is a man of the 95th, then a woman of the 5th percentile (ANSUR II), by turns; who lies is "
        "as tall as the plan says, else as this man. They are drawn for scale: nothing is measured on them.");
  }
  if (any([](const DrawnSection& d) { return !d.people.head_room.empty(); })) {
    say(Note::Kind::heading, "Head room");
    say(Note::Kind::text,
        "In the plane of the section, from the cushion not pressed down, rounded down. What is compared with "
        "a "
        "rule stands in the check.");
  }
  std::vector<std::string> said;
  for (const DrawnSection& drawn : sections)
    for (const std::string& bed : drawn.people.too_short) {
      if (std::ranges::find(said, bed) != said.end()) continue;
      said.push_back(bed);
      say(Note::Kind::text,
          "Nobody lies on " + bed + ": no rectangle on it that is cut is as long as the person.");
    }
  return notes;
}

}  // namespace

std::vector<DrawnSection> drawn_sections(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  const std::vector<SittingPlace> places = sitting_places(*of.answer);
  std::vector<DrawnSection> out;
  std::vector<Level> levels_told;
  std::vector<HeadRoomLine> rooms_told;
  for (const CutLine& line : section_lines(of, places)) {
    DrawnSection drawn;
    drawn.section = section_of(plan, of.answer->arrangement, line);
    if (drawn.section.room.empty()) continue;
    drawn.letter = std::string(1, static_cast<char>('A' + out.size() % 26));
    drawn.where = where_text(plan, line);
    drawn.people = people_of(of, drawn.section, places, rooms_told);
    drawn.levels = level_column(levels_of(drawn.section, levels_told), plan->unit);
    levels_told.insert(levels_told.end(), drawn.levels.levels.begin(), drawn.levels.levels.end());
    rooms_told.insert(rooms_told.end(), drawn.people.head_room.begin(), drawn.people.head_room.end());
    out.push_back(std::move(drawn));
  }
  return out;
}

PaperPoint size_of(const DrawnSection& drawn, std::int64_t ratio) {
  const PaperLength block = block_width(drawn, on_paper(drawn.section.room.bounds().width(), ratio));
  return {block, room_height(drawn, ratio) + title_height(drawn, block)};
}

SectionsDrawing sections_drawing(const DrawnConfiguration& of, const std::vector<DrawnSection>& sections,
                                 const std::vector<PaperPoint>& corners, std::int64_t ratio,
                                 const PaperBox& area) {
  const Plan& plan = *of.plan;
  SectionsDrawing drawing;
  LabelField field{area, {}, {}, {}};
  std::vector<LabelWish> wishes;
  std::vector<Laid> placed;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const DrawnSection& drawn = sections[i];
    placed.push_back(laid(drawn, corners[i], ratio));
    const Laid& at = placed.back();
    add_obstacles(field, room_marks(plan, drawn.section, at.view));
    std::vector<Mark> outlines;
    for (const SectionShape& shape : drawn.section.shapes) outlines.emplace_back(outline_of(shape, at.view));
    for (const Region& person : drawn.people.outlines) add_person(field, at.view(person));
    for (const HeadRoomLine& line : drawn.people.head_room) add(outlines, marks_of(line, at.view));
    add(outlines, title_marks(at));
    add(outlines, marks_of(drawn.levels, at.view, at.room.high.x + wall_band + gap / 4, at.corner.y,
                           at.room.high.y + wall_band));
    add_obstacles(field, outlines);
    for (const auto& more : {head_room_wishes(at, plan), thing_wishes(at, plan)})
      wishes.insert(wishes.end(), more.begin(), more.end());
    drawing.told += told(drawn, plan);
  }
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  for (const Laid& at : placed) {
    const DrawnSection& drawn = *at.drawn;
    Group group{"Section " + drawn.letter, room_marks(plan, drawn.section, at.view), 0};
    const auto draw_shapes = [&](bool is_cut) {
      for (const SectionShape& shape : drawn.section.shapes) {
        if ((shape.kind == SectionShape::Kind::cut) != is_cut) continue;
        group.marks.emplace_back(outline_of(shape, at.view));
        add(group.marks, filling_of(shape, at.view, lettering));
      }
    };
    draw_shapes(false);
    for (const Region& person : drawn.people.outlines)
      add(group.marks, paths_of(at.view, person, {}, Ink::person));
    draw_shapes(true);
    for (const HeadRoomLine& line : drawn.people.head_room) add(group.marks, marks_of(line, at.view));
    add(group.marks, marks_of(drawn.levels, at.view, at.room.high.x + wall_band + gap / 4, at.corner.y,
                              at.room.high.y + wall_band));
    add(group.marks, title_marks(at));
    drawing.groups.push_back(std::move(group));
  }
  Group names{"Names and figures", {}, 0};
  for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
  drawing.groups.push_back(std::move(names));
  for (const auto& notes : {people_notes(sections), key_notes(labels, wishes), legend_notes(drawing.groups)})
    drawing.notes.insert(drawing.notes.end(), notes.begin(), notes.end());
  return drawing;
}

}  // namespace berthwright
