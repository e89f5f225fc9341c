#include "oracle/support_scan.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace berthwright::oracle {

namespace {

struct Spot2 {
  double x;
  double y;
};

double cross2(Spot2 a, Spot2 b, Spot2 c) { return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x); }

double distance_to_segment(Spot2 p, Spot2 a, Spot2 b) {
  const double dx = b.x - a.x;
  const double dy = b.y - a.y;
  const double square = dx * dx + dy * dy;
  const double t = square == 0 ? 0 : std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / square, 0.0, 1.0);
  return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

// Corners of filled cells that no row is needed for: the ends of each row of corners.
std::vector<Spot2> row_ends(const Raster& raster) {
  std::vector<Spot2> spots;
  for (int y = 0; y <= raster.deep; ++y) {
    int first = raster.wide + 1;
    int last = -1;
    for (int x = 0; x < raster.wide; ++x)
      if (raster.at(x, y) || raster.at(x, y - 1)) first = std::min(first, x), last = x + 1;
    if (last < 0) continue;
    spots.push_back({double(first), double(y)});
    spots.push_back({double(last), double(y)});
  }
  return spots;
}

// Strictly inside the hull: no line through the spot has all others on one side of it or on it.
bool strictly_inside(const std::vector<Spot2>& spots, Spot2 p) {
  for (const Spot2 other : spots) {
    if (other.x == p.x && other.y == p.y) continue;
    bool left = false;
    bool right = false;
    for (const Spot2 third : spots) {
      const double side = cross2(p, other, third);
      left = left || side > 0;
      right = right || side < 0;
    }
    if (!left || !right) return false;
  }
  return !spots.empty();
}

// Every segment between two spots lies in the hull, and its edges are among them.
double distance_to_hull(const std::vector<Spot2>& spots, Spot2 p) {
  if (strictly_inside(spots, p)) return 0;
  double least = 1e18;
  for (const Spot2 a : spots)
    for (const Spot2 b : spots) least = std::min(least, distance_to_segment(p, a, b));
  return least;
}

double least_ratio(const std::vector<Spot2>& spots, Spot2 middle, const std::vector<Spot2>& corners) {
  double least = 1e18;
  const int directions = 7200;
  for (int i = 0; i < directions; ++i) {
    const double angle = 2 * 3.14159265358979323846 * i / directions;
    const Spot2 out{std::cos(angle), std::sin(angle)};
    double line = -1e18;
    for (const Spot2 s : spots) line = std::max(line, s.x * out.x + s.y * out.y);
    const double held = line - middle.x * out.x - middle.y * out.y;
    for (const Spot2 c : corners) {
      const double beyond = c.x * out.x + c.y * out.y - line;
      if (beyond > 1e-9) least = std::min(least, held / beyond);
    }
  }
  return least;
}

struct Scanned {
  int set_back = -1;
  int depth = 0;
};
// The first bearing met within two inches of the side.
Scanned first_bearing(const Raster& raster, int x, int inch) {
  for (int y = 0; y <= 2 * inch; ++y) {
    if (!raster.at(x, y)) continue;
    int end = y;
    while (raster.at(x, end)) ++end;
    return {y, end - y};
  }
  return {};
}

}  // namespace

void Raster::fill(int x0, int y0, int x1, int y1) {
  for (int y = std::max(y0, 0); y < std::min(y1, deep); ++y)
    for (int x = std::max(x0, 0); x < std::min(x1, wide); ++x)
      cells[static_cast<std::size_t>(y * wide + x)] = true;
}

Raster Raster::shifted(int dx, int dy) const {
  Raster other(wide, deep);
  for (int y = 0; y < deep; ++y)
    for (int x = 0; x < wide; ++x)
      if (at(x - dx, y - dy)) other.fill(x, y, x + 1, y + 1);
  return other;
}

Raster Raster::transposed() const {
  Raster other(deep, wide);
  for (int y = 0; y < deep; ++y)
    for (int x = 0; x < wide; ++x)
      if (at(x, y)) other.fill(y, x, y + 1, x + 1);
  return other;
}

