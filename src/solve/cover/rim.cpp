#include <berthwright/solve/cover/rim.h>

#include <algorithm>

#include <berthwright/exact/squared_length.h>

namespace berthwright {
namespace {

// Every polygon edge belongs to no arc or to the arc of this number.
constexpr std::size_t no_arc = static_cast<std::size_t>(-1);

constexpr Length longest_chord = 4_in;

Length distance_up(Point a, Point b) {
  const Vector way = b - a;
  return SquaredLength::of(way.x).plus_square_of(way.y).ceiling();
}

// Less than 30 degrees: the tangent is below the root of a third.
bool bends_softly(Point a, Point b, Point c) {
  if (std::max(distance_up(a, b), distance_up(b, c)) >= longest_chord) return false;
  const Int128 turn = cross(a, b, c);
  const Int128 along =
      Int128{(b.x - a.x).ticks()} * (c.x - b.x).ticks() + Int128{(b.y - a.y).ticks()} * (c.y - b.y).ticks();
  return along > 0 && 3 * turn * turn < along * along;
}

std::vector<std::size_t> arcs_of_edges(const Outline& outline) {
  const auto corners = outline.polygon().vertices();
  std::vector<std::size_t> arc_of(corners.size(), no_arc);
  for (std::size_t a = 0; a < outline.arcs().size(); ++a) {
    const Arc& arc = outline.arcs()[a];
    const Point from = arc.left ? arc.from : arc.to;
    const Point to = arc.left ? arc.to : arc.from;
    const auto first = std::ranges::find(corners, from);
    if (first == corners.end() || std::ranges::find(corners, to) == corners.end()) continue;
    auto i = static_cast<std::size_t>(first - corners.begin());
    for (; corners[i] != to; i = (i + 1) % corners.size()) arc_of[i] = a;
  }
  return arc_of;
}

bool is_quarter(const Arc& arc) {
  return abs(arc.to.x - arc.from.x) == arc.radius && abs(arc.to.y - arc.from.y) == arc.radius;
}

std::optional<Wall> looks_of(Point from, Point to) {
  if (from.y == to.y) return from.x < to.x ? Wall::left : Wall::right;
  if (from.x == to.x) return from.y < to.y ? Wall::rear : Wall::front;
  return std::nullopt;
}

bool lies_on(const Rect& box, const RimEdge& edge) {
  const Point p = edge.path.front();
  switch (*edge.looks) {
    case Wall::front:
      return p.x == box.low.x;
    case Wall::rear:
      return p.x == box.high.x;
    case Wall::left:
      return p.y == box.low.y;
    case Wall::right:
      return p.y == box.high.y;
  }
  return false;
}

}  // namespace

Length quarter_arc(Length radius) {
  constexpr Int128 half_pi = 1'570'796'326'794'897;  // rounded up; of 10^15
  constexpr Int128 whole = 1'000'000'000'000'000;
  return Length::from_ticks(static_cast<std::int64_t>((radius.ticks() * half_pi + whole - 1) / whole));
}

Rim rim_of(const Outline& outline) {
  const auto corners = outline.polygon().vertices();
  const std::size_t count = corners.size();
  const std::vector<std::size_t> arc_of = arcs_of_edges(outline);
  const auto breaks_at = [&](std::size_t i) {
    const std::size_t before = (i + count - 1) % count;
    if (arc_of[before] != no_arc || arc_of[i] != no_arc) return arc_of[before] != arc_of[i];
    return !bends_softly(corners[before], corners[i], corners[(i + 1) % count]);
  };
  std::size_t first = 0;
  while (first < count && !breaks_at(first)) ++first;
  const std::size_t origin = first % count;
  Rim rim;
  for (std::size_t step = 0; step < count; ++step) {
    const std::size_t i = (origin + step) % count;
    const Point to = corners[(i + 1) % count];
    if (step == 0 || breaks_at(i)) rim.edges.push_back({.path = {corners[i]}, .start = rim.perimeter});
    RimEdge& edge = rim.edges.back();
    const Length piece = distance_up(edge.path.back(), to);
    edge.path.push_back(to);
    edge.length += piece;
    rim.perimeter += piece;
    const bool ends = step + 1 == count || breaks_at((i + 1) % count);
    if (!ends) continue;
    if (arc_of[i] != no_arc && is_quarter(outline.arcs()[arc_of[i]])) {
      edge.radius = outline.arcs()[arc_of[i]].radius;
      rim.perimeter = edge.start + quarter_arc(*edge.radius);
      edge.length = quarter_arc(*edge.radius);
    } else if (edge.is_straight()) {
      edge.looks = looks_of(edge.path.front(), edge.path.back());
      edge.on_box = edge.looks && lies_on(outline.polygon().bounds(), edge);
    }
  }
  return rim;
}

}  // namespace berthwright
