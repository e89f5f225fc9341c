#pragma once

#include "view/plan_drawing.h"
#include "view/section.h"
#include "view/sitting.h"

namespace berthwright {

/// A person as one section shows them.
struct DrawnPerson {
  std::vector<Region> body;   ///< painted one over the other, under what is cut
  std::vector<Region> legs;   ///< of who is seen from before or behind
  bool legs_in_front = true;  ///< else what is cut hides them
  std::string in_the_way;     ///< what the person does not fit for: "Rear locker", "the roof"; else empty
};

struct SectionPeople {
  std::vector<DrawnPerson> people;
  std::vector<std::string> too_short;  ///< beds that are cut where their person does not fit
};

/// On each bed that is cut its tallest person (a man of the 95th percentile where the plan gives no stature),
/// seen from the side, or from the feet where the bed runs across the cut: then one for each sleeper; nobody
/// on a bed too short for that. On each seat that is cut a large man and a small woman by turns, from the
/// side or from before, in the middle of the seat whether they fit there or not: a body is as broad as its
/// shoulders and as deep as its belly, and hard things that need more than a square inch of it are in its
/// way; feet keep off what stands before them.
SectionPeople people_of(const DrawnConfiguration& of, const Section& section,
                        const std::vector<SittingPlace>& places);

/// The whole outline.
Region outline_of(const DrawnPerson& person);

}  // namespace berthwright
