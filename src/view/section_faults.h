#pragma once

#include "view/plan_drawing.h"
#include "view/section.h"

namespace berthwright {

/// Two neighbours of a bed whose tops differ where the plane cuts both.
struct SectionRidge {
  const Ridge* ridge = nullptr;
  Length along;        ///< of their shared edge
  Length low;          ///< top of the lower
  Length high;         ///< top of the higher
  bool onward = true;  ///< the lower lies toward growing `along`
};
std::vector<SectionRidge> section_ridges(const DrawnConfiguration& of, const Section& section);

/// The space in the plane that two things both need.
struct SectionClash {
  const Collision* collision = nullptr;
  Rect box;
};
std::vector<SectionClash> section_clashes(const DrawnConfiguration& of, const Section& section);

}  // namespace berthwright
