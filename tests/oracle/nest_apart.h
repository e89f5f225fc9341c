#pragma once

#include <cstdint>
#include <vector>

namespace berthwright::oracle {

/// A corner in ticks, at most 2^30 from the origin.
struct NestCorner {
  std::int64_t x = 0;
  std::int64_t y = 0;
  friend bool operator==(const NestCorner&, const NestCorner&) = default;
  friend auto operator<=>(const NestCorner&, const NestCorner&) = default;
};
/// One part as it lies: the interior is on the left of each ring.
using NestRings = std::vector<std::vector<NestCorner>>;

/// Whether interiors meet, in whole numbers alone. All edges are cut where a corner of the other part lies on
/// them; then, unless two cross, each piece lies within, without or along the border of the other.
bool nest_interiors_meet(const NestRings& a, const NestRings& b);

/// Whether every two border points are at least `gap` apart; exact.
bool nest_borders_apart(const NestRings& a, const NestRings& b, std::int64_t gap);

bool nest_lies_in(const NestRings& part, NestCorner low, NestCorner high);

}  // namespace berthwright::oracle
