#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// A person presses a seat cushion by this much; the plan's foam is not looked at.
inline constexpr Length seat_compression = 1_in;
/// What a shoe adds to the legs of those who rest their feet flat.
inline constexpr Length shoe_sole = 25_mm;
/// What a person takes of a seat's length at the least; at ease it is the limit of rule seat.people.
inline constexpr Length least_seat_for_one = 21_in;

/// The table that stands before a seat. Heights are from the seat as sat on, or from what is under the feet.
struct SeatTable {
  std::string table;
  Length thigh_room;   ///< up to its underside
  Length top;          ///< up to its top
  Length overlap;      ///< how far it reaches over the seat's front; negative: it ends that far before it
  Length knee_height;  ///< from what is under the feet to its underside
  Length reach;        ///< how far it goes on before the seat's front
  Length knee_depth;   ///< under it, as far as nothing stands in the way; at most half the reach where shared
};

/// The lowest thing over the place where people sit.
struct HeadRoom {
  Length height;      ///< above the seat as sat on
  std::string under;  ///< id of what hangs lowest; empty: the roof
  Point where;        ///< the middle of what lies beneath it; of the roof where it is lowest
};

/// A place to sit: flat cushions side by side that face one way, in no bed of the configuration, whose tops
/// are 10 to 24 in above what is under the feet, not covered by other pieces over half of their area.
struct Seat {
  std::vector<std::string> cushions;  ///< ids, in the order they are laid
  /// The way a person on it looks: that of the back cushions on edge that stand on it or behind it, else away
  /// from the wall or upright furniture it touches along most of a side. None where neither tells.
  std::optional<Wall> faces;
  std::vector<std::string> backs;  ///< ids, in the order they are laid
  Length top;                      ///< unloaded, above the floor
  Length sits_at;                  ///< `top` less the compression
  Length height;   ///< of `sits_at` over the floor, or over a raised fixture all along its front
  Region sitting;  ///< in plan: the cushions less what stands on them
  std::optional<HeadRoom> head_room;  ///< within 4 in of where eyes may be; none outside the room

  // What only a seat that faces some way has.
  Length depth;                       ///< from the front line to the back cushion, or to the seat's rear edge
  std::optional<Length> back_height;  ///< over `top`; a back that stands on a cushion sinks 1/2 in
  Length length;                      ///< across, at half the depth, as far as nothing stands on it
  Point front_from;
  Point front_to;  ///< ends of `length` on the front line
  Length way_in;   ///< widest free stretch along its front, or at an end from its back to 18 in before it
  std::optional<SeatTable> table;
  /// In plan, for `knocks_of`: where eyes may be (a line 8 in before the back, no nearer to the ends than
  /// half the shoulders of a small woman), and the elbow room of people with 24 in each.
  Region eyes;
  Region elbows;
};

/// In the order of their first cushions. How many people a length seats: at 24 in each, 21 at the least.
std::vector<Seat> seats_of(const Plan& plan, const Arrangement& arrangement);

}  // namespace berthwright
