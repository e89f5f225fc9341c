#include "solve/gives_way.h"

#include <algorithm>

#include <berthwright/solve/heat/distances.h>

#include "plan/wall_names.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

constexpr Length beside_a_bunk = 6_in;  // farther off nothing keeps anybody in (our own choice)

bool carries_something(const Arrangement& arrangement, const std::string& id) {
  return std::ranges::any_of(arrangement.things, [&](const Placed& other) {
    return std::ranges::find(other.carried_by, id) != other.carried_by.end();
  });
}

bool is_of_a_bed(const Plan& plan, const Arrangement& arrangement, const std::string& id) {
  return std::ranges::any_of(plan->beds, [&](const Bed& bed) {
    return bed.configuration == arrangement.configuration->id &&
           std::ranges::find(bed.pieces, id, &PieceId::text) != bed.pieces.end();
  });
}

// Beside a bed high enough to fall from, and rising above it.
bool guards_a_bunk(const Plan& plan, const Arrangement& arrangement, const Fixture& fixture) {
  const Length fall = plan.limit(*find_rule("bed.guard-rail"));
  return std::ranges::any_of(arrangement.things, [&](const Placed& piece) {
    return is_of_a_bed(plan, arrangement, piece.id) && piece.solid.base() > fall &&
           fixture.solid.top() > piece.solid.top() &&
           nearest(fixture.solid.outline(), piece.solid.outline()).squared <= beside_a_bunk;
  });
}

bool is_needed_in_any_configuration(const Plan& plan, const Fixture& fixture) {
  return std::ranges::any_of(plan->configurations, [&](const Configuration& configuration) {
    const Result<Arrangement> standing = arranged(plan, configuration);
    return !standing || carries_something(*standing, fixture.id.text()) ||
           guards_a_bunk(plan, *standing, fixture);
  });
}

bool is_furniture(const Fixture& fixture) {
  return fixture.kind == Fixture::Kind::cabinet || fixture.kind == Fixture::Kind::locker ||
         fixture.kind == Fixture::Kind::shelf || fixture.kind == Fixture::Kind::counter;
}

// Whether the other thing stands on that part of a fixture, hangs under it or is let into it.
bool is_joined_to(const Solid& part, const Fixture& other) {
  return other.kind != Fixture::Kind::curtain && overlaps(other.solid.outline(), part.outline()) &&
         other.solid.base() <= part.top() && part.base() <= other.solid.top();
}

bool holds_no_fixture(const Plan& plan, const Fixture& fixture, const Solid& part) {
  return std::ranges::none_of(plan->fixtures, [&](const Fixture& other) {
    return other.id != fixture.id && is_joined_to(part, other);
  });
}

Rect strip_at(Rect box, Wall side, Length by) {
  switch (side) {
    case Wall::front:
      box.high.x = box.low.x + by;
      break;
    case Wall::rear:
      box.low.x = box.high.x - by;
      break;
    case Wall::left:
      box.high.y = box.low.y + by;
      break;
    case Wall::right:
      box.low.y = box.high.y - by;
      break;
  }
  return box;
}

Vector toward(Wall wall, Length by) {
  switch (wall) {
    case Wall::front:
      return {-by, Length{}};
    case Wall::rear:
      return {by, Length{}};
    case Wall::left:
      return {Length{}, -by};
    default:
      return {Length{}, by};
  }
}

bool comes_nearer_to_heat(const Plan& plan, const Arrangement& arrangement, const Placed& thing,
                          const Solid& there) {
  const auto far_enough = [&](const Placed& source) {
    Length asked = plan.limit(*find_rule("heat.three-feet"));
    if (const DataPlate* plate = plate_of(source))
      for (const std::optional<Length>& face : {plate->front, plate->back, plate->sides, plate->top})
        asked = std::max(asked, face.value_or(Length{}));
    return SquaredLength::of(asked);
  };
  return std::ranges::any_of(arrangement.things, [&](const Placed& other) {
    if (&other == &thing || !gives_heat(other)) return false;
    const SquaredLength then = nearest(there, other.solid).squared;
    return then < far_enough(other) && then < nearest(thing.solid, other.solid).squared;
  });
}

// What is built in stays at the wall it stands or hangs at.
bool leaves_its_wall(const Plan& plan, const Placed& thing, Wall wall) {
  if (thing.fixture == nullptr) return false;
  const Region inside = room_between(plan->interior, thing.solid.base(), thing.solid.top());
  const auto stands_at = [&](Wall side) {
    return !contains(inside, moved(thing.solid.outline(), toward(side, one_tick)));
  };
  return is_end_wall(wall) ? stands_at(Wall::front) || stands_at(Wall::rear)
                           : stands_at(Wall::left) || stands_at(Wall::right);
}

}  // namespace

bool is_portable_heater(const Placed& thing) {
  return thing.piece != nullptr && (thing.piece->heat || thing.piece->kind == Piece::Kind::heater);
}

bool gives_way(const Plan& plan, const Arrangement& arrangement, const Placed& thing) {
  if (thing.piece != nullptr)
    return !is_portable_heater(thing) && !is_of_a_bed(plan, arrangement, thing.id) &&
           !carries_something(arrangement, thing.id);
  return is_furniture(*thing.fixture) && !thing.fixture->heat &&
         !is_needed_in_any_configuration(plan, *thing.fixture);
}

bool may_be_cut_back(const Plan& plan, const Fixture& fixture, Wall side, Length by) {
  const Region part(strip_at(fixture.solid.outline().bounds(), side, by));
  return holds_no_fixture(plan, fixture, Solid(part, fixture.solid.base(), fixture.solid.top()));
}

bool has_room_to_move(const Plan& plan, const Arrangement& arrangement, const Placed& thing, Wall wall,
                      Length by) {
  const Solid there(moved(thing.solid.outline(), toward(wall, by)), thing.solid.base(), thing.solid.top());
  if (!contains(room_between(plan->interior, there.base(), there.top()), there.outline())) return false;
  if (leaves_its_wall(plan, thing, wall)) return false;
  if (thing.fixture != nullptr && !holds_no_fixture(plan, *thing.fixture, thing.solid)) return false;
  if (comes_nearer_to_heat(plan, arrangement, thing, there)) return false;
  return !carries_something(arrangement, thing.id) &&
         std::ranges::none_of(arrangement.things, [&](const Placed& other) {
           return &other != &thing && !other.is_curtain() && overlaps(there, other.solid);
         });
}

}  // namespace berthwright
