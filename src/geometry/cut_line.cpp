#include <berthwright/geometry/cut_line.h>

#include <algorithm>
#include <stdexcept>

namespace berthwright {
namespace {

// Along the line and across it, whichever way it runs.
std::int64_t along_of(Point p, const CutLine& line) {
  return (line.along == CutLine::Along::x ? p.x : p.y).ticks();
}
std::int64_t across_of(Point p, const CutLine& line) {
  return (line.along == CutLine::Along::x ? p.y : p.x).ticks();
}

struct WholeCrossing {
  std::int64_t floor;
  std::int64_t ceiling;
};

// Where the edge meets the line; `across` differs between its ends and the line lies between them.
WholeCrossing crossing_of(const Edge& edge, const CutLine& line) {
  const std::int64_t rise = across_of(edge.to, line) - across_of(edge.from, line);
  const std::int64_t span = along_of(edge.to, line) - along_of(edge.from, line);
  Int128 part = Int128{span} * (line.at.ticks() - across_of(edge.from, line));
  Int128 whole = rise;
  if (whole < 0) part = -part, whole = -whole;
  Int128 quotient = part / whole;
  if (quotient * whole > part) --quotient;
  const std::int64_t floor = along_of(edge.from, line) + static_cast<std::int64_t>(quotient);
  return {floor, quotient * whole == part ? floor : floor + 1};
}

// The region just above the line, or just below it, followed down to the line. Rounding keeps the order, so
// the lower and the upper bounds may be sorted apart: the n-th of each belong to the n-th crossing.
void add_one_side(std::vector<Interval>& out, const std::vector<Edge>& border, const CutLine& line,
                  bool above) {
  std::vector<std::int64_t> floors;
  std::vector<std::int64_t> ceilings;
  const auto beyond = [&](Point p) {
    return above ? across_of(p, line) > line.at.ticks() : across_of(p, line) < line.at.ticks();
  };
  for (const Edge& edge : border) {
    if (beyond(edge.from) == beyond(edge.to)) continue;
    const WholeCrossing crossing = crossing_of(edge, line);
    floors.push_back(crossing.floor);
    ceilings.push_back(crossing.ceiling);
  }
  std::ranges::sort(floors);
  std::ranges::sort(ceilings);
  for (std::size_t i = 0; i + 1 < floors.size(); i += 2)
    out.push_back({Length::from_ticks(floors[i]), Length::from_ticks(ceilings[i + 1])});
}

std::vector<Interval> joined(std::vector<Interval> intervals) {
  std::ranges::sort(intervals, {}, &Interval::from);
  std::vector<Interval> out;
  for (const Interval& interval : intervals) {
    if (!out.empty() && interval.from <= out.back().to)
      out.back().to = std::max(out.back().to, interval.to);
    else
      out.push_back(interval);
  }
  return out;
}

// What of the region is not before the line.
Region back_part(const Region& region, const CutLine& line) {
  Rect half = region.bounds();
  switch (line.along) {
    case CutLine::Along::x:
      if (half.low.y >= line.at) return region;
      if (half.high.y <= line.at) return {};
      half.low.y = line.at;
      break;
    case CutLine::Along::y:
      if (half.high.x <= line.at) return region;
      if (half.low.x >= line.at) return {};
      half.high.x = line.at;
      break;
  }
  return common(region, Region(half));
}

}  // namespace

std::vector<Interval> cut(const Region& region, const CutLine& line) {
  const std::vector<Edge> border = edges(region);
  std::vector<Interval> intervals;
  add_one_side(intervals, border, line, true);
  add_one_side(intervals, border, line, false);
  return joined(std::move(intervals));
}

std::vector<Rect> cut(const Solid& solid, const CutLine& line) {
  std::vector<Interval> intervals;
  add_one_side(intervals, edges(solid.outline()), line, line.along == CutLine::Along::x);
  std::vector<Rect> boxes;
  for (const Interval& part : joined(std::move(intervals)))
    if (part.from < part.to) boxes.push_back({{part.from, solid.base()}, {part.to, solid.top()}});
  return boxes;
}

std::vector<Interval> behind(const Region& region, const CutLine& line) {
  if (region.empty()) return {};
  std::vector<Interval> intervals;
  const Region back = back_part(region, line);
  for (const Face& face : back.faces()) {
    const Rect bounds = face.outer.bounds();
    if (line.along == CutLine::Along::x)
      intervals.push_back({bounds.low.x, bounds.high.x});
    else
      intervals.push_back({bounds.low.y, bounds.high.y});
  }
  return joined(std::move(intervals));
}

Length distance_behind(const Region& region, const CutLine& line) {
  const Rect bounds = region.bounds();
  const Length nearest = line.along == CutLine::Along::x ? bounds.low.y - line.at : line.at - bounds.high.x;
  const Length farthest_off =
      line.along == CutLine::Along::x ? bounds.high.y - line.at : line.at - bounds.low.x;
  if (farthest_off < Length{}) throw std::invalid_argument("the region lies before the line");
  return std::max(nearest, Length{});
}

}  // namespace berthwright
