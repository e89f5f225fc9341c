#pragma once

#include <berthwright/geometry/disc.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// An opening in the lying surface that a disc of 3 in cannot enter (design 4.15): places where a straight
/// edge (at least 1 in) faces another part of the bed, a wall or a solid straight across, less than 6 in
/// away, and places no way leads out of. So inside corners and free edges make none, and openings end flush
/// with free edges.
struct Gap {
  Region region;
  Length width;          ///< diameter of its largest disc; exact between parallel edges, else rounded up
  Point where;           ///< the centre of that disc
  bool at_wall = false;  ///< lies along a wall or solid, not only ends there: reported apart
  /// What corners rounded by up to 3 in take where a side of theirs meets something: reported, closed for
  /// lying. Its width is that of the disc that enters it together with the gaps it joins.
  bool at_corner = false;
};

/// Two pieces of one bed whose tops differ along a shared edge.
struct Ridge {
  PieceId lower;
  PieceId higher;
  Length step;  ///< exact
  Point where;  ///< middle of the longest shared stretch
};

/// The lying surface of a bed (design 4.3).
struct Mattress {
  Length level;     ///< the top height with the largest area; of equal areas the higher
  Region surface;   ///< S: union of cushion tops within 1/2 in of the level
  Region closed;    ///< S': S with gaps up to 1 in between cushions closed; slack at walls is not
  Region levelled;  ///< S' as it would be with every piece of the bed raised or lowered to the level
  std::vector<PieceId> in_surface;
  std::vector<PieceId> dropped_out;  ///< pieces of the bed more than 1/2 in off the level
  std::vector<Gap> gaps;             ///< wider than 1/16 in, widest first
  std::vector<Ridge> ridges;         ///< highest first
};

/// `bed`'s configuration must be the arrangement's. A bed whose pieces are all stowed has an empty surface.
Mattress mattress_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed);

}  // namespace berthwright
