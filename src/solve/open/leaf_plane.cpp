#include "solve/open/leaf_plane.h"

#include <stdexcept>
#include <tuple>
#include <utility>

#include <berthwright/solve/open/leaves.h>

#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

bool is_end(Wall wall) { return wall == Wall::front || wall == Wall::rear; }
bool is_low(Wall wall) { return wall == Wall::front || wall == Wall::left; }
bool is_low(Leaf::Edge edge) {
  return edge == Leaf::Edge::front || edge == Leaf::Edge::left || edge == Leaf::Edge::bottom;
}
Length ahead(bool forward) { return forward ? one_tick : -one_tick; }

}  // namespace

LeafPlane::LeafPlane(const Fixture& fixture, const Leaf& leaf) : turns_(leaf.hinge.has_value()) {
  const Ways ways = leaf.kind == Leaf::Kind::lid ? of_lid(fixture, leaf) : in_face(fixture, leaf);
  look(ways);
  const Length slides = leaf.kind == Leaf::Kind::drawer ? leaf.pull : lift_out;
  frame_ = turns_ ? Rect{{-width_, Length{}}, {width_, width_}} : Rect{{}, {width_, slides}};
}

LeafPlane::Ways LeafPlane::of_lid(const Fixture& fixture, const Leaf& leaf) {
  const Rect& lid = leaf.outline;
  const Leaf::Edge edge = leaf.hinge.value_or(Leaf::Edge::front);
  const bool along = edge == Leaf::Edge::front || edge == Leaf::Edge::rear;
  seen_ = along ? Seen::from_the_side : Seen::from_the_end;
  const auto [low, high] = along ? std::pair(lid.low.x, lid.high.x) : std::pair(lid.low.y, lid.high.y);
  std::tie(from_, to_) = along ? std::pair(lid.low.y, lid.high.y) : std::pair(lid.low.x, lid.high.x);
  width_ = high - low;
  return {{is_low(edge) ? low : high, fixture.solid.top()}, {ahead(is_low(edge)), {}}, {{}, one_tick}};
}

LeafPlane::Ways LeafPlane::in_face(const Fixture& fixture, const Leaf& leaf) {
  const Rect bounds = fixture.solid.outline().bounds();
  const bool end = is_end(leaf.face);
  const Length low = end ? bounds.low.x : bounds.low.y;
  const Length high = end ? bounds.high.x : bounds.high.y;
  const Length face = is_low(leaf.face) ? low : high;
  const Length out = ahead(!is_low(leaf.face));
  const Rect& own = leaf.outline;
  if (leaf.kind == Leaf::Kind::flap) {
    const bool up = leaf.hinge && is_low(*leaf.hinge);
    seen_ = end ? Seen::from_the_side : Seen::from_the_end;
    from_ = own.low.x, to_ = own.high.x, width_ = own.height();
    return {{face, up ? own.low.y : own.high.y}, {{}, ahead(up)}, {out, {}}};
  }
  const bool forward = !leaf.hinge || is_low(*leaf.hinge);
  seen_ = Seen::from_above;
  from_ = own.low.y, to_ = own.high.y, width_ = own.width();
  const Length start = forward ? own.low.x : own.high.x;
  if (end) return {{face, start}, {{}, ahead(forward)}, {out, {}}};
  return {{start, face}, {ahead(forward), {}}, {{}, out}};
}

void LeafPlane::look(const Ways& ways) {
  for (const bool flipped : {false, true})
    for (int quarters = 0; quarters < 4; ++quarters) {
      const Placement turned{flipped, Turn::quarters(quarters), {}};
      if (turned(ways.along) != Point{one_tick, {}} || turned(ways.open) != Point{{}, one_tick}) continue;
      to_leaf_ = {flipped, turned.turn, Point{} - turned(ways.hinge)};
      to_room_ = {flipped, flipped ? turned.turn : turned.turn.reversed(), ways.hinge - Point{}};
      return;
    }
  throw std::logic_error("a leaf opens along itself");
}

