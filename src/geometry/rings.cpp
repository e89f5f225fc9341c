#include <algorithm>
#include <optional>
#include <stdexcept>

#include "geometry/overlay.h"
#include "geometry/ring.h"

namespace berthwright {
namespace {

struct Spoke {
  std::size_t edge;
  bool leaves;
};

// The direction of a spoke, as the angle after straight down.
bool turns_before(Point centre, Point a, Point b) {
  const bool a_right = centre < a;
  const bool b_right = centre < b;
  return a_right != b_right ? a_right : cross(centre, a, b) > 0;
}

// For each edge the one after it around the same connected interior: the first clockwise from the way back.
std::vector<std::size_t> successors(std::span<const Edge> edges) {
  std::vector<std::pair<Point, Spoke>> spokes;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    spokes.push_back({edges[i].from, {i, true}});
    spokes.push_back({edges[i].to, {i, false}});
  }
  const auto tip = [&](const Spoke& s) { return s.leaves ? edges[s.edge].to : edges[s.edge].from; };
  std::ranges::sort(spokes, [&](const auto& a, const auto& b) {
    if (a.first != b.first) return a.first < b.first;
    return turns_before(a.first, tip(a.second), tip(b.second));
  });
  std::vector<std::size_t> next(edges.size());
  for (std::size_t begin = 0; begin < spokes.size();) {
    std::size_t end = begin;
    while (end < spokes.size() && spokes[end].first == spokes[begin].first) ++end;
    for (std::size_t i = begin; i < end; ++i) {
      if (spokes[i].second.leaves) continue;
      const Spoke& after = spokes[i == begin ? end - 1 : i - 1].second;
      if (!after.leaves) throw std::logic_error("edges that bound nothing");
      next[spokes[i].second.edge] = after.edge;
    }
    begin = end;
  }
  return next;
}

// A closed walk along the border of one connected interior, split into simple rings: at most one of them
// runs counter-clockwise around that interior, the others are holes.
struct Walk {
  std::vector<std::size_t> edges;
  std::vector<Point> outer;  // empty when all are holes
  std::vector<std::vector<Point>> holes;
  Point least;
  std::size_t face = 0;
};

void add_ring(Walk& walk, std::vector<Point> ring) {
  const Int128 area = doubled_area(ring);
  if (area == 0 || (area > 0 && !walk.outer.empty())) throw std::logic_error("edges that bound nothing");
  if (area > 0)
    walk.outer = std::move(ring);
  else
    walk.holes.push_back(std::move(ring));
}

void split_into_rings(Walk& walk, std::span<const Edge> edges) {
  std::vector<Point> visited;
  for (const std::size_t e : walk.edges) visited.push_back(edges[e].from);
  walk.least = *std::ranges::min_element(visited);
  std::vector<std::size_t> order(visited.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::ranges::sort(order, {}, [&](std::size_t i) { return visited[i]; });
  std::vector<std::size_t> name(visited.size());  // equal corners carry one name
  for (std::size_t k = 0; k < order.size(); ++k)
    name[order[k]] = k > 0 && visited[order[k]] == visited[order[k - 1]] ? name[order[k - 1]] : k;

  constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
  std::vector<std::size_t> place(visited.size(), nowhere);
  std::vector<std::size_t> stack;
  for (std::size_t i = 0; i < visited.size(); ++i) {
    if (const std::size_t from = place[name[i]]; from != nowhere) {
      std::vector<Point> ring;
      for (std::size_t k = from; k < stack.size(); ++k) {
        ring.push_back(visited[stack[k]]);
        place[name[stack[k]]] = nowhere;
      }
      stack.resize(from);
      add_ring(walk, std::move(ring));
    }
    place[name[i]] = stack.size();
    stack.push_back(i);
  }
  std::vector<Point> ring;
  for (const std::size_t i : stack) ring.push_back(visited[i]);
  add_ring(walk, std::move(ring));
}

std::vector<Walk> walks(std::span<const Edge> edges) {
  const std::vector<std::size_t> next = successors(edges);
  std::vector<bool> seen(edges.size());
  std::vector<Walk> result;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (seen[i]) continue;
    Walk walk;
    for (std::size_t e = i; !seen[e]; e = next[e]) {
      seen[e] = true;
      walk.edges.push_back(e);
    }
    split_into_rings(walk, edges);
    result.push_back(std::move(walk));
  }
  std::ranges::sort(result, {}, &Walk::least);
  return result;
}

// Of two edges that pass below a place and do not cross: whether the first passes nearer.
bool above(Edge a, Edge b) {
  if (a.to < a.from) std::swap(a.from, a.to);
  if (b.to < b.from) std::swap(b.from, b.to);
  if (a.from.x >= b.from.x) {
    const std::int64_t side = cross(b.from, b.to, a.from);
    return side != 0 ? side > 0 : cross(b.from, b.to, a.to) > 0;
  }
  const std::int64_t side = cross(a.from, a.to, b.from);
  return side != 0 ? side < 0 : cross(a.from, a.to, b.to) < 0;
}

// The edge straight below the places just left of `corner`.
std::size_t edge_below(Point corner, std::span<const Edge> edges) {
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const auto [low, high] = std::minmax(edges[i].from, edges[i].to);
    if (low.x >= corner.x || corner.x > high.x || cross(low, high, corner) <= 0) continue;
    if (!found || above(edges[i], edges[*found])) found = i;
  }
  if (!found) throw std::logic_error("a hole in nothing");
  return *found;
}

}  // namespace

Region bounded_by(std::span<const Edge> edges) {
  std::vector<Walk> all = walks(edges);
  std::vector<std::size_t> walk_of(edges.size());
  for (std::size_t w = 0; w < all.size(); ++w)
    for (const std::size_t e : all[w].edges) walk_of[e] = w;
  std::vector<Face> faces;
  for (Walk& walk : all) {
    if (!walk.outer.empty()) {
      walk.face = faces.size();
      faces.push_back({Polygon::promised(std::move(walk.outer)), {}});
    } else {
      walk.face = all[walk_of[edge_below(walk.least, edges)]].face;
    }
    for (auto& hole : walk.holes) faces[walk.face].holes.push_back(Polygon::promised(std::move(hole)));
  }
  return Region::from_faces(std::move(faces));
}

}  // namespace berthwright
