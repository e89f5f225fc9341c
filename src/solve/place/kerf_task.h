#pragma once

#include "solve/place/placing_search.h"

namespace berthwright {

/// The task as searches see it. Stock of which nothing is left after trimming has the count 0.
/// std::invalid_argument as `placed`.
KerfTask kerf_task(const PlacingTask& task);

/// Empty sheets. Around defects lead through-cuts along their edges; which, the second argument says.
SheetMaker<CutPanel> through_maker(const PlacingTask& task);
SheetMaker<FreePanel> free_maker(const PlacingTask& task);

/// What is cut from a sheet. Singles are numbers as in `KerfTask::kind_of`.
StockCut stock_cut(const PlacingTask& task, const KerfTask& kerf, const PanelSheet<CutPanel>& sheet);
StockCut stock_cut(const PlacingTask& task, const KerfTask& kerf, const PanelSheet<FreePanel>& sheet);

}  // namespace berthwright
