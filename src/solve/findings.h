#pragma once

#include <berthwright/solve/answer.h>

namespace berthwright {

/// What stands outside the room or in another thing's space; one met finding of each rule where nothing does.
void add_room_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// What boards and tables rest on: balance, bearing at each side, tipping, spans, free edges, flush tops. A
/// table on one or two legs, or held at a height the plan gives, is unknown: how it is fastened is not told.
void add_support_findings(const Plan& plan, const ConfigurationAnswer& answer,
                          std::vector<Finding>& findings);

/// Hollow spots under cushions, cushions on two heights, beds without cushions, things laid upon a bed.
void add_cushion_findings(const Plan& plan, const ConfigurationAnswer& answer,
                          std::vector<Finding>& findings);

/// Surface, size, heights and people of every bed of the configuration.
void add_bed_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// How boards under cushions bend, whether they carry sleepers and a knee, and what their ledges must hold.
/// What is the same in several configurations is told once. Estimates: advice and information only.
void add_strength_findings(const Plan& plan, const ConfigurationAnswer& answer,
                           std::vector<Finding>& findings);

/// Boards whose thickness in the plan is compared with that of the panel they are cut from.
void add_panel_thicknesses(const Plan& plan, std::vector<Finding>& findings);

/// Foam of every bed that lies on what does not give: too thin, too soft, of unknown grade.
void add_foam_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// Measures of every seat of the configuration, one finding a measure: of two limits the one that is missed
/// or nearer; and what juts into the room of heads and elbows, one met finding where nothing does.
void add_seat_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// Distances of every heat source of the configuration: one finding for bare beds, one for made-up beds, one
/// for other cushions, one for curtains and one for what else can burn, each the worst of its kind; and the
/// sources that are stowed. The published 3 ft is asked of heaters only; ovens, cooktops and furnace outlets
/// have no published figure, so without a data plate they are unknown, and the 3 ft are told for information.
/// What stands in between is told beside the nearest distance of a kind, and changes none.
void add_heat_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// Sources of the trailer whose data plate the plan does not give at all.
void add_missing_plates(const Plan& plan, std::vector<Finding>& findings);

/// Cords of the heaters that stand in the room: whether each reaches its outlet, what it passes under and
/// crosses, what lies before the outlet. What the plan does not tell is unknown.
void add_cord_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);

/// Heaters of whose cord the plan says nothing at all.
void add_missing_cords(const Plan& plan, std::vector<Finding>& findings);

/// How far each leaf opens: once for the trailer where what is built in stops it, else in each configuration
/// but the road; where a bed is made up, what is stopped by it is information only. And what lies on lids.
void add_leaf_findings(const Plan& plan, const Answer& answer, std::vector<Finding>& findings);

/// What the plan does not say of how pieces and leaves are held in the configuration "road".
void add_road_findings(const Plan& plan, std::vector<Finding>& findings);
/// How people get out of the beds of the configuration: the widest way to a door, how many ways count, what
/// of each opening marked as a way out is clear, and what stands in the swing of what opens inward.
void add_way_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings);
/// Sills of the openings marked as ways out; and that the plan shows no way out at all.
void add_way_findings_of_trailer(const Plan& plan, const Answer& answer, std::vector<Finding>& findings);

/// Whether the bedding of each bed goes into the place where it is kept while the bed is not made, all other
/// things there left out; one for all beds of which the plan does not say where that is.
void add_bedding_findings(const Plan& plan, std::vector<Finding>& findings);

/// Alarms that the plan shows, and where they hang; nothing for a plan without beds.
void add_alarm_findings(const Plan& plan, const Answer& answer, std::vector<Finding>& findings);

}  // namespace berthwright
