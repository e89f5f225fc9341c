#pragma once

#include <string>

#include "view/packet.h"

namespace berthwright {

/// The packet as one HTML file that asks for nothing else: style, script and drawings are in it, and its
/// policy lets nothing run but these. Without script every stage of a conversion is there to be read; the
/// same holds on paper. Everything that a person wrote is escaped.
std::string packet_page(const Packet& packet);

std::string_view packet_style();
std::string_view packet_script();

}  // namespace berthwright
