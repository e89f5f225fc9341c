#pragma once

#include <optional>
#include <span>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Where one piece comes to rest upon the things that stand already.
struct Rest {
  Length base;
  std::vector<std::string> carried_by;  ///< greatest bearing first; "floor"
  std::vector<std::string> pressed_by;
};

/// A piece whose pose names no carrier is let down from this height: what begins below it may carry it.
inline constexpr Length drop_height = 48_in;

/// Lights, outlets, alarms, curtains, protrusions, guard rails: they carry only what names them.
bool hangs_on_a_wall(const Placed& thing);

/// Design 4.15 and 4.16, as told at `arranged`. None: the pose names carriers, and none of them is beneath
/// it.
std::optional<Rest> rest_of(const Piece& piece, const Pose& pose, std::span<const Placed* const> standing);

}  // namespace berthwright
