#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// What is cut for every cushion, as text for people, at most 100 columns wide, ending with the caution line.
/// Cut sizes are rounded up to 1/8 in and 0.1 mm.
std::string cut_text(const Plan& plan, const Sewing& sewing, const std::vector<Cover>& covers);
/// The same as one JSON object (schema: plans/cut.schema.json), lengths exact.
std::string cut_json(const Plan& plan, const Sewing& sewing, const std::vector<Cover>& covers);

/// 0: every cushion is told whole; 1: one cannot be cut from the fabric or the foam that the plan has; 2: of
/// one the foam's grade or size is unknown or its shape is not reckoned, or there is no cushion.
int exit_code(const Plan& plan, const std::vector<Cover>& covers);

}  // namespace berthwright
