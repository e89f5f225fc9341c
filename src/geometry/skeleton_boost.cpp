#include <algorithm>
#include <boost/polygon/segment_data.hpp>
#include <boost/polygon/voronoi.hpp>
#include <cstdint>
#include <map>

#include "geometry/root.h"
#include "geometry/skeleton.h"

namespace berthwright {
namespace {

using GuestSegment = boost::polygon::segment_data<std::int32_t>;
using Diagram = boost::polygon::voronoi_diagram<double>;

struct Place {
  double x;
  double y;
};
Place operator-(Place a, Place b) { return {a.x - b.x, a.y - b.y}; }
double dot(Place a, Place b) { return a.x * b.x + a.y * b.y; }
double cross(Place a, Place b) { return a.x * b.y - a.y * b.x; }
Place place(Point p) { return {static_cast<double>(p.x.ticks()), static_cast<double>(p.y.ticks())}; }

bool is_corner(const Edge& feature) { return feature.from == feature.to; }

double distance(Place p, const Edge& feature) {
  const Place from = place(feature.from);
  if (is_corner(feature)) return root(dot(p - from, p - from));
  const Place way = place(feature.to) - from;
  const double at = std::clamp(dot(p - from, way) / dot(way, way), 0.0, 1.0);
  const Place away{from.x + way.x * at - p.x, from.y + way.y * at - p.y};
  return root(dot(away, away));
}

// How close two parts of the border come where they face each other between the two nodes, halved; negative
// where they do not.
double half_of_narrows(Place a, Place b, const Edge& left, const Edge& right) {
  if (is_corner(left) && is_corner(right)) {
    const Place from = place(left.from);
    const Place way = place(right.from) - from;
    const bool between = (cross(way, a - from) < 0) != (cross(way, b - from) < 0);
    return between ? root(dot(way, way)) / 2 : -1;
  }
  if (!is_corner(left) && !is_corner(right)) {
    const Place way = place(left.to) - place(left.from);
    const bool parallel = cross(way, place(right.to) - place(right.from)) == 0;
    return parallel ? std::min(distance(a, left), distance(b, left)) : -1;
  }
  const Edge& edge = is_corner(left) ? right : left;
  const Place corner = place(is_corner(left) ? left.from : right.from);
  const Place way = place(edge.to) - place(edge.from);
  const bool between = (dot(way, a - corner) < 0) != (dot(way, b - corner) < 0);
  return between ? distance(corner, edge) / 2 : -1;
}

/// Turns the guest's diagram into nodes and links, each once, in an order that depends on places alone.
class Walk {
 public:
  Walk(const Region& region, const std::vector<Edge>& border) : region_(region), border_(border) {
    origin_ = region.bounds().low;
    const Rect bounds = region.bounds();
    low_ = place(bounds.low);
    high_ = place(bounds.high);
    std::vector<GuestSegment> segments;
    for (const Edge& edge : border) segments.emplace_back(guest(edge.from), guest(edge.to));
    boost::polygon::construct_voronoi(segments.begin(), segments.end(), &diagram_);
  }

  Skeleton skeleton() {
    for (const auto& edge : diagram_.edges()) {
      if (!edge.is_primary() || !edge.is_finite() || &edge > edge.twin()) continue;
      add(edge);
    }
    return std::move(skeleton_);
  }

 private:
  boost::polygon::point_data<std::int32_t> guest(Point p) const {
    return {static_cast<std::int32_t>((p.x - origin_.x).ticks()),
            static_cast<std::int32_t>((p.y - origin_.y).ticks())};
  }

  Place at(const Diagram::vertex_type& vertex) const { return {vertex.x() + low_.x, vertex.y() + low_.y}; }

  bool in_reach(Place p) const { return p.x >= low_.x && p.x <= high_.x && p.y >= low_.y && p.y <= high_.y; }

