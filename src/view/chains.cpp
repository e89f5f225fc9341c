#include "view/chains.h"

#include <algorithm>
#include <tuple>

#include "plan/wall_names.h"
#include "view/plan_things.h"

namespace berthwright {
namespace {

constexpr Length near_enough = 1_in;      // a thing this close to a wall stands along it
constexpr Length worth_measuring = 3_in;  // fittings smaller than this along the wall clutter a chain

constexpr Length too_near = Length::millimetres(1, 2);

struct Span {
  Length from;
  Length to;
};

bool stands_along(const Rect& thing, const Rect& room, Wall wall) {
  switch (wall) {
    case Wall::front:
      return thing.low.x <= room.low.x + near_enough;
    case Wall::rear:
      return thing.high.x >= room.high.x - near_enough;
    case Wall::left:
      return thing.low.y <= room.low.y + near_enough;
    case Wall::right:
      return thing.high.y >= room.high.y - near_enough;
  }
  throw std::logic_error("Wall out of range");
}

// Pieces first, since the drawing is about them; then long things before short ones, and higher before lower.
std::vector<Span> spans_along(const Plan& plan, const Arrangement& arrangement, Wall wall) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  std::vector<std::tuple<bool, Length, Length, Length>> ranked;
  for (const Placed& placed : arrangement.things) {
    const Rect box = placed.solid.outline().bounds();
    if (placed.solid.base() >= over_the_head || !stands_along(box, room, wall)) continue;
    const Length from = is_end_wall(wall) ? box.low.y : box.low.x;
    const Length to = is_end_wall(wall) ? box.high.y : box.high.x;
    if (to - from >= worth_measuring) ranked.emplace_back(placed.piece == nullptr, from - to, from, to);
  }
  std::ranges::sort(ranked);
  std::vector<Span> spans;
  for (const auto& [fixed, size, from, to] : ranked)
    if (std::ranges::none_of(spans, [&](const Span& s) { return from < s.to && s.from < to; }))
      spans.push_back({from, to});
  return spans;
}

std::vector<Length> stops_along(const Plan& plan, const Arrangement& arrangement, Wall wall) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  std::vector<Length> stops{is_end_wall(wall) ? room.low.y : room.low.x,
                            is_end_wall(wall) ? room.high.y : room.high.x};
  const Length low = stops.front();
  const Length high = stops.back();
  for (const Span& span : spans_along(plan, arrangement, wall))
    for (const Length stop : {span.from, span.to})
      if (low < stop && stop < high) stops.push_back(stop);
  std::ranges::sort(stops);
  // Of stops that a tape cannot tell apart the first stands; the far end always does.
  const auto doubled = std::ranges::unique(stops, [&](Length a, Length b) { return b - a < too_near; });
  stops.erase(doubled.begin(), doubled.end());
  stops.back() = high;
  return stops;
}

}  // namespace

std::vector<DimensionChain> chains_along(const Plan& plan, const Arrangement& arrangement, Wall wall) {
  const std::vector<Length> stops = stops_along(plan, arrangement, wall);
  std::vector<DimensionChain> chains;
  // The first of a pair of opposite walls speaks for the other where both say the same.
  const bool speaks_first = wall == Wall::left || wall == Wall::front;
  const bool repeats =
      !speaks_first && stops == stops_along(plan, arrangement, is_end_wall(wall) ? Wall::front : Wall::left);
  if (stops.size() > 2 && !repeats) chains.push_back({wall, stops, false});
  if (speaks_first) chains.push_back({wall, {stops.front(), stops.back()}, true});
  return chains;
}

}  // namespace berthwright
