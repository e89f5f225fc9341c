#include "oracle/plate_margin.h"

#include <algorithm>
#include <cmath>

namespace berthwright::oracle {
namespace {

struct Spot {
  double x, y, z;
};

struct Asked {
  const SourceBox& box;
  const DataPlate& plate;
  SlowReading reading;

  // One letter a face: what the maker calls the side that looks along -x, +x, -y, +y.
  std::optional<Length> face(Wall side) const {
    if (side == box.front) return plate.front;
    const bool along_x = side == Wall::front || side == Wall::rear;
    const bool front_along_x = box.front == Wall::front || box.front == Wall::rear;
    return along_x == front_along_x ? plate.back : plate.sides;
  }

  void ask(const Spot& p) {
    const double x0 = double(box.plan.low.x.ticks()), x1 = double(box.plan.high.x.ticks());
    const double y0 = double(box.plan.low.y.ticks()), y1 = double(box.plan.high.y.ticks());
    const double z0 = double(box.base.ticks()), z1 = double(box.top.ticks());
    std::vector<std::optional<Length>> before;
    if (p.x <= x0) before.push_back(face(Wall::front));
    if (p.x >= x1) before.push_back(face(Wall::rear));
    if (p.y <= y0) before.push_back(face(Wall::left));
    if (p.y >= y1) before.push_back(face(Wall::right));
    if (p.z <= z0) before.push_back(plate.sides);
    if (p.z >= z1) before.push_back(plate.top);
    if (before.empty()) before = {plate.front, plate.back, plate.sides, plate.top};
    double required = -1;
    for (const auto& one : before) {
      if (one) required = std::max(required, double(one->ticks()));
      if (!one) reading.incomplete = true;
    }
    if (required < 0) return;
    const double dx = std::max({x0 - p.x, p.x - x1, 0.0});
    const double dy = std::max({y0 - p.y, p.y - y1, 0.0});
    const double dz = std::max({z0 - p.z, p.z - z1, 0.0});
    const double margin = std::sqrt(dx * dx + dy * dy + dz * dz) - required;
    reading.margin = std::min(reading.margin.value_or(margin), margin);
  }
};

void ask_column(Asked& asked, double x, double y, const Solid& solid, Length step) {
  for (Length z = solid.base(); z < solid.top(); z += step) asked.ask({x, y, double(z.ticks())});
  asked.ask({x, y, double(solid.top().ticks())});
  for (const Length z : {asked.box.base, asked.box.top})
    if (solid.base() <= z && z <= solid.top()) asked.ask({x, y, double(z.ticks())});
}

void ask_edges(Asked& asked, const Solid& solid, Length step) {
  for (const Edge& edge : edges(solid.outline())) {
    const double ax = double(edge.from.x.ticks()), ay = double(edge.from.y.ticks());
    const double bx = double(edge.to.x.ticks()), by = double(edge.to.y.ticks());
    constexpr int parts = 500;
    for (int i = 0; i <= parts; ++i)
      ask_column(asked, ax + (bx - ax) * i / parts, ay + (by - ay) * i / parts, solid, step);
    for (const Length line : {asked.box.plan.low.x, asked.box.plan.high.x}) {
      const double t = (double(line.ticks()) - ax) / (bx - ax);
      if (ax != bx && 0 <= t && t <= 1)
        ask_column(asked, double(line.ticks()), ay + (by - ay) * t, solid, step);
    }
    for (const Length line : {asked.box.plan.low.y, asked.box.plan.high.y}) {
      const double t = (double(line.ticks()) - ay) / (by - ay);
      if (ay != by && 0 <= t && t <= 1)
        ask_column(asked, ax + (bx - ax) * t, double(line.ticks()), solid, step);
    }
  }
}

}  // namespace

SlowReading slow_plate_reading(const SourceBox& box, const DataPlate& plate, const std::vector<Solid>& solids,
                               Length step) {
  Asked asked{box, plate, {}};
  for (const Solid& solid : solids) {
    const Rect bounds = solid.outline().bounds();
    for (Length x = bounds.low.x; x <= bounds.high.x; x += step)
      for (Length y = bounds.low.y; y <= bounds.high.y; y += step)
        if (solid.outline().side_of({x, y}) != Side::outside)
          ask_column(asked, double(x.ticks()), double(y.ticks()), solid, step);
    ask_edges(asked, solid, step);
  }
  return asked.reading;
}

}  // namespace berthwright::oracle
