#include "geometry/free_angle.h"

#include <algorithm>
#include <map>

#include "geometry/ring.h"

namespace berthwright {
namespace {

bool is_straight_back(Point at, Point a, Point b) {
  const Vector to_a = a - at;
  const Vector to_b = b - at;
  return to_a.x.ticks() * to_b.x.ticks() + to_a.y.ticks() * to_b.y.ticks() < 0;
}

// Whether the ray to `a` comes before the ray to `b` on the turn counter-clockwise from the ray to `out`.
bool comes_first(Point at, Point out, Point a, Point b) {
  const auto beyond_half_a_turn = [&](Point p) {
    const std::int64_t side = cross(at, out, p);
    return side < 0 || (side == 0 && !is_straight_back(at, out, p));
  };
  if (beyond_half_a_turn(a) != beyond_half_a_turn(b)) return beyond_half_a_turn(b);
  return cross(at, a, b) > 0;
}

bool have_opposite_signs(std::int64_t a, std::int64_t b) { return (a < 0 && b > 0) || (a > 0 && b < 0); }

bool boxes_touch(Point a, Point b, const Edge& edge) {
  const auto apart = [](Length a0, Length a1, Length b0, Length b1) {
    return std::max(a0, a1) < std::min(b0, b1) || std::max(b0, b1) < std::min(a0, a1);
  };
  return !apart(a.x, b.x, edge.from.x, edge.to.x) && !apart(a.y, b.y, edge.from.y, edge.to.y);
}

}  // namespace

bool FreeAngle::holds(Point toward) const {
  const std::int64_t turn = cross(at, out, in);
  const std::int64_t from_out = cross(at, out, toward);
  const std::int64_t to_in = cross(at, toward, in);
  if (turn < 0) return from_out >= 0 || to_in >= 0;
  if (turn > 0 || !is_straight_back(at, out, in)) return from_out >= 0 && to_in >= 0;
  return from_out >= 0;
}

std::vector<FreeAngle> free_angles(std::span<const Edge> border) {
  struct Spokes {
    std::vector<Point> outs;
    std::vector<Point> ins;
  };
  std::map<Point, Spokes> spokes_at;
  for (const Edge& edge : border) {
    spokes_at[edge.from].outs.push_back(edge.to);
    spokes_at[edge.to].ins.push_back(edge.from);
  }
  std::vector<FreeAngle> angles;
  for (auto& [at, spokes] : spokes_at) {
    std::ranges::sort(spokes.outs);
    if (spokes.ins.empty()) continue;
    for (const Point out : spokes.outs)
      angles.push_back({at, out, *std::ranges::min_element(spokes.ins, [&at, out](Point a, Point b) {
                          return comes_first(at, out, a, b);
                        })});
  }
  return angles;
}

std::vector<FreeAngle> free_angles_at(Point place, std::span<const Edge> border) {
  std::vector<Edge> meeting;
  for (const Edge& edge : border) {
    if (cross(edge.from, edge.to, place) != 0 || !between(edge.from, edge.to, place)) continue;
    if (place != edge.from) meeting.push_back({edge.from, place});
    if (place != edge.to) meeting.push_back({place, edge.to});
  }
  std::vector<FreeAngle> angles = free_angles(meeting);
  std::erase_if(angles, [&](const FreeAngle& angle) { return angle.at != place; });
  return angles;
}

bool is_clear(Point from, Point to, std::span<const Edge> border) {
  return std::ranges::none_of(border, [&](const Edge& edge) {
    if (!boxes_touch(from, to, edge)) return false;
    const std::int64_t start = cross(from, to, edge.from);
    const std::int64_t end = cross(from, to, edge.to);
    if (start == 0 && edge.from != from && edge.from != to && between(from, to, edge.from)) return true;
    return have_opposite_signs(start, end) &&
           have_opposite_signs(cross(edge.from, edge.to, from), cross(edge.from, edge.to, to));
  });
}

}  // namespace berthwright
