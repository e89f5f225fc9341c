#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/reading.h"

namespace berthwright {

/// Everything that keeps `parts` from being a plan. Configurations whose pointer is in `unsound` hold poses
/// that could not be read, so nothing is said about pieces they seem to lack.
Problems broken_promises(const PlanParts& parts, const std::vector<std::string>& unsound);

/// Sizes, places and the room (first half of the promises).
void check_sizes(const PlanParts& parts, Reading& faults);
/// What opens keeps to its fixture, and turns or is pulled as it can (part of `check_sizes`).
void check_leaves(const PlanParts& parts, Reading& faults);
/// Seams, fabrics and repeats (part of `check_sizes`).
void check_sewing(const PlanParts& parts, Reading& faults);
/// Axle, weights, tanks and what hangs on a circuit (part of `check_sizes`).
void check_loads(const PlanParts& parts, Reading& faults);
/// Ids and references (second half).
void check_references(const PlanParts& parts, const std::vector<std::string>& unsound, Reading& faults);

/// The origin of a field of the thing that `origin` belongs to.
Origin field_of(const Origin& origin, std::string_view field);

}  // namespace berthwright
