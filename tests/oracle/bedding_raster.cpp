#include "oracle/bedding_raster.h"

#include <algorithm>
#include <cmath>

namespace berthwright::oracle {
namespace {

double distance(Point p, const Edge& edge) {
  const double px = double(p.x.ticks()), py = double(p.y.ticks());
  const double ax = double(edge.from.x.ticks()), ay = double(edge.from.y.ticks());
  const double dx = double(edge.to.x.ticks()) - ax, dy = double(edge.to.y.ticks()) - ay;
  const double t = std::clamp(((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
  return std::hypot(px - ax - t * dx, py - ay - t * dy);
}

double distance_to_border(Point p, const Region& region) {
  double least = 1e300;
  for (const Edge& edge : edges(region)) least = std::min(least, distance(p, edge));
  return least;
}

bool holds(const Region& region, Point p) { return region.side_of(p) != Side::outside; }

}  // namespace

HangAt hang_at(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Point at) {
  constexpr double too_near = 40;  // ticks: 1 µm, far above what rounding to the lattice moves a border
  const double reach = double((2_in).ticks());
  const Region room = plan->interior.outline.polygon();
  bool sure = distance_to_border(at, room) > too_near;
  for (const Placed& thing : arrangement.things)
    sure = sure && distance_to_border(at, thing.solid.outline()) > too_near;
  const double away = distance_to_border(at, mattress.closed);
  // The disc of the overhang is a polygon of 64 sides around the circle: 0.13 % too large at its corners.
  sure = sure && away > too_near && std::abs(away - reach) > 0.0013 * reach + too_near;
  if (holds(mattress.closed, at) || away > reach || !holds(room, at)) return {std::nullopt, sure};

  Length base = std::max(mattress.level - 12_in, 0_in);
  for (const Placed& thing : arrangement.things) {
    const Solid& solid = thing.solid;
    if (!holds(solid.outline(), at)) continue;
    if (solid.base() < mattress.level && mattress.level < solid.top()) return {std::nullopt, sure};
    if (solid.top() <= mattress.level) base = std::max(base, solid.top());
  }
  return {Hang{std::min(base, mattress.level - one_tick), mattress.level}, sure};
}

std::vector<Hang> hangs_in(const Bedding& bedding, Point at) {
  std::vector<Hang> hangs;
  for (std::size_t i = bedding.bare.size(); i < bedding.made_up.size(); ++i)
    if (holds(bedding.made_up[i].outline(), at))
      hangs.push_back({bedding.made_up[i].base(), bedding.made_up[i].top()});
  return hangs;
}

}  // namespace berthwright::oracle
