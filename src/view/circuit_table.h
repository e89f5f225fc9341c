#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/load/loads.h>

#include "view/paper.h"

namespace berthwright {

/// The loads of every circuit with their currents, as rows on paper: breaker, what it may carry for hours,
/// all loads on, as they count, and the verdict. From the top left corner of a box of that width on.
struct CircuitTable {
  std::vector<Mark> marks;
  PaperLength height;
};
/// None where the configuration has no supply, where a name is too long for its column, or where there are
/// more rows than a drawing can spare: then the words must do.
std::optional<CircuitTable> circuit_table(const Plan& plan, const Loads& loads, PaperLength width);

}  // namespace berthwright
