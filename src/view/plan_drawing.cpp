#include "view/plan_drawing.h"

#include <algorithm>

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

Note in_words(const ChainSetting& setting) {
  std::string words = std::string(wall_words(setting.chain.side)) + ":";
  for (std::size_t i = 0; i < setting.figures.size(); ++i)
    words += (i == 0 ? " " : ", ") + setting.figures[i];
  return {Note::Kind::text, words + ".", 0, false, std::nullopt};
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

Group bed_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Beds", {}, 0};
  for (const BedAnswer& answer : of.answer->beds) {
    add(group.marks, paths_of(view, answer.mattress.closed, {}, Ink::bed_outline));
    if (!answer.room.largest) continue;
    PaperRing ring;
    for (const Point corner : answer.room.largest->corners) ring.push_back(view(corner));
    group.marks.emplace_back(closed_path(Ink::sleeping_rectangle, ring));
  }
  return group;
}

Group seam_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Gaps and ridges", {}, 0};
  for (const BedAnswer& answer : of.answer->beds) {
    for (const Gap& gap : answer.mattress.gaps) add(group.marks, paths_of(view, gap.region, {}, Ink::gap));
    for (const Ridge& ridge : answer.mattress.ridges)
      group.marks.emplace_back(circle(Ink::ridge, view(ridge.where), paper_mm(8, 10)));
  }
  return group;
}

}  // namespace

Surroundings surroundings_of(const DrawnConfiguration& of, std::int64_t ratio) {
  Surroundings around;
  around.cuts = cut_marks(*of.plan, of.cuts, ratio);
  for (const Wall wall : four_walls) {
    std::vector<ChainSetting>& settings = around.chains[wall];
    for (const DimensionChain& chain : chains_along(*of.plan, of.answer->arrangement, wall)) {
      ChainSetting setting = set_chain(chain, ratio, (*of.plan)->unit);
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
    if (const PaperLength marks = depth_of(around.cuts, wall); marks > PaperLength{}) {
      least = std::max(least, marks + paper_mm(1));
      if (!settings.empty()) first = std::max(first, marks + paper_mm(1) + settings.front().inward);
    }
    around.lanes[wall] = lanes_of(settings, first);
    around.lanes[wall].depth = std::max(around.lanes[wall].depth, least) + wall_band;
  }
  return around;
}

PlanDrawing plan_drawing(const DrawnConfiguration& of, const PlanView& view, const Surroundings& around,
                         const PaperBox& area) {
  const std::vector<PlanThing> things = plan_things(view, of.answer->arrangement);
  PlanDrawing drawing;
  std::vector<Group>& groups = drawing.groups;
  groups.push_back({"Room", room_marks(view, (*of.plan)->interior), 0});
  Group solid{"Things seen from above", {}, 0};
  for (const PlanThing& thing : things) add(solid.marks, thing.paths);
  Group openings{"Openings", {}, 0};
  for (const Opening& opening : (*of.plan)->openings)
    add(openings.marks, opening_marks(view, *of.plan, opening));
  Group heat{"Distances to heat", {}, 0};
  for (const HeatLine& line : heat_lines(of)) add(heat.marks, marks_of(line, view));
  const PaperBox face = face_of(of, view);
  Group cuts{"Where sections are cut", {}, 0};
  std::vector<LabelWish> letters;
  for (const CutMark& mark : around.cuts) {
    add(cuts.marks, marks_of(mark, view, face));
    letters.push_back(letter_wish(mark, view, face, (*of.plan)->unit));
  }
  const std::vector<Group> others{
      openings, seam_group(of, view), bed_group(of, view), heat, dimension_group(of, view, around), cuts};
  LabelField field{area, {}, {}, {}};
  add_obstacles(field, groups.front().marks);
  add_obstacles(field, solid.marks);
  for (const Group& group : others) add_obstacles(field, group.marks);
  std::vector<LabelWish> wishes = heat_wishes(of, view);
  for (const auto& more : {bed_wishes(of, view), thing_wishes(things, of), opening_wishes(of, view),
                           seam_wishes(of, view), letters})
    wishes.insert(wishes.end(), more.begin(), more.end());
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  Group painted{solid.title, {}, 0};
  for (const PlanThing& thing : things) {
    add(painted.marks, thing.paths);
    add(painted.marks, grain_of(thing, lettering));
  }
  groups.push_back(std::move(painted));
  for (const Group& group : others)
    if (!group.marks.empty()) groups.push_back(group);
  Group names{"Names and figures", {}, 0};
  for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
  groups.push_back(std::move(names));

  for (const auto& notes : {caution_notes(of), bed_notes(of), key_notes(labels, wishes), opening_notes(of),
                            absent_notes(of, things), around.in_words, legend_notes(groups)})
    drawing.notes.insert(drawing.notes.end(), notes.begin(), notes.end());
  return drawing;
}

}  // namespace berthwright
