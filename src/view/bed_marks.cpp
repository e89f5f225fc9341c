#include "view/bed_marks.h"

#include <algorithm>

#include "view/hatching.h"
#include "view/lettering.h"
#include "view/seen.h"

namespace berthwright {
namespace {

// The rectangle is drawn this far within its edges: most of them lie under the outline of the bed.
constexpr PaperLength just_inside = paper_mm(9, 10);
// Half of a narrower gap lies under the outline of the bed: its label alone tells it.
constexpr PaperLength least_gap = paper_mm(8, 10);
constexpr Length same_size = Length::inches(1, 16);

// Each side moved inward: its two ends go along the sides beside it.
PaperRing inset(const PaperRing& ring, PaperLength by) {
  PaperRing out;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PaperPoint corner = ring[i];
    const PaperPoint a = toward(corner, ring[(i + 1) % ring.size()], by);
    const PaperPoint b = toward(corner, ring[(i + ring.size() - 1) % ring.size()], by);
    out.push_back({a.x + b.x - corner.x, a.y + b.y - corner.y});
  }
  return out;
}

bool ends_at_made_up(const DrawnConfiguration& of, const Bed& bed) {
  return std::ranges::any_of(
      heat_lines(of), [&](const HeatLine& line) { return line.made_up && line.nearest_to == bed.id.text(); });
}

}  // namespace

std::vector<Path> made_up_edges(const DrawnConfiguration& of, const PlanView& view, const BedAnswer& answer) {
  std::vector<Region> parts;
  for (const Solid& solid : answer.bedding.made_up) parts.push_back(solid.outline());
  const Region bedding = united(parts);
  const Region room((*of.plan)->interior.outline.polygon());
  const auto at_wall = [&](const Edge& edge) {
    const Point middle{half(edge.from.x + edge.to.x), half(edge.from.y + edge.to.y)};
    return room.side_of(middle) == Side::boundary;
  };
  std::vector<Path> paths;
  Point end;
  for (const Edge& edge : edges(bedding)) {
    if (at_wall(edge)) continue;
    if (paths.empty() || edge.from != end) paths.push_back({Ink::made_up, view(edge.from), {}, false});
    paths.back().stretches.push_back({view(edge.to), {}, false});
    end = edge.to;
  }
  return paths;
}

Region off_level(const DrawnConfiguration& of, const BedAnswer& answer) {
  std::vector<Region> parts;
  for (const PieceId& id : answer.mattress.dropped_out)
    if (const Placed* placed = of.answer->arrangement.find(id.text()))
      parts.push_back(placed->solid.outline());
  return without(united(parts), answer.mattress.closed);
}

bool is_one_rectangle(const BedAnswer& answer) {
  if (!answer.room.largest || answer.mattress.closed.empty()) return false;
  const Rect box = answer.mattress.closed.bounds();
  const TurnedRectangle& largest = *answer.room.largest;
  return std::max(box.width(), box.height()) - largest.length < same_size &&
         std::min(box.width(), box.height()) - largest.width < same_size;
}

std::string in_parts(const BedAnswer& answer) {
  if (is_one_rectangle(answer)) return {};
  const std::size_t count = answer.mattress.closed.parts().size();
  return count > 1 ? " over all, in " + std::to_string(count) + " parts" : " over all";
}

Group bed_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Beds", {}, 0};
  const auto add = [&](std::vector<Path> paths) {
    for (Path& path : paths) group.marks.emplace_back(std::move(path));
  };
  for (const BedAnswer& answer : of.answer->beds) {
    if (ends_at_made_up(of, *answer.bed) && !answer.bedding.made_up.empty())
      add(made_up_edges(of, view, answer));
    add(paths_of(view, answer.mattress.closed, {}, Ink::bed_outline));
    if (!answer.room.largest || is_one_rectangle(answer)) continue;
    PaperRing ring;
    for (const Point corner : answer.room.largest->corners) ring.push_back(view(corner));
    group.marks.emplace_back(closed_path(Ink::sleeping_rectangle, inset(ring, just_inside)));
  }
  return group;
}

Group seam_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Gaps and ridges", {}, 0};
  for (const BedAnswer& answer : of.answer->beds) {
    for (const Gap& gap : answer.mattress.gaps) {
      if (on_paper(gap.width, view.ratio) < least_gap) continue;
      for (Path& path : paths_of(view, gap.region, {}, Ink::gap)) group.marks.emplace_back(std::move(path));
    }
    for (const Ridge& ridge : answer.mattress.ridges) group.marks.emplace_back(ridge_sign(view(ridge.where)));
  }
  return group;
}

Group off_level_group(const DrawnConfiguration& of, const PlanView& view,
                      const std::vector<PaperBox>& lettering) {
  Group group{"No mattress", {}, 0};
  for (const BedAnswer& answer : of.answer->beds) {
    const Region region = off_level(of, answer);
    if (region.empty()) continue;
    for (Path& line : diagonals_in(view(region), paper_mm(4), Diagonal::falling, lettering)) {
      line.ink = Ink::off_level;
      group.marks.emplace_back(std::move(line));
    }
  }
  return group;
}

LabelWish no_mattress_wish(const DrawnConfiguration& of, const PlanView& view, const BedAnswer& answer,
                           const Region& region) {
  Length farthest_off;
  for (const PieceId& id : answer.mattress.dropped_out) {
    const Placed* placed = of.answer->arrangement.find(id.text());
    if (placed == nullptr || !overlaps(placed->solid.outline(), region)) continue;
    const Length off = placed->solid.top() - answer.mattress.level;
    if (abs(off) > abs(farthest_off)) farthest_off = off;
  }
  const std::string words = "no mattress here, " + short_size(*of.plan, abs(farthest_off)) +
                            (farthest_off < Length{} ? " low" : " high");
  const Rect box = region.bounds();
  LabelWish wish = place_wish(of, view, {half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
  add_wordings(wish, words, lettering::label);
  wish.home = view(region);
  wish.weight = weight_of_figures;
  wish.target = middle_of_seen(wish.home, {}).value_or(wish.target);
  wish.key = words;
  return wish;
}

}  // namespace berthwright
