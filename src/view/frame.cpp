#include "view/frame.h"

#include <algorithm>

#include "view/called.h"
#include "view/label_wishes.h"
#include "view/plan_notes.h"
#include "view/signs.h"
#include "view/small_view.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr Length beyond_door = 9_in;
constexpr Length half_a_head = 4_in;
constexpr PaperLength seen_apart =
    paper_mm(2);  // corners of a way that are nearer to each other are not drawn
constexpr PaperLength clear_of_arrow = paper_mm(15, 10);
constexpr PaperLength shortest_way_drawn = paper_mm(25, 10);

Point3 middle_of(const Solid& solid) {
  const Rect box = solid.outline().bounds();
  return {{half(box.low.x + box.high.x), half(box.low.y + box.high.y)}, half(solid.base() + solid.top())};
}

Point middle_of(const Rect& box) { return {half(box.low.x + box.high.x), half(box.low.y + box.high.y)}; }

Point outside_of(const Opening& door, Point threshold) {
  switch (door.wall) {
    case Wall::front:
      return threshold - Vector{beyond_door, {}};
    case Wall::rear:
      return threshold + Vector{beyond_door, {}};
    case Wall::left:
      return threshold - Vector{{}, beyond_door};
    case Wall::right:
      return threshold + Vector{{}, beyond_door};
  }
  throw std::logic_error("Wall out of range");
}

// Where the way begins or ends; `beside` is its nearest point within the room.
Point3 end_of(const Plan& plan, const PiecePlace& spot, std::optional<Point3> beside) {
  if (spot.stands_in_room()) return middle_of(spot.solid());
  const Point middle = middle_of(spot.reach);
  if (spot.kind == PiecePlace::Kind::outside) {
    const Opening* door = plan.opening(spot.place);
    return {door != nullptr ? outside_of(*door, middle) : middle, beside ? beside->z : Length{}};
  }
  Length top;
  for (const Fixture& fixture : plan->fixtures)
    if (fixture.solid.outline().bounds() == spot.reach) top = std::max(top, fixture.solid.top());
  return {middle, top};
}

std::vector<PaperPoint> drawn_corners(const std::vector<PaperPoint>& points) {
  std::vector<PaperPoint> out;
  const auto near = [](PaperPoint a, PaperPoint b) {
    return std::max(std::abs((a.x - b.x).micrometres()), std::abs((a.y - b.y).micrometres())) <
           seen_apart.micrometres();
  };
  for (const PaperPoint& point : points)
    if (out.empty() || !near(out.back(), point)) out.push_back(point);
  // The end itself is never left out.
  if (out.size() > 1)
    out.back() = points.back();
  else if (points.size() > 1)
    out.push_back(points.back());
  return out;
}

// The arrow along a way; none where it goes nowhere in this view.
std::vector<Path> arrow_along(const std::vector<PaperPoint>& points) {
  const std::vector<PaperPoint> way = drawn_corners(points);
  const PaperPoint last = way[way.size() - 2];
  const PaperLength x = way.back().x - last.x;
  const PaperLength y = way.back().y - last.y;
  const bool short_way = way.size() == 2 && std::max(std::abs(x.micrometres()), std::abs(y.micrometres())) <
                                                shortest_way_drawn.micrometres();
  if (short_way) return {};
  Path line{Ink::move_way, way.front(), {}, false};
  for (std::size_t i = 1; i < way.size(); ++i) line.stretches.push_back({way[i], {}, false});
  Path head = berthwright::arrow_head(way.back(), last);
  head.ink = Ink::move_head;
  return {line, head};
}

Ink ink_of(Standing standing) {
  switch (standing) {
    case Standing::still:
      return Ink::still_piece;
    case Standing::parked:
      return Ink::parked_piece;
    case Standing::moved:
      return Ink::moved_piece;
  }
  throw std::logic_error("Standing out of range");
}

