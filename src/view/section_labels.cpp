#include "view/section_labels.h"

#include <algorithm>
#include <tuple>

#include <berthwright/exact/measure.h>

#include "view/called.h"
#include "view/label_wishes.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/plan_things.h"
#include "view/section_marks.h"
#include "view/seen.h"

namespace berthwright {
namespace {

// What stands behind is named only where its name finds room on it.
constexpr PaperLength least_named_width = paper_mm(7);
constexpr PaperLength least_named_height = paper_mm(45, 10);

using Rings = std::vector<PaperRing>;

PaperRing corners_of(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return ring;
}

/// One section as its labels see it.
class Wishes {
 public:
  Wishes(const DrawnSection& drawn, const Plan& plan, const PlanView& view)
      : drawn_(drawn), plan_(plan), view_(view) {
    for (const SectionShape& shape : drawn.section.shapes)
      rings_.push_back({corners_of(outline_of(shape, view))});
    for (const DrawnPerson& person : drawn.people.people) people_.push_back(view(outline_of(person)));
  }

  SectionWishes made() {
    for (std::size_t i = 0; i < drawn_.head_room.size(); ++i) add_head_room(i);
    for (const SectionRidge& ridge : drawn_.ridges) add_ridge(ridge);
    for (const SectionClash& clash : drawn_.clashes) add_clash(clash);
    for (std::size_t i = 0; i < drawn_.people.people.size(); ++i) add_person(i);
    SectionWishes both{std::move(wishes_), {}};
    wishes_.clear();
    for (std::size_t i = 0; i < rings_.size(); ++i) add_shape(i);
    both.names = std::move(wishes_);
    return both;
  }

 private:
  LabelWish begin(const std::string& key) const {
    LabelWish wish;
    wish.key = key;
    wish.place = "section " + drawn_.letter;
    return wish;
  }

  // A figure beside a point, with a leader if need be.
  void add_figure(LabelWish wish, PaperPoint target) {
    wish.target = target;
    wish.may_touch = true;
    wish.may_stand_off = true;
    wishes_.push_back(std::move(wish));
  }

  void add_head_room(std::size_t i) {
    const HeadRoomLine& line = drawn_.head_room[i];
    std::vector<std::string> full = words_of(line, plan_, drawn_.section, true);
    std::vector<std::string> brief = words_of(line, plan_, drawn_.section, false);
    // Two seats that face each other need not both say where the roof is low.
    const auto said = [&](const HeadRoomLine& other) {
      return words_of(other, plan_, drawn_.section, true) == full;
    };
    if (std::any_of(drawn_.head_room.begin(), drawn_.head_room.begin() + static_cast<std::ptrdiff_t>(i),
                    said)) {
      full.resize(1);
      brief.resize(1);
    }
    std::string key;
    for (const std::string& part : full) key += (key.empty() ? "" : " ") + part;
    LabelWish wish = begin(key + " over " + line.over);
    for (const auto& words : {full, brief, narrow(brief)})
      for (const bool upward : {false, true}) wish.wordings.push_back({words, lettering::label, upward});
    for (const bool upward : {false, true}) wish.wordings.push_back({narrow(brief), lettering::note, upward});
    // Above the heads of those who are drawn.
    const PaperPoint foot = view_({line.along, line.level});
    const PaperPoint head = view_({line.along, line.top});
    PaperLength clear_of = foot.y;
    for (const Rings& person : people_)
      for (PaperLength y = head.y; y < clear_of; y = y + paper_mm(1))
        if (inside(person, {head.x, y})) clear_of = y;
    if (clear_of - head.y < paper_mm(4)) clear_of = foot.y;
    add_figure(std::move(wish), {head.x, (head.y + clear_of) / 2});
  }

  // The same in more and shorter lines.
  static std::vector<std::string> narrow(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& part : words) all += (all.empty() ? "" : " ") + part;
    return wrapped(unbroken_measures(all), lettering::label, paper_mm(22));
  }

