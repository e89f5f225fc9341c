#include "oracle/leaf_samples.h"

#include <algorithm>

namespace berthwright::oracle {
namespace {

struct Place {
  double x = 0, y = 0, z = 0;
};
Place operator+(Place a, Place b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
Place operator*(Place a, double by) { return {a.x * by, a.y * by, a.z * by}; }

double inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

/// A leaf as a parallelogram: from a corner along its two sides, and the way it opens.
struct Sheet {
  Place corner;
  Place out;     ///< unit: from the hinge outward
  double width;  ///< in that direction
  Place beside;  ///< unit: along the hinge
  double length;
  Place opens;  ///< unit
};

Sheet sheet_of_lid(const Leaf& leaf, double top) {
  const double x0 = inches(leaf.outline.low.x), x1 = inches(leaf.outline.high.x);
  const double y0 = inches(leaf.outline.low.y), y1 = inches(leaf.outline.high.y);
  const Place up{0, 0, 1};
  switch (leaf.hinge.value_or(Leaf::Edge::front)) {
    case Leaf::Edge::rear:
      return {{x1, y0, top}, {-1, 0, 0}, x1 - x0, {0, 1, 0}, y1 - y0, up};
    case Leaf::Edge::left:
      return {{x0, y0, top}, {0, 1, 0}, y1 - y0, {1, 0, 0}, x1 - x0, up};
    case Leaf::Edge::right:
      return {{x0, y1, top}, {0, -1, 0}, y1 - y0, {1, 0, 0}, x1 - x0, up};
    case Leaf::Edge::front:
    case Leaf::Edge::bottom:
    case Leaf::Edge::top:
      break;
  }
  return {{x0, y0, top}, {1, 0, 0}, x1 - x0, {0, 1, 0}, y1 - y0, up};
}

Sheet sheet_in_face(const Leaf& leaf, const Rect& bounds) {
  Place opens;
  Place corner;
  Place level{1, 0, 0};
  const double from = inches(leaf.outline.low.x), to = inches(leaf.outline.high.x);
  const double base = inches(leaf.outline.low.y), top = inches(leaf.outline.high.y);
  switch (leaf.face) {
    case Wall::front:
      opens = {-1, 0, 0}, corner = {inches(bounds.low.x), from, base}, level = {0, 1, 0};
      break;
    case Wall::rear:
      opens = {1, 0, 0}, corner = {inches(bounds.high.x), from, base}, level = {0, 1, 0};
      break;
    case Wall::left:
      opens = {0, -1, 0}, corner = {from, inches(bounds.low.y), base};
      break;
    case Wall::right:
      opens = {0, 1, 0}, corner = {from, inches(bounds.high.y), base};
      break;
  }
  const Place up{0, 0, 1};
  const double wide = to - from, tall = top - base;
  if (!leaf.hinge) return {corner, level, wide, up, tall, opens};
  if (*leaf.hinge == Leaf::Edge::bottom) return {corner, up, tall, level, wide, opens};
  if (*leaf.hinge == Leaf::Edge::top) return {corner + up * tall, up * -1, tall, level, wide, opens};
  const bool low = *leaf.hinge == Leaf::Edge::front || *leaf.hinge == Leaf::Edge::left;
  return low ? Sheet{corner, level, wide, up, tall, opens}
             : Sheet{corner + level * wide, level * -1, wide, up, tall, opens};
}

/// Crossings of a ray, in numbers: inside by the even-odd rule.
bool inside_ring(const Polygon& polygon, double x, double y) {
  bool in = false;
  const auto corners = polygon.vertices();
  for (std::size_t i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
    const double ax = inches(corners[i].x), ay = inches(corners[i].y);
    const double bx = inches(corners[j].x), by = inches(corners[j].y);
    if ((ay > y) != (by > y) && x < (bx - ax) * (y - ay) / (by - ay) + ax) in = !in;
  }
  return in;
}

constexpr double hair = 1e-4;  // of an inch: touching is none

struct LeafBox {
  Polygon ring;
  double x0, y0, x1, y1, base, top;
};

bool holds(const LeafBox& box, const Place& p) {
  if (p.z <= box.base + hair || p.z >= box.top - hair) return false;
  if (p.x <= box.x0 + hair || p.x >= box.x1 - hair || p.y <= box.y0 + hair || p.y >= box.y1 - hair)
    return false;
  return inside_ring(box.ring, p.x, p.y);
}

bool inside_loosely(const Polygon& ring, double x, double y) {
  for (const double dx : {-hair, hair})
    for (const double dy : {-hair, hair})
      if (inside_ring(ring, x + dx, y + dy)) return true;
  return false;
}

bool is_outside(const Interior& room, const Place& p) {
  if (!inside_loosely(room.outline.polygon(), p.x, p.y)) return true;
  if (!inside_loosely(room.side_profile.polygon(), p.x, p.z)) return true;
  return room.cross_profile && !inside_loosely(room.cross_profile->polygon(), p.y, p.z);
}

std::vector<double> spread(double length, double step) {
  std::vector<double> at{hair};
  for (double s = step; s < length; s += step) at.push_back(s);
  at.push_back(length - hair);
  return at;
}

}  // namespace

std::optional<double> first_met(const Plan& plan, const Arrangement& arrangement, const Leaf& leaf,
                                const std::vector<std::string>& lifted) {
  const Fixture& own = *plan.fixture(leaf.fixture.text());
  std::vector<LeafBox> boxes;
  for (const Placed& thing : arrangement.things) {
    if (thing.fixture == &own || std::ranges::find(lifted, thing.id) != lifted.end()) continue;
    const Region outline = thing.solid.outline();
    const Rect bounds = outline.bounds();
    for (const Face& face : outline.faces())
      boxes.push_back({face.outer, inches(bounds.low.x), inches(bounds.low.y), inches(bounds.high.x),
                       inches(bounds.high.y), inches(thing.solid.base()), inches(thing.solid.top())});
  }
  const Sheet sheet = leaf.kind == Leaf::Kind::lid ? sheet_of_lid(leaf, inches(own.solid.top()))
                                                   : sheet_in_face(leaf, own.solid.outline().bounds());
  const std::vector<double> outward = spread(sheet.width, 0.25);
  const std::vector<double> beside = spread(sheet.length, 0.5);
  const auto meets = [&](const Place& way, const Place& shift) {
    for (const double s : outward)
      for (const double t : beside) {
        const Place p = sheet.corner + shift + way * s + sheet.beside * t;
        if (is_outside(plan->interior, p)) return true;
        for (const LeafBox& box : boxes)
          if (holds(box, p)) return true;
      }
    return false;
  };
  if (!leaf.hinge) {
    const double whole = leaf.kind == Leaf::Kind::drawer ? inches(leaf.pull) : 2;
    for (double by = 0.0625; by < whole + 0.001; by += 0.0625)
      if (meets(sheet.out, sheet.opens * (by - 0.001))) return by;
    return std::nullopt;
  }
  // Cosine and sine of half a degree.
  const double c = 0.99996192306417129, s = 0.0087265354983739347;
  const double stop = static_cast<double>(leaf.stop.microdegrees()) / 1e6;
  double cosine = 1, sine = 0;
  for (double angle = 0.5; angle < stop + 0.001; angle += 0.5) {
    const double next = cosine * c - sine * s;
    sine = sine * c + cosine * s;
    cosine = next;
    if (meets(sheet.out * cosine + sheet.opens * sine, {})) return angle;
  }
  return std::nullopt;
}

}  // namespace berthwright::oracle
