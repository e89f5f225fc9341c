#include "solve/room/balance.h"

#include <algorithm>
#include <cctype>

#include "geometry/centroid.h"
#include "geometry/convex.h"
#include "geometry/segment.h"

namespace berthwright {

namespace {

// What rounding of slanted crossings leaves beyond a hull.
constexpr Length trace = 16 * one_tick;

std::vector<Edge> closed_ring(const std::vector<Point>& corners) {
  std::vector<Edge> ring;
  for (std::size_t i = 0; i < corners.size(); ++i)
    ring.push_back({corners[i], corners[(i + 1) % corners.size()]});
  return ring;
}

Length distance_to(const std::vector<Edge>& ring, Point point) {
  SquaredLength least = squared_distance(point, ring.front());
  for (const Edge& edge : ring) least = std::min(least, squared_distance(point, edge));
  return least.ceiling();
}

bool lies_beyond(const std::vector<Edge>& ring, Point point) {
  return std::ranges::any_of(ring, [&](const Edge& edge) { return cross(edge.from, edge.to, point) < 0; });
}

void add_overhang(const std::vector<Edge>& ring, const std::vector<Edge>& border, BoardSupport& support) {
  for (const Edge& edge : border) {
    if (!lies_beyond(ring, edge.from)) continue;
    const Length overhang = distance_to(ring, edge.from);
    if (overhang <= std::max(trace, support.overhang)) continue;
    support.overhang = overhang;
    support.overhangs_at = edge.from;
  }
}

// A load P at distance p beyond an edge of the hull lifts the weight W at distance c within it: P = W c / p.
void add_tipping_load(const std::vector<Edge>& ring, const std::vector<Edge>& border,
                      const Centroid& centroid, BoardSupport& support) {
  if (!support.weight || !support.balanced || support.overhang == Length{}) return;
  double least = static_cast<double>(heaviest.units());
  const double careful = 1 - 1e-9;
  for (const Edge& tips_over : ring) {
    const auto held = static_cast<double>(centroid.cross_from(tips_over.from, tips_over.to)) /
                      static_cast<double>(centroid.whole());
    for (const Edge& edge : border) {
      const auto beyond = -static_cast<double>(cross(tips_over.from, tips_over.to, edge.from));
      if (beyond <= 0) continue;
      least = std::min(least, careful * static_cast<double>(support.weight->units()) * held / beyond);
    }
  }
  support.tips_at = Mass::from_units(static_cast<std::int64_t>(least));
}

bool says_plywood(const Piece& piece) {
  std::string material = piece.material;
  std::ranges::transform(material, material.begin(),
                         [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return !piece.panel.empty() || material.find("ply") != std::string::npos;
}

}  // namespace

std::optional<Mass> plywood_weight(const Piece& piece) {
  if (!says_plywood(piece)) return std::nullopt;
  const Int128 inch = ticks_per_inch;
  const Int128 doubled = Region(piece.outline.polygon()).area().doubled();
  const Int128 whole = 3 * Int128{mass_units_per_pound} * doubled * piece.thickness.ticks();
  return std::min(heaviest, Mass::from_units(static_cast<std::int64_t>(whole / (288 * inch * inch * inch))));
}

void add_balance(const Region& outline, BoardSupport& support) {
  const Centroid centroid(outline);
  support.centroid = centroid.nearest();
  std::vector<Point> corners;
  const std::vector<Edge> border = edges(outline);
  for (const Edge& edge : edges(support.bearing)) corners.push_back(edge.from);
  support.hull = convex_hull(std::move(corners));
  if (support.hull.empty()) return;
  const std::vector<Edge> ring = closed_ring(support.hull);
  support.balanced = std::ranges::all_of(
      ring, [&](const Edge& edge) { return centroid.cross_from(edge.from, edge.to) > 0; });
  // The centroid was rounded; on the border itself nothing holds the piece either.
  if (!support.balanced) support.beyond = distance_to(ring, support.centroid) + one_tick;
  add_overhang(ring, border, support);
  add_tipping_load(ring, border, centroid, support);
}

}  // namespace berthwright
