#include "view/section_marks.h"

#include <algorithm>
#include <stdexcept>

#include "view/hatching.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength least_hatched = paper_mm(18, 10);  // thinner things are filled
constexpr PaperLength panel = paper_mm(9, 10);           // of a hollow box; a sign, not its thickness
constexpr PaperLength least_hollow = paper_mm(5);

PaperBox box_of(const SectionShape& shape, const PlanView& view) {
  const PaperPoint a = view(shape.box.low);
  const PaperPoint b = view(shape.box.high);
  return {{a.x, b.y}, {b.x, a.y}};
}

PaperLength thickness(const PaperBox& box) { return std::min(box.width(), box.height()); }

bool is_hollow(Fixture::Kind kind) {
  switch (kind) {
    case Fixture::Kind::bench:
    case Fixture::Kind::cabinet:
    case Fixture::Kind::locker:
    case Fixture::Kind::counter:
    case Fixture::Kind::sink:
    case Fixture::Kind::refrigerator:
    case Fixture::Kind::heater:
    case Fixture::Kind::furnace_outlet:
    case Fixture::Kind::oven:
    case Fixture::Kind::cooktop:
    case Fixture::Kind::tank:
    case Fixture::Kind::battery:
    case Fixture::Kind::wheel_arch:
    case Fixture::Kind::outlet:
    case Fixture::Kind::smoke_alarm:
    case Fixture::Kind::co_alarm:
    case Fixture::Kind::gas_alarm:
    case Fixture::Kind::light:
    case Fixture::Kind::curtain:
      return true;
    case Fixture::Kind::shelf:
    case Fixture::Kind::leg:
    case Fixture::Kind::ledge:
    case Fixture::Kind::protrusion:
    case Fixture::Kind::wall:
    case Fixture::Kind::guard_rail:
      return false;
  }
  throw std::logic_error("Fixture::Kind out of range");
}

bool is_hollow(const Placed& placed) {
  if (placed.fixture != nullptr) return is_hollow(placed.fixture->kind);
  return placed.piece->kind == Piece::Kind::heater;
}

Ink ink_of(const SectionShape& shape, const PaperBox& box) {
  if (shape.kind != SectionShape::Kind::cut) return Ink::seen_behind;
  if (shape.placed->is_soft()) return Ink::cut_foam;
  if (is_hollow(*shape.placed)) return Ink::cut_box;
  return thickness(box) < least_hatched ? Ink::cut_thin : Ink::cut_board;
}

// The place of a wall that the plane cuts, at one height; `nearer`: the one where the cut begins.
std::optional<Length> wall_at(const Section& section, Length height, bool nearer) {
  const std::vector<Interval> open = cut(section.room, {CutLine::Along::x, height});
  if (open.empty()) return std::nullopt;
  return nearer ? open.front().from : open.back().to;
}

void add_opening(std::vector<Mark>& marks, const Section& section, const PlanView& view,
                 const Opening& opening) {
  const bool lengthwise = section.line.along == CutLine::Along::x;
  const bool nearer = opening.wall == (lengthwise ? Wall::front : Wall::left);
  if (!nearer && opening.wall != (lengthwise ? Wall::rear : Wall::right)) return;
  if (section.line.at <= opening.from || opening.from + opening.width <= section.line.at) return;
  const Length top = opening.sill + opening.height;
  const std::optional<Length> below = wall_at(section, opening.sill, nearer);
  const std::optional<Length> over = wall_at(section, top, nearer);
  if (!below || !over) return;
  const PaperPoint foot = view({*below, opening.sill});
  const PaperPoint head = view({*over, top});
  const PaperLength out = nearer ? -wall_band : wall_band;
  marks.emplace_back(
      closed_path(Ink::opening, PaperRing{foot, head, {head.x + out, head.y}, {foot.x + out, foot.y}}));
  marks.emplace_back(straight(Ink::opening, {foot.x + out / 2, foot.y}, {head.x + out / 2, head.y}));
}

}  // namespace

