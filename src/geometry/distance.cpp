#include <algorithm>
#include <optional>
#include <stdexcept>
#include <tuple>

#include <berthwright/geometry/solid.h>

#include "geometry/ring.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

std::vector<Point> corners(std::span<const Edge> edges) {
  std::vector<Point> result;
  for (const Edge& edge : edges) result.push_back(edge.from);
  std::ranges::sort(result);
  result.erase(std::unique(result.begin(), result.end()), result.end());
  return result;
}

bool cross_inside(const Edge& s, const Edge& t) {
  const auto opposite = [](std::int64_t a, std::int64_t b) { return (a < 0 && b > 0) || (a > 0 && b < 0); };
  return opposite(cross(s.from, s.to, t.from), cross(s.from, s.to, t.to)) &&
         opposite(cross(t.from, t.to, s.from), cross(t.from, t.to, s.to));
}

bool boxes_meet(const Edge& a, const Edge& b) {
  return std::min(a.from.x, a.to.x) <= std::max(b.from.x, b.to.x) &&
         std::min(b.from.x, b.to.x) <= std::max(a.from.x, a.to.x) &&
         std::min(a.from.y, a.to.y) <= std::max(b.from.y, b.to.y) &&
         std::min(b.from.y, b.to.y) <= std::max(a.from.y, a.to.y);
}

// The least point of the meet of two closed regions is a corner of one of them or a crossing of their
// borders.
std::optional<Point> least_common(const Region& a, const Region& b) {
  if (!meets(a.bounds(), b.bounds())) return std::nullopt;
  const std::vector<Edge> ours = edges(a);
  const std::vector<Edge> theirs = edges(b);
  std::optional<Point> least;
  const auto offer = [&](Point p) {
    if (!least || p < *least) least = p;
  };
  const auto offer_corners_in = [&](const Region& region, std::span<const Edge> of) {
    const Rect box = region.bounds();
    for (const Point& p : corners(of))
      if ((!least || p < *least) && meets({p, p}, box) && region.side_of(p) != Side::outside) offer(p);
  };
  offer_corners_in(b, ours);
  offer_corners_in(a, theirs);
  for (const Edge& s : ours)
    for (const Edge& t : theirs)
      if (boxes_meet(s, t) && cross_inside(s, t)) offer(crossing_point(s.from, s.to, t.from, t.to));
  return least;
}

// No more than the squared distance of a point from an edge.
std::int64_t squared_gap(Point p, const Edge& edge) {
  const auto gap = [](Length low, Length high, Length at) {
    if (low > high) std::swap(low, high);
    return std::max({low - at, at - high, Length{}}).ticks();
  };
  const std::int64_t x = gap(edge.from.x, edge.to.x, p.x);
  const std::int64_t y = gap(edge.from.y, edge.to.y, p.y);
  return x * x + y * y;
}

class Least {
 public:
  template <class Order>
  void offer(Point p, const Edge& edge, Order order) {
    if (found_ && squared_gap(p, edge) > enough_) return;
    const SquaredLength squared = squared_distance(p, edge);
    if (found_ && squared > squared_) return;
    const auto [from, to] = order(p, nearest_point(p, edge));
    if (found_ && squared == squared_ && std::tie(from_, to_) <= std::tie(from, to)) return;
    found_ = true;
    squared_ = squared;
    enough_ = squared.ceiling().ticks() * squared.ceiling().ticks();
    from_ = from;
    to_ = to;
  }
  Nearest nearest() const { return {squared_, {from_, Length{}}, {to_, Length{}}}; }

 private:
  bool found_ = false;
  SquaredLength squared_;
  std::int64_t enough_ = 0;
  Point from_;
  Point to_;
};

}  // namespace

Nearest nearest(const Region& a, const Region& b) {
  if (a.empty() || b.empty()) throw std::invalid_argument("nothing is near an empty region");
  if (const std::optional<Point> shared = least_common(a, b))
    return {SquaredLength(), {*shared, Length{}}, {*shared, Length{}}};
  const std::vector<Edge> ours = edges(a);
  const std::vector<Edge> theirs = edges(b);
  Least least;
  for (const Point& p : corners(ours))
    for (const Edge& edge : theirs)
      least.offer(p, edge, [](Point at, Point foot) { return std::pair(at, foot); });
  for (const Point& p : corners(theirs))
    for (const Edge& edge : ours)
      least.offer(p, edge, [](Point at, Point foot) { return std::pair(foot, at); });
  return least.nearest();
}

Nearest nearest(const Solid& a, const Solid& b) {
  Nearest result = nearest(a.outline(), b.outline());
  if (a.top() < b.base()) {
    result.from.z = a.top();
    result.to.z = b.base();
  } else if (b.top() < a.base()) {
    result.from.z = a.base();
    result.to.z = b.top();
  } else {
    result.from.z = result.to.z = std::max(a.base(), b.base());
  }
  result.squared = result.squared.plus_square_of(result.to.z - result.from.z);
  return result;
}

}  // namespace berthwright
