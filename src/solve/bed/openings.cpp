#include "solve/bed/openings.h"

#include <algorithm>

#include "solve/bed/straight_across.h"
#include "solve/room/thickness.h"

namespace berthwright {

namespace {

constexpr Length widest_closed = 1_in;
constexpr Length hair = Length::inches(1, 64);
// Narrower than this is a trace of rounding.
constexpr Length trace = 16 * one_tick;

Rect reach_of(const Region& surface) { return grown(surface.bounds(), 2 * opening_radius); }

// Between cushions the rim lies mostly on them, even where the gap ends at a wall.
bool is_at_wall(const Region& opening, const Region& surface, const Region& stops) {
  const Region rim = without(grown(opening, hair), opening);
  const Area on_stops = common(rim, stops).area();
  return on_stops + on_stops >= common(rim, surface).area();
}

/// Finds openings between straight sides in a surface whose corners are square.
class Between {
 public:
  Between(const Region& surface, const Region& stops)
      : surface_(surface),
        things_(united(surface, stops)),
        filled_(berthwright::closed(things_, opening_radius)),
        open_(without(Region(grown(reach_of(surface), 2 * opening_radius)), united(filled_, things_))) {}

  std::vector<Region> found() const {
    std::vector<Region> openings;
    for (const Region& part : straight_across(things_, reach_of(surface_)).parts())
      if (is_enclosed(part)) openings.push_back(part);
    const Region across = united(openings);
    for (const Region& part : without(without(filled_, things_), across).parts())
      if (!overlaps(grown(part, hair), open_)) openings.push_back(part);
    std::vector<Region> of_the_bed;
    for (const Region& part : united(openings).parts())
      if (overlaps(grown(part, hair), surface_) && thickness_of(part).width > trace)
        of_the_bed.push_back(part);
    return of_the_bed;
  }

 private:
  // A shallow step back in a free edge is no gap: the disc enters it.
  bool is_enclosed(const Region& part) const {
    const Int128 enclosed = common(part, filled_).area().doubled();
    return 4 * enclosed >= 3 * part.area().doubled();
  }

  const Region& surface_;
  Region things_;
  Region filled_;
  Region open_;
};

Region cut_off(const std::vector<CornerTip>& tips, const LyingSurface& lying) {
  std::vector<Region> triangles;
  triangles.reserve(tips.size());
  for (const CornerTip& tip : tips) triangles.push_back(triangle(tip));
  return without(without(united(triangles), lying.surface), lying.stops);
}

Gap gap_of(const Region& region, const Region& surface, const Region& stops) {
  const Thickness thickness = thickness_of(region);
  return {region, thickness.width, thickness.where, is_at_wall(region, surface, stops), false};
}

// Openings between cushions are cut from the slots along walls that they run into: each is judged by itself.
std::vector<Gap> gaps_in(const Region& surface, const Region& stops) {
  const Region all = united(Between(surface, stops).found());
  const Region between = stops.empty() ? all : common(all, united(Between(surface, {}).found()));
  std::vector<Gap> gaps;
  for (const Region& part : between.parts()) gaps.push_back(gap_of(part, surface, {}));
  for (const Region& part : without(all, between).parts())
    if (thickness_of(part).width > trace) gaps.push_back(gap_of(part, surface, stops));
  return gaps;
}

// A corner opening is as wide as the disc that enters it together with the gaps it joins.
Gap corner_gap(const Region& corner, const std::vector<Gap>& gaps, const LyingSurface& lying) {
  Region whole = corner;
  Length widest_joined;
  for (const Gap& gap : gaps) {
    if (!overlaps(grown(corner, hair), gap.region)) continue;
    whole = united(whole, gap.region);
    widest_joined = std::max(widest_joined, gap.width);
  }
  Gap found = gap_of(corner, lying.surface, lying.stops);
  found.at_corner = true;
  const Thickness joined = thickness_of(whole);
  if (joined.width > widest_joined && joined.width > found.width)
    found.width = joined.width, found.where = joined.where;
  return found;
}

bool wider(const Gap& a, const Gap& b) { return a.width != b.width ? a.width > b.width : a.where < b.where; }

}  // namespace

Closing closing_of(const LyingSurface& lying) {
  const Region squared = united(lying.surface, cut_off(lying.corners, lying));
  Closing closing{{}, lying.surface};
  Region behind = united(squared, lying.stops);
  closing.gaps = gaps_in(squared, lying.stops);
  for (const Gap& gap : closing.gaps) {
    if (gap.width > widest_closed) continue;
    behind = united(behind, gap.region);
    // Nobody lies on the slack at a wall, however narrow.
    if (!gap.at_wall) closing.closed = united(closing.closed, gap.region);
  }
  // A corner that is free on both sides is the bed's own.
  std::vector<CornerTip> enclosed;
  for (const CornerTip& tip : lying.corners)
    if (overlaps(beside(tip), behind)) enclosed.push_back(tip);
  const Region opened_by_corners = cut_off(enclosed, lying);
  closing.closed = united(closing.closed, opened_by_corners);
  const std::vector<Gap> straight = closing.gaps;
  for (const Region& part : opened_by_corners.parts())
    closing.gaps.push_back(corner_gap(part, straight, lying));
  std::ranges::stable_sort(closing.gaps, wider);
  return closing;
}

}  // namespace berthwright
