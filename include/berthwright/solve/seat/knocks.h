#pragma once

#include <berthwright/geometry/solid.h>
#include <berthwright/solve/bed/sleeping_room.h>
#include <berthwright/solve/seat/seats.h>

namespace berthwright {

/// Something that juts into the head or elbow room of people (design 4.9): a protrusion, a light, or a shelf
/// or locker that does not hang over the heads themselves, which is a matter of head room.
struct Knock {
  enum class Of { sitting_head, elbow, lying_head };
  Of of = Of::sitting_head;
  std::string thing;
  std::vector<std::string> cushions;  ///< of the seat; empty for a bed
  BedId bed;                          ///< of a lying head
  Nearest nearest;                    ///< from the eyes, the pillow or the elbow room to the thing
  /// From the eyes or the pillow to the thing, rounded down; of an elbow how far the thing would have to move
  /// to clear the elbow room, rounded up.
  Length by;
};

/// The nearest place of each thing to each seat's heads (within the limit of rule knock.sitting of where eyes
/// may be, from a small woman's to a large man's height: so a little more than the two spheres) and its reach
/// into the elbow room (in height from a small woman's elbows to a large man's). In the order of the seats.
std::vector<Knock> knocks_of(const Plan& plan, const Arrangement& arrangement,
                             const std::vector<Seat>& seats);

/// The same for the head of a bed: within the limit of rule knock.lying of the level over the last 12 in of
/// each person's place, at both ends, as the plan does not say where the pillow lies.
std::vector<Knock> knocks_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                             const Mattress& mattress, const SleepingRoom& room);

/// Where the middle of the eyes may be over a seat, as a thin solid; none where the seat has no such place.
std::optional<Solid> eyes_over(const Seat& seat);
/// The elbow room over a seat.
std::optional<Solid> elbow_room_over(const Seat& seat);

}  // namespace berthwright
