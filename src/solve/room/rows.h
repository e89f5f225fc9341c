#pragma once

#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// What foam gives at one joint, and along a whole row of joints (design 4.1).
inline constexpr Length give_at_joint = Length::inches(1, 4);
inline constexpr Length give_in_row = Length::inches(1, 2);

/// Furniture whose upright faces stop a cushion as a wall does.
bool is_upright(const Placed& thing);

/// Two things pressed together side by side, one of them soft.
struct Squeeze {
  std::size_t number;  ///< the caller's own
  const Placed* first;
  const Placed* second;
  Rect shared;
  Length depth;
};

/// Numbers of the squeezes that foam gives way to: each at most a joint's, and every row of joints in one
/// direction that runs through it, from cushion to cushion, adds up to at most a row's.
std::vector<std::size_t> tolerated_squeezes(const std::vector<Squeeze>& squeezes);

}  // namespace berthwright
