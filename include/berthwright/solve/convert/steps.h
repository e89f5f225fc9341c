#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/convert/meanwhile.h>
#include <berthwright/solve/convert/motion.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Where one piece is at one stage of a conversion.
struct PiecePlace {
  enum class Kind {
    posed,   ///< as a configuration of the plan has it
    parked,  ///< put aside within the room
    stowed,  ///< in a fixture, a drawer or another place that the plan names
    outside  ///< carried out of a door, which is held open
  };
  Kind kind = Kind::posed;
  Pose pose;                            ///< of a parked piece its own; of one outside as it passes the door
  Length base;                          ///< of its underside above the floor; zero when stowed or outside
  std::vector<std::string> carried_by;  ///< ids, or "floor"; empty when stowed or outside
  std::string place;                    ///< stowed: as the plan writes it; outside: id of the door
  Rect reach;                           ///< in plan: where a person takes the piece up or lets it go

  bool stands_in_room() const { return kind == Kind::posed || kind == Kind::parked; }
  Solid solid() const {
    return {pose.outline, base, base + pose.height};
  }  ///< of one that stands in the room
};

/// A person's place on the floor: 20 x 20 in (design 4.16, common practice, no source).
struct StandingPlace {
  Rect square;
  Length away;  ///< from the piece in plan, rounded up
};
inline constexpr Length standing_side = Length::inches(20);

/// All that happens to one piece from taking it up to letting it go.
struct Step {
  PieceId piece;
  PiecePlace from;
  PiecePlace to;
  /// What it passes through, in order. While it is carried a piece counts as its box. Out of and into a
  /// locker, and beyond a door, it is not followed; nor is a soft piece that is `bent`.
  std::vector<Motion> motions;
  bool bent = false;               ///< soft, and bent or squeezed past what is near: no straight way is free
  bool flipped = false;            ///< turned upside down
  std::vector<std::string> opens;  ///< leaf, drawer or door that must be open for it
  std::optional<StandingPlace> taking;  ///< nearest to where it is taken up; none: no floor is free
  std::optional<StandingPlace> letting_go;
};

/// What keeps a piece from its place, or in it.
struct Stuck {
  std::string piece;
  bool at_goal = false;  ///< it cannot come there; else it cannot leave where it is
  /// Ids of what bars every way, the room as "room"; empty: nothing alone, but all together.
  std::vector<std::string> by;
  Length depth;  ///< how far it reaches into the first of them where it stands; zero: not at all
  /// Not where they are: places that these pieces may have take it at every height at which it could be
  /// carried.
  bool by_places = false;
};

/// The way from one configuration of the plan to another. Every figure holds within the moves, places and
/// bounds stated at `conversions`.
struct Conversion {
  enum class Verdict { order, none, undecided };
  const Configuration* from = nullptr;
  const Configuration* to = nullptr;
  Verdict verdict = Verdict::undecided;
  std::vector<PiecePlace> start;  ///< of each piece, in the order of the plan
  std::vector<Step> steps;        ///< as few as can be; empty where both configurations are the same
  bool least_burden = true;  ///< of the orders as short one that carries least outside and over the floor
  /// No order has fewer steps, wherever pieces are put aside. None: that was not counted out.
  std::optional<std::size_t> at_least;
  std::vector<Stuck> stuck;          ///< of "none": the pieces that do not come through, and why
  std::size_t stages = 0;            ///< how many were looked at
  std::vector<Meanwhile> meanwhile;  ///< in the order in which they begin
};

/// Every ordered pair of configurations, in the order of the plan; the second of a pair is the first undone.
///
/// Moves: a piece is lifted straight up, carried level, slid along x and y, turned by quarters, tipped over a
/// lower edge, and lowered straight down; while it is carried it counts as its box, and keeps clear of every
/// place where another piece may be at any stage. A board or table that lies square and does not come
/// straight up is tilted, by the least of 4, 8, ... 88 degrees, and laid level again above what barred it.
/// What is hinged to a fixture goes from one place to another by a fold about its hinge, or not at all. A
/// portable heater is never tipped. Nothing moves while it carries something, or is laid down before all that
/// carries it is there. Foam gives up to 1/2 in; a soft piece that no straight way takes is bent past what is
/// near, but never out from under what it carries. A locker is opened whole: whatever stands in the sweep of
/// its lid, door or drawer must be moved first. Places: those of both configurations, tops of benches,
/// cabinets, counters, cushions and boards that carry two thirds of the piece each way (own choice) and give
/// no heat, the floor, another piece put aside, outside of a door. Bounds: those of SearchBounds, in stages,
/// not in time.
///
/// Problems as of `arranged`. Points into `plan`.
Result<std::vector<Conversion>> conversions(const Plan& plan);

/// 0: each has an order; 1: one has none; 2: none has none, but one was not decided, or there is no pair.
int exit_code(const std::vector<Conversion>& conversions);

/// Where the piece is after so many steps; std::invalid_argument: there is no such piece.
const PiecePlace& place_after(const Conversion& conversion, const PieceId& piece, std::size_t steps);

/// Everything as it stands after so many steps (0: at the start; all: at the end); what is stowed or outside
/// is absent. Points into `plan` and into the conversion, which must outlive it.
Arrangement stage_after(const Plan& plan, const Conversion& conversion, std::size_t steps);

}  // namespace berthwright
