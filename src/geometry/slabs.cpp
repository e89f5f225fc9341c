#include "geometry/slabs.h"

#include <algorithm>

namespace berthwright {
namespace {

// Vertices this close across the heading (in ticks) count as one cut: far above the noise of doubles, far
// below what rounding a corner to the lattice costs anyway.
constexpr double same_cut = 1e-3;

struct Along {
  double x;
  double y;
};

Along unit_of(const Heading& heading) {
  const double t = heading.half_tangent;
  const double whole = 1 + t * t;
  const double cosine = (1 - t * t) / whole;
  const double sine = 2 * t / whole;
  return heading.quarter ? Along{-sine, cosine} : Along{cosine, sine};
}

struct TurnedEdge {
  Spot from;
  Spot to;
};

/// An edge's way through one slab; what lies above it is free when `opens`.
struct Crossing {
  std::size_t slab;
  double left;
  double right;
  bool opens;
};

std::vector<TurnedEdge> turned_edges(const Border& border, const Heading& heading) {
  std::vector<TurnedEdge> result;
  result.reserve(border.edges.size());
  for (const Edge& edge : border.edges)
    result.push_back({turned(border, edge.from, heading), turned(border, edge.to, heading)});
  return result;
}

std::vector<double> cuts_of(const std::vector<TurnedEdge>& edges) {
  std::vector<double> all;
  all.reserve(edges.size());
  for (const TurnedEdge& edge : edges) all.push_back(edge.from.x);
  std::sort(all.begin(), all.end());
  std::vector<double> cuts;
  cuts.reserve(all.size());
  for (const double x : all)
    if (cuts.empty() || x - cuts.back() > same_cut) cuts.push_back(x);
  return cuts;
}

std::size_t cut_at(const std::vector<double>& cuts, double x) {
  const auto above = std::upper_bound(cuts.begin(), cuts.end(), x);
  return static_cast<std::size_t>(above - cuts.begin()) - 1;
}

std::vector<Crossing> crossings_of(const std::vector<TurnedEdge>& edges, const std::vector<double>& cuts) {
  std::vector<Crossing> result;
  result.reserve(edges.size() * 4);
  for (const TurnedEdge& edge : edges) {
    const std::size_t from = cut_at(cuts, edge.from.x);
    const std::size_t to = cut_at(cuts, edge.to.x);
    if (from == to) continue;
    const bool opens = from < to;
    const Spot left = opens ? edge.from : edge.to;
    const Spot right = opens ? edge.to : edge.from;
    const std::size_t last = std::max(from, to);
    const double slope = (right.y - left.y) / (right.x - left.x);
    double height = left.y;
    for (std::size_t slab = std::min(from, to); slab < last; ++slab) {
      const double next = slab + 1 == last ? right.y : left.y + slope * (cuts[slab + 1] - left.x);
      result.push_back({slab, height, next, opens});
      height = next;
    }
  }
  std::sort(result.begin(), result.end(), [](const Crossing& a, const Crossing& b) {
    if (a.slab != b.slab) return a.slab < b.slab;
    const double a_twice = a.left + a.right;
    const double b_twice = b.left + b.right;
    if (a_twice != b_twice) return a_twice < b_twice;
    return a.opens < b.opens;  // faces that touch along an edge stay two rooms
  });
  return result;
}

void add_rooms(Slabs& slabs, const std::vector<Crossing>& crossings) {
  std::size_t at = 0;
  for (std::size_t slab = 0; slab + 1 < slabs.cuts.size(); ++slab) {
    slabs.starts.push_back(slabs.rooms.size());
    int depth = 0;
    for (; at < crossings.size() && crossings[at].slab == slab; ++at) {
      const Crossing& here = crossings[at];
      if (depth > 0) {
        const Crossing& below = crossings[at - 1];
        slabs.rooms.push_back({below.left, below.right, here.left, here.right});
      }
      depth += here.opens ? 1 : -1;
    }
  }
  slabs.starts.push_back(slabs.rooms.size());
}

// Rooms are sorted from low to high on both sides of a cut, so the first neighbour only moves up.
void join_rooms(Slabs& slabs) {
  for (std::size_t slab = 0; slab + 2 < slabs.starts.size(); ++slab) {
    std::size_t first = slabs.starts[slab + 1];
    const std::size_t end = slabs.starts[slab + 2];
    for (std::size_t i = slabs.starts[slab]; i < slabs.starts[slab + 1]; ++i) {
      Room& room = slabs.rooms[i];
      while (first < end && slabs.rooms[first].high_left <= room.low_right) ++first;
      room.next_begin = room.next_end = first;
      while (room.next_end < end && slabs.rooms[room.next_end].low_left < room.high_right) ++room.next_end;
    }
  }
}

}  // namespace

Border border_of(const Region& region) {
  Border border{edges(region), {}};
  if (border.edges.empty()) return border;
  border.origin = border.edges.front().from;
  for (const Edge& edge : border.edges) {
    border.origin.x = std::min(border.origin.x, edge.from.x);
    border.origin.y = std::min(border.origin.y, edge.from.y);
  }
  return border;
}

Spot turned(const Border& border, Point point, const Heading& heading) {
  const Vector from_origin = point - border.origin;
  const auto x = static_cast<double>(from_origin.x.ticks());
  const auto y = static_cast<double>(from_origin.y.ticks());
  const Along along = unit_of(heading);
  return {along.x * x + along.y * y, along.x * y - along.y * x};
}

Spot unturned(const Border& border, Spot spot, const Heading& heading) {
  const Along along = unit_of(heading);
  return {along.x * spot.x - along.y * spot.y + static_cast<double>(border.origin.x.ticks()),
          along.y * spot.x + along.x * spot.y + static_cast<double>(border.origin.y.ticks())};
}

Slabs slabs_across(const Border& border, const Heading& heading) {
  const std::vector<TurnedEdge> edges = turned_edges(border, heading);
  Slabs slabs;
  slabs.cuts = cuts_of(edges);
  const std::vector<Crossing> crossings = crossings_of(edges, slabs.cuts);
  slabs.rooms.reserve(crossings.size() / 2);
  add_rooms(slabs, crossings);
  join_rooms(slabs);
  return slabs;
}

}  // namespace berthwright
