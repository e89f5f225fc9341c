#include "view/section_drawing.h"

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/draft.h"
#include "view/label_candidates.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/section_labels.h"
#include "view/section_marks.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength gap = paper_mm(2);  // between walls, levels and titles
constexpr PaperLength arrow_room = paper_mm(28);
constexpr PaperLength name_height = lettering::bed;
constexpr PaperLength least_title = paper_mm(58);
constexpr PaperLength names_beside = paper_mm(9);  // before the left wall, for names that find no room within

std::string where_text(const Plan& plan, const CutLine& line) {
  const std::string far = " the " + vehicle(plan) + ", " + both(line.at, plan->unit);
  if (line.along == CutLine::Along::x)
    return "Along" + far + " from the left wall, looking to the right wall.";
  return "Across" + far + " from the front, looking forward.";
}

struct LaidSection {
  const DrawnSection* drawn;
  PaperPoint corner;
  PlanView view;
  PaperBox room;  // without the walls
};

PaperLength block_width(const DrawnSection& drawn, PaperLength room) {
  const PaperLength walls = room + wall_band * 2;
  const PaperLength beside = drawn.levels.levels.empty() ? PaperLength{} : drawn.levels.width + gap / 2;
  return names_beside +
         std::max(walls + beside, least_title + (is_long(drawn.section) ? arrow_room : PaperLength{}));
}

