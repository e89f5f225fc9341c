#include "oracle/clearance.h"

#include <algorithm>
#include <cmath>

namespace berthwright::oracle {
namespace {

void look_at(const Polygon& ring, double x, double y, double& squared, bool& inside) {
  const auto corners = ring.vertices();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point& a = corners[i];
    const Point& b = corners[(i + 1) % corners.size()];
    const double ax = static_cast<double>(a.x.ticks()) - x, ay = static_cast<double>(a.y.ticks()) - y;
    const double bx = static_cast<double>(b.x.ticks()) - x, by = static_cast<double>(b.y.ticks()) - y;
    if ((ay > 0) != (by > 0) && ax + (bx - ax) * (-ay / (by - ay)) > 0) inside = !inside;
    const double dx = bx - ax, dy = by - ay;
    const double at = std::clamp(-(ax * dx + ay * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    const double px = ax + dx * at, py = ay + dy * at;
    squared = std::min(squared, px * px + py * py);
  }
}

}  // namespace

double clearance(const Region& region, double x, double y) {
  double squared = 1e300;
  bool inside = false;
  for (const Face& face : region.faces()) {
    look_at(face.outer, x, y, squared, inside);
    for (const Polygon& hole : face.holes) look_at(hole, x, y, squared, inside);
  }
  return inside ? std::sqrt(squared) : -std::sqrt(squared);
}

}  // namespace berthwright::oracle
