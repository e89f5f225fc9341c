#include <berthwright/solve/seat/knocks.h>

#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/body.h>

namespace berthwright {

namespace {

// Our own choice: as much of a bed's end as a pillow takes.
constexpr Length pillow_depth = 12_in;

Length limit_of(const Plan& plan, std::string_view id) {
  const Rule* rule = find_rule(id);
  if (rule == nullptr) throw std::logic_error("no such rule: " + std::string(id));
  return plan.limit(*rule);
}

bool is_flat_below(Fixture::Kind kind) {
  return kind == Fixture::Kind::shelf || kind == Fixture::Kind::locker;
}

/// Things people bump into that are too small, or too far from straight overhead, to be head room.
std::vector<const Placed*> jutting(const Arrangement& arrangement) {
  std::vector<const Placed*> found;
  for (const Placed& thing : arrangement.things)
    if (thing.fixture != nullptr &&
        (thing.fixture->kind == Fixture::Kind::protrusion || thing.fixture->kind == Fixture::Kind::light ||
         is_flat_below(thing.fixture->kind)))
      found.push_back(&thing);
  return found;
}

// Overhead it is a matter of head room, which names the lowest.
bool hangs_over(const Placed& thing, const Seat& seat) {
  return is_flat_below(thing.fixture->kind) && ((seat.head_room && seat.head_room->under == thing.id) ||
                                                overlaps(thing.solid.outline(), seat.eyes));
}

std::optional<Solid> zone(const Region& outline, Length base, Length top) {
  if (outline.empty()) return std::nullopt;
  return Solid(outline, base, top);
}

// The least way to move the thing out of the elbow room: sideways or up and down, each not less than what
// clears it.
Length reach_into(const Solid& room, const Solid& thing) {
  const Region shared = common(room.outline(), thing.outline());
  if (shared.empty()) return {};
  const Rect ours = room.outline().bounds();
  const Rect theirs = thing.outline().bounds();
  const Length sideways = std::min({ours.high.x - theirs.low.x, theirs.high.x - ours.low.x,
                                    ours.high.y - theirs.low.y, theirs.high.y - ours.low.y});
  const Length upright = std::min(room.top() - thing.base(), thing.top() - room.base());
  return std::max(Length{}, std::min(sideways, upright));
}

// The last 12 in of a rectangle at each of its short ends, at any turn; all of a short one.
std::vector<Region> pillows_of(const TurnedRectangle& place) {
  const auto& c = place.corners;
  if (place.length <= pillow_depth * 2) return {Region(Polygon::promised({c[0], c[1], c[2], c[3]}))};
  const auto toward = [&](Point from, Point to) {
    const auto part = [&](Length span) {
      return Length::from_ticks(
          static_cast<std::int64_t>(Int128{span.ticks()} * pillow_depth.ticks() / place.length.ticks()));
    };
    return from + Vector{part(to.x - from.x), part(to.y - from.y)};
  };
  return {Region(Polygon::promised({c[0], toward(c[0], c[1]), toward(c[3], c[2]), c[3]})),
          Region(Polygon::promised({toward(c[1], c[0]), c[1], c[2], toward(c[2], c[3])}))};
}

// On a narrow bed the longest place of a person's width may lie across it, where nobody lies: then the
// largest rectangle is the place.
std::vector<Region> pillows_of(const SleepingRoom& room) {
  std::vector<Region> pillows;
  if (!room.largest) return pillows;
  const auto add = [&](const std::optional<TurnedRectangle>& place, Length width) {
    if (!place || side_beside(*place, width) * 2 < room.largest->length) return;
    for (Region& pillow : pillows_of(*place)) pillows.push_back(std::move(pillow));
  };
  for (const PersonRoom& person : room.people) add(person.place, person.person->width);
  if (room.people.empty()) add(room.longest, 24_in);
  if (pillows.empty()) return pillows_of(*room.largest);
  return pillows;
}

void add_sitting(const Seat& seat, const std::vector<const Placed*>& things, Length within,
                 std::vector<Knock>& knocks) {
  const std::optional<Solid> eyes = eyes_over(seat);
  for (const Placed* thing : things) {
    if (!eyes || hangs_over(*thing, seat)) continue;
    const Nearest found = nearest(*eyes, thing->solid);
    if (found.squared < within)
      knocks.push_back({Knock::Of::sitting_head, thing->id, seat.cushions, {}, found, found.squared.floor()});
  }
  const std::optional<Solid> elbows = elbow_room_over(seat);
  for (const Placed* thing : things) {
    if (!elbows || !overlaps(*elbows, thing->solid)) continue;
    knocks.push_back({Knock::Of::elbow,
                      thing->id,
                      seat.cushions,
                      {},
                      nearest(*elbows, thing->solid),
                      reach_into(*elbows, thing->solid)});
  }
}

}  // namespace

std::optional<Solid> eyes_over(const Seat& seat) {
  return zone(seat.eyes, seat.sits_at + body_figures(BodyMeasure::eye_height_sitting, Sex::women).p5,
              seat.sits_at + body_figures(BodyMeasure::eye_height_sitting, Sex::men).p95);
}

std::optional<Solid> elbow_room_over(const Seat& seat) {
  return zone(seat.elbows, seat.sits_at + body_figures(BodyMeasure::elbow_rest_height, Sex::women).p5,
              seat.sits_at + body_figures(BodyMeasure::elbow_rest_height, Sex::men).p95);
}

std::vector<Knock> knocks_of(const Plan& plan, const Arrangement& arrangement,
                             const std::vector<Seat>& seats) {
  std::vector<Knock> knocks;
  const std::vector<const Placed*> things = jutting(arrangement);
  for (const Seat& seat : seats) add_sitting(seat, things, limit_of(plan, "knock.sitting"), knocks);
  return knocks;
}

std::vector<Knock> knocks_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                             const Mattress& mattress, const SleepingRoom& room) {
  std::vector<Knock> knocks;
  const Length within = limit_of(plan, "knock.lying");
  const std::vector<Region> pillows = pillows_of(room);
  for (const Placed* thing : jutting(arrangement)) {
    std::optional<Nearest> least;
    for (const Region& pillow : pillows) {
      // What stands lower than the level beside the bed is under no head; what is at it or above is near.
      if (thing->solid.top() <= mattress.level) continue;
      const Nearest found = nearest(Solid(pillow, mattress.level - one_tick, mattress.level), thing->solid);
      if (!least || found.squared < least->squared) least = found;
    }
    if (least && least->squared < within)
      knocks.push_back({Knock::Of::lying_head, thing->id, {}, bed.id, *least, least->squared.floor()});
  }
  return knocks;
}

}  // namespace berthwright
