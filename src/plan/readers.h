#pragma once

#include <optional>
#include <string>

#include <berthwright/plan/plan.h>

#include "plan/fields.h"
#include "plan/place.h"
#include "plan/shape.h"

namespace berthwright {

// One reader for each part of a plan file. Where a value is at fault something harmless stands in for it and
// reading goes on, so that one run finds every fault; a plan with a fault is never handed out.

/// A missing version counts as known here; `read_header` asks for it. Any other makes the rest unreadable.
bool is_known_version(const Node& root, Reading& reading);
/// Title block, unit, words, side of the road, paper; sets the unit of `fields.reading()`.
void read_header(Fields& fields, PlanParts& parts);
/// 10 by 6 by 6 ft: stands in for a room that could not be read.
Interior plain_interior(const Origin& origin);
Interior read_interior(const Node* node, Reading& reading);
std::vector<Opening> read_openings(const Node* node, Reading& reading);
/// Placed; the places of fixtures may lean on each other in any order of the file.
std::vector<Fixture> read_fixtures(const Node* node, const RoomExtent& room, Reading& reading);
/// What the plan says of all covers; of one cushion, `usual` standing in for what it does not say.
Sewing read_sewing(const Node* node, Reading& reading);
Sewing read_cover(const Node& node, const Sewing& usual, Reading& reading);
std::vector<Piece> read_pieces(const Node* node, const Sewing& usual, Reading& reading);
/// The plan's foam for cushions without a grade of their own: those that stand on edge somewhere are backs.
void fill_foam(PlanParts& parts, Reading& reading);
/// Poses of pieces that could not be read are left out, and the configuration's pointer put into `unsound`.
std::vector<Configuration> read_configurations(const Node* node, const PlanParts& parts, Reading& reading,
                                               std::vector<std::string>& unsound);
std::vector<Bed> read_beds(const Node* node, Reading& reading);
std::vector<Override> read_overrides(const Node* node, Reading& reading);
Lifting read_lifting(const Node* node, Reading& reading);
CushionWishes read_cushion_wishes(const Node* node, Reading& reading);
/// "weight", "volume" and "fill" of a thing that stays or is carried along.
std::optional<MassSpan> read_weight_span(Fields& fields);
std::optional<TankFill> read_fill(Fields& fields);
/// "watts" and "continuous".
std::optional<Draw> read_draw(Fields& fields, bool usually_continuous);
std::optional<Chassis> read_chassis(const Node* node, Reading& reading);
std::vector<Cargo> read_cargo(const Node* node, Reading& reading);
std::optional<Supply> read_supply(const Node* node, Reading& reading);
std::optional<Warming> read_warming(const Node* node, Reading& reading);
std::vector<std::string> read_notes(const Node* node, Reading& reading);

/// "faces" and "data_plate" of a thing that gives heat.
HeatSource read_heat(Fields& fields);
/// "name", or the id in its place.
std::string read_name(Fields& fields, const std::string& id);

}  // namespace berthwright
