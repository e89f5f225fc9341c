#include "solve/seat/before_seat.h"

#include <algorithm>
#include <tuple>

#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

constexpr Length near_seat = 12_in;
constexpr Length past_front = 18_in;  // one steps in before the seat, then sits down
constexpr Length least_beside_table = 6_in;
constexpr Length highest_table = 24_in;  // above the seat: what is higher is no table to sit at
constexpr Length lowest_obstacle = 4_in;
constexpr Length highest_obstacle = 48_in;
constexpr Length least_drop = 8_in;
constexpr Length far_ahead = 20'000_mm;

bool is_of(const SeatScene& scene, const Placed& thing) {
  return std::ranges::find(scene.cushions, &thing) != scene.cushions.end();
}

// Where the part of a region inside `strip` lies on one axis.
std::vector<SeatSpan> taken_in(const Region& region, const Rect& strip, bool along_x) {
  std::vector<SeatSpan> taken;
  const Region inside = common(region, Region(strip));
  for (const Face& face : inside.faces()) {
    const Rect& box = face.outer.bounds();
    taken.push_back(along_x ? SeatSpan{box.low.x, box.high.x} : SeatSpan{box.low.y, box.high.y});
  }
  return taken;
}

void append(std::vector<SeatSpan>& to, const std::vector<SeatSpan>& more) {
  to.insert(to.end(), more.begin(), more.end());
}

Region outside_room(const SeatScene& scene, const Rect& strip) {
  return without(Region(strip), scene.frame.in(room_at(scene.plan->interior, scene.top)));
}

// One slides over what is no higher than the seat.
bool is_slid_over(const SeatScene& scene, const Placed& thing) {
  if (thing.solid.top() > scene.top + Length::inches(1, 2)) return false;
  if (thing.fixture == nullptr) return thing.is_soft();
  const Fixture::Kind kind = thing.fixture->kind;
  return kind == Fixture::Kind::bench || kind == Fixture::Kind::ledge || kind == Fixture::Kind::wheel_arch;
}

bool is_in_the_way(const SeatScene& scene, const Placed& thing) {
  return !is_of(scene, thing) && !is_slid_over(scene, thing) &&
         thing.solid.base() < scene.footing + highest_obstacle &&
         thing.solid.top() > scene.footing + lowest_obstacle;
}

Length widest_free(const SeatScene& scene, const Rect& strip, bool along_x) {
  std::vector<SeatSpan> taken = taken_in(outside_room(scene, strip), strip, along_x);
  for (const Placed& thing : scene.arrangement.things)
    if (is_in_the_way(scene, thing))
      append(taken, taken_in(scene.frame.in(thing.solid.outline()), strip, along_x));
  const SeatSpan range = along_x ? SeatSpan{strip.low.x, strip.high.x} : SeatSpan{strip.low.y, strip.high.y};
  return longest(left_of(range, taken)).length();
}

// From `from` forward to whatever stands between seat and table height, as far across as the table is: in the
// corner of a lounge, where another seat begins beside it, nobody has their knees under it.
Length knee_depth_under(const SeatScene& scene, const Placed& table, const Rect& edge, Length from) {
  Length depth = edge.high.x - from;
  if (depth <= Length{}) return {};
  const Rect strip{{from, edge.low.y}, {edge.high.x, edge.high.y}};
  const auto stop_at = [&](const std::vector<SeatSpan>& taken) {
    for (const SeatSpan& stretch : taken) depth = std::min(depth, std::max(stretch.from - from, Length{}));
  };
  stop_at(taken_in(outside_room(scene, strip), strip, true));
  for (const Placed& thing : scene.arrangement.things) {
    const bool leg = (thing.piece != nullptr && thing.piece->kind == Piece::Kind::leg) ||
                     (thing.fixture != nullptr && thing.fixture->kind == Fixture::Kind::leg);
    if (leg || &thing == &table || is_of(scene, thing)) continue;
    if (thing.solid.base() < table.solid.base() && thing.solid.top() > scene.sits_at)
      stop_at(taken_in(scene.frame.in(thing.solid.outline()), strip, true));
  }
  return depth;
}

}  // namespace

std::optional<SeatTable> table_before(const SeatScene& scene) {
  std::optional<SeatTable> best;
  std::tuple<Length, Length> best_rank;
  const Rect beside{{-far_ahead, scene.across.from}, {far_ahead, scene.across.to}};
  for (const Placed& thing : scene.arrangement.things) {
    if (thing.piece == nullptr || thing.piece->kind != Piece::Kind::table) continue;
    if (thing.pose->manner != Pose::Manner::flat || thing.solid.base() <= scene.sits_at ||
        thing.solid.base() > scene.sits_at + highest_table)
      continue;
    const Region part = common(scene.frame.in(thing.solid.outline()), Region(beside));
    if (part.empty()) continue;
    const Rect edge = part.bounds();
    if (edge.height() < std::min(least_beside_table, scene.across.length())) continue;
    if (edge.low.x > scene.front + near_seat || edge.high.x < scene.front) continue;
    const std::tuple rank{edge.height(), scene.front - edge.low.x};
    if (best && rank <= best_rank) continue;
    best_rank = rank;
    const Length from = std::max(edge.low.x, scene.front);
    const Length reach = std::max(edge.high.x - from, Length{});
    best = SeatTable{thing.id,
                     thing.solid.base() - scene.sits_at,
                     thing.solid.top() - scene.sits_at,
                     scene.front - edge.low.x,
                     thing.solid.base() - scene.footing,
                     reach,
                     knee_depth_under(scene, thing, edge, from)};
  }
  return best;
}

Length way_onto(const SeatScene& scene) {
  const auto [from, to] = scene.across;
  const Length reach = scene.front + past_front;
  const Rect before{{scene.front, from}, {scene.front + near_seat, to}};
  const Rect at_one_end{{scene.back, from - near_seat}, {reach, from}};
  const Rect at_other_end{{scene.back, to}, {reach, to + near_seat}};
  return std::max({widest_free(scene, before, false), widest_free(scene, at_one_end, true),
                   widest_free(scene, at_other_end, true)});
}

Length footing_before(const SeatScene& scene) {
  const Region strip(Rect{{scene.front, scene.across.from}, {scene.front + near_seat, scene.across.to}});
  Length footing;
  for (const Placed& thing : scene.arrangement.things)
    if (thing.fixture != nullptr && thing.solid.top() <= scene.top - least_drop &&
        contains(scene.frame.in(thing.solid.outline()), strip))
      footing = std::max(footing, thing.solid.top());
  return footing;
}

}  // namespace berthwright
