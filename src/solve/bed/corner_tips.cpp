#include "solve/bed/corner_tips.h"

#include "geometry/ring.h"

namespace berthwright {

namespace {

constexpr Length greatest_radius = 3_in;
constexpr Length tip_strip = Length::inches(1, 64);

// A quarter circle: its chord is the root of two times its radius. Ends are rounded to the lattice.
bool is_quarter(const Arc& arc) {
  const Vector chord = arc.to - arc.from;
  const Int128 squared =
      Int128{chord.x.ticks()} * chord.x.ticks() + Int128{chord.y.ticks()} * chord.y.ticks();
  const Int128 radius = arc.radius.ticks();
  const Int128 difference = squared - 2 * radius * radius;
  return (difference < 0 ? -difference : difference) <= 8 * radius;
}

Region quadrilateral(Point a, Point b, Vector by) {
  Result<Polygon> polygon = Polygon::checked({a, b, b + by, a + by});
  return polygon ? Region(std::move(polygon).value()) : Region();
}

Vector scaled(Vector v, Length to, Length length) {
  return {rounded_part(to, v.x.ticks(), length.ticks()), rounded_part(to, v.y.ticks(), length.ticks())};
}

}  // namespace

std::vector<CornerTip> corner_tips(const std::vector<Arc>& arcs) {
  std::vector<CornerTip> tips;
  for (const Arc& arc : arcs) {
    if (arc.radius > greatest_radius || !is_quarter(arc)) continue;
    // Counter-clockwise the centre lies left of the chord, the tip right of it, both half a chord away.
    const Point from = arc.left ? arc.from : arc.to;
    const Point to = arc.left ? arc.to : arc.from;
    const Vector chord = to - from;
    tips.push_back({from, {half(from.x + to.x + chord.y), half(from.y + to.y - chord.x)}, to});
  }
  return tips;
}

Region triangle(const CornerTip& corner) {
  Result<Polygon> polygon = Polygon::checked({corner.from, corner.tip, corner.to});
  return polygon ? Region(std::move(polygon).value()) : Region();
}

Region beside(const CornerTip& corner) {
  const Length radius = Length::from_ticks(std::max<std::int64_t>(
      1, std::max(abs(corner.tip.x - corner.to.x), abs(corner.tip.y - corner.to.y)).ticks()));
  return united(quadrilateral(corner.from, corner.tip, scaled(corner.tip - corner.to, tip_strip, radius)),
                quadrilateral(corner.tip, corner.to, scaled(corner.tip - corner.from, tip_strip, radius)));
}

}  // namespace berthwright
