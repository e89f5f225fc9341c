#pragma once

#include <berthwright/plan/tape.h>
#include <berthwright/solve/worst_case.h>

namespace berthwright {

/// Whether a finding that turned at neither end of any measure cannot turn in between either, nor where
/// several are off together: its rule looks at no length, or at one that is a measure itself, from whose ends
/// the margin in between follows. `untried` are ends at which there was no plan.
bool is_proven(const TapedPlan& plan, const Finding& written, const std::vector<Untried>& untried);

}  // namespace berthwright
