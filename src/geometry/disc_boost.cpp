#include <algorithm>
#include <boost/polygon/segment_data.hpp>
#include <boost/polygon/voronoi.hpp>
#include <cstdint>
#include <vector>

#include <berthwright/exact/squared_length.h>
#include <berthwright/geometry/disc.h>

#include "geometry/border.h"
#include "geometry/remembered.h"
#include "geometry/root.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

using Segment = boost::polygon::segment_data<std::int32_t>;

// A place that may be the centre of a largest disc, not on the lattice, and its distance from the border.
struct Guess {
  double x;
  double y;
  double clearance;
};

double distance_squared(double x, double y, const Segment& segment) {
  const double from_x = boost::polygon::low(segment).x();
  const double from_y = boost::polygon::low(segment).y();
  const double along_x = boost::polygon::high(segment).x() - from_x;
  const double along_y = boost::polygon::high(segment).y() - from_y;
  const double squared = along_x * along_x + along_y * along_y;
  const double at = std::clamp(((x - from_x) * along_x + (y - from_y) * along_y) / squared, 0.0, 1.0);
  const double away_x = from_x + along_x * at - x;
  const double away_y = from_y + along_y * at - y;
  return away_x * away_x + away_y * away_y;
}

// The corners of the segments' diagram: clearance peaks only there, also in a corridor between two parallel
// edges, whose middle line ends in corners of the diagram.
std::vector<Guess> guesses(const std::vector<Edge>& border, const Rect& bounds) {
  const Point origin = bounds.low;
  const auto width = static_cast<double>(bounds.width().ticks());
  const auto height = static_cast<double>(bounds.height().ticks());
  std::vector<Segment> segments;
  for (const Edge& edge : border) {
    const auto at = [&](Point p) {
      return boost::polygon::point_data<std::int32_t>(static_cast<std::int32_t>((p.x - origin.x).ticks()),
                                                      static_cast<std::int32_t>((p.y - origin.y).ticks()));
    };
    segments.emplace_back(at(edge.from), at(edge.to));
  }
  boost::polygon::voronoi_diagram<double> diagram;
  boost::polygon::construct_voronoi(segments.begin(), segments.end(), &diagram);
  std::vector<Guess> result;
  for (const auto& vertex : diagram.vertices()) {
    // Corners of the diagram may lie kilometres away, where whole ticks would overflow.
    if (!(vertex.x() > 0 && vertex.x() < width && vertex.y() > 0 && vertex.y() < height)) continue;
    const Segment& nearest = segments[vertex.incident_edge()->cell()->source_index()];
    const double clearance = root(distance_squared(vertex.x(), vertex.y(), nearest));
    if (clearance > 0.1) result.push_back({vertex.x(), vertex.y(), clearance});
  }
  std::sort(result.begin(), result.end(), [](const Guess& a, const Guess& b) {
    if (a.clearance != b.clearance) return a.clearance > b.clearance;
    return a.x != b.x ? a.x < b.x : a.y < b.y;
  });
  return result;
}

bool is_better(const Disc& a, const Disc& b) {
  return a.radius != b.radius ? a.radius > b.radius : a.centre < b.centre;
}

std::optional<Disc> disc_about(Point centre, const Region& region, const std::vector<Edge>& border) {
  if (region.side_of(centre) != Side::inside) return std::nullopt;
  SquaredLength nearest = squared_distance(centre, border.front());
  for (const Edge& edge : border) nearest = std::min(nearest, squared_distance(centre, edge));
  return Disc{centre, nearest.floor()};
}

std::int64_t whole_below(double value) {
  const auto whole = static_cast<std::int64_t>(value);
  return value < static_cast<double>(whole) ? whole - 1 : whole;
}

Disc disc_in(const Region& region) {
  const std::vector<Edge> border = cut_border(region);
  const Rect bounds = region.bounds();
  Disc best{std::min_element(border.begin(), border.end())->from, Length{}};
  for (const Guess& guess : guesses(uncrossed(border), bounds)) {
    // Rounding the centre moves it by less than a tick.
    if (guess.clearance + 1 < static_cast<double>(best.radius.ticks())) break;
    for (const int right : {0, 1})
      for (const int up : {0, 1}) {
        const Point centre = bounds.low + Vector{Length::from_ticks(whole_below(guess.x) + right),
                                                 Length::from_ticks(whole_below(guess.y) + up)};
        const std::optional<Disc> disc = disc_about(centre, region, border);
        if (disc && is_better(*disc, best)) best = *disc;
      }
  }
  return best;
}

}  // namespace

std::optional<Disc> largest_disc(const Region& region) {
  if (region.empty()) return std::nullopt;
  return remembered<Disc>([&] { return Construction(Construction::Kind::disc).of(region); },
                          [&] { return disc_in(region); });
}

}  // namespace berthwright
