#include <berthwright/solve/way/alarms.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <tuple>

#include "plan/box_sides.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

constexpr Length touches_roof = Length::inches(1, 4);
constexpr Length touches_wall = Length::inches(1, 2);

bool is_alarm(const Fixture& fixture) {
  return fixture.kind == Fixture::Kind::smoke_alarm || fixture.kind == Fixture::Kind::co_alarm ||
         fixture.kind == Fixture::Kind::gas_alarm;
}

bool cooks(const Fixture& fixture) {
  return fixture.kind == Fixture::Kind::cooktop || fixture.kind == Fixture::Kind::oven;
}

constexpr std::array all_sides{Wall::front, Wall::rear, Wall::left, Wall::right};

struct Against {
  Length side;  ///< how long the side of the alarm is that lies against it
  bool outside = false;
  Wall toward = Wall::front;
};

std::optional<Against> what_is_behind(const Plan& plan, const Fixture& alarm) {
  const Rect box = alarm.solid.outline().bounds();
  const Region room = room_between(plan->interior, alarm.solid.base(), alarm.solid.top());
  std::optional<Against> best;
  const auto offer = [&](const Against& found) {
    if (!best || std::tuple(found.side, found.outside) > std::tuple(best->side, best->outside)) best = found;
  };
  for (const Wall side : all_sides) {
    const Rect strip = beyond_side(box, side, touches_wall);
    const Length length = side == Wall::front || side == Wall::rear ? box.height() : box.width();
    if (!contains(room, strip)) offer({length, true, side});
    const Solid at_side(Region(strip), alarm.solid.base(), alarm.solid.top());
    for (const Fixture& other : plan->fixtures)
      if (&other != &alarm && other.kind != Fixture::Kind::curtain && overlaps(at_side, other.solid))
        offer({length, false, side});
  }
  return best;
}

AlarmPlace place_of(const Plan& plan, const Fixture& alarm) {
  AlarmPlace place;
  place.alarm = &alarm;
  const Length roof = roof_over(plan->interior, alarm.solid.outline(), alarm.solid.base());
  place.below_ceiling = std::max(roof - alarm.solid.top(), Length{});
  if (place.below_ceiling <= touches_roof) {
    place.mount = AlarmPlace::Mount::ceiling;
  } else if (const std::optional<Against> behind = what_is_behind(plan, alarm)) {
    place.mount = behind->outside ? AlarmPlace::Mount::outside_wall : AlarmPlace::Mount::inside;
    place.faces = opposite(behind->toward);
  }
  std::optional<SquaredLength> least;
  for (const Fixture& other : plan->fixtures) {
    if (!cooks(other)) continue;
    const SquaredLength squared = nearest(alarm.solid, other.solid).squared;
    if (least && (squared > *least || (squared == *least && place.nearest_cooking < other.id.text())))
      continue;
    least = squared;
    place.nearest_cooking = other.id.text();
    place.to_cooking = squared.floor();
  }
  return place;
}

std::vector<Solid> before(const AlarmPlace& place) {
  const Solid& alarm = place.alarm->solid;
  const Rect box = alarm.outline().bounds();
  std::vector<Solid> spaces{alarm};
  if (place.mount == AlarmPlace::Mount::ceiling) {
    spaces.emplace_back(alarm.outline(), alarm.base() - before_an_alarm, alarm.base());
    return spaces;
  }
  for (const Wall side : all_sides)
    if (!place.faces || *place.faces == side)
      spaces.emplace_back(Region(beyond_side(box, side, before_an_alarm)), alarm.base(), alarm.top());
  return spaces;
}

}  // namespace

std::vector<AlarmPlace> alarm_places(const Plan& plan) {
  std::vector<AlarmPlace> places;
  for (const Fixture& fixture : plan->fixtures)
    if (is_alarm(fixture)) places.push_back(place_of(plan, fixture));
  return places;
}

std::vector<std::string> covering(const Arrangement& arrangement, const AlarmPlace& place) {
  const std::vector<Solid> spaces = before(place);
  std::vector<std::string> ids;
  for (const Placed& thing : arrangement.things) {
    const bool curtain = thing.is_curtain();
    if (!curtain && !thing.is_soft()) continue;
    if (std::ranges::any_of(spaces, [&](const Solid& space) { return overlaps(space, thing.solid); }))
      ids.push_back(thing.id);
  }
  std::ranges::sort(ids);
  return ids;
}

}  // namespace berthwright
