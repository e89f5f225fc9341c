#pragma once

#include <berthwright/solve/convert/steps.h>

#include "solve/convert/spots.h"
#include "solve/convert/table_rules.h"

namespace berthwright {

/// What was searched.
struct Searched {
  const SpotTable& made;
  const TableRules& rules;
  const std::vector<SpotEntry>& entries;
  const std::vector<std::unique_ptr<Carrying>>& carrying;
};

/// The move of the table as a step: what moves how, `taken` being where everything is before it.
Step step_of(const Searched& searched, const TableMove& move, const SpotSet& taken);

/// The same movement the other way.
Motion backwards(Motion motion);

}  // namespace berthwright
