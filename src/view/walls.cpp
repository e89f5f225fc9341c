#include "view/walls.h"

#include <algorithm>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

// Where the wall stands `along` it: y of a side wall at x, x of an end wall at y; curved walls have their
// own.
Length wall_at(const Polygon& room, Wall wall, Length along) {
  const bool side = !is_end_wall(wall);
  const bool least = wall == Wall::left || wall == Wall::front;
  const auto u = [&](Point p) { return (side ? p.x : p.y).ticks(); };
  const auto v = [&](Point p) { return (side ? p.y : p.x).ticks(); };
  std::optional<std::int64_t> found;
  const auto take = [&](std::int64_t at) {
    found = !found ? at : least ? std::min(*found, at) : std::max(*found, at);
  };
  const auto corners = room.vertices();
  const std::int64_t at = along.ticks();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point a = corners[i];
    const Point b = corners[(i + 1) % corners.size()];
    if (at < std::min(u(a), u(b)) || at > std::max(u(a), u(b))) continue;
    if (u(a) == u(b)) {
      take(v(a));
      take(v(b));
    } else {
      take(v(a) + static_cast<std::int64_t>(Int128{v(b) - v(a)} * (at - u(a)) / (u(b) - u(a))));
    }
  }
  const Rect& bounds = room.bounds();
  const Point corner = least ? bounds.low : bounds.high;
  return Length::from_ticks(found.value_or(v(corner)));
}

// Of 20 degrees, in thousandths.
constexpr std::int64_t sine_ajar = 342;
constexpr std::int64_t cosine_ajar = 940;

// An opening laid on paper: its two ends on the wall's inner face, and the step outward.
struct DrawnOpening {
  PaperPoint near;
  PaperPoint far;
  int out_x = 0;
  int out_y = 0;
  PaperPoint outward(PaperPoint p, PaperLength by) const { return {p.x + by * out_x, p.y + by * out_y}; }
};

DrawnOpening laid(const PlanView& view, const Plan& plan, const Opening& opening) {
  const Polygon& room = plan->interior.outline.polygon();
  const auto on_wall = [&](Length along) {
    const Length at = wall_at(room, opening.wall, along);
    return view(is_end_wall(opening.wall) ? Point{at, along} : Point{along, at});
  };
  DrawnOpening out{on_wall(opening.from), on_wall(opening.from + opening.width)};
  switch (opening.wall) {
    case Wall::left:
      out.out_y = 1;
      break;
    case Wall::right:
      out.out_y = -1;
      break;
    case Wall::front:
      out.out_x = -1;
      break;
    case Wall::rear:
      out.out_x = 1;
      break;
  }
  return out;
}

// The hinge stands at the near end when it is on the front side, or on the left of an end wall.
bool hinge_is_near(const Opening& opening) {
  return *opening.hinge == Wall::front || *opening.hinge == Wall::left;
}

PaperLength width_on_paper(const Opening& opening, std::int64_t ratio) {
  return on_paper(opening.width, ratio);
}

}  // namespace

std::vector<PaperLine> seen_lines(const Path& path) {
  std::vector<PaperLine> seen = lines(path);
  if (path.ink != Ink::wall) return seen;
  // Walls run with the room on their left, so the band lies on the right: a quarter turn with the clock.
  for (const auto& [from, to] : lines(path)) {
    const PaperPoint right{from.x - (to.y - from.y), from.y + (to.x - from.x)};
    const PaperPoint outside = toward(from, right, wall_band);
    const PaperPoint step{outside.x - from.x, outside.y - from.y};
    seen.push_back({outside, {to.x + step.x, to.y + step.y}});
  }
  return seen;
}

std::vector<Mark> room_marks(const PlanView& view, const Interior& interior) {
  std::vector<Mark> marks;
  const Region room(interior.outline.polygon());
  for (Path& path : paths_of(view, room, interior.outline.arcs(), Ink::wall))
    marks.emplace_back(std::move(path));
  for (Path& path : paths_of(view, room, interior.outline.arcs(), Ink::floor))
    marks.emplace_back(std::move(path));
  return marks;
}

PaperLength reach_outside(const Opening& opening, std::int64_t ratio) {
  if (opening.kind != Opening::Kind::door || opening.swing != Opening::Swing::out || !opening.hinge)
    return {};
  return width_on_paper(opening, ratio) * sine_ajar / 1000 + wall_band;
}

std::vector<Mark> opening_marks(const PlanView& view, const Plan& plan, const Opening& opening) {
  std::vector<Mark> marks;
  const DrawnOpening at = laid(view, plan, opening);
  marks.emplace_back(closed_path(Ink::opening, PaperRing{at.near, at.far, at.outward(at.far, wall_band),
                                                         at.outward(at.near, wall_band)}));
  if (opening.kind != Opening::Kind::door) {
    const PaperLength middle = wall_band / 2;
    marks.emplace_back(straight(Ink::opening, at.outward(at.near, middle), at.outward(at.far, middle)));
    return marks;
  }
  if (!opening.hinge || opening.swing == Opening::Swing::slides || opening.swing == Opening::Swing::fixed)
    return marks;
  const bool near = hinge_is_near(opening);
  const bool out = opening.swing == Opening::Swing::out;
  const PaperPoint hinge = at.outward(near ? at.near : at.far, out ? wall_band : PaperLength{});
  const PaperPoint shut = at.outward(near ? at.far : at.near, out ? wall_band : PaperLength{});
  const PaperLength width = width_on_paper(opening, view.ratio);
  // Outward doors stand ajar, which keeps the measures near the wall; inward ones open wide.
  const PaperPoint along = toward(hinge, shut, out ? width * cosine_ajar / 1000 : PaperLength{});
  const PaperPoint leaf = at.outward(along, out ? width * sine_ajar / 1000 : -width);
  marks.emplace_back(straight(Ink::opening, hinge, leaf));
  const std::int64_t turn = (leaf.x - hinge.x).micrometres() * (shut.y - hinge.y).micrometres() -
                            (leaf.y - hinge.y).micrometres() * (shut.x - hinge.x).micrometres();
  marks.emplace_back(Path{Ink::leader, leaf, {{shut, width, turn > 0}}, false});
  return marks;
}

PaperLength wall_depth(const Plan& plan, Wall wall, std::int64_t ratio) {
  PaperLength depth = wall_band + paper_mm(5, 10);
  for (const Opening& opening : plan->openings)
    if (opening.wall == wall) depth = std::max(depth, reach_outside(opening, ratio) + paper_mm(5, 10));
  return depth;
}

PaperPoint tag_of(const PlanView& view, const Plan& plan, const Opening& opening) {
  const DrawnOpening at = laid(view, plan, opening);
  const PaperPoint middle{(at.near.x + at.far.x) / 2, (at.near.y + at.far.y) / 2};
  return at.outward(middle, wall_band);
}

}  // namespace berthwright
