#pragma once

#include <berthwright/solve/convert/steps.h>

#include "solve/convert/spots.h"
#include "solve/convert/table_rules.h"

namespace berthwright {

/// The move of the table as a step: what moves how, `taken` being where everything is before it.
Step step_of(const SpotTable& made, const TableRules& rules, const std::vector<SpotEntry>& entries,
             const TableMove& move, const SpotSet& taken);

/// The same movement the other way.
Motion backwards(Motion motion);

}  // namespace berthwright
