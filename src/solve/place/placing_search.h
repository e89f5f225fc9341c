#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <vector>

#include <berthwright/solve/place/placing.h>

#include "solve/place/cover_rows.h"
#include "solve/place/cut_panel.h"
#include "solve/place/free_panel.h"

namespace berthwright {

/// The task with a kerf added to every side, trim taken off and equal parts one by one.
struct KerfTask {
  std::vector<KerfStock> stock;
  std::vector<KerfPart> parts;       ///< by kind
  std::vector<std::size_t> kind_of;  ///< of each single part
  std::int64_t least_offcut = 0;     ///< a kerf added
};

/// A cut that goes before, around a defect.
struct KerfCut {
  KerfRect piece;
  bool crosswise = false;
  std::int64_t at = 0;  ///< where what lies beyond begins
  std::size_t stage = 1;
};

/// One piece of stock being filled: the panels that its defects leave, or the whole.
template <class Panel>
struct PanelSheet {
  std::size_t stock = 0;
  std::vector<Panel> panels;
  std::vector<KerfCut> cuts{};
};

template <class Panel>
using PanelSheets = std::vector<std::shared_ptr<const PanelSheet<Panel>>>;

struct SearchLimits {
  std::size_t rounds = 0;
  std::uint64_t seed = 1;
  std::int64_t bound = 0;  ///< of the cost: there it ends
};

template <class Panel>
struct SearchResult {
  PanelSheets<Panel> sheets{};
  std::vector<std::size_t> unplaced{};
  std::int64_t cost = 0;
  std::size_t rounds = 0;
};

/// Makes an empty sheet of that stock; of several ways to cut around defects the one that `way` chooses.
template <class Panel>
using SheetMaker = std::function<PanelSheet<Panel>(std::size_t stock, std::uint64_t way)>;

/// Parts are put where they fit best; then some are taken out and put in again, under a limit just below the
/// least cost found, whatever finds no place waiting outside: late acceptance of how much area waits
/// (goal-driven ruin and recreate, after Gardeyn & Wauters 2025). When the cost is settled, the same again
/// for the largest offcut. Deterministic.
SearchResult<CutPanel> search_through(const KerfTask& task, const SheetMaker<CutPanel>& maker,
                                      const SearchLimits& limits, const PanelSheets<CutPanel>& start);
SearchResult<FreePanel> search_free(const KerfTask& task, const SheetMaker<FreePanel>& maker,
                                    const SearchLimits& limits, const PanelSheets<FreePanel>& start);

/// Area of the largest empty space whose sides are at least that.
template <class Panel>
Int128 largest_space(const PanelSheet<Panel>& sheet, std::int64_t least_side);

}  // namespace berthwright
