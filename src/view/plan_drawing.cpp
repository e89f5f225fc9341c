#include "view/plan_drawing.h"

#include <algorithm>

#include "view/alerts.h"
#include "view/bed_marks.h"
#include "view/inner_dimensions.h"
#include "view/label_wishes.h"
#include "view/plan_notes.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength first_line = paper_mm(10);  // from the wall to the first dimension line
constexpr PaperLength room_for_tags = paper_mm(6);

std::string_view wall_words(Wall wall) {
  switch (wall) {
    case Wall::front:
      return "Front wall, from the left";
    case Wall::rear:
      return "Rear wall, from the left";
    case Wall::left:
      return "Left wall, from the front";
    case Wall::right:
      return "Right wall, from the front";
  }
  throw std::logic_error("Wall out of range");
}

std::string in_words(const ChainSetting& setting) {
  std::string words = std::string(wall_words(setting.chain.side)) + ":";
  for (std::size_t i = 0; i < setting.figures.size(); ++i)
    words += (i == 0 ? " " : ", ") + setting.figures[i];
  return words + ".";
}

// The outer faces of the walls.
PaperBox face_of(const DrawnConfiguration& of, const PlanView& view) {
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const PaperPoint low = view(room.low);
  const PaperPoint high = view(room.high);
  return {{low.x - wall_band, high.y - wall_band}, {high.x + wall_band, low.y + wall_band}};
}

Group dimension_group(const DrawnConfiguration& of, const PlanView& view, const Surroundings& around) {
  Group group{"Dimensions", {}, 0};
  const PaperBox face = face_of(of, view);
  for (const Wall wall : four_walls) {
    const std::vector<ChainSetting>& chains = around.chains.at(wall);
    for (std::size_t i = 0; i < chains.size(); ++i)
      add(group.marks, marks_of(chains[i], view, face, around.lanes.at(wall).lines[i]));
  }
  // Lines first, so that the patches under figures clear those of every chain.
  std::ranges::stable_partition(group.marks,
                                [](const Mark& mark) { return std::holds_alternative<Path>(mark); });
  return group;
}

// What others hide uses no sign that a reader could look for.
Group seen_marks(const std::vector<PlanThing>& things) {
  Group group;
  for (const PlanThing& thing : things)
    if (thing.seen) add(group.marks, thing.paths);
  return group;
}

// A name over a dimension line would break it.
void keep_off_inner_lines(LabelField& field, const std::vector<Mark>& inner) {
  for (const Mark& mark : inner) {
    const Path* path = std::get_if<Path>(&mark);
    if (path != nullptr)
      for (const PaperLine& line : lines(*path)) field.heavy.push_back(line);
    else
      add_obstacles(field, {mark});
  }
}

// What grain stays off.
std::vector<PaperBox> lettering_among(const std::vector<PlacedLabel>& labels,
                                      const std::vector<Mark>& inner) {
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  for (const Mark& mark : inner)
    if (const Text* text = std::get_if<Text>(&mark))
      lettering.push_back(grown(box_of(*text), paper_mm(4, 10)));
  return lettering;
}

std::vector<std::string> measures_in_words(const Surroundings& around, const InnerDimensions& inner) {
  std::vector<std::string> measures = around.in_words;
  std::string untold;
  for (const std::string& words : inner.in_words) untold += (untold.empty() ? "" : "; ") + words;
  if (!untold.empty()) measures.push_back("Without a dimension line: " + untold + ".");
  return measures;
}

std::vector<std::string> hidden_names(const std::vector<PlanThing>& things) {
  std::vector<std::string> names;
  for (const PlanThing& thing : things)
    if (!thing.seen) names.push_back(name_of(*thing.placed));
  return names;
}

}  // namespace

Surroundings surroundings_of(const DrawnConfiguration& of, const std::vector<PlanThing>& things,
                             std::int64_t ratio) {
  Surroundings around;
  around.cuts = cut_marks(*of.plan, of.cuts, ratio);
  const Unit own = (*of.plan)->unit;
  bool left_out = false;
  for (const Wall wall : four_walls) {
    std::vector<ChainSetting>& settings = around.chains[wall];
    for (const DimensionChain& chain : chains_along(*of.plan, things, wall, ratio)) {
      left_out = left_out || chain.left_out;
      ChainSetting setting = set_chain(chain, ratio, own);
      if (setting.crowded)
        around.in_words.push_back(in_words(setting));
      else
        settings.push_back(std::move(setting));
    }
    PaperLength first = first_line;
    PaperLength least = wall_band;
    for (const Opening& opening : (*of.plan)->openings) {
      if (opening.wall != wall) continue;
      least = std::max({least, room_for_tags, reach_outside(opening, ratio) + paper_mm(2)});
      first = std::max(first, reach_outside(opening, ratio) + paper_mm(3));
    }
    for (std::size_t i = 0; i < settings.size(); ++i)
      keep_off(settings[i], std::span(settings).subspan(i + 1), ratio);
    if (const PaperLength marks = depth_of(around.cuts, wall); marks > PaperLength{}) {
      least = std::max(least, marks + paper_mm(1));
      if (!settings.empty()) first = std::max(first, marks + paper_mm(1) + settings.front().inward);
    }
    around.lanes[wall] = lanes_of(settings, first);
    around.lanes[wall].depth = std::max(around.lanes[wall].depth, least) + wall_band;
  }
  if (left_out)
    around.in_words.push_back(
        "The chains leave out splits of less than " +
        both(in_nature(least_split, ratio), own, {.rounding = Rounding::up, .feet = false}) + ".");
  return around;
}

