#pragma once

#include "view/packet.h"

namespace berthwright {

/// The packet on paper: its words as pages of notes, then, in place of the small drawings, the sheets of `sheets`
/// that its sections are about, in their order. Pages are numbered among themselves. `packet` is made of `of`.
std::vector<Sheet> packet_sheets(const PacketMatter& of, const Packet& packet);

}  // namespace berthwright