  void add_ridge(const SectionRidge& ridge) {
    const LengthStyle up{.rounding = Rounding::up, .feet = false};
    const std::string figure = both(ridge.ridge->step, plan_->unit, up);
    const std::string brief =
        plan_->unit == Unit::inch ? imperial(ridge.ridge->step, up) : metric(ridge.ridge->step, Rounding::up);
    LabelWish wish = begin("ridge " + figure);
    wish.wordings.push_back({{"ridge " + figure}, lettering::label, false});
    for (const PaperLength height : {lettering::label, lettering::note})
      for (const bool upward : {false, true}) {
        wish.wordings.push_back({{"ridge " + brief}, height, upward});
        wish.wordings.push_back({{"ridge", brief}, height, upward});
      }
    add_figure(std::move(wish), figure_of(ridge, view_));
  }

  void add_clash(const SectionClash& clash) {
    const Collision& collision = *clash.collision;
    const std::string figure = both(collision.depth, plan_->unit, {.rounding = Rounding::up, .feet = false});
    LabelWish wish = begin(name_of(plan_, collision.first) + " and " + name_of(plan_, collision.second) +
                           " clash by " + figure);
    wish.wordings.push_back({{"clash " + figure}, lettering::label, false});
    wish.wordings.push_back({{"clash", figure}, lettering::label, false});
    wish.target = bounds(corners_of(mark_of(clash, view_))).centre();
    wish.may_stand_off = true;
    wishes_.push_back(std::move(wish));
  }

  void add_person(std::size_t i) {
    const DrawnPerson& person = drawn_.people.people[i];
    if (person.in_the_way.empty()) return;
    LabelWish wish = begin("does not fit: " + person.in_the_way + " is in the way");
    for (const PaperLength height : {lettering::label, lettering::note})
      for (const bool upward : {false, true}) {
        wish.wordings.push_back({{"does not fit:", person.in_the_way}, height, upward});
        wish.wordings.push_back({{"does not fit"}, height, upward});
        wish.wordings.push_back({{"does not", "fit"}, height, upward});
      }
    wish.home = people_[i];
    for (std::size_t j = 0; j < rings_.size(); ++j)
      if (drawn_.section.shapes[j].kind == SectionShape::Kind::cut) wish.covers.push_back(rings_[j]);
    std::vector<const Rings*> above;
    for (const Rings& cover : wish.covers) above.push_back(&cover);
    wish.target = middle_of_seen(wish.home, above).value_or(bounds(wish.home.front()).centre());
    wish.may_stand_off = true;
    wishes_.push_back(std::move(wish));
  }

  // A door or window in the wall that is looked at bears its tag of the plan.
  void add_opening(std::size_t i) {
    LabelWish wish = begin(tag_of(plan_, *drawn_.section.shapes[i].opening));
    wish.wordings.push_back({{wish.key}, lettering::label, false});
    wish.home = rings_[i];
    for (std::size_t j = i + 1; j < rings_.size(); ++j) wish.covers.push_back(rings_[j]);
    for (const Rings& person : people_) wish.covers.push_back(person);
    std::vector<const Rings*> above;
    for (const Rings& cover : wish.covers) above.push_back(&cover);
    wish.target = middle_of_seen(wish.home, above).value_or(bounds(wish.home.front()).centre());
    wishes_.push_back(std::move(wish));
  }

  // The largest cut of a thing is named, or else the largest that is seen of it behind.
  bool is_named(std::size_t i) const {
    const auto& shapes = drawn_.section.shapes;
    const auto rank = [&](std::size_t n) {
      return std::tuple(shapes[n].kind == SectionShape::Kind::cut,
                        Area::rectangle(shapes[n].box.width(), shapes[n].box.height()).doubled(),
                        shapes.size() - n);
    };
    for (std::size_t j = 0; j < shapes.size(); ++j)
      if (shapes[j].placed == shapes[i].placed && rank(i) < rank(j)) return false;
    return true;
  }

