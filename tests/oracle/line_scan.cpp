#include "oracle/line_scan.h"

namespace berthwright::oracle {
namespace {

struct Whole {
  std::int64_t x;
  std::int64_t y;
};

}  // namespace

bool on_line(const Region& region, const CutLine& line, std::int64_t along, std::int64_t parts) {
  const auto scaled = [&](Point p) { return Whole{p.x.ticks() * parts, p.y.ticks() * parts}; };
  const std::int64_t at = line.at.ticks() * parts;
  const Whole p = line.along == CutLine::Along::x ? Whole{along, at} : Whole{at, along};
  bool odd = false;
  const auto look = [&](const Polygon& polygon) {
    const auto corners = polygon.vertices();
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Whole a = scaled(corners[i]);
      const Whole b = scaled(corners[(i + 1) % corners.size()]);
      const std::int64_t turn = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
      const std::int64_t ahead = (p.x - a.x) * (p.x - b.x) + (p.y - a.y) * (p.y - b.y);
      if (turn == 0 && ahead <= 0) return true;
      if ((a.y > p.y) != (b.y > p.y) && (turn > 0) == (b.y > a.y)) odd = !odd;
    }
    return false;
  };
  for (const Face& face : region.faces()) {
    if (look(face.outer)) return true;
    for (const Polygon& hole : face.holes)
      if (look(hole)) return true;
  }
  return odd;
}

}  // namespace berthwright::oracle
