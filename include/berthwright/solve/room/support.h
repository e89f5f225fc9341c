#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// One straight side of a rigid piece that lies flat: an edge of its outline at least 1 in long, so that the
/// chords of rounded corners are none. A free one has nothing beneath, within 2 in of it, that runs along it:
/// what only crosses it (the end of a ledge at the next side, a rail) is deeper than long and does not count.
struct BearingSide {
  Edge edge;       ///< in plan, the piece on its left
  Wall toward;     ///< the way the side looks; of a slanted one the nearer way
  Length borne;    ///< how much of the edge bears; zero: a free edge
  Length depth;    ///< least bearing, square inward from the edge, an inch at the ends of a ledge not counted
  Length play;     ///< how far the piece can be shoved away from what bears this side, at most 1/2 in
  Length at_play;  ///< least bearing once it is so shoved; zero: it slips off
  Point where;     ///< on the edge, where the bearing is least; the middle of a free edge
  std::vector<std::string> on;  ///< ids of what bears it, in the order of the arrangement; "floor"

  bool is_free() const { return borne == Length{}; }
};

/// The widest opening that a piece bridges in one of its own two directions.
struct FreeSpan {
  Piece::Grain across;  ///< the side of the piece that reaches over the opening: its length or its width
  Length clear;         ///< between the bearings at its two ends; rounded up
  Point from;           ///< in plan, where the opening is widest
  Point to;
  Length carried;  ///< how much of the piece, measured square to the span, bears at both ends
  Length open;     ///< how much of it has an opening beneath; what is more than `carried` hangs free
};

/// What a rigid piece that lies flat (board, table) rests on.
struct BoardSupport {
  enum class Held {
    lies,      ///< by its own weight on what is beneath
    on_legs,   ///< on one or two legs alone: how they are fastened to it the plan does not say
    at_height  ///< at a height that the plan gives, where nothing of the plan bears it
  };
  std::string piece;
  Held held = Held::lies;
  Length underside;
  Region bearing;           ///< outline and tops at the underside together; the whole outline on the floor
  std::vector<Point> hull;  ///< convex hull of the bearing, counter-clockwise; empty without bearing
  std::vector<BearingSide> sides;  ///< counter-clockwise round the outline
  Point centroid;                  ///< to the nearest tick
  bool balanced = false;           ///< the centroid lies inside the hull, not on its border: exact
  Length beyond;                   ///< how far the centroid lies beyond the hull, rounded up; zero inside
  Length overhang;                 ///< greatest distance of a point of the piece beyond the hull, rounded up
  Point overhangs_at;
  std::optional<Mass> weight;   ///< as the plan states it, else an estimate for plywood, rounded down
  std::optional<Mass> tips_at;  ///< least load that tips it, rounded down; none: no overhang or no weight
  std::optional<FreeSpan> over_length;  ///< in the direction of the piece's length; none: no two bearings
  std::optional<FreeSpan> over_width;

  /// The span that a load is carried over: of two that bear nearly all along (9/10) the shorter; else the one
  /// that does; else the longer. nullptr: the piece bridges nothing.
  const FreeSpan* span() const;
};

/// A height on which a soft piece lies, and how much of its outline is carried there, seen from above.
struct CarryingHeight {
  Length top;
  Area area;
  std::vector<std::string> things;  ///< in the order of the arrangement; "floor"
};

/// What a soft piece that lies flat rests on.
struct CushionSupport {
  std::string piece;
  Length underside;
  Region unsupported;  ///< outline with nothing beneath within 1/4 in of the underside, which foam bridges
  Length widest;       ///< diameter of the largest disc in it, rounded up; zero: none
  Point where;         ///< the centre of that disc
  std::vector<CarryingHeight>
      heights;  ///< within 2 in below the underside or rising into it; most area first
};

struct Support {
  std::vector<BoardSupport> boards;  ///< in the order of the arrangement
  std::vector<CushionSupport> cushions;

  const BoardSupport* board(std::string_view piece) const;  ///< nullptr: not laid flat here, or not rigid
};

/// For every board, table, cushion and bolster that lies flat. Bearing and hull are exact up to the rounding
/// of slanted crossings. Play ends at rigid things and walls at the heights of the piece; foam stops nothing.
Support support_of(const Plan& plan, const Arrangement& arrangement);

}  // namespace berthwright
