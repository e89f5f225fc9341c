#include "solve/convert/spot_swings.h"

#include <algorithm>
#include <array>

#include "plan/box_sides.h"
#include "solve/convert/swing.h"

namespace berthwright {
namespace {

constexpr int degrees_tried = 4, most_degrees = 88;
constexpr Length most_shift = 6_in;

bool meets_any(const Rect& box, const std::vector<Rect>& rects) {
  return std::ranges::any_of(rects, [&](const Rect& rect) { return overlaps(rect, box); });
}

// The room is asked at whole inches around a box: few questions, and none answered too favourably.
Length inch_below(Length height) {
  const std::int64_t inch = ticks_per_inch;
  return Length::from_ticks(height.ticks() >= 0 ? height.ticks() / inch * inch
                                                : -((-height.ticks() + inch - 1) / inch * inch));
}
Length inch_above(Length height) { return -inch_below(-height); }

// How far the box can go to that side, at its own heights, before it meets something built in.
Length room_beside(const RoomAround& surroundings, const Solid& solid, Wall side) {
  const Rect box = solid.outline().bounds();
  Length away = most_shift;
  const auto look = [&](const Rect& rect) {
    if (!overlaps(beyond_side(box, side, away), rect)) return;
    const Length there = side == Wall::front  ? box.low.x - rect.high.x
                         : side == Wall::rear ? rect.low.x - box.high.x
                         : side == Wall::left ? box.low.y - rect.high.y
                                              : rect.low.y - box.high.y;
    away = std::clamp(there, Length{}, away);
  };
  for (const Rect& rect : surroundings.beyond(solid.base(), solid.top())) look(rect);
  for (const Hindrance& thing : surroundings.built_in())
    if (thing.base < solid.top() && solid.base() < thing.top) std::ranges::for_each(thing.over, look);
  return away;
}

// At most `at_most.degrees`: turned at both heights two degrees at a time, until something bars that, and
// raised wherever that may do.
std::optional<int> least_degrees(const RoomAround& surroundings, const Solid& solid, Length to_base,
                                 const Tilt& at_most) {
  const Swing whole = tilting(solid, to_base, {at_most.low, most_degrees, at_most.shift});
  const auto is_clear = [&](std::size_t from, std::size_t to) {
    Swing part = whole;
    part.keys = {whole.keys[from], whole.keys[to]};
    return is_clear_of_fixtures(surroundings, swept_by(part));
  };
  const auto key = [](int degrees) { return static_cast<std::size_t>(degrees); };
  const std::size_t last = whole.keys.size() - 1;
  if (!is_clear(0, 1)) return std::nullopt;
  for (int degrees = 2; degrees <= at_most.degrees; degrees += 2) {
    const std::size_t here = 1 + key(degrees), there = last - key(degrees);
    if (!is_clear(here - 2, here - 1) || !is_clear(here - 1, here)) return std::nullopt;
    if (!is_clear(there, there + 1) || !is_clear(there + 1, there + 2)) return std::nullopt;
    if (degrees % degrees_tried == 0 && is_clear(here, there)) return degrees;
  }
  return std::nullopt;
}

}  // namespace

bool is_clear_of_fixtures(const RoomAround& surroundings, const std::vector<Solid>& sweep, std::string* met) {
  const auto found = [&](const std::string& thing) {
    if (met != nullptr) *met = thing;
    return false;
  };
  for (const Solid& solid : sweep) {
    const Rect box = solid.outline().bounds();
    for (const Fixture& fixture : surroundings.plan()->fixtures)
      if (fixture.kind != Fixture::Kind::curtain && overlaps(fixture.solid.outline().bounds(), box) &&
          overlaps(fixture.solid, solid))
        return found(fixture.id.text());
    const Length low = std::max(inch_below(solid.base()), Length{}), high = inch_above(solid.top());
    if (solid.base() < Length{} || meets_any(box, surroundings.beyond(low, high))) return found("room");
  }
  return true;
}

SpotSet spots_met(const std::vector<SpotEntry>& entries, std::size_t at, const SpotOverlaps& overlaps_known,
                  const std::vector<Solid>& sweep) {
  SpotSet found;
  const std::vector<Arc> none;
  for (std::size_t other = 0; other < entries.size(); ++other) {
    const StandingThing& thing = overlaps_known.standing(other);
    if (entries[other].piece == entries[at].piece || thing.outline == nullptr) continue;
    const Rect bounds = thing.outline->bounds();
    const bool met = std::ranges::any_of(sweep, [&](const Solid& solid) {
      return solid.base() < thing.top && thing.base < solid.top() &&
             overlaps(solid.outline().bounds(), bounds) &&
             overlap_in_plan(thing, {&solid.outline(), &none, solid.base(), solid.top(), false}) > Length{};
    });
    if (met) found.set(other);
  }
  return found;
}

std::optional<Tilt> tilt_out(const RoomAround& surroundings, const PiecePlace& spot, Length to_base) {
  const Solid solid = spot.solid();
  if (to_base <= solid.base()) return std::nullopt;
  std::optional<Tilt> least;
  for (const Wall side : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    const Length beside = room_beside(surroundings, solid, side);
    for (const Length shift : {Length{}, beside}) {
      const int enough = least ? least->degrees - 1 : most_degrees;
      if (const auto degrees = least_degrees(surroundings, solid, to_base, {side, enough, shift}))
        least = Tilt{side, *degrees, shift};
      if (beside == Length{}) break;
    }
  }
  return least;
}

}  // namespace berthwright
