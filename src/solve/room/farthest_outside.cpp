#include "solve/room/farthest_outside.h"

#include <algorithm>

#include "geometry/segment.h"

namespace berthwright {

namespace {

bool is_convex(const Polygon& polygon) {
  const auto v = polygon.vertices();
  for (std::size_t i = 0; i < v.size(); ++i)
    if (cross(v[i], v[(i + 1) % v.size()], v[(i + 2) % v.size()]) < 0) return false;
  return true;
}

class Search {
 public:
  Search(const Polygon& room, Point first)
      : room_(room), walls_(edges(Region(room))), best_{depth(first), first} {}

  SquaredLength depth(Point point) const {
    if (room_.side_of(point) != Side::outside) return {};
    SquaredLength least = squared_distance(point, walls_.front());
    for (const Edge& wall : walls_) least = std::min(least, squared_distance(point, wall));
    return least;
  }

  void offer(Point point) {
    const SquaredLength found = depth(point);
    if (found > best_.depth) best_ = {found, point};
  }

  // Nothing in the box lies deeper than its middle does by more than the way from there to a corner.
  void search(const Region& part, const Rect& box) {
    if (!overlaps(part, Region(box))) return;
    const Point middle{half(box.low.x + box.high.x), half(box.low.y + box.high.y)};
    if (part.side_of(middle) != Side::outside) offer(middle);
    const Length to_corner = half(box.width()) + half(box.height()) + 2 * one_tick;
    const Length bound = depth(middle).ceiling() + to_corner;
    if (2 * to_corner <= slack || bound <= best_.depth.ceiling() + slack) {
      greatest_bound_ = std::max(greatest_bound_, bound);
      return;
    }
    search(part, {box.low, middle});
    search(part, {{middle.x, box.low.y}, {box.high.x, middle.y}});
    search(part, {{box.low.x, middle.y}, {middle.x, box.high.y}});
    search(part, {middle, box.high});
  }

  Outlier best() const { return best_; }
  Outlier bound() const { return {std::max(best_.depth, SquaredLength::of(greatest_bound_)), best_.where}; }

 private:
  static constexpr Length slack = Length::inches(1, 64);
  const Polygon& room_;
  std::vector<Edge> walls_;
  Outlier best_;
  Length greatest_bound_;
};

}  // namespace

Outlier farthest_outside(const Region& part, const Polygon& room) {
  Search search(room, part.faces().front().outer.vertices().front());
  for (const Edge& edge : edges(part)) search.offer(edge.from);
  if (is_convex(room)) return search.best();
  search.search(part, part.bounds());
  return search.bound();
}

}  // namespace berthwright
