#pragma once

#include <optional>
#include <vector>

#include "solve/heat/plate.h"

namespace berthwright::oracle {

struct SlowReading {
  std::optional<double> margin;  ///< in ticks
  bool incomplete = false;
};

/// Asks every point of a grid over the solids (and of their edges, and where those cross the planes of the
/// box) which faces it lies before, how far it is, and keeps the least margin. Never below the true margin.
SlowReading slow_plate_reading(const SourceBox& box, const DataPlate& plate, const std::vector<Solid>& solids,
                               Length step);

}  // namespace berthwright::oracle
