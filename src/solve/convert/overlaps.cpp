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

Length overlap_of(const Standing& a, const Standing& b) {
  const Rect one = a.outline->bounds(), other = b.outline->bounds();
  if (!overlaps(one, other)) return {};
  if (is_box(*a.outline) && is_box(*b.outline))
    return std::min(std::min(one.high.x, other.high.x) - std::max(one.low.x, other.low.x),
                    std::min(one.high.y, other.high.y) - std::max(one.low.y, other.low.y));
  const Region shared = shared_outline({*a.outline, *a.arcs}, {*b.outline, *b.arcs});
  return shared.empty() ? Length{} : thickness_of(shared).width;
}

}  // namespace

Length overlap_in_plan(const Standing& a, const Standing& b) {
  const Length overlap = overlap_of(a, b);
  return (a.soft || b.soft) && overlap <= give_in_row ? Length{} : overlap;
}

}  // namespace berthwright
