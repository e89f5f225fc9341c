#include "geometry/light.h"

#include <algorithm>
#include <array>
#include <vector>

#include "geometry/ring.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

/// A point of the frame's border, and on which side: 0 low y, 1 high x, 2 high y, 3 low x, counter-clockwise.
struct FramePoint {
  Point at;
  int side;
};

// Where the ray from `eye`, inside the frame, leaves it.
FramePoint leaving(Point eye, Vector along, const Rect& frame) {
  const Length to_x = (along.x > Length{} ? frame.high.x : frame.low.x) - eye.x;
  const Length to_y = (along.y > Length{} ? frame.high.y : frame.low.y) - eye.y;
  const bool across_x =
      along.x != Length{} && (along.y == Length{} || Int128{abs(to_x).ticks()} * abs(along.y).ticks() <=
                                                         Int128{abs(to_y).ticks()} * abs(along.x).ticks());
  if (across_x)
    return {{eye.x + to_x, eye.y + rounded_part(along.y, to_x.ticks(), along.x.ticks())},
            along.x > Length{} ? 1 : 3};
  return {{eye.x + rounded_part(along.x, to_y.ticks(), along.y.ticks()), eye.y + to_y},
          along.y > Length{} ? 2 : 0};
}

// Appends the corners of the frame between two of its points less than a full turn apart.
void add_frame(std::vector<Point>& ring, const FramePoint& from, const FramePoint& to, const Rect& frame) {
  const std::array<Point, 4> ends{
      {{frame.high.x, frame.low.y}, frame.high, {frame.low.x, frame.high.y}, frame.low}};
  ring.push_back(from.at);
  for (int side = from.side; side != to.side; side = (side + 1) % 4)
    ring.push_back(ends[static_cast<std::size_t>(side)]);
  ring.push_back(to.at);
}

void add_shadow(std::vector<Region>& shadows, Point eye, const Edge& edge, const Rect& frame) {
  const std::int64_t turn = cross(eye, edge.from, edge.to);
  if (turn == 0) return;
  const Point first = turn > 0 ? edge.from : edge.to;
  const Point last = turn > 0 ? edge.to : edge.from;
  std::vector<Point> ring{first};
  add_frame(ring, leaving(eye, first - eye, frame), leaving(eye, last - eye, frame), frame);
  ring.push_back(last);
  if (doubled_area(ring) > 0) shadows.emplace_back(Polygon::promised(std::move(ring)));
}

// Behind such an edge nothing of the region lies.
bool is_on_the_hull(const Edge& edge, const std::vector<Edge>& border) {
  return std::ranges::all_of(border, [&](const Edge& e) { return cross(edge.from, edge.to, e.from) >= 0; });
}

}  // namespace

Region left_of(Point through, Vector along, const Rect& frame) {
  std::vector<Point> ring;
  add_frame(ring, leaving(through, along, frame),
            leaving(through, {Length{} - along.x, Length{} - along.y}, frame), frame);
  return Polygon::promised(std::move(ring));
}

Region seen_from(Point eye, const Region& lit, const Region& free) {
  if (lit.empty()) return {};
  const std::vector<Edge> border = edges(free);
  const Rect frame = grown(hull(free.bounds(), Rect{eye, eye}), 1_in);
  const Rect reach = hull(lit.bounds(), Rect{eye, eye});
  std::vector<Region> shadows;
  for (const Edge& edge : border) {
    const Rect box{{std::min(edge.from.x, edge.to.x), std::min(edge.from.y, edge.to.y)},
                   {std::max(edge.from.x, edge.to.x), std::max(edge.from.y, edge.to.y)}};
    if (meets(box, reach) && !is_on_the_hull(edge, border)) add_shadow(shadows, eye, edge, frame);
  }
  return without(lit, united(shadows));
}

}  // namespace berthwright
