#pragma once

#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// Something that stands, its arcs apart.
struct Standing {
  const Region* outline = nullptr;
  const std::vector<Arc>* arcs = nullptr;
  Length base;
  Length top;
  bool soft = false;
};

/// How far two outlines overlap in plan, more than touching and, where one is soft, more than foam gives;
/// zero: they do not. Where both are arcs, chords make none.
Length overlap_in_plan(const Standing& a, const Standing& b);

}  // namespace berthwright
