#include <berthwright/solve/bed/lying_place.h>

#include <algorithm>
#include <numeric>

#include "geometry/segment.h"
#include "solve/bed/foot_search.h"

namespace berthwright {

namespace {

// Chords of arcs are shorter.
constexpr Length shortest_way_in = 4_in;

bool is_long(const Edge& edge) {
  return squared_distance(edge.from, {edge.to, edge.to}) >= SquaredLength::of(shortest_way_in);
}

// Reduced by half turns: the search looks both ways.
Turn direction_of(const Edge& edge) {
  Vector v = edge.to - edge.from;
  if (v.y < Length{} || (v.y == Length{} && v.x < Length{})) v = {-v.x, -v.y};
  return Turn::toward(v.x.ticks(), v.y.ticks());
}

// Along the room, along every long edge and square to it, and along the longest rectangle.
std::vector<Turn> directions(const LyingSpace& space, const std::optional<TurnedRectangle>& longest) {
  std::vector<Turn> turns{Turn::quarters(0), Turn::quarters(1)};
  const auto add = [&](Turn turn) {
    if (std::ranges::find(turns, turn) == turns.end()) turns.push_back(turn);
  };
  for (const Region* region : {&space.head, &space.foot})
    for (const Edge& edge : edges(*region)) {
      if (!is_long(edge)) continue;
      const Vector v = edge.to - edge.from;
      add(direction_of(edge));
      add(direction_of({{}, {-v.y, v.x}}));
    }
  if (longest) {
    const Vector along = longest->corners[1] - longest->corners[0];
    add(direction_of({{}, {along.x, along.y}}));
    add(direction_of({{}, {-along.y, along.x}}));
  }
  return turns;
}

Region polygon(const std::array<Point, 4>& corners) {
  return Polygon::promised({corners.begin(), corners.end()});
}

LyingPlace from_rectangle(const TurnedRectangle& rectangle, Length width) {
  LyingPlace place;
  place.length = side_beside(rectangle, width);
  const bool along = place.length == rectangle.length;
  place.width = along ? rectangle.width : rectangle.length;
  place.turn = rectangle.turn;
  place.shoulders = rectangle.corners;
  if (!along) {
    const Vector v = rectangle.corners[2] - rectangle.corners[1];
    place.turn = Turn::toward(v.x.ticks(), v.y.ticks());
    std::rotate(place.shoulders.begin(), place.shoulders.begin() + 1, place.shoulders.end());
  }
  place.region = polygon(place.shoulders);
  return place;
}

}  // namespace

std::optional<LyingPlace> longest_place(const LyingSpace& space, std::span<const Length> shoulders) {
  const Length width = std::accumulate(shoulders.begin(), shoulders.end(), Length{});
  if (space.head.empty() || shoulders.empty()) return std::nullopt;
  const std::optional<TurnedRectangle> longest = longest_rectangle(space.head, width);
  std::optional<LyingPlace> best;
  if (longest) best = from_rectangle(*longest, width);
  for (const Turn turn : directions(space, longest)) {
    const FootSearch search(space, shoulders, turn);
    std::optional<LyingPlace> found = search.longer_than(best ? best->length : Length{});
    if (!found) continue;
    std::vector<Region> parts{polygon(found->shoulders)};
    for (const std::array<Point, 4>& foot : found->feet) parts.push_back(polygon(foot));
    found->region = united(parts);
    best = std::move(found);
  }
  return best;
}

}  // namespace berthwright
