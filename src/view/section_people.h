#pragma once

#include "view/plan_drawing.h"
#include "view/section.h"
#include "view/sitting.h"

namespace berthwright {

/// A clear height in the plane of a section, over a bed or a seat.
struct HeadRoomLine {
  Length along;
  Length level;      ///< of the cushion, not pressed down
  Length top;        ///< the underside above it
  Length clear_of;   ///< above this height the line leaves the drawn person
  std::string over;  ///< what a person calls the bed or the seat
};

/// Who is drawn in one section, and the clear heights it tells.
struct SectionPeople {
  std::vector<Region> outlines;
  std::vector<HeadRoomLine> head_room;
  std::vector<std::string> too_short;  ///< beds that are cut where their person does not fit
};

/// On each bed that is cut its tallest person (a man of the 95th percentile where the plan gives no stature),
/// seen from the side, or from the feet where the bed runs across the cut: then one for each sleeper; nobody
/// on a bed too short for that. On each seat that is cut a large man and a small woman by turns, from the
/// side or from before. Nothing that `told` holds is told again.
SectionPeople people_of(const DrawnConfiguration& of, const Section& section,
                        const std::vector<SittingPlace>& places, const std::vector<HeadRoomLine>& told);

}  // namespace berthwright
