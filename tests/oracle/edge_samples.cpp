#include "oracle/edge_samples.h"

#include <array>
#include <cmath>

namespace berthwright::oracle {
namespace {

using Triple = std::array<double, 3>;

Triple crossed(const Triple& a, const Triple& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

Triple outward(Wall side) {
  switch (side) {
    case Wall::front:
      return {-1, 0, 0};
    case Wall::rear:
      return {1, 0, 0};
    case Wall::left:
      return {0, -1, 0};
    default:
      return {0, 1, 0};
  }
}

// Images of the piece's own x, y and z.
struct Rotation {
  Triple x, y, z;
  Triple of(const Triple& v) const {
    Triple image{};
    for (std::size_t i = 0; i < 3; ++i) image[i] = v[0] * x[i] + v[1] * y[i] + v[2] * z[i];
    return image;
  }
};

Rotation rotation_of(const Pose& pose, Wall down) {
  if (pose.manner == Pose::Manner::flat) {
    const double c =
        static_cast<double>(pose.placement.turn.cosine()) / static_cast<double>(pose.placement.turn.unit());
    const double s =
        static_cast<double>(pose.placement.turn.sine()) / static_cast<double>(pose.placement.turn.unit());
    const double hand = pose.placement.flipped ? -1 : 1;
    return {{c, s, 0}, {-s * hand, c * hand, 0}, {0, 0, hand}};
  }
  // The outward way of the side that is down becomes (0, 0, -1), the top panel looks to `faces`.
  const Triple face = outward(*pose.faces);
  const double sign = down == Wall::front || down == Wall::left ? 1 : -1;
  const Triple risen{0, 0, sign};
  if (down == Wall::left || down == Wall::right) return {crossed(risen, face), risen, face};
  return {risen, crossed(face, risen), face};
}

Triple in_ticks(const Point& p, double z) {
  return {static_cast<double>(p.x.ticks()), static_cast<double>(p.y.ticks()), z};
}

Side side(const Region& region, double x, double y) {
  return region.side_of({Length::from_ticks(std::llround(x)), Length::from_ticks(std::llround(y))});
}

}  // namespace

SampledEdge sampled_edge(const Plan& plan, const Arrangement& arrangement, const Placed& self,
                         const RimEdge& edge, Wall down) {
  const Rotation rotation = rotation_of(*self.pose, down);
  const double thickness = static_cast<double>(self.piece->thickness.ticks());
  // The shift that brings the turned box to where the arrangement has it.
  Triple low{1e18, 1e18, 1e18};
  for (const Point& p : self.piece->outline.polygon().vertices())
    for (const double z : {0.0, thickness})
      for (std::size_t i = 0; i < 3; ++i) low[i] = std::min(low[i], rotation.of(in_ticks(p, z))[i]);
  const Rect box = self.solid.outline().bounds();
  const Triple shift{static_cast<double>(box.low.x.ticks()) - low[0],
                     static_cast<double>(box.low.y.ticks()) - low[1],
                     static_cast<double>(self.solid.base().ticks()) - low[2]};
  const Point a = edge.path.front(), b = edge.path.back();
  const double dx = static_cast<double>((b.x - a.x).ticks()), dy = static_cast<double>((b.y - a.y).ticks());
  const double length = std::hypot(dx, dy);
  const Triple out = rotation.of({dy / length, -dx / length, 0});
  SampledEdge told;
  told.out_x = out[0];
  told.out_y = out[1];
  if (std::abs(out[2]) > 0.5) {
    told.upright = false;
    told.looks_down = out[2] < 0;
    return told;
  }
  // Along the face in plan, and up it: one of the edge's own way and the thickness lies level.
  const bool edge_level = std::abs(rotation.of({dx / length, dy / length, 0})[2]) < 0.5;
  constexpr int count = 100;
  // Whatever covers half of the heights.
  std::vector<const Placed*> high;
  for (const Placed& thing : arrangement.things) {
    int heights = 0;
    for (int h = 0; h < count; ++h) {
      const double z = static_cast<double>(self.solid.base().ticks()) +
                       (h + 0.5) / count * static_cast<double>(self.solid.height().ticks());
      heights += static_cast<double>(thing.solid.base().ticks()) < z &&
                         z < static_cast<double>(thing.solid.top().ticks())
                     ? 1
                     : 0;
    }
    if (&thing != &self && 2 * heights >= count) high.push_back(&thing);
  }
  const Region room(plan->interior.outline.polygon());
  int covered = 0;
  for (int i = 0; i < count; ++i) {
    const double part = (i + 0.5) / count;
    const double u = edge_level ? part : 0.5, w = edge_level ? 0.5 : part;
    Triple p = rotation.of({static_cast<double>(a.x.ticks()) + u * dx,
                            static_cast<double>(a.y.ticks()) + u * dy, w * thickness});
    bool met = false;
    for (int depth = 1; depth <= 16 && !met; ++depth) {
      const double x = p[0] + shift[0] + out[0] * depth / 16 * ticks_per_inch;
      const double y = p[1] + shift[1] + out[1] * depth / 16 * ticks_per_inch;
      met = side(room, x, y) != Side::inside;
      for (const Placed* thing : high) met = met || side(thing->solid.outline(), x, y) != Side::outside;
    }
    covered += met ? 1 : 0;
  }
  told.covered = static_cast<double>(covered) / count;
  return told;
}

}  // namespace berthwright::oracle
