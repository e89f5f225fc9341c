#include "write/field_checks.h"

#include <array>

namespace berthwright {
namespace {

constexpr auto fields = std::to_array<FieldChecks>({
    {"plan.built", "alarm.inside-wall"},
    {"plan.openings", "way.*"},
    {"plan.rules", "every check with a number"},
    {"plan.lifting", "the verb steps"},
    {"plan.sewing", "the verb cut"},
    {"interior.side_profile", "room.inside seat.head-room bed.clear-height bed.sitting-up"},
    {"interior.cross_profile", "room.inside seat.head-room bed.clear-height bed.sitting-up"},
    {"opening.kind", "way.*"},
    {"opening.width", "way.aisle way.opening way.dwelling-window"},
    {"opening.height", "way.opening way.dwelling-window"},
    {"opening.sill", "way.sill"},
    {"opening.opens", "way.opening way.dwelling-window way.swing"},
    {"opening.hinge", "way.swing"},
    {"opening.escape", "way.second way.not-stated way.opening way.sill"},
    {"fixture.kind", "alarm.* heat.* cord.* bed.rail-height support.bearing"},
    {"fixture.faces", "heat.data-plate cord.plug-room cord.outlet-faces"},
    {"fixture.data_plate", "heat.data-plate heat.data-plate-missing"},
    {"fixture.burns", "heat.three-feet heat.data-plate"},
    {"fixture.inside", "the verbs heater and steps"},
    {"fixture.opens", "leaf.* road.hold"},
    {"leaf.hinge", "leaf.opens"},
    {"leaf.angle", "leaf.opens"},
    {"leaf.pull", "leaf.opens"},
    {"leaf.held_by", "road.hold"},
    {"leaf.inside", "the verbs heater and steps"},
    {"piece.kind", "bed.* seat.* support.* heat.three-feet"},
    {"piece.foam", "foam.*"},
    {"piece.cover", "the verb cut"},
    {"piece.panel", "strength.*"},
    {"piece.plies", "strength.*"},
    {"piece.grain", "strength.*"},
    {"piece.held_by", "road.hold"},
    {"piece.weight", "the verb steps"},
    {"piece.faces", "heat.data-plate"},
    {"piece.data_plate", "heat.data-plate heat.data-plate-missing"},
    {"piece.cord", "cord.reach cord.not-given cord.under-bedding cord.walkway"},
    {"piece.cord.length", "cord.reach"},
    {"piece.cord.leaves_at", "cord.reach cord.under-bedding cord.walkway"},
    {"pose.on", "room.overlap support.*"},
    {"pose.base", "room.overlap support.*"},
    {"pose.stands_on", "seat.low-back seat.high-back road.on-edge"},
    {"pose.faces", "seat.* road.on-edge"},
    {"pose.state", "heat.* road.heater"},
    {"pose.plugged_into", "cord.*"},
    {"pose.stowed", "heat.stowed"},
    {"bed.pieces", "bed.*"},
    {"bed.people", "bed.person-length bed.person-width bed.side-by-side bed.head-to-foot"},
    {"bed.people.stature", "bed.person-length"},
    {"bed.people.width", "bed.person-width bed.side-by-side bed.head-to-foot"},
    {"bed.people.weight", "strength.sag strength.load"},
    {"data_plate.front", "heat.data-plate"},
    {"data_plate.back", "heat.data-plate"},
    {"data_plate.sides", "heat.data-plate"},
    {"data_plate.top", "heat.data-plate"},
});

}  // namespace

std::span<const FieldChecks> field_checks() { return fields; }

}  // namespace berthwright