Ink side_of(Standing standing) {
  switch (standing) {
    case Standing::still:
      return Ink::side_still;
    case Standing::parked:
      return Ink::side_parked;
    case Standing::moved:
      return Ink::side_moved;
  }
  throw std::logic_error("Standing out of range");
}

// Who takes the piece up stands dashed, who lets it go filled; one who need not step aside is drawn once.
template <typename Ring>
std::vector<Path> people(const Step& step, const Ring& ring) {
  std::vector<Path> out;
  if (step.taking && (!step.letting_go || step.letting_go->square != step.taking->square))
    out.push_back(closed_path(Ink::hidden_person, ring(step.taking->square)));
  if (step.letting_go) out.push_back(closed_path(Ink::person, ring(step.letting_go->square)));
  return out;
}

std::vector<PlanThing> frame_things(const FrameStep& of, const PlanView& view, const Arrangement& stage) {
  std::vector<PlanThing> things = plan_things(view, *of.plan, stage);
  std::erase_if(things, [](const PlanThing& thing) { return is_alarm(*thing.placed); });
  for (PlanThing& thing : things) {
    const bool piece = thing.placed->piece != nullptr;
    thing.ink = piece            ? ink_of(standing_of(of, thing.placed->id))
                : thing.overhead ? Ink::quiet_overhead
                                 : Ink::quiet;
    for (Path& path : thing.paths) path.ink = thing.ink;
  }
  return things;
}

// A leader that ended in the arrow would be taken for a part of it.
PaperPoint off_the_arrow(const PlanThing& thing, const std::vector<PaperLine>& way,
                         const std::vector<std::vector<PaperRing>>& covers) {
  const PaperPoint low = thing.bounds.low;
  const PaperLength x = thing.bounds.width() / 4;
  const PaperLength y = thing.bounds.height() / 4;
  for (const auto& [right, down] : {std::pair{2, 2}, {1, 1}, {3, 1}, {1, 3}, {3, 3}}) {
    const PaperPoint point = right == 2 ? *thing.seen : PaperPoint{low.x + x * right, low.y + y * down};
    const PaperBox around = grown({point, point}, clear_of_arrow);
    const bool free = inside(thing.rings, point) &&
                      std::ranges::none_of(covers, [&](const auto& rings) { return inside(rings, point); }) &&
                      std::ranges::none_of(way, [&](const PaperLine& line) { return crosses(line, around); });
    if (free) return point;
  }
  return *thing.seen;
}

// What the step does, under the things and over them.
struct StepMarks {
  std::vector<Path> beneath;
  std::vector<Path> above;
  std::vector<Path> arrow;
};
StepMarks step_marks(const FrameStep& of, const PlanView& view) {
  if (of.at_start()) return {};
  const Step& step = of.step();
  StepMarks marks;
  marks.beneath = people(step, [&](const Rect& square) { return view(Polygon::rectangle(square)); });
  if (step.letting_go)
    marks.beneath.push_back(
        circle(Ink::person, view(middle_of(step.letting_go->square)), on_paper(half_a_head, view.ratio)));
  for (const PiecePlace* spot : {&step.from, &step.to})
    if (spot->kind == PiecePlace::Kind::stowed)
      marks.above.push_back(closed_path(Ink::move_way, view(Polygon::rectangle(spot->reach))));
  if (step.from.stands_in_room())
    for (Path& path : paths_of(view, step.from.pose.outline, step.from.pose.arcs, Ink::ghost))
      marks.above.push_back(std::move(path));
  std::vector<PaperPoint> way;
  for (const Point3& point : way_of(of)) way.push_back(view(point.plan));
  marks.arrow = arrow_along(way);
  return marks;
}

