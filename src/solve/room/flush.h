#pragma once

#include <berthwright/solve/room/support.h>

namespace berthwright {

/// A board that lies on ledges beside a fixed top (bench, locker, cabinet, shelf): how far its own top is off
/// that one, and the height of its ledges at which the two would be flush: the fixed top less the board's
/// real thickness.
struct FlushTop {
  std::string board;
  std::vector<std::string> beside;  ///< all fixed tops of that height
  std::vector<std::string> ledges;
  Length step;         ///< top of the board less the fixed one: negative, the board lies low
  Length ledge_now;    ///< top of the ledges
  Length ledge_flush;  ///< where it belongs
  Point where;         ///< on the board, nearest to the fixed top
};

/// For each board one for each height of fixed tops within 1/2 in of it in plan and 2 in in height, in the
/// order of the arrangement. Boards whose cushions are not as thick as those beside are left out: there the
/// tops of the cushions are levelled, not the boards.
std::vector<FlushTop> flush_tops(const Arrangement& arrangement, const Support& support);

}  // namespace berthwright
