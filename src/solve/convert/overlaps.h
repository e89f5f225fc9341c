#pragma once

#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// Something that stands, its arcs apart.
struct StandingThing {
  const Region* outline = nullptr;
  const std::vector<Arc>* arcs = nullptr;
  Length base;
  Length top;
  bool soft = false;
};

/// How far two outlines overlap in plan, more than touching and, where one is soft, more than foam gives
/// (then perhaps by more than this); zero: they do not. Where both are arcs, chords make none.
Length overlap_in_plan(const StandingThing& a, const StandingThing& b);

/// Whether some disc of a greater diameter than `limit` lies in the region.
bool is_thicker(const Region& region, Length limit);

}  // namespace berthwright