std::vector<LabelWish> frame_wishes(const FrameStep& of, const PlanView& view,
                                    const std::vector<PlanThing>& things, const std::vector<PaperLine>& way) {
  std::vector<LabelWish> wishes;
  for (std::size_t i = 0; i < things.size(); ++i) {
    const PlanThing& thing = things[i];
    if (thing.placed->piece == nullptr || !thing.seen) continue;
    if (thing.ink == Ink::still_piece) continue;
    wishes.push_back(name_wish(name_of(*thing.placed), thing.rings, *thing.seen));
    for (std::size_t j = i + 1; j < things.size(); ++j)
      if (!things[j].overhead && overlaps(things[j].bounds, thing.bounds))
        wishes.back().covers.push_back(things[j].rings);
    wishes.back().target = off_the_arrow(thing, way, wishes.back().covers);
  }
  if (of.at_start()) return wishes;
  const Step& step = of.step();
  if (step.from.stands_in_room() && !step.to.stands_in_room()) {
    const std::vector<PaperRing> ghost = view(step.from.pose.outline);
    const PaperPoint corner = bounds(ghost.front()).low;
    const PaperPoint middle = bounds(ghost.front()).centre();
    wishes.push_back(name_wish(name_of(*of.plan, step.piece.text()), ghost,
                               {(corner.x + middle.x) / 2, (corner.y + middle.y) / 2}));
  }
  for (const PiecePlace* spot : {&step.from, &step.to})
    if (spot->kind == PiecePlace::Kind::stowed)
      wishes.push_back(name_wish(name_of(*of.plan, spot->place), {view(Polygon::rectangle(spot->reach))},
                                 view(middle_of(spot->reach))));
  return wishes;
}

}  // namespace

std::vector<Point3> way_of(const FrameStep& of) {
  const Step& step = of.step();
  const Rect room = (*of.plan)->interior.outline.polygon().bounds();
  std::vector<Point3> within;
  const auto go_by = [&](const Solid& solid) {
    const Point3 middle = middle_of(solid);
    const bool inside = room.low.x <= middle.plan.x && middle.plan.x <= room.high.x &&
                        room.low.y <= middle.plan.y && middle.plan.y <= room.high.y;
    if (inside && (within.empty() || within.back() != middle)) within.push_back(middle);
  };
  for (const Motion& motion : step.motions) {
    go_by(motion.before);
    go_by(motion.after);
  }
  std::vector<Point3> way = within;
  const auto first = within.empty() ? std::nullopt : std::optional(within.front());
  const auto last = within.empty() ? std::nullopt : std::optional(within.back());
  way.insert(way.begin(), end_of(*of.plan, step.from, first));
  way.push_back(end_of(*of.plan, step.to, last));
  return way;
}

Length highest_drawn(const Plan& plan, const Conversion& conversion) {
  Length height = raised_reach(plan, stage_after(plan, conversion, 0));
  for (std::size_t i = 1; i <= conversion.steps.size(); ++i) {
    const FrameStep of{&plan, &conversion, i};
    for (const Point3& point : way_of(of)) height = std::max(height, point.z);
    for (const PiecePlace* spot : {&of.step().from, &of.step().to})
      if (spot->stands_in_room()) height = std::max(height, spot->base + spot->pose.height);
  }
  return height;
}

PaperLength beside_frame(const Plan& plan, Wall wall, std::int64_t ratio) {
  constexpr PaperLength room_for_head = paper_mm(6);  // for the arrow that leads through a door
  PaperLength depth = wall_band + paper_mm(5, 10);
  for (const Opening& opening : plan->openings)
    if (opening.wall == wall && opening.kind == Opening::Kind::door)
      depth = std::max({depth, wall_band + room_for_head, reach_outside(opening, ratio) + paper_mm(5, 10)});
  return depth;
}

Standing standing_of(const FrameStep& of, const std::string& piece) {
  if (of.at_start()) return Standing::still;
  if (of.step().piece.text() == piece) return Standing::moved;
  for (std::size_t i = of.number; i-- > 0;) {
    const Step& step = of.conversion->steps[i];
    if (step.piece.text() == piece)
      return step.to.kind == PiecePlace::Kind::parked ? Standing::parked : Standing::still;
  }
  return Standing::still;
}

