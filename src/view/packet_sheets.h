#pragma once

#include "view/packet.h"

namespace berthwright {

/// The packet on paper: its words as pages of notes, and after those of a section the sheets of `sheets` that
/// it is about, in place of the small drawings. Pages are numbered among themselves. `packet` is made of
/// `of`.
std::vector<Sheet> packet_sheets(const PacketMatter& of, const Packet& packet);

}  // namespace berthwright
