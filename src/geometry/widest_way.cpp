#include <berthwright/geometry/widest_way.h>

#include <algorithm>
#include <limits>
#include <queue>

#include "geometry/border.h"
#include "geometry/remembered.h"
#include "geometry/root.h"
#include "geometry/segment.h"
#include "geometry/skeleton.h"

namespace berthwright {
namespace {

constexpr Length near = Length::from_ticks(2);
constexpr int curve_parts = 8;
constexpr double nowhere = -1;
// Clearances of the skeleton that differ by less are the same on the lattice.
constexpr double same = 2;

bool lies_on(Point p, const Edge& edge) { return squared_distance(p, edge) <= near; }

// The border cut at the ends of the start edges, so that each edge is start or none. Where the border slants,
// such an end lies on it only to within a tick or two.
std::vector<Edge> cut_at(std::vector<Edge> border, std::span<const Edge> from) {
  for (const Edge& start : from)
    for (const Point end : {start.from, start.to})
      for (std::size_t i = 0; i < border.size(); ++i) {
        const Edge edge = border[i];
        if (squared_distance(end, edge) > near || squared_distance(end, {edge.from, edge.from}) <= near ||
            squared_distance(end, {edge.to, edge.to}) <= near)
          continue;
        border[i].to = end;
        border.push_back({end, edge.to});
      }
  return border;
}

/// The graph of the skeleton, and what is known of it.
class Ways {
 public:
  Ways(const Region& free, std::span<const Edge> from, const Region& goal)
      : border_(uncrossed(cut_at(cut_border(free), from))), skeleton_(skeleton_of(free, border_)) {
    links_at_.resize(skeleton_.nodes.size());
    starts_at_.resize(skeleton_.nodes.size());
    for (std::size_t i = 0; i < skeleton_.links.size(); ++i) {
      const Skeleton::Link& link = skeleton_.links[i];
      links_at_[link.from].push_back(i);
      links_at_[link.to].push_back(i);
      for (const Edge& part : {link.left, link.right})
        if (std::ranges::any_of(from,
                                [&](const Edge& e) { return lies_on(part.from, e) && lies_on(part.to, e); }))
          starts_at_[link.from] = starts_at_[link.to] = part;
    }
    for (const Skeleton::Node& node : skeleton_.nodes)
      ends_.push_back(goal.side_of(tick_of(node)) == Side::inside);
  }

  std::optional<WidestWay> widest() const {
    const double clearance = widest_clearance();
    if (clearance <= 0) return std::nullopt;
    const std::vector<std::size_t> nodes = shortest(clearance - same);
    if (nodes.empty()) return std::nullopt;
    return measured(nodes, clearance + same);
  }

 private:
  struct Reached {
    double worth;
    std::size_t node;
    bool operator<(const Reached& other) const {
      return worth != other.worth ? worth < other.worth : node > other.node;
    }
  };

  static Point tick_of(const Skeleton::Node& node) {
    const auto nearest = [](double value) {
      return Length::from_ticks(static_cast<std::int64_t>(value < 0 ? value - 0.5 : value + 0.5));
    };
    return {nearest(node.x), nearest(node.y)};
  }

  std::size_t other_end(const Skeleton::Link& link, std::size_t node) const {
    return link.from == node ? link.to : link.from;
  }

  // The clearance of the narrowest place of the widest way; negative: there is none.
  double widest_clearance() const {
    std::vector<double> best(skeleton_.nodes.size(), nowhere);
    std::priority_queue<Reached> queue;
    for (std::size_t i = 0; i < best.size(); ++i)
      if (starts_at_[i]) queue.push({best[i] = skeleton_.nodes[i].clearance, i});
    while (!queue.empty()) {
      const Reached top = queue.top();
      queue.pop();
      if (top.worth < best[top.node]) continue;
      if (ends_[top.node]) return top.worth;
      for (const std::size_t i : links_at_[top.node]) {
        const std::size_t next = other_end(skeleton_.links[i], top.node);
        const double worth = std::min(top.worth, skeleton_.links[i].clearance);
        if (worth > best[next]) queue.push({best[next] = worth, next});
      }
    }
    return nowhere;
  }

  double length(const Skeleton::Link& link) const {
    const double x = skeleton_.nodes[link.from].x - skeleton_.nodes[link.to].x;
    const double y = skeleton_.nodes[link.from].y - skeleton_.nodes[link.to].y;
    return root(x * x + y * y);
  }

  // Of the ways that are nowhere narrower the shortest: nodes from start to goal.
  std::vector<std::size_t> shortest(double clearance) const {
    constexpr double far = std::numeric_limits<double>::max();
    std::vector<double> best(skeleton_.nodes.size(), far);
    std::vector<std::size_t> before(skeleton_.nodes.size());
    std::priority_queue<Reached> queue;
    for (std::size_t i = 0; i < best.size(); ++i) {
      before[i] = i;
      if (starts_at_[i] && skeleton_.nodes[i].clearance >= clearance) queue.push({-(best[i] = 0), i});
    }
    while (!queue.empty()) {
      const Reached top = queue.top();
      queue.pop();
      if (-top.worth > best[top.node]) continue;
      if (ends_[top.node]) return traced(before, top.node);
      for (const std::size_t i : links_at_[top.node]) {
        if (skeleton_.links[i].clearance < clearance) continue;
        const std::size_t next = other_end(skeleton_.links[i], top.node);
        const double way = best[top.node] + length(skeleton_.links[i]);
        if (way >= best[next]) continue;
        before[next] = top.node;
        queue.push({-(best[next] = way), next});
      }
    }
    return {};
  }

