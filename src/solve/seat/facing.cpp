#include "solve/seat/facing.h"

#include <algorithm>
#include <array>

#include "solve/room/room_shape.h"
#include "solve/seat/seat_frame.h"

namespace berthwright {

namespace {

constexpr std::array walls{Wall::front, Wall::rear, Wall::left, Wall::right};
// A back this little behind a seat, or a wall, still counts as touching it.
constexpr Length slack_behind_back = 2_in;
constexpr Length slack_at_wall = 1_in;
// What leans a person's back rises this far above the seat, and begins no higher than that.
constexpr Length least_rise = 4_in;
constexpr Length least_wall = 12_in;

/// How far across, for each way a seat may face, something behind it says so.
using Claims = std::array<Length, walls.size()>;

std::optional<Wall> chosen(const Claims& claims) {
  const Length best = *std::ranges::max_element(claims);
  if (best <= Length{}) return std::nullopt;
  for (const std::size_t first : {std::size_t{0}, std::size_t{2}}) {  // along the trailer, then across it
    const bool one = claims[first] == best;
    const bool other = claims[first + 1] == best;
    if (one && other) return std::nullopt;
    if (one || other) return walls[one ? first : first + 1];
  }
  return std::nullopt;
}

bool is_back(const Placed& thing) {
  return thing.is_soft() && thing.pose->faces &&
         (thing.pose->manner == Pose::Manner::on_length || thing.pose->manner == Pose::Manner::on_width);
}

bool rises_behind(const Placed& thing, Length seat_top, Length rise) {
  return thing.solid.base() <= seat_top + least_rise && thing.solid.top() >= seat_top + rise;
}

// How far a back runs along the seat's rear: nothing unless it stands in the rear half or just behind it, and
// half of the shorter of the two is behind the other.
Length back_along(const Rect& seat, const Rect& back) {
  const Length middle = half(seat.low.x + seat.high.x);
  if (back.high.x > middle || back.high.x < seat.low.x - slack_behind_back) return {};
  const Length shared = std::min(seat.high.y, back.high.y) - std::max(seat.low.y, back.low.y);
  return shared * 2 >= std::min(seat.height(), back.height()) ? shared : Length{};
}

bool is_upright(Fixture::Kind kind) {
  return kind == Fixture::Kind::wall || kind == Fixture::Kind::cabinet || kind == Fixture::Kind::locker ||
         kind == Fixture::Kind::refrigerator || kind == Fixture::Kind::counter;
}

Length wall_along(const Plan& plan, const Arrangement& arrangement, const Placed& cushion,
                  const SeatFrame& frame) {
  const Region outline = frame.in(cushion.solid.outline());
  const Rect seat = outline.bounds();
  const Region behind(Rect{{seat.low.x - slack_at_wall, seat.low.y}, {seat.low.x, seat.high.y}});
  Region stops = without(behind, frame.in(room_at(plan->interior, cushion.solid.top())));
  for (const Placed& thing : arrangement.things)
    if (thing.fixture != nullptr && is_upright(thing.fixture->kind) &&
        rises_behind(thing, cushion.solid.top(), least_wall))
      stops = united(stops, common(behind, frame.in(thing.solid.outline())));
  std::vector<SeatSpan> along;
  for (const Face& face : stops.faces())
    along.push_back({face.outer.bounds().low.y, face.outer.bounds().high.y});
  Length sum;
  for (const SeatSpan& stretch : joined(along, {})) sum += stretch.length();
  return sum;
}

}  // namespace

Facing facing_of(const Plan& plan, const Arrangement& arrangement, const Placed& cushion) {
  Claims backs{};
  Claims stops{};
  std::array<std::vector<const Placed*>, walls.size()> standing;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const SeatFrame frame(walls[i]);
    const Rect seat = frame.in(cushion.solid.outline()).bounds();
    for (const Placed& thing : arrangement.things) {
      if (!is_back(thing) || thing.pose->faces != walls[i] || &thing == &cushion) continue;
      if (!rises_behind(thing, cushion.solid.top(), least_rise)) continue;
      const Length along = back_along(seat, frame.in(thing.solid.outline()).bounds());
      if (along <= Length{}) continue;
      backs[i] += along;
      standing[i].push_back(&thing);
    }
    stops[i] = wall_along(plan, arrangement, cushion, frame);
  }
  for (std::size_t i = 0; i < walls.size(); ++i)
    if (chosen(backs) == walls[i]) return {walls[i], standing[i]};
  if (std::ranges::any_of(backs, [](Length claim) { return claim > Length{}; })) return {};
  return {chosen(stops), {}};
}

}  // namespace berthwright
