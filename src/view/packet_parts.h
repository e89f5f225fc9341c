#pragma once

#include <string>
#include <vector>

#include "view/packet.h"
#include "view/plan_drawing.h"

namespace berthwright {

// Sections of a packet. `drawn` are all configurations of the plan, in its order.

using DrawnAll = std::vector<DrawnConfiguration>;

/// The configuration of that name, else the first that is by day, else the first.
const DrawnConfiguration& day_of(const DrawnAll& drawn);
/// Without a bed, and not on the road.
bool is_by_day(const DrawnConfiguration& of);
/// With pictures: between the day and every configuration that has beds of its own; where none has, every one
/// off the road.
bool is_shown(const Conversion& conversion, const DrawnAll& drawn);
/// Shown, and found, and with steps.
bool has_stages(const Conversion& conversion, const DrawnAll& drawn);

/// The day first, the road last, the others as the plan lists them.
std::vector<const Loads*> loads_day_first(std::span<const Loads> all);
/// Weight and balance, supply and warming of every configuration of which the plan states enough; what is the
/// same in two is told once.
PacketSection numbers_section(const PacketMatter& of);
PacketSection glance_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection night_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection changing_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection cushion_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection heat_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection way_section(const PacketMatter& of, const DrawnAll& drawn);
PacketSection figures_section(const PacketMatter& of);
PacketSection caution_section(const PacketMatter& of);
/// Title, whose work it is and the caution; no section yet.
Packet titled_packet(const PacketMatter& of);

/// What is not met or unknown of rules with one of these beginnings, in one configuration or in all, alerts
/// and advice; its cure first.
std::vector<PacketBlock> asking_blocks(const PacketMatter& of, const std::string& configuration,
                                       std::span<const std::string_view> rules);

}  // namespace berthwright
