#include <berthwright/solve/heat/bedding.h>

#include <algorithm>
#include <optional>

namespace berthwright {
namespace {

// Design 4.6 and 4.15.
constexpr Length overhang = 2_in;
constexpr Length drop = 12_in;

struct Span {
  Length low;
  Length high;
};

// How far a profile reaches along its first axis at heights from `base` to `top`.
std::optional<Span> reach_of(const Polygon& profile, Length base, Length top) {
  const Rect bounds = profile.bounds();
  const Region band = common(profile, Rect{{bounds.low.x, base}, {bounds.high.x, top}});
  if (band.empty()) return std::nullopt;
  return Span{band.bounds().low.x, band.bounds().high.x};
}

// Where the room reaches at any height of the band, so that no bedding is lost where a wall slants.
Region reach_of_room(const Interior& interior, Length base, Length top) {
  Region room = interior.outline.polygon();
  const auto clip = [&](const Outline& profile, bool along) {
    if (room.empty()) return;
    const std::optional<Span> span = reach_of(profile.polygon(), base, top);
    const Rect bounds = room.bounds();
    if (!span) return;
    room = common(room, along ? Rect{{span->low, bounds.low.y}, {span->high, bounds.high.y}}
                              : Rect{{bounds.low.x, span->low}, {bounds.high.x, span->high}});
  };
  clip(interior.side_profile, true);
  if (interior.cross_profile) clip(*interior.cross_profile, false);
  return room;
}

// Bedding that hangs over `strip`, down to the highest thing below. Where something stands at the level
// itself the bedding lies on it: a sheet one tick thick, so that it is not lost to the measure.
std::vector<Solid> hung(Region strip, Length level, const Arrangement& arrangement) {
  const Length lowest = std::max(level - drop, Length{});
  std::vector<const Solid*> below;
  for (const Placed& thing : arrangement.things)
    if (thing.solid.top() <= level && thing.solid.top() > lowest) below.push_back(&thing.solid);
  std::ranges::stable_sort(below, std::ranges::greater{}, [](const Solid* solid) { return solid->top(); });

  std::vector<Solid> hanging;
  for (const Solid* thing : below) {
    if (strip.empty()) break;
    Region rests = common(strip, thing->outline());
    if (rests.empty()) continue;
    hanging.emplace_back(std::move(rests), std::min(thing->top(), level - one_tick), level);
    strip = without(strip, thing->outline());
  }
  if (!strip.empty()) hanging.emplace_back(std::move(strip), lowest, level);
  return hanging;
}

}  // namespace

Bedding bedding_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                   const Mattress& mattress) {
  Bedding bedding;
  for (const PieceId& piece : bed.pieces)
    if (const Placed* placed = arrangement.find(piece.text())) bedding.bare.push_back(placed->solid);
  bedding.made_up = bedding.bare;
  if (mattress.closed.empty()) return bedding;

  const Length level = mattress.level;
  Region strip = without(grown(mattress.closed, overhang), mattress.closed);
  strip = common(strip, reach_of_room(plan->interior, std::max(level - drop, Length{}), level));
  for (const Placed& thing : arrangement.things) {
    if (strip.empty()) return bedding;
    const bool in_the_way = thing.solid.base() < level && level < thing.solid.top();
    if (in_the_way) strip = without(strip, thing.solid.outline());
  }
  for (Solid& solid : hung(std::move(strip), level, arrangement)) bedding.made_up.push_back(std::move(solid));
  return bedding;
}

}  // namespace berthwright
