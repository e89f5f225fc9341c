#include "solve/room/unsupported.h"

#include <algorithm>

#include "solve/room/rest.h"
#include "solve/room/rows.h"
#include "solve/room/thickness.h"

namespace berthwright {

namespace {

// Foam that lies a quarter of an inch hollow sinks on what is beneath it as soon as it is sat on: it is what
// foam gives at one joint, and what the trade lets cushions of one bed differ by.
constexpr Length bridged = give_at_joint;
// Farther down, nothing of the cushion's is reached.
constexpr Length looked_at = 2_in;
// As for high spots: what is no wider is a lip, a slot or the edge of a ledge, and no height of its own.
constexpr Length narrowest_height = 2_in;

struct CushionBearer {
  Length top;
  Region shared;
  std::string id;
};

bool presses_from_the_side(const Placed& thing, const Region& shared) {
  return (thing.is_soft() || is_upright(thing)) && thickness_of(shared).width <= give_in_row;
}

std::vector<CushionBearer> things_beneath(const Arrangement& arrangement, const Placed& cushion) {
  const Solid& solid = cushion.solid;
  const Length highest = solid.base() + half(solid.height());
  std::vector<CushionBearer> found;
  for (const Placed& thing : arrangement.things) {
    const Length top = thing.solid.top();
    if (&thing == &cushion || thing.solid.base() > solid.base() || top > highest ||
        top < solid.base() - looked_at)
      continue;
    if (hangs_on_a_wall(thing) && std::ranges::find(cushion.carried_by, thing.id) == cushion.carried_by.end())
      continue;
    Region shared = common(solid.outline(), thing.solid.outline());
    if (shared.empty() || (top > solid.base() && presses_from_the_side(thing, shared))) continue;
    found.push_back({top, std::move(shared), thing.id});
  }
  if (solid.base() <= looked_at) found.push_back({{}, solid.outline(), "floor"});
  std::ranges::stable_sort(found, std::ranges::greater{}, &CushionBearer::top);
  return found;
}

Area area_of_wide_parts(const Region& region) {
  Area area;
  for (const Region& part : region.parts())
    if (thickness_of(part).width > narrowest_height) area += part.area();
  return area;
}

std::vector<CarryingHeight> heights_of(const std::vector<CushionBearer>& highest_first, Length underside) {
  std::vector<CarryingHeight> heights;
  Region seen;
  for (auto beneath = highest_first.begin(); beneath != highest_first.end();) {
    CarryingHeight height{beneath->top, {}, {}};
    Region here;
    for (; beneath != highest_first.end() && beneath->top == height.top; ++beneath) {
      const Region visible = without(beneath->shared, seen);
      if (visible.empty()) continue;
      here = united(here, visible);
      height.things.push_back(beneath->id);
    }
    height.area = height.top == underside ? here.area() : area_of_wide_parts(here);
    seen = united(seen, here);
    if (height.area > Area{}) heights.push_back(std::move(height));
  }
  std::ranges::stable_sort(heights, std::ranges::greater{}, &CarryingHeight::area);
  return heights;
}

}  // namespace

CushionSupport support_of_cushion(const Arrangement& arrangement, const Placed& cushion) {
  CushionSupport support;
  support.piece = cushion.id;
  support.underside = cushion.solid.base();
  const std::vector<CushionBearer> beneath = things_beneath(arrangement, cushion);
  std::vector<Region> near;
  for (const CushionBearer& thing : beneath)
    if (thing.top >= support.underside - bridged) near.push_back(thing.shared);
  support.unsupported = without(cushion.solid.outline(), united(near));
  if (!support.unsupported.empty()) {
    const Thickness widest = thickness_of(support.unsupported);
    support.widest = widest.width;
    support.where = widest.where;
  }
  support.heights = heights_of(beneath, support.underside);
  return support;
}

}  // namespace berthwright
