#pragma once

#include <iosfwd>
#include <vector>

#include <berthwright/solve/cover/cover.h>

#include "yard/commands.h"

namespace berthwright {

/// `cut` with a stock file: where the parts of the plan lie on stock.
int run_placing(const CutRequest& request, const Plan& plan, const std::vector<Cover>& covers,
                std::ostream& out, std::ostream& err);

}  // namespace berthwright
