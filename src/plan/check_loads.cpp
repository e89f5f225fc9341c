#include <algorithm>

#include <berthwright/exact/measure.h>

#include "plan/in_quotes.h"
#include "plan/promises.h"

namespace berthwright {
namespace {

constexpr std::size_t most_loads = 20;

Problem not_zero(const char* what) {
  return {.id = "weight.zero",
          .message = std::string("the ") + what + " of a trailer is not zero",
          .found = "0",
          .allowed = "a weight above zero",
          .cure = "weigh it, or take the figure away: then it is unknown"};
}

void check_weighed(const PlanParts& parts, const Weighed& weighed, Reading& faults) {
  if (weighed.axle <= Mass{}) faults.add(field_of(weighed.origin, "axle"), not_zero("axle load"));
  if (weighed.coupling + weighed.axle > heaviest)
    faults.add(weighed.origin, {.id = "mass.too-large",
                                .message = "coupling and axle together weigh more than 20 tonnes",
                                .found = mass_text(weighed.coupling + weighed.axle, parts.unit),
                                .allowed = "at most " + mass_text(heaviest, parts.unit),
                                .cure = "check the weights and their units"});
  if (weighed.with_everything && weighed.configuration.empty())
    faults.add(field_of(weighed.origin, "configuration"),
               {.id = "weighed.configuration",
                .message = "where the pieces were on the scales is not said",
                .found = "nothing",
                .allowed = "the id of a configuration",
                .cure = "write the configuration in which the trailer was weighed"});
  if (!weighed.left || !weighed.right || weighed.axle <= Mass{}) return;
  const Mass wheels = *weighed.left + *weighed.right;
  // Scales read to a few pounds; a hundredth of the axle load, at least 5 lb, is theirs.
  const Mass apart = std::max(wheels, weighed.axle) - std::min(wheels, weighed.axle);
  if (apart * 100 <= weighed.axle || apart <= Mass::pounds(5)) return;
  faults.add(field_of(weighed.origin, "axle"),
             {.id = "weighed.sides",
              .message = "the wheels carry " + mass_text(wheels, parts.unit) + " together, the axle " +
                         mass_text(weighed.axle, parts.unit),
              .found = mass_text(weighed.axle, parts.unit),
              .allowed = "left and right that together make the axle load",
              .cure = "weigh them again, the trailer level"});
}

void check_chassis(const PlanParts& parts, const Chassis& chassis, Reading& faults) {
  const Length length = parts.interior.length;
  if (chassis.axle && *chassis.axle > length)
    faults.add(field_of(chassis.origin, "axle"),
               {.id = "chassis.axle",
                .message = "the axle lies " + both(*chassis.axle, parts.unit) +
                           " behind the front wall, and the room is " + both(length, parts.unit) +
                           " long: it would stand outside the trailer",
                .found = exact_text(*chassis.axle, parts.unit),
                .allowed = "at most " + exact_text(length, parts.unit),
                .cure = "measure from the inside of the front wall to the middle of the axle"});
  if (chassis.coupling && chassis.axle && *chassis.coupling + *chassis.axle <= Length{})
    faults.add(field_of(chassis.origin, "coupling"),
               {.id = "chassis.coupling",
                .message = "coupling and axle lie in one place",
                .found = "0",
                .allowed = "a coupling ahead of the axle",
                .cure = "measure both from the inside of the front wall"});
  const auto limit = [&](const std::optional<Mass>& mass, const char* field) {
    if (mass && *mass <= Mass{})
      faults.add(field_of(chassis.origin, std::string("limits/") + field), not_zero("limit"));
  };
  limit(chassis.whole_limit, "whole");
  limit(chassis.axle_limit, "axle");
  limit(chassis.coupling_limit, "coupling");
  if (chassis.weighed) check_weighed(parts, *chassis.weighed, faults);
}

void check_tanks(const PlanParts& parts, Reading& faults) {
  const auto report = [&](const Origin& origin, Volume volume, Volume box, const std::string& whose) {
    if (volume <= box) return;
    const Gallon gallon = parts.english == English::british ? Gallon::imperial : Gallon::us;
    faults.add(field_of(origin, "volume"),
               {.id = "tank.volume",
                .message = "a tank of " + volume_text(volume, parts.unit, gallon) + " is larger than " +
                           whose + ", " + volume_text(box, parts.unit, gallon),
                .found = volume_text(volume, parts.unit, gallon),
                .allowed = "at most " + volume_text(box, parts.unit, gallon),
                .cure = "check the volume, its unit and the size of the tank"});
  };
  for (const Fixture& fixture : parts.fixtures)
    if (fixture.fill)
      report(fixture.origin, fixture.fill->volume,
             Volume::box(fixture.solid.outline().area(), fixture.solid.height()), "its own outside");
  const Volume room = Volume::box(parts.interior.outline.polygon().area(), parts.interior.height);
  for (const Cargo& cargo : parts.cargo)
    if (cargo.fill) report(cargo.origin, cargo.fill->volume, room, "the room");
}

void check_cargo(const PlanParts& parts, Reading& faults) {
  for (const Cargo& cargo : parts.cargo) {
    if (cargo.across && *cargo.across > parts.interior.width)
      faults.add(field_of(cargo.origin, "from_left"),
                 {.id = "cargo.outside",
                  .message = in_quotes(cargo.id) + " lies beyond the right wall",
                  .found = exact_text(*cargo.across, parts.unit),
                  .allowed = "at most " + exact_text(parts.interior.width, parts.unit),
                  .cure = "measure from the left wall"});
  }
}

void check_circuits(const PlanParts& parts, Reading& faults) {
  if (!parts.supply) return;
  std::size_t loads = 0;
  for (const Piece& piece : parts.pieces) loads += piece.draw ? 1 : 0;
  for (const Fixture& fixture : parts.fixtures) loads += fixture.draw ? 1 : 0;
  for (const Circuit& circuit : parts.supply->circuits) loads += circuit.loads.size();
  if (loads <= most_loads) return;
  faults.add(field_of(parts.supply->origin, "circuits"),
             {.id = "supply.many-loads",
              .message = "there are " + std::to_string(loads) + " loads on the supply",
              .found = std::to_string(loads),
              .allowed = "at most " + std::to_string(most_loads),
              .cure = "write small loads that run together as one load"});
}

}  // namespace

void check_loads(const PlanParts& parts, Reading& faults) {
  if (parts.chassis) check_chassis(parts, *parts.chassis, faults);
  check_tanks(parts, faults);
  check_cargo(parts, faults);
  check_circuits(parts, faults);
}

}  // namespace berthwright
