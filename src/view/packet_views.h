#pragma once

#include "view/packet.h"
#include "view/plan_drawing.h"
#include "view/quiet_sheet.h"

namespace berthwright {

// Drawings of a packet, none wider than `telephone_width`.

/// What stands beside a drawing: numbers and signs with their words.
std::vector<PacketKey> packet_keys(const std::vector<Note>& notes);
/// A configuration from above, everything by its name and the beds with their sizes, and raised.
PacketViews glance_views(const DrawnConfiguration& of);
/// A sheet over a quiet plan, without its notes but for key and signs.
PacketViews quiet_views(const DrawnConfiguration& of, const QuietSheet& sheet);

}  // namespace berthwright
