#include "geometry/minkowski.h"

#include <algorithm>
#include <ranges>
#include <span>

namespace berthwright {
namespace {

bool is_convex(const Polygon& polygon) {
  const auto ring = polygon.vertices();
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (cross(ring[i], ring[(i + 1) % ring.size()], ring[(i + 2) % ring.size()]) < 0) return false;
  return true;
}

std::int64_t turn(Vector from, Vector to) { return cross(Point{}, Point{} + from, Point{} + to); }

/// A convex polygon that a ring is walked round with.
class Tool {
 public:
  explicit Tool(const Polygon& polygon) : corners_(polygon.vertices()) {}

  Vector at(std::size_t corner) const { return corners_[corner] - Point{}; }
  std::size_t after(std::size_t corner) const { return corner + 1 == corners_.size() ? 0 : corner + 1; }
  std::size_t before(std::size_t corner) const { return (corner == 0 ? corners_.size() : corner) - 1; }

  /// The corner farthest to the right of that direction; of two the later one.
  std::size_t right_of(Vector direction) const {
    std::size_t corner = 0;
    while (turn(edge_from(before(corner)), direction) < 0 || turn(direction, edge_from(corner)) <= 0)
      ++corner;
    return corner;
  }

 private:
  Vector edge_from(std::size_t corner) const { return corners_[after(corner)] - corners_[corner]; }

  std::span<const Point> corners_;
};

// The convolution of Guibas, Ramshaw and Stolfi (1983, from memory): each edge of the ring, moved by the
// corner of the tool at its right, and at each corner the edges of the tool between those of the two
// directions, forward where the ring turns left and back where it turns right. It winds round a place as
// often as the ring's left side falls apart within the mirrored tool there, less the holes that the tool
// covers.
void add_convolution(std::vector<Edge>& border, const std::vector<Point>& ring, const Tool& tool) {
  std::size_t held = tool.right_of(ring.front() - ring.back());
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point here = ring[i];
    const Point next = ring[(i + 1) % ring.size()];
    const bool left = cross(ring[(i == 0 ? ring.size() : i) - 1], here, next) > 0;
    for (const std::size_t last = tool.right_of(next - here); held != last;) {
      const std::size_t now = left ? tool.after(held) : tool.before(held);
      border.push_back({here + tool.at(held), here + tool.at(now)});
      held = now;
    }
    border.push_back({here + tool.at(held), next + tool.at(held)});
  }
}

std::vector<Point> left_inside(const Polygon& outer) {
  return {outer.vertices().begin(), outer.vertices().end()};
}

std::vector<Point> left_outside(const Polygon& hole) {
  const auto backward = hole.vertices() | std::views::reverse;
  return {backward.begin(), backward.end()};
}

// Into any other hole the tool does not go, and no tool covers a hole that is larger than it.
bool leaves_of(const Rect& hole, const Rect& tool) {
  return hole.width() > tool.width() && hole.height() > tool.height();
}

}  // namespace

std::vector<Edge> border_of_swept(const Region& region, const Polygon& polygon) {
  if (!is_convex(polygon)) return guest_border_of_swept(region, polygon);
  const Tool tool(polygon);
  std::vector<Edge> border;
  for (const Face& face : region.faces()) {
    add_convolution(border, left_inside(face.outer), tool);
    for (const Polygon& hole : face.holes)
      if (leaves_of(hole.bounds(), polygon.bounds())) add_convolution(border, left_outside(hole), tool);
  }
  return border;
}

}  // namespace berthwright
