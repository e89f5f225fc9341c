#include "solve/room/outlines_met.h"

#include <algorithm>

#include "geometry/segment.h"
#include "solve/room/thickness.h"

namespace berthwright {

namespace {

// The edges of the ring that stand for the arc. Arcs bulge outward and rings run counter-clockwise, so the
// chords lead from the arc's end with the interior on its left to its other end.
void add_chords(std::span<const Point> ring, const Arc& arc, std::vector<Edge>& chords) {
  const Point last = arc.left ? arc.to : arc.from;
  const auto start = std::ranges::find(ring, arc.left ? arc.from : arc.to);
  if (start == ring.end() || std::ranges::find(ring, last) == ring.end()) return;
  auto i = static_cast<std::size_t>(start - ring.begin());
  while (ring[i] != last) {
    const std::size_t next = (i + 1) % ring.size();
    chords.push_back({ring[i], ring[next]});
    i = next;
  }
}

std::vector<Edge> arc_chords(const Drawn& shape) {
  std::vector<Edge> chords;
  for (const Arc& arc : shape.arcs)
    for (const Face& face : shape.outline.faces()) {
      add_chords(face.outer.vertices(), arc, chords);
      for (const Polygon& hole : face.holes) add_chords(hole.vertices(), arc, chords);
    }
  return chords;
}

bool near_one(Point point, const std::vector<Edge>& chords) {
  return std::ranges::any_of(chords, [&](const Edge& chord) {
    return squared_distance(point, chord) <= SquaredLength::of(two_arcs_error);
  });
}

bool runs_along(const Region& part, const std::vector<Edge>& chords) {
  return std::ranges::all_of(part.faces().front().outer.vertices(),
                             [&](Point point) { return near_one(point, chords); });
}

}  // namespace

Drawn drawn(const Placed& thing) {
  return {thing.solid.outline(), thing.fixture != nullptr ? thing.fixture->arcs : thing.pose->arcs};
}

Region without_arc_slivers(const Region& region, const Drawn& a, const Drawn& b) {
  if (region.empty() || a.arcs.empty() || b.arcs.empty()) return region;
  const std::vector<Edge> chords_of_a = arc_chords(a);
  const std::vector<Edge> chords_of_b = arc_chords(b);
  std::vector<Face> kept;
  for (const Region& part : region.parts()) {
    const bool sliver = runs_along(part, chords_of_a) && runs_along(part, chords_of_b) &&
                        thickness_of(part).width < two_arcs_error;
    if (!sliver) kept.push_back(part.faces().front());
  }
  return Region::from_faces(std::move(kept));
}

Region shared_outline(const Drawn& a, const Drawn& b) {
  if (!overlaps(a.outline.bounds(), b.outline.bounds())) return {};
  return without_arc_slivers(common(a.outline, b.outline), a, b);
}

}  // namespace berthwright