Raster Raster::flipped() const {
  Raster other(wide, deep);
  for (int y = 0; y < deep; ++y)
    for (int x = 0; x < wide; ++x)
      if (at(x, y)) other.fill(x, deep - 1 - y, x + 1, deep - y);
  return other;
}

ScannedSide scanned_side(const Raster& bearing, const Raster& tops_around, int margin, int inch, int play) {
  Raster shoved(bearing.wide, bearing.deep);
  for (int y = 0; y < bearing.deep; ++y)
    for (int x = 0; x < bearing.wide; ++x)
      if (tops_around.at(x + margin, y + margin + play)) shoved.fill(x, y, x + 1, y + 1);
  ScannedSide side;
  int least = -1;
  int least_shoved = -1;
  for (int from = 0; from < bearing.wide;) {
    if (first_bearing(bearing, from, inch).set_back < 0) {
      ++from;
      continue;
    }
    int to = from;
    while (to < bearing.wide && first_bearing(bearing, to, inch).set_back >= 0) ++to;
    const int extent = to - from;
    const int ease = extent > 4 * inch ? inch : 0;
    int depth = 1 << 20;
    int depth_shoved = 1 << 20;
    for (int x = from + ease; x < to - ease; ++x) {
      depth = std::min(depth, first_bearing(bearing, x, inch).depth);
      depth_shoved = std::min(depth_shoved, first_bearing(shoved, x, inch).depth);
    }
    if (extent == bearing.wide || depth <= extent) {
      side.borne += extent;
      least = least < 0 ? depth : std::min(least, depth);
      least_shoved = least_shoved < 0 ? depth_shoved : std::min(least_shoved, depth_shoved);
    }
    from = to;
  }
  side.depth = std::max(least, 0);
  side.at_play = std::min(side.depth, std::max(least_shoved, 0));
  return side;
}

std::optional<ScannedSpan> scanned_span(const Raster& bearing, int inch) {
  ScannedSpan span;
  for (int x = 0; x < bearing.wide; ++x) {
    int filled = 0;
    int widest = 0;
    int last = -1;
    for (int y = 0; y < bearing.deep; ++y) {
      if (!bearing.at(x, y)) continue;
      if (last >= 0) widest = std::max(widest, y - last - 1);
      last = y;
      ++filled;
    }
    const bool carried = widest >= inch;
    span.carried += carried ? 1 : 0;
    span.open += carried || bearing.deep - filled >= inch ? 1 : 0;
    if (carried) span.clear = std::max(span.clear, widest);
  }
  if (span.carried == 0) return std::nullopt;
  return span;
}

ScannedBalance scanned_balance(const Raster& bearing) {
  const std::vector<Spot2> spots = row_ends(bearing);
  const Spot2 middle{bearing.wide / 2.0, bearing.deep / 2.0};
  const double w = bearing.wide;
  const double d = bearing.deep;
  const std::vector<Spot2> corners{{0, 0}, {w, 0}, {w, d}, {0, d}};
  ScannedBalance balance;
  balance.balanced = strictly_inside(spots, middle);
  balance.beyond = distance_to_hull(spots, middle);
  for (const Spot2 corner : corners)
    balance.overhang = std::max(balance.overhang, distance_to_hull(spots, corner));
  balance.ratio = least_ratio(spots, middle, corners);
  return balance;
}

double scanned_hollow(const Raster& filled) {
  double widest = 0;
  // Centres at whole and half cells; the nearest filled cell or border decides.
  for (int cy = 1; cy < 2 * filled.deep; ++cy)
    for (int cx = 1; cx < 2 * filled.wide; ++cx) {
      const double x = cx / 2.0;
      const double y = cy / 2.0;
      double radius = std::min({x, y, filled.wide - x, filled.deep - y});
      if (2 * radius <= widest) continue;
      for (int i = 0; i < filled.deep && 2 * radius > widest; ++i)
        for (int k = 0; k < filled.wide; ++k)
          if (filled.at(k, i)) {
            const double dx = std::max({k - x, 0.0, x - k - 1});
            const double dy = std::max({i - y, 0.0, y - i - 1});
            radius = std::min(radius, std::hypot(dx, dy));
          }
      widest = std::max(widest, 2 * radius);
    }
  return widest;
}

}  // namespace berthwright::oracle