std::vector<Mark> room_marks(const Plan& plan, const Section& section, const PlanView& view) {
  const Outline& profile = section.line.along == CutLine::Along::x || !plan->interior.cross_profile
                               ? plan->interior.side_profile
                               : *plan->interior.cross_profile;
  std::vector<Mark> marks;
  for (const Ink ink : {Ink::wall, Ink::floor})
    for (Path& path : paths_of(view, section.room, profile.arcs(), ink)) marks.emplace_back(std::move(path));
  for (const Opening& opening : plan->openings) add_opening(marks, section, view, opening);
  return marks;
}

Path outline_of(const SectionShape& shape, const PlanView& view) {
  const PaperBox box = box_of(shape, view);
  return closed_path(ink_of(shape, box), box);
}

std::vector<Path> filling_of(const SectionShape& shape, const PlanView& view,
                             const std::vector<PaperBox>& lettering) {
  const PaperBox box = box_of(shape, view);
  switch (ink_of(shape, box)) {
    case Ink::cut_foam:
      return zigzag_in(box, lettering);
    case Ink::cut_board:
      return diagonals_in(box, lettering);
    case Ink::cut_box:
      if (thickness(box) < least_hollow) return {};
      return {closed_path(Ink::seen_behind, grown(box, -panel))};
    default:
      return {};
  }
}

namespace {

// A dimension line between two points over each other, with its ticks.
void add_upright(std::vector<Mark>& marks, PaperPoint foot, PaperPoint head) {
  constexpr PaperLength half_tick = paper_mm(9, 10);
  marks.emplace_back(straight(Ink::dimension, foot, head));
  for (const PaperPoint end : {foot, head})
    marks.emplace_back(
        straight(Ink::tick, {end.x - half_tick, end.y + half_tick}, {end.x + half_tick, end.y - half_tick}));
}

constexpr PaperLength beside_a_ridge = paper_mm(25, 10);

}  // namespace

std::vector<Mark> marks_of(const HeadRoomLine& line, const PlanView& view) {
  constexpr PaperLength half_end = paper_mm(25, 10);
  const PaperPoint foot = view({line.along, line.level});
  const PaperPoint head = view({line.along, line.top});
  std::vector<Mark> marks;
  if (line.outline) {
    const PaperPoint a = view(line.outline->low);
    const PaperPoint b = view(line.outline->high);
    marks.emplace_back(closed_path(Ink::before_plane, PaperBox{{a.x, b.y}, {b.x, a.y}}));
  }
  PaperLength from = head.x - half_end;
  PaperLength to = head.x + half_end;
  if (line.width) {
    from = view({line.width->from, line.top}).x;
    to = view({line.width->to, line.top}).x;
  }
  marks.emplace_back(straight(Ink::dimension, {from, head.y}, {to, head.y}));
  add_upright(marks, foot, head);
  return marks;
}

PaperPoint figure_of(const SectionRidge& ridge, const PlanView& view) {
  const PaperPoint edge = view({ridge.along, half(ridge.low + ridge.high)});
  return {ridge.onward ? edge.x + beside_a_ridge : edge.x - beside_a_ridge, edge.y};
}

std::vector<Mark> marks_of(const SectionRidge& ridge, const PlanView& view) {
  const PaperLength x = figure_of(ridge, view).x;
  const PaperPoint low = view({ridge.along, ridge.low});
  const PaperPoint high = view({ridge.along, ridge.high});
  const PaperLength beyond = ridge.onward ? x + paper_mm(1) : x - paper_mm(1);
  std::vector<Mark> marks{straight(Ink::dimension, high, {beyond, high.y})};
  add_upright(marks, {x, low.y}, {x, high.y});
  return marks;
}

Path mark_of(const SectionClash& clash, const PlanView& view) {
  constexpr PaperLength least_seen = paper_mm(3);
  const PaperPoint a = view(clash.box.low);
  const PaperPoint b = view(clash.box.high);
  const PaperBox box{{a.x, b.y}, {b.x, a.y}};
  if (thickness(box) >= least_seen) return closed_path(Ink::clash, box);
  const PaperLength longer = std::max(box.width(), box.height());
  return circle(Ink::clash, box.centre(), longer / 2 + paper_mm(14, 10));
}

}  // namespace berthwright
