#pragma once

#include <array>

#include "support/trailer_text.h"

namespace berthwright {

/// Two benches that face each other along a room 76 in long and 76 wide, on its left side, with a table
/// between them; all measures in inches as a person types them.
struct Booth {
  std::string bench_top = "15";
  std::string bench_depth = "23";
  std::string bench_width = "42";
  std::string back = "15";  ///< height of the two back cushions; empty: none
  std::string table_front = "23 1/8";
  std::string table_length = "29 3/4";
  std::string table_base = "28.797";
  std::string room_height = "76";
  std::vector<std::string> more{};  ///< further fixtures
};
TrailerText booth(const Booth& booth);

/// One fixture of a kind that is a box: front, left, length, width, base, top.
std::string box(const std::string& id, const std::string& kind, const std::array<std::string, 6>& sides);

/// Trailers whose seats meet, nearly meet and miss every rule of seats and head bumps.
std::vector<TrailerText> seats_of_every_status();

}  // namespace berthwright
