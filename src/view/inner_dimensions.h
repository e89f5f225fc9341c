#pragma once

#include "view/labels.h"
#include "view/plan_drawing.h"
#include "view/plan_things.h"

namespace berthwright {

/// How far a piece of furniture reaches along one axis, told by no chain outside the walls.
struct UntoldExtent {
  const PlanThing* thing = nullptr;
  bool along = false;  ///< along the trailer, else across
  Length from;
  Length to;
  bool afloat = false;  ///< it reaches neither wall there, so where it begins is told by nothing else
};
std::vector<UntoldExtent> untold_extents(const Plan& plan, const std::vector<PlanThing>& things,
                                         const Surroundings& around);

/// These as dimension lines within the things, where enough of them is seen for a line with its figure that
/// meets nothing of `field`; the others in words.
struct InnerDimensions {
  std::vector<Mark> marks;
  std::vector<std::string> in_words;  ///< "Galley 1' 8\" across", "Shelf from 4' 10\""
};
InnerDimensions inner_dimensions(const DrawnConfiguration& of, const PlanView& view,
                                 const std::vector<PlanThing>& things, const Surroundings& around,
                                 const LabelField& field);

}  // namespace berthwright
