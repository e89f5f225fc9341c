#include <berthwright/geometry/polygon.h>

#include <algorithm>
#include <array>
#include <optional>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "geometry/ring.h"

namespace berthwright {
namespace {

struct NumberedCorner {
  Point at;
  std::size_t number;  // as given, from 1
};

bool straight(Point before, Point here, Point after) {
  if (cross(before, here, after) != 0) return false;
  const Vector in = here - before;
  const Vector out = after - here;
  return Int128{in.x.ticks()} * out.x.ticks() + Int128{in.y.ticks()} * out.y.ticks() > 0;
}

// Without repeated and straight corners; a spike stays.
std::vector<NumberedCorner> real_corners(const std::vector<NumberedCorner>& given) {
  std::vector<NumberedCorner> kept;
  for (const NumberedCorner& corner : given) {
    if (!kept.empty() && kept.back().at == corner.at) continue;
    while (kept.size() > 1 && straight(kept[kept.size() - 2].at, kept.back().at, corner.at)) kept.pop_back();
    kept.push_back(corner);
  }
  std::size_t first = 0;
  for (bool changed = true; changed && kept.size() - first > 2;) {
    const NumberedCorner& last = kept.back();
    changed = true;
    if (last.at == kept[first].at || straight(kept[kept.size() - 2].at, last.at, kept[first].at))
      kept.pop_back();
    else if (straight(last.at, kept[first].at, kept[first + 1].at))
      ++first;
    else
      changed = false;
  }
  kept.erase(kept.begin(), kept.begin() + static_cast<std::ptrdiff_t>(first));
  return kept;
}

// Counter-clockwise from the least corner.
std::vector<Point> canonical(std::vector<Point> ring) {
  if (doubled_area(ring) < 0) std::ranges::reverse(ring);
  std::ranges::rotate(ring, std::ranges::min_element(ring));
  return ring;
}

std::vector<Point> places(const std::vector<NumberedCorner>& corners) {
  std::vector<Point> result;
  for (const NumberedCorner& corner : corners) result.push_back(corner.at);
  return result;
}

// The first point that two closed segments have in common (rounded when they cross off the lattice).
std::optional<Point> meeting(Point a, Point b, Point c, Point d) {
  std::vector<Point> shared;
  for (const auto& [p, q, r] : {std::array{c, d, a}, {c, d, b}, {a, b, c}, {a, b, d}})
    if (cross(p, q, r) == 0 && between(p, q, r)) shared.push_back(r);
  if (!shared.empty()) return *std::ranges::min_element(shared);
  const std::int64_t ca = cross(c, d, a);
  const std::int64_t cb = cross(c, d, b);
  const std::int64_t ac = cross(a, b, c);
  const std::int64_t ad = cross(a, b, d);
  if ((ca > 0) == (cb > 0) || (ac > 0) == (ad > 0)) return std::nullopt;
  return crossing_point(a, b, c, d);
}

struct Fault {
  std::size_t first;
  std::size_t second;
  Point at;
};

// The least pair of edges that share more than the corner between neighbours. A sweep along x.
std::optional<Fault> fault_of(std::span<const Point> ring) {
  const std::size_t n = ring.size();
  const auto end = [&](std::size_t i) { return ring[(i + 1) % n]; };
  const auto left = [&](std::size_t i) { return std::min(ring[i].x, end(i).x); };
  const auto right = [&](std::size_t i) { return std::max(ring[i].x, end(i).x); };
  std::vector<std::size_t> order(n);
  for (std::size_t i = 0; i < n; ++i) order[i] = i;
  std::ranges::sort(order, {}, [&](std::size_t i) { return std::pair(left(i), i); });
  std::vector<std::size_t> open;
  std::optional<Fault> found;
  for (const std::size_t i : order) {
    std::erase_if(open, [&](std::size_t j) { return right(j) < left(i); });
    for (const std::size_t j : open) {
      const auto [low, high] = std::minmax(i, j);
      if (found && std::pair(found->first, found->second) < std::pair(low, high)) continue;
      std::optional<Point> at;
      if (high == low + 1 || (low == 0 && high == n - 1)) {
        // Neighbours share a corner; only a spike shares more.
        const std::size_t corner = high == low + 1 ? high : 0;
        const Point before = ring[(corner + n - 1) % n];
        if (cross(before, ring[corner], end(corner)) == 0) at = ring[corner];
      } else {
        at = meeting(ring[low], end(low), ring[high], end(high));
      }
      if (at) found = Fault{low, high, *at};
    }
    open.push_back(i);
  }
  return found;
}

Problem crossing(const Fault& fault, const std::vector<NumberedCorner>& corners) {
  const auto edge = [&](std::size_t i) {
    return "the edge from corner " + std::to_string(corners[i].number) + " to corner " +
           std::to_string(corners[(i + 1) % corners.size()].number);
  };
  const auto where = [](Length length) { return both(length, Unit::inch, {.feet = false}); };
  return {.id = "polygon.crossing",
          .pointer = "",
          .message = edge(fault.first) + " and " + edge(fault.second) + " meet at x " + where(fault.at.x) +
                     ", y " + where(fault.at.y),
          .found = "",
          .allowed = "an outline that neither crosses nor touches itself",
          .cure = "list the corners in the order in which a walk round the edge meets them"};
}

}  // namespace

Polygon::Polygon(std::vector<Point> vertices)
    : vertices_(std::move(vertices)), bounds_{vertices_.front(), vertices_.front()} {
  for (const Point& p : vertices_) bounds_ = hull(bounds_, {p, p});
}

Result<Polygon> Polygon::checked(std::vector<Point> corners) {
  std::vector<NumberedCorner> given;
  for (std::size_t i = 0; i < corners.size(); ++i) given.push_back({corners[i], i + 1});
  const std::vector<NumberedCorner> kept = real_corners(given);
  const bool flat = kept.size() < 3 || std::ranges::all_of(kept, [&](const NumberedCorner& corner) {
                      return cross(kept[0].at, kept[1].at, corner.at) == 0;
                    });
  if (flat)
    return Problem{.id = "polygon.flat",
                   .pointer = "",
                   .message = "the outline encloses no area: it has fewer than three real corners",
                   .found = std::to_string(corners.size()) + " corners",
                   .allowed = "at least three corners that do not lie in one line",
                   .cure = "list every corner that a walk round the edge meets"};
  std::vector<Point> ring = places(kept);
  if (const std::optional<Fault> fault = fault_of(ring)) return crossing(*fault, kept);
  return Polygon(canonical(std::move(ring)));
}

Polygon Polygon::promised(std::vector<Point> corners) {
  std::vector<NumberedCorner> given;
  for (const Point& corner : corners) given.push_back({corner, 0});
  corners = places(real_corners(given));
  if (corners.size() < 3) throw std::logic_error("an outline without area was promised");
  return Polygon(canonical(std::move(corners)));
}

Polygon Polygon::rectangle(const Rect& rect) {
  if (rect.low.x >= rect.high.x || rect.low.y >= rect.high.y)
    throw std::invalid_argument("a rectangle needs positive sides");
  return Polygon({rect.low, {rect.high.x, rect.low.y}, rect.high, {rect.low.x, rect.high.y}});
}

Area Polygon::area() const { return Area::from_doubled(doubled_area(vertices_)); }

Side Polygon::side_of(Point point) const {
  bool inside = false;
  for (std::size_t i = 0; i < vertices_.size(); ++i) {
    const Point a = vertices_[i];
    const Point b = vertices_[(i + 1) % vertices_.size()];
    const std::int64_t turn = cross(a, b, point);
    if (turn == 0 && between(a, b, point)) return Side::boundary;
    if ((a.y > point.y) != (b.y > point.y) && (turn > 0) == (b.y > a.y)) inside = !inside;
  }
  return inside ? Side::inside : Side::outside;
}

bool Polygon::is_rectilinear() const {
  for (std::size_t i = 0; i < vertices_.size(); ++i) {
    const Vector way = vertices_[(i + 1) % vertices_.size()] - vertices_[i];
    if (way.x != Length{} && way.y != Length{}) return false;
  }
  return true;
}

}  // namespace berthwright