PaperLength title_width(const DrawnSection& drawn, PaperLength block) {
  const PaperLength below = block - names_beside;
  return is_long(drawn.section) ? below - arrow_room : below;
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

LaidSection laid(const DrawnSection& drawn, PaperPoint corner, std::int64_t ratio) {
  const Rect room = drawn.section.room.bounds();
  const PaperPoint low{corner.x + names_beside + wall_band, corner.y + room_height(drawn, ratio) - wall_band};
  const PlanView view{ratio, {low.x - on_paper(room.low.x, ratio), low.y + on_paper(room.low.y, ratio)}};
  const PaperPoint a = view(room.low);
  const PaperPoint b = view(room.high);
  return {&drawn, corner, view, {{a.x, b.y}, {b.x, a.y}}};
}

std::vector<Mark> title_marks(const LaidSection& at) {
  const DrawnSection& drawn = *at.drawn;
  const PaperLength block = block_width(drawn, at.room.width());
  PaperLength y = at.room.high.y + wall_band + gap + name_height * ascent_thousandths / 1000;
  const PaperLength left = at.corner.x + names_beside;
  const std::string name = "Section " + drawn.letter + "–" + drawn.letter + ", " + drawn.configuration;
  std::vector<Mark> marks{Text{Ink::title,
                               {left, y},
                               name_height,
                               Anchor::start,
                               false,
                               shortened(name, name_height, title_width(drawn, block))}};
  y = y + name_height * descent_thousandths / 1000 + paper_mm(1) +
      lettering::note * ascent_thousandths / 1000;
  for (const std::string& line : title_lines(drawn, block)) {
    marks.emplace_back(Text{Ink::note, {left, y}, lettering::note, Anchor::start, false, line});
    y = y + lettering::note_pitch;
  }
  if (is_long(drawn.section))
    add(marks, travel_arrow({left + title_width(drawn, block) + gap, at.room.high.y + wall_band}).marks);
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

std::vector<Mark> level_marks(const LaidSection& at) {
  return marks_of(at.drawn->levels, at.view, at.room.high.x + wall_band + gap / 4, at.corner.y,
                  at.room.high.y + wall_band);
}

// What is measured and what is wrong, over everything else.
std::vector<Mark> told_marks(const LaidSection& at) {
  const DrawnSection& drawn = *at.drawn;
  std::vector<Mark> marks;
  for (const HeadRoomLine& line : drawn.head_room) add(marks, marks_of(line, at.view));
  for (const SectionRidge& ridge : drawn.ridges) add(marks, marks_of(ridge, at.view));
  for (const SectionClash& clash : drawn.clashes) marks.emplace_back(mark_of(clash, at.view));
  for (const DrawnPerson& person : drawn.people.people)
    if (!person.in_the_way.empty()) add(marks, paths_of(at.view, outline_of(person), {}, Ink::no_room));
  add(marks, level_marks(at));
  return marks;
}

// What the lettering of one section must keep off; it stays within the section's own block.
LabelField field_of(const LaidSection& at, const Plan& plan, std::int64_t ratio, const PaperBox& area) {
  constexpr PaperLength shared = paper_mm(2);  // of the room between two blocks
  const DrawnSection& drawn = *at.drawn;
  const PaperPoint size = size_of(drawn, ratio);
  LabelField field;
  field.area = {{std::max(area.low.x, at.corner.x - shared), at.corner.y},
                {std::min(area.high.x, at.corner.x + size.x + shared), at.corner.y + size.y}};
  add_obstacles(field, room_marks(plan, drawn.section, at.view));
  std::vector<Mark> marks;
  for (const SectionShape& shape : drawn.section.shapes) marks.emplace_back(outline_of(shape, at.view));
  for (const DrawnPerson& person : drawn.people.people)
    if (person.in_the_way.empty()) add_person(field, at.view(outline_of(person)));
  add(marks, told_marks(at));
  add(marks, title_marks(at));
  add_obstacles(field, marks);
  return field;
}

Group section_group(const LaidSection& at, const Plan& plan, const std::vector<PlacedLabel>& labels) {
  const DrawnSection& drawn = *at.drawn;
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  Group group{"Section " + drawn.letter, room_marks(plan, drawn.section, at.view), 0};
  const auto draw_shapes = [&](bool is_cut) {
    for (const SectionShape& shape : drawn.section.shapes) {
      if ((shape.kind == SectionShape::Kind::cut) != is_cut) continue;
      group.marks.emplace_back(outline_of(shape, at.view));
      add(group.marks, filling_of(shape, at.view, lettering));
    }
  };
  const auto draw = [&](const std::vector<Region>& parts, Ink ink) {
    for (const Region& part : parts) add(group.marks, paths_of(at.view, part, {}, ink));
  };
  draw_shapes(false);
  for (const DrawnPerson& person : drawn.people.people) {
    if (!person.legs_in_front) draw(person.legs, Ink::person);
    draw(person.body, Ink::person);
  }
  draw_shapes(true);
  for (const DrawnPerson& person : drawn.people.people) {
    if (person.legs_in_front) draw(person.legs, Ink::person);
    for (const Region& leg : person.legs)
      if (!person.legs_in_front) draw({without(leg, united(person.body))}, Ink::hidden_person);
  }
  add(group.marks, told_marks(at));
  add(group.marks, title_marks(at));
  return group;
}

// The same words in the key have one number in all sections.
class Key {
 public:
  void add(std::vector<PlacedLabel>& labels, const std::vector<LabelWish>& wishes) {
    for (std::size_t i = 0; i < labels.size(); ++i) {
      if (labels[i].number == 0) continue;
      const auto same = std::ranges::find(wishes_, wishes[i].key, &LabelWish::key);
      const auto at = static_cast<std::size_t>(same - wishes_.begin());
      labels[i].number = static_cast<int>(at) + 1;
      const bool shown = !labels[i].wording.lines.empty();
      if (shown) labels[i].wording = number_wording(labels[i].number);
      if (same == wishes_.end()) {
        wishes_.push_back(wishes[i]);
        labels_.push_back(labels[i]);
      } else if (shown) {
        labels_[at] = labels[i];
      }
    }
  }
  std::vector<Note> notes() const { return key_notes(labels_, wishes_); }

 private:
  std::vector<LabelWish> wishes_;
  std::vector<PlacedLabel> labels_;
};

}  // namespace

std::vector<DrawnSection> drawn_sections(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  const std::vector<SittingPlace> places = sitting_places(*of.answer);
  std::vector<DrawnSection> out;
  for (const SectionCut& cut : of.cuts) {
    DrawnSection drawn;
    drawn.section = section_of(plan, of.answer->arrangement, cut.line);
    drawn.letter = cut.letter;
    drawn.configuration = name_of(*of.answer->configuration);
    drawn.where = where_text(plan, cut.line);
    drawn.people = people_of(of, drawn.section, places);
    drawn.head_room = head_room_lines(of, drawn.section);
    drawn.ridges = section_ridges(of, drawn.section);
    drawn.clashes = section_clashes(of, drawn.section);
    drawn.levels = level_column(levels_of(drawn.section), plan->unit);
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
  Key key;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const LaidSection at = laid(sections[i], corners[i], ratio);
    const SectionWishes wishes = section_wishes(sections[i], plan, at.view);
    LabelField field = field_of(at, plan, ratio, area);
    std::vector<PlacedLabel> labels = placed_labels(field, wishes.figures);
    for (const PlacedLabel& label : labels) {
      if (!label.wording.lines.empty()) field.taken.push_back(label.box);
      if (label.leader) field.heavy.push_back(*label.leader);
    }
    key.add(labels, wishes.figures);
    std::vector<PlacedLabel> names_of_things = placed_labels(field, wishes.names);
    key.add(names_of_things, wishes.names);
    labels.insert(labels.end(), names_of_things.begin(), names_of_things.end());
    drawing.groups.push_back(section_group(at, plan, labels));
    Group names{"Names and figures of section " + sections[i].letter, {}, 0};
    for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
    drawing.groups.push_back(std::move(names));
    drawing.told += told(sections[i], plan);
  }
  for (const auto& notes : {section_notes(plan, sections), key.notes(), legend_notes(drawing.groups)})
    drawing.notes.insert(drawing.notes.end(), notes.begin(), notes.end());
  return drawing;
}

}  // namespace berthwright
