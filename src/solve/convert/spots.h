#pragma once

#include <memory>
#include <string>
#include <vector>

#include <berthwright/solve/convert/steps.h>

#include "solve/convert/carrying.h"
#include "solve/convert/move_table.h"

namespace berthwright {

/// The spot of a piece in one configuration, as it stands there.
PiecePlace spot_in(const Plan& plan, const Arrangement& arrangement, const Pose& pose);
/// The same place, lying the same way: there is nothing to do.
bool is_same_spot(const PiecePlace& a, const PiecePlace& b);

/// Whether a piece that lies flat is turned by half a turn or more: end for end.
bool half_turns(const PiecePlace& spot);

/// One spot in a search.
struct SpotEntry {
  std::size_t piece = 0;  ///< number in the plan
  PiecePlace spot;
  std::vector<std::size_t> needs;  ///< numbers of the spots that carry it
  int burden = 0;
};

/// Where a piece joins its other ways, and what must be opened for that.
struct WayAnchor {
  std::size_t level = 0;
  HeldAt held;
  std::string leaf;
  std::optional<Tilt> tilt{};  ///< it comes to the level tilted
};

/// A bar that stays: what is built in, or the room.
struct ShutBy {
  std::string thing;  ///< id, or "room"
  Length depth;       ///< how far the piece stands in it; zero: it is over it
};

/// The table of a search, and what a table does not hold.
struct SpotTable {
  MoveTable table;                              ///< without start and goal
  std::vector<std::vector<WayAnchor>> anchors;  ///< of each way of each spot
  std::vector<std::vector<ShutBy>> shut;        ///< of each spot
};

/// How each piece of the plan is carried among the spots of two configurations.
std::vector<std::unique_ptr<Carrying>> carryings(const RoomAround& surroundings,
                                                 const std::vector<SpotEntry>& posed);

/// Sets the levels of `carrying`. `bend_all`: soft pieces may be bent past what is near from every spot; else
/// only where no straight way is free of what is built in.
SpotTable spot_table(const RoomAround& surroundings, const std::vector<SpotEntry>& entries,
                     const std::vector<std::unique_ptr<Carrying>>& carrying, bool bend_all);

/// The number that joins the bent ways of a piece.
inline constexpr std::size_t bent_ways = static_cast<std::size_t>(-1);
/// From here on: the numbers that join two spots of a hinged piece.
inline constexpr std::size_t fold_ways = std::size_t{1} << 62U;

}  // namespace berthwright