  void add_shape(std::size_t i) {
    const SectionShape& shape = drawn_.section.shapes[i];
    if (shape.placed == nullptr) return add_opening(i);
    const bool is_cut = shape.kind == SectionShape::Kind::cut;
    const PaperBox box = bounds(rings_[i].front());
    if (!is_named(i) || (!is_cut && (box.width() < least_named_width || box.height() < least_named_height)))
      return;
    LabelWish wish = begin(name_of(*shape.placed));
    std::vector<const Rings*> above;
    for (std::size_t j = i + 1; j < rings_.size(); ++j)
      if (overlaps(bounds(rings_[j].front()), box)) above.push_back(&rings_[j]);
    if (!is_cut)
      for (const Rings& person : people_) above.push_back(&person);
    const std::optional<PaperPoint> seen = middle_of_seen(rings_[i], above);
    if (!seen) return;
    for (const Rings* other : above) wish.covers.push_back(*other);
    // On another thing the name would be taken for that thing's own.
    for (std::size_t j = 0; j < rings_.size(); ++j)
      if (drawn_.section.shapes[j].placed != shape.placed) wish.never.push_back(rings_[j]);
    for (const Rings& person : people_) wish.never.push_back(person);
    wish.wordings = name_wordings(wish.key, box.height() > box.width());
    wish.home = rings_[i];
    wish.target = *seen;
    wish.may_stand_off = is_cut;
    wishes_.push_back(std::move(wish));
  }

  const DrawnSection& drawn_;
  const Plan& plan_;
  PlanView view_;
  std::vector<Rings> rings_;
  std::vector<Rings> people_;
  std::vector<LabelWish> wishes_;
};

void say(std::vector<Note>& notes, Note::Kind kind, const std::string& words) {
  notes.push_back({kind, words, 0, false, std::nullopt});
}

}  // namespace

SectionWishes section_wishes(const DrawnSection& drawn, const Plan& plan, const PlanView& view) {
  return Wishes(drawn, plan, view).made();
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
  for (const HeadRoomLine& line : drawn.head_room) {
    std::string mine;
    for (const std::string& part : words_of(line, plan, drawn.section, true))
      mine += (mine.empty() ? "" : " ") + part;
    words += " Over " + line.over + ": " + mine + ".";
  }
  for (const DrawnPerson& person : drawn.people.people)
    if (!person.in_the_way.empty()) words += " A person does not fit there for " + person.in_the_way + ".";
  for (const Level& level : drawn.levels.levels)
    if (level.height != Length{})
      words += " Level of " + level.name + ": " + both(level.height, plan->unit) + ".";
  return words;
}

std::vector<Note> section_notes(const Plan& plan, const std::vector<DrawnSection>& sections) {
  std::vector<Note> notes;
  const auto any = [&](auto has) { return std::ranges::any_of(sections, has); };
  const auto any_line = [&](auto of) {
    return any([&](const DrawnSection& drawn) {
      return std::ranges::any_of(drawn.head_room, [&](const HeadRoomLine& line) { return line.of == of; });
    });
  };
  if (any([](const DrawnSection& drawn) { return !drawn.people.people.empty(); })) {
    say(notes, Note::Kind::heading, "People");
    say(notes, Note::Kind::text,
        "Who sits is a man of the 95th, then a woman of the 5th percentile (ANSUR II), by turns; who lies is "
        "as tall as the plan says, else as this man. For scale: nothing is measured on them.");
  }
  std::string heights;
  const std::string pressed = both(seat_compression, plan->unit, {.feet = false});
  if (any_line(HeadRoomLine::Of::seat))
    heights += "Head room: from the seat pressed down by " + pressed + ". ";
  if (any_line(HeadRoomLine::Of::bed)) heights += "Clear height: from the bed not pressed. ";
  if (any_line(HeadRoomLine::Of::sitting_up))
    heights += "To sit up: from the bed pressed down by " + pressed + ", where there is most. ";
  if (!heights.empty()) {
    say(notes, Note::Kind::heading, "Heights");
    say(notes, Note::Kind::text,
        heights +
            "As in the check: the least over all of the seat or bed, rounded down; with its place where "
            "that is not in the plane.");
  }
  std::vector<std::string> said;
  for (const DrawnSection& drawn : sections)
    for (const std::string& bed : drawn.people.too_short) {
      if (std::ranges::find(said, bed) != said.end()) continue;
      said.push_back(bed);
      say(notes, Note::Kind::text,
          "Nobody lies on " + bed + ": no rectangle on it that is cut is as long as the person.");
    }
  return notes;
}

}  // namespace berthwright
