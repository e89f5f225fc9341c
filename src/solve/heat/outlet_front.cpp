#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/heat/plugged.h>

#include "geometry/segment.h"
#include "plan/box_sides.h"
#include "solve/room/nearest_wall.h"

namespace berthwright {
namespace {

// Nobody asks what lies farther before an outlet.
constexpr Length looked_ahead = 120_in;

Length from_side(const Rect& box, Wall side, const Rect& thing) {
  switch (side) {
    case Wall::front:
      return box.low.x - thing.high.x;
    case Wall::rear:
      return thing.low.x - box.high.x;
    case Wall::left:
      return box.low.y - thing.high.y;
    case Wall::right:
      return thing.low.y - box.high.y;
  }
  throw std::logic_error("Wall out of range");
}

Vector times(Vector v, Length by) { return {v.x * by.ticks(), v.y * by.ticks()}; }

/// What an outlet sees that faces a known way.
class Ahead {
 public:
  Ahead(const Fixture& outlet, Wall faces)
      : solid_(outlet.solid),
        faces_(faces),
        box_(outlet.solid.outline().bounds()),
        middle_(middle_of_side(box_, faces)) {}

  // Depth free of the solid straight before the face; none: nothing of it is there.
  std::optional<Length> depth_to(const Solid& solid) const {
    if (solid.base() >= solid_.top() || solid.top() <= solid_.base()) return std::nullopt;
    const Region before = common(solid.outline(), Region(beyond_side(box_, faces_, looked_ahead)));
    if (before.empty()) return std::nullopt;
    return std::max(from_side(box_, faces_, before.bounds()), Length{});
  }

  Length depth_to_wall(const Interior& room) const {
    const Rect inside{{}, {room.length, room.width}};
    const Rect beyond = beyond_side(inside, faces_, one_tick);
    return std::max(from_side(box_, faces_, beyond), Length{});
  }

  // The nearest place of the solid within 45 degrees of straight ahead.
  std::optional<Nearest> nearest_in_sight(const Solid& solid) const {
    const Vector forth = times(outward(faces_), looked_ahead);
    const Vector aside{-forth.y, forth.x};
    const Region sight(Polygon::promised({middle_, middle_ + forth - aside, middle_ + forth + aside}));
    const Region seen = common(solid.outline(), sight);
    if (seen.empty()) return std::nullopt;
    const Length z = std::clamp(solid_.base(), solid.base(), solid.top());
    const Length from_z = std::clamp(z, solid_.base(), solid_.top());
    std::optional<Nearest> least;
    for (const Edge& edge : edges(seen)) {
      const SquaredLength squared =
          seen.side_of(middle_) == Side::outside ? squared_distance(middle_, edge) : SquaredLength();
      const Point to = squared == Length{} ? middle_ : nearest_point(middle_, edge);
      if (!least || squared < least->squared || (squared == least->squared && to < least->to.plan))
        least = Nearest{squared, {middle_, from_z}, {to, z}};
    }
    least->squared = least->squared.plus_square_of(z - from_z);
    return least;
  }

 private:
  const Solid& solid_;
  Wall faces_;
  Rect box_;
  Point middle_;
};

}  // namespace

OutletFront outlet_front(const Plan& plan, const Arrangement& arrangement,
                         const std::vector<std::pair<const Bed*, Bedding>>& beds, const Fixture& outlet) {
  OutletFront front;
  if (!outlet.faces) return front;
  const Ahead ahead(outlet, *outlet.faces);
  front.depth = ahead.depth_to_wall(plan->interior);
  const auto offer = [&](std::optional<Length> depth, const std::string& id) {
    if (depth &&
        (*depth < *front.depth || (*depth == *front.depth && !front.met.empty() && id < front.met))) {
      front.depth = depth;
      front.met = id;
    }
  };
  for (const Placed& thing : arrangement.things)
    if (thing.fixture != &outlet) offer(ahead.depth_to(thing.solid), thing.id);
  for (const auto& [bed, bedding] : beds)
    for (const Solid& solid : bedding.made_up) {
      offer(ahead.depth_to(solid), bed->id.text());
      const std::optional<Nearest> seen = ahead.nearest_in_sight(solid);
      if (seen && (!front.bedding || seen->squared < front.bedding->squared)) {
        front.bedding = seen;
        front.bed = bed->id.text();
      }
    }
  if (front.met.empty())
    front.met = nearest_wall(plan->interior, middle_of_side(outlet.solid.outline().bounds(), *outlet.faces) +
                                                 times(outward(*outlet.faces), *front.depth));
  return front;
}

}  // namespace berthwright
