#include <berthwright/solve/way/exits.h>

#include <algorithm>

namespace berthwright {
namespace {

bool may_serve(const Opening& opening) {
  const bool door = opening.kind == Opening::Kind::door && opening.swing != Opening::Swing::fixed;
  return door || opening.escape;
}

bool lets_a_body_out(const ClearOpening& clear) {
  return std::min(clear.for_dwelling.length, clear.for_dwelling.width) >= bodily;
}

// Whether the thing is of another bed of the configuration and lies over this one.
bool is_bed_above(const Plan& plan, const Bed& bed, const Mattress& mattress, const Placed& thing) {
  const bool of_another = std::ranges::any_of(plan->beds, [&](const Bed& other) {
    return other.id != bed.id && other.configuration == bed.configuration &&
           std::ranges::find(other.pieces, thing.id, &PieceId::text) != other.pieces.end();
  });
  return of_another && thing.solid.base() > mattress.level &&
         overlaps(thing.solid.outline(), mattress.surface);
}

}  // namespace

bool is_reached_from(const Plan& plan, const Arrangement& arrangement, const BedPlace& place,
                     const Opening& opening) {
  const auto& [bed, mattress] = place;
  if (distance_from_bed(plan, arrangement, bed, opening) > in_reach) return false;
  if (mattress.surface.empty()) return true;
  if (opening.sill + opening.height < mattress.level + vehicle_opening.width) return false;
  return std::ranges::none_of(arrangement.things, [&](const Placed& thing) {
    return is_bed_above(plan, bed, mattress, thing) && opening.sill >= thing.solid.base();
  });
}

std::vector<ExitOpening> exit_openings(const Plan& plan, const Arrangement& arrangement) {
  std::vector<ExitOpening> openings;
  for (const Opening& opening : plan->openings) {
    if (!may_serve(opening)) continue;
    ExitOpening one{clear_opening(plan, arrangement, opening), {&opening, {}, true}};
    if (opening.swing == Opening::Swing::in) one.swing = inward_swing(plan, arrangement, opening);
    openings.push_back(std::move(one));
  }
  return openings;
}

BedExits exits_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed, const Mattress& mattress,
                  const std::vector<ExitOpening>& openings) {
  BedExits exits;
  exits.ways = ways_out(plan, arrangement, bed, mattress);
  const Length asked = plan.limit(*find_rule("way.aisle"));
  for (const ExitOpening& one : openings) {
    const Opening& opening = *one.clear.opening;
    exits.away.push_back(distance_from_bed(plan, arrangement, bed, opening));
    exits.reached.push_back(is_reached_from(plan, arrangement, {bed, mattress}, opening));
    if (!one.opens()) continue;
    const auto way = std::ranges::find(exits.ways, opening.id.text(), &WayOut::door);
    const Length width = way == exits.ways.end() ? Length{} : way->width;
    const bool near = exits.reached.back();
    if ((width > Length{} && width >= asked) || (near && one.clear.holds_vehicle_opening()))
      exits.counted.push_back(opening.id.text());
    if (width >= bodily || (near && lets_a_body_out(one.clear))) exits.passable.push_back(opening.id.text());
  }
  std::ranges::sort(exits.counted);
  std::ranges::sort(exits.passable);
  return exits;
}

}  // namespace berthwright