  Edge feature(const Diagram::cell_type& cell) const {
    const Edge& edge = border_[cell.source_index()];
    if (cell.contains_segment()) return edge;
    const bool start = cell.source_category() == boost::polygon::SOURCE_CATEGORY_SEGMENT_START_POINT;
    const Point corner = start ? edge.from : edge.to;
    return {corner, corner};
  }

  bool is_inside(Place p) const {
    const auto tick = [](double value) { return Length::from_ticks(static_cast<std::int64_t>(value)); };
    return region_.side_of({tick(p.x), tick(p.y)}) == Side::inside;
  }

  std::size_t node(const Diagram::vertex_type& vertex, const Edge& nearest) {
    const auto [known, is_new] = known_.emplace(&vertex - diagram_.vertices().data(), skeleton_.nodes.size());
    if (is_new) {
      const Place p = at(vertex);
      skeleton_.nodes.push_back({p.x, p.y, distance(p, nearest)});
    }
    return known->second;
  }

  void add(const Diagram::edge_type& edge) {
    const Place a = at(*edge.vertex0());
    const Place b = at(*edge.vertex1());
    if (!in_reach(a) || !in_reach(b)) return;
    const Edge left = feature(*edge.cell());
    const Edge right = feature(*edge.twin()->cell());
    if (!is_inside(distance(a, left) < distance(b, left) ? b : a)) return;
    const double narrows = half_of_narrows(a, b, left, right);
    const std::size_t from = node(*edge.vertex0(), left);
    const std::size_t to = node(*edge.vertex1(), left);
    const double ends = std::min(skeleton_.nodes[from].clearance, skeleton_.nodes[to].clearance);
    const bool between = narrows >= 0 && narrows <= ends;
    skeleton_.links.push_back({from, to, left, right, between ? narrows : ends, between});
  }

  const Region& region_;
  const std::vector<Edge>& border_;
  Point origin_;
  Place low_{};
  Place high_{};
  Diagram diagram_;
  std::map<std::ptrdiff_t, std::size_t> known_;
  Skeleton skeleton_;
};

Point to_tick(Place p) {
  const auto tick = [](double value) {
    const double raised = value + 0.5;
    const auto whole = static_cast<std::int64_t>(raised);  // toward zero
    return Length::from_ticks(static_cast<double>(whole) > raised ? whole - 1 : whole);
  };
  return {tick(p.x), tick(p.y)};
}

// The place of the curve between a corner and an edge that is nearest to the edge's own point `foot`: as far
// from the one as from the other, square to the edge.
Place on_curve(Place foot, Place corner, Place way) {
  const Place square{-way.y, way.x};
  const Place back = foot - corner;
  const double slope = dot(square, back);
  if (slope == 0) return foot;
  const double up = -dot(back, back) / (2 * slope);
  return {foot.x + square.x * up, foot.y + square.y * up};
}

}  // namespace

Skeleton skeleton_of(const Region& region, const std::vector<Edge>& border) {
  if (region.empty()) return {};
  return Walk(region, border).skeleton();
}

std::vector<Point> along(const Skeleton& skeleton, const Skeleton::Link& link, int parts) {
  const Place a{skeleton.nodes[link.from].x, skeleton.nodes[link.from].y};
  const Place b{skeleton.nodes[link.to].x, skeleton.nodes[link.to].y};
  if (is_corner(link.left) == is_corner(link.right)) return {to_tick(a), to_tick(b)};
  const Edge& edge = is_corner(link.left) ? link.right : link.left;
  const Place corner = place(is_corner(link.left) ? link.left.from : link.right.from);
  const Place from = place(edge.from);
  const Place way = place(edge.to) - from;
  const double first = dot(a - from, way) / dot(way, way);
  const double last = dot(b - from, way) / dot(way, way);
  std::vector<Point> places{to_tick(a)};
  for (int i = 1; i < parts; ++i) {
    const double t = first + (last - first) * i / parts;
    places.push_back(to_tick(on_curve({from.x + way.x * t, from.y + way.y * t}, corner, way)));
  }
  places.push_back(to_tick(b));
  return places;
}

}  // namespace berthwright
