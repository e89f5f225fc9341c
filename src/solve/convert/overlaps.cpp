#include "solve/convert/overlaps.h"

#include <algorithm>

#include "solve/room/outlines_met.h"
#include "solve/room/rows.h"
#include "solve/room/thickness.h"

namespace berthwright {
namespace {

bool is_box(const Region& region) {
  const auto faces = region.faces();
  return faces.size() == 1 && faces.front().holes.empty() && faces.front().outer.size() == 4 &&
         faces.front().outer.is_rectilinear();
}

// At least this wide is the largest disc of a region: its radius is not less than area / perimeter.
Length surely_as_thick_as(const Region& region) {
  Length around;  // never less than the perimeter
  for (const Edge& edge : edges(region))
    around += abs(edge.to.x - edge.from.x) + abs(edge.to.y - edge.from.y);
  return Length::from_ticks(static_cast<std::int64_t>(region.area().doubled() / around.ticks()));
}

Length overlap_of(const StandingThing& a, const StandingThing& b) {
  const Rect one = a.outline->bounds(), other = b.outline->bounds();
  if (!overlaps(one, other)) return {};
  const Length boxes = std::min(std::min(one.high.x, other.high.x) - std::max(one.low.x, other.low.x),
                                std::min(one.high.y, other.high.y) - std::max(one.low.y, other.low.y));
  if (is_box(*a.outline) && is_box(*b.outline)) return boxes;
  const bool soft = a.soft || b.soft;
  if (soft && boxes <= give_in_row) return {};
  const Region shared = shared_outline({*a.outline, *a.arcs}, {*b.outline, *b.arcs});
  if (shared.empty()) return {};
  const Length at_least = surely_as_thick_as(shared);
  return soft && at_least > give_in_row ? at_least : thickness_of(shared).width;
}

}  // namespace

bool is_thicker(const Region& region, Length limit) {
  if (region.empty()) return false;
  return surely_as_thick_as(region) > limit || thickness_of(region).width > limit;
}

Length overlap_in_plan(const StandingThing& a, const StandingThing& b) {
  const Length overlap = overlap_of(a, b);
  return (a.soft || b.soft) && overlap <= give_in_row ? Length{} : overlap;
}

}  // namespace berthwright
