#pragma once

#include <vector>

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// For a bay that nothing closes: of each kind of change the least that lets something close, on steps of
/// `asked.step`; backs higher by 12 in at most, benches deeper by 6 in at most, each by as much; cushions
/// pressed together by 1 in at most, in eighths (common practice, no source: beyond it they buckle).
std::vector<SplitCure> cures_of(const NightBay& bay, const SplitLimits& asked);

}  // namespace berthwright