std::vector<Note> certain_notes(const DrawnConfiguration& of) {
  std::vector<Note> notes;
  for (const auto& more : {caution_notes(of), road_notes(of), bed_notes(of), opening_notes(of)})
    notes.insert(notes.end(), more.begin(), more.end());
  return notes;
}

namespace {

// Grain and dots keep clear of lettering.
Group painted(const std::string& title, const std::vector<PlanThing>& things,
              const std::vector<PaperBox>& lettering) {
  Group group{title, {}, 0};
  for (const PlanThing& thing : things) {
    add(group.marks, thing.paths);
    add(group.marks, grain_of(thing, lettering));
  }
  return group;
}

}  // namespace

PlanDrawing plan_drawing(const DrawnConfiguration& of, const PlanView& view, const Surroundings& around,
                         const PaperBox& area) {
  const std::vector<PlanThing> things = plan_things(view, *of.plan, of.answer->arrangement);
  PlanDrawing drawing;
  std::vector<Group>& groups = drawing.groups;
  groups.push_back({"Room", room_marks(view, (*of.plan)->interior), 0});
  Group solid{"Things seen from above", {}, 0};
  for (const PlanThing& thing : things) add(solid.marks, thing.paths);
  Group openings{"Openings", {}, 0};
  for (const Opening& opening : (*of.plan)->openings)
    add(openings.marks, opening_marks(view, *of.plan, opening));
  Group heat{"Distances to heat", {}, 0};
  const std::vector<HeatLine> to_heat = heat_lines(of);
  for (const HeatLine& line : to_heat) add(heat.marks, marks_of(line, view));
  const PaperBox face = face_of(of, view);
  Group cuts{"Where sections are cut", {}, 0};
  std::vector<LabelWish> letters;
  for (const CutMark& mark : around.cuts) {
    add(cuts.marks, marks_of(mark, view, face));
    letters.push_back(letter_wish(mark, view, face, (*of.plan)->unit));
  }
  std::vector<Group> others{openings,
                            seam_group(of, view),
                            bed_group(of, view),
                            clash_group(of, view),
                            std::move(heat),
                            dimension_group(of, view, around),
                            std::move(cuts)};
  LabelField field{area, {}, {}, {}, {}};
  add_obstacles(field, groups.front().marks);
  add_obstacles(field, solid.marks);
  for (const Group& group : others) add_obstacles(field, group.marks);
  InnerDimensions inner = inner_dimensions(of, view, things, around, field);
  keep_off_inner_lines(field, inner.marks);
  others.push_back({"Depths", std::move(inner.marks), 0});
  std::vector<LabelWish> wishes = heat_wishes(of, to_heat, view);
  for (const auto& more : {alert_wishes(of, view), bed_wishes(of, view), thing_wishes(things, of, view),
                           opening_wishes(of, view), seam_wishes(of, view), letters})
    wishes.insert(wishes.end(), more.begin(), more.end());
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  const std::vector<PaperBox> lettering = lettering_among(labels, others.back().marks);
  groups.push_back(painted(solid.title, things, lettering));
  others.insert(others.begin(), off_level_group(of, view, lettering));
  for (const Group& group : others)
    if (!group.marks.empty()) groups.push_back(group);
  Group names{"Names and figures", {}, 0};
  for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
  groups.push_back(std::move(names));

  const std::vector<std::string> measures = measures_in_words(around, inner);
  std::vector<Group> signs = others;
  signs.push_back(seen_marks(things));
  for (const auto& notes :
       {caution_notes(of), road_notes(of), bed_notes(of), key_notes(labels, wishes), opening_notes(of),
        absent_notes(of, hidden_names(things), measures), legend_notes(signs)})
    drawing.notes.insert(drawing.notes.end(), notes.begin(), notes.end());
  return drawing;
}

}  // namespace berthwright
