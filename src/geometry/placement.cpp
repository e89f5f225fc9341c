#include <berthwright/geometry/placement.h>

#include <algorithm>
#include <stdexcept>

#include "geometry/mapped.h"
#include "geometry/overlay.h"
#include "geometry/ring.h"

namespace berthwright {
namespace {

// A turn that is no quarter rounds corners, so that thin parts may collapse or touch.
Region rounded(const Placement& placement, std::span<const Edge> edges) {
  std::vector<Edge> moved;
  for (const Edge& edge : edges) {
    moved.push_back({placement(edge.from), placement(edge.to)});
    if (placement.flipped) std::swap(moved.back().from, moved.back().to);
  }
  return overlaid(strands(moved), [](Winding w) { return w.first > 0; });
}

}  // namespace

Point Placement::operator()(Point p) const {
  const Int128 x = p.x.ticks();
  const Int128 y = flipped ? -p.y.ticks() : p.y.ticks();
  const auto rounded_tick = [&](Int128 value) { return rounded_part(one_tick, value, turn.unit()); };
  return Point{rounded_tick(x * turn.cosine() - y * turn.sine()),
               rounded_tick(x * turn.sine() + y * turn.cosine())} +
         shift;
}

Polygon Placement::operator()(const Polygon& polygon) const {
  std::vector<Point> corners;
  for (const Point& corner : polygon.vertices()) corners.push_back((*this)(corner));
  if (turn.is_quarter()) return Polygon::promised(std::move(corners));
  if (auto simple = Polygon::checked(std::move(corners))) return std::move(simple).value();
  const Region parts = rounded(*this, edges(polygon));
  if (parts.empty()) throw std::logic_error("a polygon thinner than a tick was turned");
  return std::ranges::max_element(parts.faces(), {}, [](const Face& f) { return f.outer.area(); })->outer;
}

Arc Placement::operator()(const Arc& arc) const {
  return {(*this)(arc.from), (*this)(arc.to), arc.radius, arc.left != flipped};
}

Region Placement::operator()(const Region& region) const {
  if (turn.is_quarter()) return mapped(region, *this);
  return rounded(*this, edges(region));
}

}  // namespace berthwright
