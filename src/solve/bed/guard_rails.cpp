#include <berthwright/solve/bed/guard_rails.h>

#include <algorithm>

#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

constexpr Length beside_within = 1_in;
// A rail drawn over the edge of a mattress that is squeezed against it.
constexpr Length over_edge = Length::inches(1, 2);

struct Stretch {
  Length from;
  Length to;
};

/// A long side of the mattress: the strip beside it, and where along it things stand.
struct Long {
  Wall side;
  Rect strip;
  bool along_x;

  Stretch along(const Rect& r) const {
    return along_x ? Stretch{r.low.x, r.high.x} : Stretch{r.low.y, r.high.y};
  }
  Point at(Length place) const {
    const bool low_side = side == Wall::left || side == Wall::front;
    const Length beside = low_side ? beside_within : over_edge;
    return along_x ? Point{place, strip.low.y + beside} : Point{strip.low.x + beside, place};
  }
};

std::array<Long, 2> long_sides(const Rect& bed) {
  const Point low = bed.low;
  const Point high = bed.high;
  if (bed.width() >= bed.height())
    return {Long{Wall::left, {{low.x, low.y - beside_within}, {high.x, low.y + over_edge}}, true},
            Long{Wall::right, {{low.x, high.y - over_edge}, {high.x, high.y + beside_within}}, true}};
  return {Long{Wall::front, {{low.x - beside_within, low.y}, {low.x + over_edge, high.y}}, false},
          Long{Wall::rear, {{high.x - over_edge, low.y}, {high.x + beside_within, high.y}}, false}};
}

/// What stands beside a side.
struct Guard {
  std::string id;
  Length height;  ///< above the mattress
  std::vector<Stretch> along;
};

void add_stretches(Guard& guard, const Region& beside, const Long& side) {
  for (const Face& face : beside.faces()) guard.along.push_back(side.along(face.outer.bounds()));
}

// Soft, movable and low things keep nobody in.
constexpr std::array guarding{Fixture::Kind::guard_rail,  Fixture::Kind::wall,    Fixture::Kind::cabinet,
                              Fixture::Kind::locker,      Fixture::Kind::counter, Fixture::Kind::bench,
                              Fixture::Kind::refrigerator};

bool can_guard(const Placed& thing) {
  return thing.fixture != nullptr && std::ranges::find(guarding, thing.fixture->kind) != guarding.end();
}

std::vector<Guard> guards_beside(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress,
                                 const Long& side) {
  std::vector<Guard> guards;
  const Length level = mattress.level;
  for (const Placed& thing : arrangement.things) {
    if (!can_guard(thing)) continue;
    if (thing.solid.base() > level || thing.solid.top() <= level) continue;
    Guard guard{thing.id, thing.solid.top() - level, {}};
    add_stretches(guard, common(thing.solid.outline(), Region(side.strip)), side);
    if (!guard.along.empty()) guards.push_back(std::move(guard));
  }
  Guard wall{"wall", farthest, {}};
  add_stretches(wall, without(Region(side.strip), room_at(plan->interior, level)), side);
  if (!wall.along.empty()) guards.push_back(std::move(wall));
  return guards;
}

std::vector<Stretch> uncovered(const Stretch& whole, std::vector<Stretch> covered) {
  std::ranges::sort(covered, {}, &Stretch::from);
  std::vector<Stretch> open;
  Length reached = whole.from;
  for (const Stretch& stretch : covered) {
    if (stretch.from > reached) open.push_back({reached, stretch.from});
    reached = std::max(reached, stretch.to);
  }
  if (reached < whole.to) open.push_back({reached, whole.to});
  return open;
}

std::vector<Stretch> all_along(const std::vector<Guard>& guards, Length above) {
  std::vector<Stretch> covered;
  for (const Guard& guard : guards)
    if (guard.height > above) covered.insert(covered.end(), guard.along.begin(), guard.along.end());
  return covered;
}

GuardedSide guarded(const Long& side, const std::vector<Guard>& guards) {
  GuardedSide result;
  result.side = side.side;
  const Stretch whole = side.along(side.strip);
  const std::vector<Stretch> open = uncovered(whole, all_along(guards, Length{}));
  result.open_from = result.open_to = side.at(whole.from);
  for (const Stretch& stretch : open)
    if (stretch.to - stretch.from > result.open) {
      result.open = stretch.to - stretch.from;
      result.open_from = side.at(stretch.from);
      result.open_to = side.at(stretch.to);
    }
  const auto length_open = [](const std::vector<Stretch>& stretches) {
    Length sum;
    for (const Stretch& stretch : stretches) sum += stretch.to - stretch.from;
    return sum;
  };
  // A guard counts as low only where nothing higher stands: there the side opens up without it.
  for (const Guard& guard : guards) {
    result.guards.push_back(guard.id);
    const bool matters = length_open(uncovered(whole, all_along(guards, guard.height))) > length_open(open);
    if (matters && (!result.height || guard.height < *result.height))
      result.height = guard.height, result.lowest = guard.id;
  }
  return result;
}

}  // namespace

std::optional<std::array<GuardedSide, 2>> guarded_sides(const Plan& plan, const Arrangement& arrangement,
                                                        const Mattress& mattress) {
  if (mattress.closed.empty()) return std::nullopt;
  const std::array<Long, 2> sides = long_sides(mattress.closed.bounds());
  std::array<GuardedSide, 2> result{guarded(sides[0], guards_beside(plan, arrangement, mattress, sides[0])),
                                    guarded(sides[1], guards_beside(plan, arrangement, mattress, sides[1]))};
  if (result[1].open < result[0].open) std::swap(result[0], result[1]);
  return result;
}

Length underside_of(const Arrangement& arrangement, const Mattress& mattress) {
  Length lowest = mattress.level;
  for (const PieceId& id : mattress.in_surface) {
    const Placed* cushion = arrangement.find(id.text());
    if (cushion == nullptr) continue;
    if (cushion->carried_by.empty()) lowest = std::min(lowest, cushion->solid.base());
    for (const std::string& carrier : cushion->carried_by) {
      const Placed* below = arrangement.find(carrier);
      lowest = std::min(lowest, below == nullptr ? Length{} : below->solid.base());
    }
  }
  return lowest;
}

}  // namespace berthwright
