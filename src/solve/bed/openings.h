#pragma once

#include <vector>

#include <berthwright/solve/bed/mattress.h>

#include "solve/bed/corner_tips.h"

namespace berthwright {

/// A sleeping surface and what stands around it at its height.
struct LyingSurface {
  Region surface;                  ///< S
  std::vector<CornerTip> corners;  ///< of its pieces
  Region stops;                    ///< walls and solids that rise to it, as far as 12 in around it
};

/// The openings of a surface, and the surface with those that do not interrupt lying closed.
struct Closing {
  std::vector<Gap> gaps;  ///< all of them, however narrow, widest first
  Region closed;
};

/// As told at `Gap` and `Mattress`.
Closing closing_of(const LyingSurface& lying);

}  // namespace berthwright