  static std::vector<std::size_t> traced(const std::vector<std::size_t>& before, std::size_t node) {
    std::vector<std::size_t> nodes{node};
    while (before[node] != node) nodes.push_back(node = before[node]);
    std::ranges::reverse(nodes);
    return nodes;
  }

  const Skeleton::Link& link_between(std::size_t from, std::size_t to) const {
    const Skeleton::Link* widest = nullptr;
    for (const std::size_t i : links_at_[from]) {
      const Skeleton::Link& link = skeleton_.links[i];
      if (other_end(link, from) == to && (widest == nullptr || link.clearance > widest->clearance))
        widest = &link;
    }
    return *widest;
  }

  // Taken from the border itself wherever the skeleton is as narrow as it gets: from two parts that face each
  // other there, if there are such, since a disc about a node is rounded.
  WidestWay measured(const std::vector<std::size_t>& nodes, double narrow) const {
    WidestWay facing_parts{farthest, {}, {}, {}};
    WidestWay disc = facing_parts;
    const Skeleton::Node& start = skeleton_.nodes[nodes.front()];
    std::vector<Point> path{nearest_point(tick_of(start), *starts_at_[nodes.front()]), tick_of(start)};
    if (start.clearance <= narrow) narrow_to(disc, disc_at(start));
    for (std::size_t i = 1; i < nodes.size(); ++i) {
      const Skeleton::Link& link = link_between(nodes[i - 1], nodes[i]);
      if (link.clearance <= narrow && link.narrows) narrow_to(facing_parts, facing(link));
      if (link.clearance <= narrow && !link.narrows) narrow_to(disc, disc_at(lesser_end(link)));
      std::vector<Point> places = along(skeleton_, link, curve_parts);
      if (link.from != nodes[i - 1]) std::ranges::reverse(places);
      path.insert(path.end(), places.begin() + 1, places.end());
    }
    WidestWay way = facing_parts.width < farthest ? facing_parts : disc;
    way.path = std::move(path);
    return way;
  }

  static void narrow_to(WidestWay& way, WidestWay place) {
    if (place.width < way.width) way = std::move(place);
  }

  const Skeleton::Node& lesser_end(const Skeleton::Link& link) const {
    const Skeleton::Node& from = skeleton_.nodes[link.from];
    const Skeleton::Node& to = skeleton_.nodes[link.to];
    return to.clearance < from.clearance ? to : from;
  }

  WidestWay facing(const Skeleton::Link& link) const {
    SquaredLength least =
        std::min(squared_distance(link.left.from, link.right), squared_distance(link.left.to, link.right));
    least = std::min(least, std::min(squared_distance(link.right.from, link.left),
                                     squared_distance(link.right.to, link.left)));
    const Point middle = tick_of(lesser_end(link));
    const bool corner = link.left.from == link.left.to;
    const Point left =
        nearest_point(corner || link.right.from != link.right.to ? middle : link.right.from, link.left);
    return {least.floor(), left, nearest_point(left, link.right), {}};
  }

  // The largest disc at the node, and the two border places farthest apart among those that it touches.
  WidestWay disc_at(const Skeleton::Node& node) const {
    const Point centre = tick_of(node);
    SquaredLength nearest = squared_distance(centre, border_.front());
    for (const Edge& edge : border_) nearest = std::min(nearest, squared_distance(centre, edge));
    const Length radius = nearest.floor();
    std::vector<Point> touched;
    for (const Edge& edge : border_)
      if (squared_distance(centre, edge).floor() <= radius + near)
        touched.push_back(nearest_point(centre, edge));
    WidestWay place{radius * 2, touched.front(), touched.front(), {}};
    for (const Point a : touched)
      for (const Point b : touched)
        if (squared_distance(a, Edge{b, b}) > squared_distance(place.left, Edge{place.right, place.right})) {
          place.left = a;
          place.right = b;
        }
    return place;
  }

  std::vector<Edge> border_;
  Skeleton skeleton_;
  std::vector<std::vector<std::size_t>> links_at_;
  std::vector<std::optional<Edge>> starts_at_;
  std::vector<bool> ends_;
};

}  // namespace

std::optional<WidestWay> widest_way(const Region& free, std::span<const Edge> from, const Region& goal) {
  if (free.empty() || from.empty()) return std::nullopt;
  return remembered<std::optional<WidestWay>>(
      [&] { return Construction(Construction::Kind::way).of(free).of(from).of(goal); },
      [&] { return Ways(free, from, goal).widest(); });
}

}  // namespace berthwright