// The plan of what is seen and of the stretch.
Rect LeafPlane::in_plan(const Rect& seen) const {
  switch (seen_) {
    case Seen::from_above:
      return seen;
    case Seen::from_the_side:
      return {{seen.low.x, from_}, {seen.high.x, to_}};
    case Seen::from_the_end:
      return {{from_, seen.low.x}, {to_, seen.high.x}};
  }
  throw std::logic_error("LeafPlane::Seen out of range");
}

Region LeafPlane::taken_by(const Solid& solid) const {
  const Polygon frame = to_room_(Polygon::rectangle(frame_));
  const Rect seen = frame.bounds();
  const Rect plan = in_plan(seen);
  const Rect bounds = solid.outline().bounds();
  const bool above = seen_ == Seen::from_above;
  const Length low = above ? from_ : seen.low.y;
  const Length high = above ? to_ : seen.high.y;
  if (!overlaps(bounds, plan) || solid.base() >= high || solid.top() <= low) return {};
  const Region common_part = common(solid.outline(), Region(plan));
  if (above) return to_leaf_(common_part);
  std::vector<Region> boxes;
  for (const Region& part : common_part.parts()) {
    const Rect own = part.bounds();
    const bool side = seen_ == Seen::from_the_side;
    boxes.emplace_back(
        Rect{{side ? own.low.x : own.low.y, solid.base()}, {side ? own.high.x : own.high.y, solid.top()}});
  }
  return to_leaf_(common(united(boxes), Region(seen)));
}

Region LeafPlane::beyond_outline(const Interior& interior, const Rect& seen) const {
  std::vector<Region> boxes;
  for (const Region& part : without(Region(in_plan(seen)), Region(interior.outline.polygon())).parts()) {
    const Rect own = part.bounds();
    const bool side = seen_ == Seen::from_the_side;
    boxes.emplace_back(
        Rect{{side ? own.low.x : own.low.y, seen.low.y}, {side ? own.high.x : own.high.y, seen.high.y}});
  }
  return united(boxes);
}

// One profile is seen as it is; of the other one the stretch counts, whose heights bar the whole width.
Region LeafPlane::beyond_profile(const Interior& interior, const Rect& seen) const {
  const bool side = seen_ == Seen::from_the_side;
  const Polygon* along = &interior.side_profile.polygon();
  const Polygon* across = interior.cross_profile ? &interior.cross_profile->polygon() : nullptr;
  const Polygon* own = side ? along : across;
  const Polygon* other = side ? across : along;
  std::vector<Region> beyond;
  if (own != nullptr) beyond.push_back(without(Region(seen), Region(*own)));
  if (other != nullptr)
    for (const Region& part :
         without(Region(Rect{{from_, seen.low.y}, {to_, seen.high.y}}), Region(*other)).parts()) {
      const Rect bounds = part.bounds();
      beyond.emplace_back(Rect{{seen.low.x, bounds.low.y}, {seen.high.x, bounds.high.y}});
    }
  return united(beyond);
}

Region LeafPlane::outside(const Interior& interior) const {
  const Polygon frame = to_room_(Polygon::rectangle(frame_));
  const Rect seen = frame.bounds();
  if (seen_ == Seen::from_above) return to_leaf_(without(Region(seen), room_between(interior, from_, to_)));
  return to_leaf_(united(beyond_outline(interior, seen), beyond_profile(interior, seen)));
}

Region LeafPlane::shadow(const Region& swept, Length low, Length high) const {
  const Region seen = to_room_(swept);
  if (seen_ == Seen::from_above) return from_ < high && low < to_ ? seen : Region{};
  const Rect bounds = seen.bounds();
  if (bounds.low.y >= high || bounds.high.y <= low) return {};
  std::vector<Region> boxes;
  for (const Region& part : common(seen, Rect{{bounds.low.x, low}, {bounds.high.x, high}}).parts())
    boxes.emplace_back(in_plan(part.bounds()));
  return united(boxes);
}

Point3 LeafPlane::in_room(Point point) const {
  const Point seen = to_room_(point);
  const Length middle = half(from_ + to_);
  switch (seen_) {
    case Seen::from_above:
      return {seen, middle};
    case Seen::from_the_side:
      return {{seen.x, middle}, seen.y};
    case Seen::from_the_end:
      return {{middle, seen.x}, seen.y};
  }
  throw std::logic_error("LeafPlane::Seen out of range");
}

}  // namespace berthwright
