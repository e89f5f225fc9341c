#include "view/cut_marks.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/lettering.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength off_the_wall = paper_mm(9, 10);
constexpr PaperLength stroke = paper_mm(55, 10);
constexpr PaperLength row_pitch = paper_mm(7);
constexpr PaperLength arrow_at = paper_mm(32, 10);  // from the stroke's nearer end
constexpr PaperLength tail_of_arrow = paper_mm(5);
constexpr PaperLength tip_of_arrow = paper_mm(3);
constexpr PaperLength half_head = paper_mm(8, 10);
constexpr PaperLength letter_off = paper_mm(25, 10);  // from the arrow's tail to the middle of the letter
constexpr PaperLength ahead = paper_mm(2);
constexpr PaperLength behind_stroke = tail_of_arrow + letter_off + paper_mm(2);
constexpr PaperLength off_a_leaf = paper_mm(1);

bool is_lengthwise(const SectionCut& cut) { return cut.line.along == CutLine::Along::x; }

std::array<Wall, 2> walls_of(const SectionCut& cut) {
  if (is_lengthwise(cut)) return {Wall::front, Wall::rear};
  return {Wall::left, Wall::right};
}

// What a mark takes along its wall, on paper. Sections along look to greater y, those across to smaller x.
struct Taken {
  PaperLength from;
  PaperLength to;
};
Taken taken_by(const SectionCut& cut, std::int64_t ratio) {
  const PaperLength at = on_paper(cut.line.at, ratio);
  if (is_lengthwise(cut)) return {at - behind_stroke, at + ahead};
  return {at - ahead, at + behind_stroke};
}

bool meet(const Taken& a, const Taken& b) { return a.from < b.to && b.from < a.to; }

// Beyond the leaves of doors that a mark would stand on.
PaperLength beyond_leaves(const Plan& plan, Wall wall, const Taken& taken, std::int64_t ratio) {
  PaperLength out = off_the_wall;
  for (const Opening& opening : plan->openings) {
    if (opening.wall != wall) continue;
    const PaperLength reach = reach_outside(opening, ratio);
    const PaperLength from = on_paper(opening.from, ratio);
    if (reach > PaperLength{} && meet(taken, {from, from + on_paper(opening.width, ratio)}))
      out = std::max(out, reach + off_a_leaf);
  }
  return out;
}

// A point `out` from the wall's outer face, `back` behind the plane as the section looks.
PaperPoint at_mark(const CutMark& mark, const PlanView& view, const PaperBox& face, PaperLength out,
                   PaperLength back) {
  const Length at = mark.cut->line.at;
  const PaperPoint on_plane = view({at, at});
  switch (mark.wall) {
    case Wall::left:
      return {on_plane.x + back, face.high.y + out};
    case Wall::right:
      return {on_plane.x + back, face.low.y - out};
    case Wall::front:
      return {face.low.x - out, on_plane.y + back};
    case Wall::rear:
      return {face.high.x + out, on_plane.y + back};
  }
  throw std::logic_error("Wall out of range");
}

}  // namespace

std::string section_letter(std::size_t index) {
  constexpr std::string_view letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  std::string out;
  for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / letters.size())
    out.insert(out.begin(), letters[(rest - 1) % letters.size()]);
  return out;
}

std::vector<CutMark> cut_marks(const Plan& plan, const std::vector<SectionCut>& cuts, std::int64_t ratio) {
  std::vector<CutMark> marks;
  for (const SectionCut& cut : cuts)
    for (const Wall wall : walls_of(cut)) {
      const Taken mine = taken_by(cut, ratio);
      CutMark mark{&cut, wall, beyond_leaves(plan, wall, mine, ratio)};
      for (const CutMark& other : marks)
        if (other.wall == wall && meet(mine, taken_by(*other.cut, ratio)))
          mark.out = std::max(mark.out, other.out + row_pitch);
      marks.push_back(mark);
    }
  return marks;
}

PaperLength depth_of(const std::vector<CutMark>& marks, Wall wall) {
  PaperLength depth;
  for (const CutMark& mark : marks)
    if (mark.wall == wall) depth = std::max(depth, mark.out + stroke);
  return depth;
}

std::vector<Mark> marks_of(const CutMark& mark, const PlanView& view, const PaperBox& face) {
  const auto at = [&](PaperLength out, PaperLength back) {
    return at_mark(mark, view, face, mark.out + out, back);
  };
  std::vector<Mark> marks;
  marks.emplace_back(straight(Ink::section_cut, at({}, {}), at(stroke, {})));
  marks.emplace_back(straight(Ink::leader, at(arrow_at, tail_of_arrow), at(arrow_at, tip_of_arrow)));
  marks.emplace_back(closed_path(
      Ink::leader_dot, PaperRing{at(arrow_at, paper_mm(25, 100)), at(arrow_at - half_head, tip_of_arrow),
                                 at(arrow_at + half_head, tip_of_arrow)}));
  return marks;
}

LabelWish letter_wish(const CutMark& mark, const PlanView& view, const PaperBox& face, Unit own) {
  LabelWish wish;
  wish.wordings.push_back({{mark.cut->letter}, lettering::bed, false});
  const PaperPoint middle = at_mark(mark, view, face, mark.out + arrow_at, tail_of_arrow + letter_off);
  const PaperPoint size = size_of(wish.wordings.front());
  constexpr PaperLength air = paper_mm(8, 10);
  const PaperPoint low{middle.x - size.x / 2 - air, middle.y - size.y / 2 - air};
  const PaperPoint high{middle.x + size.x / 2 + air, middle.y + size.y / 2 + air};
  wish.home = {{low, {high.x, low.y}, high, {low.x, high.y}}};
  wish.target = at_mark(mark, view, face, mark.out + arrow_at, tail_of_arrow);
  wish.may_touch = true;
  wish.key = "section " + mark.cut->letter;
  wish.place =
      both(mark.cut->line.at, own) + (is_lengthwise(*mark.cut) ? " from the left wall" : " from the front");
  return wish;
}

}  // namespace berthwright
