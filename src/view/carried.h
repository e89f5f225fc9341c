#pragma once

#include <vector>

#include "view/small_view.h"

namespace berthwright {

struct FrameStep;

/// A piece in the hand, as the box that it counts as, in both views of a stage.
struct CarriedMoment {
  PaperBox above;
  // The box in the raised view: its lower corner nearest to the front and the left wall, and its edges from
  // there.
  PaperPoint foot;
  PaperLength along;   ///< to the right
  PaperLength lean;    ///< of the edge that runs across the trailer: to the right
  PaperLength depth;   ///< and upward
  PaperLength height;  ///< upward
  /// Proven free on the way here from the moment before: false out of and into lockers, beyond doors, and of
  /// soft pieces that are bent past what is near.
  bool followed = true;
};

/// From where the piece of the step is taken up to where it is let go; the first is never followed. Empty at
/// the start, and where no place of the piece in the room is known.
std::vector<CarriedMoment> carried_moments(const FrameStep& of, const SmallLayout& layout);

}  // namespace berthwright
