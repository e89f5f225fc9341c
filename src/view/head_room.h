#pragma once

#include "view/plan_drawing.h"
#include "view/section.h"

namespace berthwright {

/// One clear height as a section shows it: the least that the check knows of a seat or bed, whether or not it
/// lies in the plane.
struct HeadRoomLine {
  enum class Of {
    seat,       ///< from the cushion pressed down to the lowest thing over the heads
    bed,        ///< from the cushion not pressed to the lowest part of one thing over the bed
    sitting_up  ///< from the cushion pressed down, at the place in bed where one sits up best
  };
  Of of = Of::seat;
  Length along;
  Length level;       ///< where it begins
  Length top;         ///< where it ends
  std::string over;   ///< what a person calls the bed or the seat
  std::string under;  ///< name of what hangs there; empty: the roof, or of sitting up nothing in particular
  bool in_plane = true;
  Length at;  ///< where it really is: along the trailer in a section across, across it in one along
  /// What hangs there, seen through the plane; none where the plane cuts it or it is the roof.
  std::optional<Rect> outline;
  std::optional<Interval> width;  ///< over which it is clear, of sitting up
};

/// Of every seat that the plane cuts the least head room; of every bed that it cuts the least clear height,
/// the least under each other thing that it cuts, and the room to sit up where it meets the place for that.
std::vector<HeadRoomLine> head_room_lines(const DrawnConfiguration& of, const Section& section);

/// "head room 1' 7\" (482.6 mm)", rounded down; then what hangs there and where, if it is not in the plane.
std::vector<std::string> words_of(const HeadRoomLine& line, const Plan& plan, const Section& section,
                                  bool both_units);

}  // namespace berthwright
