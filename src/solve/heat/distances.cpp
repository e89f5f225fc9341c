#include <berthwright/solve/heat/distances.h>

#include <algorithm>
#include <tuple>

#include "solve/heat/burnables.h"
#include "solve/heat/plate.h"
#include "solve/heat/shield.h"

namespace berthwright {
namespace {

const HeatSource* heat_of(const Placed& thing) {
  if (thing.fixture != nullptr) return thing.fixture->heat ? &*thing.fixture->heat : nullptr;
  return thing.piece != nullptr && thing.piece->heat ? &*thing.piece->heat : nullptr;
}

bool is_stowed(const Placed& thing) {
  return thing.pose != nullptr &&
         (thing.pose->manner == Pose::Manner::stowed || thing.pose->state == Pose::State::stowed);
}

// None: nobody says that it burns.
std::optional<HeatDistance::Kind> kind_of(const Placed& thing) {
  if (thing.is_curtain()) return HeatDistance::Kind::curtain;
  if (thing.is_soft()) return HeatDistance::Kind::cushion;
  const bool burns = thing.fixture != nullptr && thing.fixture->burns && !thing.fixture->heat;
  return burns ? std::optional(HeatDistance::Kind::other) : std::nullopt;
}

// What is rigid, does not burn and gives no heat.
std::vector<const Placed*> shields_from(const Arrangement& arrangement, const Placed& source) {
  std::vector<const Placed*> shields;
  for (const Placed& thing : arrangement.things)
    if (&thing != &source && heat_of(thing) == nullptr && !kind_of(thing)) shields.push_back(&thing);
  return shields;
}

bool has_arcs(const Placed& thing) {
  if (thing.fixture != nullptr) return !thing.fixture->arcs.empty();
  return thing.pose != nullptr && !thing.pose->arcs.empty();
}

Nearest least_distance(const Solid& source, const std::vector<Solid>& solids) {
  std::optional<Nearest> least;
  for (const Solid& solid : solids) {
    const Nearest next = nearest(source, solid);
    const auto order = least ? next.squared <=> least->squared : std::strong_ordering::less;
    if (order < 0 || (order == 0 && std::tie(next.from, next.to) < std::tie(least->from, least->to)))
      least = next;
  }
  return *least;
}

void compare_with_plate(const Placed& source, const Burnable& burnable, Length inexact, HeatDistance& entry) {
  const DataPlate* plate = plate_of(source);
  if (plate == nullptr) return;
  const std::optional<Wall> front = way_of_front(source);
  if (!front) {
    entry.plate_incomplete = true;
    return;
  }
  const Solid& solid = source.solid;
  const SourceBox box{solid.outline().bounds(), solid.base(), solid.top(), *front};
  const PlateReading reading = plate_reading(box, *plate, burnable.solids);
  entry.plate_incomplete = reading.incomplete;
  entry.missing_faces = reading.missing;
  if (!reading.least) return;
  entry.plate_margin = reading.least->margin - inexact;
  entry.plate_required = reading.least->required;
  entry.plate_nearest = reading.least->nearest;
  entry.plate_faces = faces_of(*front, reading.least->cell);
}

}  // namespace

std::vector<Burnable> burnables_in(const Arrangement& arrangement,
                                   const std::vector<std::pair<const Bed*, Bedding>>& beds) {
  std::vector<Burnable> burnables;
  for (const auto& [bed, bedding] : beds) {
    const bool arcs = std::ranges::any_of(bed->pieces, [&](const PieceId& id) {
      const Placed* placed = arrangement.find(id.text());
      return placed != nullptr && has_arcs(*placed);
    });
    burnables.push_back({bed->id.text(), HeatDistance::Kind::bed, false, bedding.bare, arcs});
    burnables.push_back({bed->id.text(), HeatDistance::Kind::bed, true, bedding.made_up, arcs});
  }
  const auto in_a_bed = [&](const std::string& id) {
    return std::ranges::any_of(beds, [&](const auto& entry) {
      return std::ranges::find(entry.first->pieces, PieceId(id)) != entry.first->pieces.end();
    });
  };
  for (const Placed& thing : arrangement.things)
    if (const std::optional<HeatDistance::Kind> kind = kind_of(thing); kind && !in_a_bed(thing.id))
      burnables.push_back({thing.id, *kind, false, {thing.solid}, has_arcs(thing)});
  return burnables;
}

std::optional<Wall> way_of_front(const Placed& source) {
  if (source.fixture != nullptr) return heat_of(source)->faces;
  const Pose& pose = *source.pose;
  const bool upright = pose.manner == Pose::Manner::flat && !pose.placement.flipped;
  return upright && pose.placement.turn.is_quarter() ? pose.faces : std::nullopt;
}

HeatDistance heat_distance(const Placed& source, const Burnable& burnable) {
  const Length inexact =
      (has_arcs(source) ? arc_error : Length{}) + (burnable.has_arcs ? arc_error : Length{});
  HeatDistance entry;
  entry.source = source.id;
  entry.nearest_to = burnable.id;
  entry.kind = burnable.kind;
  entry.made_up = burnable.made_up;
  entry.nearest = least_distance(source.solid, burnable.solids);
  entry.distance = std::max(entry.nearest.squared.floor() - inexact, Length{});
  compare_with_plate(source, burnable, inexact, entry);
  return entry;
}

bool gives_heat(const Placed& thing) { return heat_of(thing) != nullptr && !is_stowed(thing); }

bool is_heater(const Placed& source) {
  return heat_of(source) != nullptr &&
         (source.piece != nullptr || source.fixture->kind == Fixture::Kind::heater);
}

const DataPlate* plate_of(const Placed& source) {
  const HeatSource* heat = heat_of(source);
  return heat != nullptr && heat->plate ? &*heat->plate : nullptr;
}

std::vector<HeatDistance> heat_distances(const Plan&, const Arrangement& arrangement,
                                         const std::vector<std::pair<const Bed*, Bedding>>& beds) {
  const std::vector<Burnable> burnables = burnables_in(arrangement, beds);
  std::vector<HeatDistance> distances;
  for (const Placed& source : arrangement.things) {
    if (!gives_heat(source)) continue;
    for (const Burnable& burnable : burnables)
      if (!burnable.solids.empty()) {
        distances.push_back(heat_distance(source, burnable));
        distances.back().shielded_by =
            shielding(shields_from(arrangement, source), source.solid, burnable.solids);
      }
  }
  std::ranges::sort(distances, {}, [](const HeatDistance& entry) {
    return std::tuple(entry.source, entry.nearest_to, entry.kind, entry.made_up);
  });
  return distances;
}

}  // namespace berthwright
