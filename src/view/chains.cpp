#include "view/chains.h"

#include <algorithm>
#include <tuple>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

constexpr Length near_enough = 1_in;      // a thing this close to a wall stands along it
constexpr Length worth_measuring = 3_in;  // fittings smaller than this along the wall clutter a chain
constexpr Length too_near = Length::millimetres(1, 2);  // what a tape cannot tell apart

struct Span {
  Length from;
  Length to;
};

Span extent(const Rect& box, Wall wall) {
  return is_end_wall(wall) ? Span{box.low.y, box.high.y} : Span{box.low.x, box.high.x};
}

Rect outline_box(const PlanThing& thing) { return thing.placed->solid.outline().bounds(); }

// The stops of one chain, the weightiest first.
class Stops {
 public:
  Stops(Span room, std::int64_t ratio) : room_(room), kept_{room.from, room.to} {
    least_ = std::max(too_near, in_nature(least_split, ratio));
  }
  void add(Length stop) {
    if (stop <= room_.from || room_.to <= stop) return;
    for (const Length other : kept_) {
      if (abs(other - stop) >= least_) continue;
      left_out_ = left_out_ || abs(other - stop) >= too_near;
      return;
    }
    kept_.push_back(stop);
  }
  void add(const Span& span) {
    add(span.from);
    add(span.to);
  }
  DimensionChain chain(Wall wall, DimensionChain::Of what) const {
    DimensionChain chain{wall, kept_, false, what, left_out_};
    std::ranges::sort(chain.stops);
    return chain;
  }

 private:
  Span room_;
  std::vector<Length> kept_;
  Length least_;
  bool left_out_ = false;
};

// Pieces first, since the drawing is about them; then long things before short ones.
std::vector<Span> spans_along(const Rect& room, const std::vector<PlanThing>& things, Wall wall) {
  std::vector<std::tuple<bool, Length, Length, Length>> ranked;
  for (const PlanThing& thing : things) {
    const Rect box = outline_box(thing);
    if (thing.overhead || !thing.seen || !stands_along(box, room, wall)) continue;
    const auto [from, to] = extent(box, wall);
    if (to - from >= worth_measuring)
      ranked.emplace_back(thing.placed->piece == nullptr, from - to, from, to);
  }
  std::ranges::sort(ranked);
  std::vector<Span> spans;
  for (const auto& [fixed, size, from, to] : ranked)
    if (std::ranges::none_of(spans, [&](const Span& s) { return from < s.to && s.from < to; }))
      spans.push_back({from, to});
  return spans;
}

Stops stops_along(const Rect& room, const std::vector<PlanThing>& things, Wall wall, std::int64_t ratio) {
  Stops stops(extent(room, wall), ratio);
  for (const Span& span : spans_along(room, things, wall)) stops.add(span);
  return stops;
}

}  // namespace

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

bool is_furniture(const PlanThing& thing) {
  if (thing.placed->fixture == nullptr) return false;
  switch (thing.placed->fixture->kind) {
    case Fixture::Kind::bench:
    case Fixture::Kind::cabinet:
    case Fixture::Kind::locker:
    case Fixture::Kind::shelf:
    case Fixture::Kind::counter:
    case Fixture::Kind::refrigerator:
      return true;
    default:
      return false;
  }
}

std::vector<DimensionChain> chains_along(const Plan& plan, const std::vector<PlanThing>& things, Wall wall,
                                         std::int64_t ratio) {
  using Of = DimensionChain::Of;
  const Rect& room = plan->interior.outline.polygon().bounds();
  std::vector<DimensionChain> chains;
  const auto add = [&](DimensionChain chain) {
    if (chain.stops.size() > 2) chains.push_back(std::move(chain));
  };
  Stops openings(extent(room, wall), ratio);
  for (const Opening& opening : plan->openings)
    if (opening.wall == wall) openings.add(Span{opening.from, opening.from + opening.width});
  add(openings.chain(wall, Of::openings));

  // The first of a pair of opposite walls speaks for the other where both say the same.
  const bool speaks_first = wall == Wall::left || wall == Wall::front;
  const Stops along = stops_along(room, things, wall, ratio);
  const DimensionChain chain = along.chain(wall, Of::things);
  const Wall opposite_wall = is_end_wall(wall) ? Wall::front : Wall::left;
  if (speaks_first ||
      chain.stops != stops_along(room, things, opposite_wall, ratio).chain(wall, Of::things).stops)
    add(chain);
  const auto [low, high] = extent(room, wall);
  if (speaks_first) chains.push_back({wall, {low, high}, true, Of::whole, false});
  return chains;
}

}  // namespace berthwright
