#include "solve/heat/cord_floor.h"

#include <algorithm>
#include <tuple>

#include "geometry/box_room.h"
#include "solve/room/nearest_wall.h"
#include "solve/room/room_shape.h"

namespace berthwright {

CordLevel level_under(const Placed& appliance) {
  const auto& carriers = appliance.carried_by;
  if (carriers.empty() || std::ranges::find(carriers, "floor") != carriers.end()) return {};
  return {appliance.solid.base(), carriers};
}

bool takes_floor(const Placed& thing, const CordLevel& level) {
  const bool curtain = thing.fixture != nullptr && thing.fixture->kind == Fixture::Kind::curtain;
  return !curtain && thing.solid.base() < level.height + over_a_cord && thing.solid.top() > level.height;
}

Region bare_level(const Plan& plan, const Arrangement& arrangement, const CordLevel& level) {
  if (level.carriers.empty()) return room_between(plan->interior, level.height, level.height + cord_room);
  std::vector<Region> tops;
  for (const std::string& id : level.carriers)
    if (const Placed* carrier = arrangement.find(id)) tops.push_back(carrier->solid.outline());
  return united(tops);
}

Region cord_floor(const Plan& plan, const Arrangement& arrangement, std::string_view appliance,
                  const CordLevel& level, const Region& shunned) {
  std::vector<Region> taken{shunned};
  for (const Placed& thing : arrangement.things)
    if (thing.id != appliance && takes_floor(thing, level)) taken.push_back(thing.solid.outline());
  return covered_by_squares(without(bare_level(plan, arrangement, level), united(taken)), cord_room);
}

std::string taker_of_floor(const Plan& plan, const Arrangement& arrangement, const CordLevel& level,
                           Point place, std::string_view except) {
  const Region around(grown(Rect{place, place}, cord_room));
  const Placed* taker = nullptr;
  const auto rank = [](const Placed& thing) { return std::tuple(-thing.solid.top(), thing.id); };
  for (const Placed& thing : arrangement.things)
    if (thing.id != except && takes_floor(thing, level) && overlaps(around, thing.solid.outline()) &&
        (taker == nullptr || rank(thing) < rank(*taker)))
      taker = &thing;
  return taker != nullptr ? taker->id : nearest_wall(plan->interior, place);
}

}  // namespace berthwright