Frame plan_frame(const FrameStep& of, const PlanView& view, const PaperBox& area) {
  const Plan& plan = *of.plan;
  const Arrangement stage = stage_after(plan, *of.conversion, of.number);
  const std::vector<PlanThing> things = frame_things(of, view, stage);
  const StepMarks step = step_marks(of, view);
  const std::string title = of.at_start() ? "At the start" : "Step " + std::to_string(of.number);
  Frame frame{{title + " from above", room_marks(view, plan->interior), 0}, {}};
  std::vector<Mark>& marks = frame.group.marks;
  add(marks, step.beneath);
  for (const PlanThing& thing : things) add(marks, thing.paths);
  for (const Opening& opening : plan->openings) add(marks, opening_marks(view, plan, opening));
  add(marks, step.above);

  LabelField field{area, {}, {}, {}, {}};
  add_obstacles(field, marks);
  std::vector<PaperLine> arrow_lines;
  for (const Path& path : step.arrow)
    for (const PaperLine& line : lines(path)) arrow_lines.push_back(line);
  field.heavy.insert(field.heavy.end(), arrow_lines.begin(), arrow_lines.end());
  add(marks, step.arrow);
  const std::vector<LabelWish> wishes = frame_wishes(of, view, things, arrow_lines);
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  for (const PlacedLabel& label : labels) add(marks, marks_of(label));
  frame.keys = key_notes(labels, wishes);
  return frame;
}

std::optional<PaperRing> seen_opening(const Plan& plan, const Opening& opening, const RaisedView& view,
                                      Length walls) {
  const Rect room = plan->interior.outline.polygon().bounds();
  const Length top = std::min(opening.sill + opening.height, walls);
  if (opening.sill >= top) return std::nullopt;
  Point near{opening.from, room.high.y};
  Point far = near + Vector{opening.width, {}};
  if (opening.wall == Wall::front) {
    near = {room.low.x, opening.from};
    far = near + Vector{{}, opening.width};
  } else if (opening.wall != Wall::right) {
    return std::nullopt;
  }
  return PaperRing{view(near, opening.sill), view(far, opening.sill), view(far, top), view(near, top)};
}

Group raised_frame(const FrameStep& of, const RaisedView& view) {
  const Plan& plan = *of.plan;
  const std::string title = of.at_start() ? "At the start" : "Step " + std::to_string(of.number);
  Group group{title + ", raised view", {}, 0};
  const Length walls = std::min(raised_height, plan->interior.height);
  add(group.marks, raised_room(view, plan->interior.outline.polygon(), walls, Ink::quiet));
  for (const Opening& opening : plan->openings)
    if (const auto ring = seen_opening(plan, opening, view, walls))
      group.marks.emplace_back(closed_path(Ink::quiet, *ring));
  if (!of.at_start())
    add(group.marks, people(of.step(), [&](const Rect& square) {
          PaperRing ring;
          const Polygon corners_of_it = Polygon::rectangle(square);
          for (const Point p : corners_of_it.vertices()) ring.push_back(view(p, {}));
          return ring;
        }));
  const Arrangement stage = stage_after(plan, *of.conversion, of.number);
  std::vector<RaisedThing> things;
  for (const Placed& placed : stage.things) {
    const std::optional<Length> top = raised_top(placed);
    if (!top) continue;
    const Solid& solid = placed.solid;
    const bool built_in = placed.piece == nullptr;
    const Standing standing = built_in ? Standing::still : standing_of(of, placed.id);
    things.push_back({solid.outline(), solid.base(), *top, built_in ? Ink::side_built : side_of(standing),
                      built_in ? Ink::quiet : ink_of(standing)});
  }
  add(group.marks, raised_paths(view, things));
  if (of.at_start()) return group;
  const Step& step = of.step();
  if (step.from.stands_in_room()) add(group.marks, raised_outline(view, step.from.solid(), Ink::ghost));
  std::vector<PaperPoint> way;
  for (const Point3& point : way_of(of)) way.push_back(view(point.plan, point.z));
  add(group.marks, arrow_along(way));
  return group;
}

}  // namespace berthwright
