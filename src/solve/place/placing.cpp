#include <berthwright/solve/place/placing.h>

#include <algorithm>
#include <optional>
#include <type_traits>

#include "solve/place/block_table.h"
#include "solve/place/kerf_task.h"

namespace berthwright {
namespace {

template <class Panel>
bool finds_room(const KerfPart& part, const SheetMaker<Panel>& maker, std::size_t stock) {
  // Around one defect four cuts follow on each other, the last without choice: 4 x 4 x 4 ways at most.
  for (std::uint64_t way = 0; way < 64; ++way) {
    PanelSheet<Panel> sheet = maker(stock, way);
    for (Panel& panel : sheet.panels)
      for (const PanelSpace& space : panel.spaces())
        for (const bool turned : {false, true}) {
          if (turned && !part.turns) continue;
          const KerfSize size = turned ? KerfSize{part.size.width, part.size.length} : part.size;
          if (size.length > space.size.length || size.width > space.size.width) continue;
          for (const bool cross_first : {true, false})
            if (Panel(panel).put(space.index, 0, size, cross_first)) return true;
        }
    if (sheet.cuts.empty()) return false;
  }
  return false;
}

/// Why a part cannot lie on any stock; none where it can.
template <class Panel>
std::optional<PlacingFault> fault_of(const KerfTask& kerf, const SheetMaker<Panel>& maker, std::size_t part) {
  bool any = false;
  for (std::size_t s = 0; s < kerf.stock.size(); ++s) {
    if (kerf.stock[s].count == std::size_t{0}) continue;
    any = true;
    if (finds_room(kerf.parts[part], maker, s)) return {};
  }
  return any ? PlacingFault::larger_than_any_stock : PlacingFault::no_stock;
}

/// The task without what cannot lie anywhere, which is told in the placing.
template <class Panel>
KerfTask without_misfits(const KerfTask& kerf, const SheetMaker<Panel>& maker, Placing& placing) {
  KerfTask result = kerf;
  for (std::size_t p = 0; p < kerf.parts.size(); ++p)
    if (const auto fault = fault_of(kerf, maker, p)) {
      if (kerf.parts[p].count > 0) placing.unplaced.push_back({p, kerf.parts[p].count, *fault});
      result.parts[p].count = 0;
      std::erase(result.kind_of, p);
    }
  return result;
}

/// Parts and stock without the kinds of which there are none, for bounds and for every way.
struct NarrowTask {
  std::vector<KerfStock> stock;
  std::vector<std::size_t> stock_index{};
  std::vector<KerfPart> parts;
  std::vector<std::size_t> part_index{};
};
NarrowTask narrow(const KerfTask& kerf) {
  NarrowTask result;
  for (std::size_t s = 0; s < kerf.stock.size(); ++s)
    if (kerf.stock[s].count != std::size_t{0}) {
      result.stock.push_back(kerf.stock[s]);
      result.stock_index.push_back(s);
    }
  for (std::size_t p = 0; p < kerf.parts.size(); ++p)
    if (kerf.parts[p].count > 0) {
      result.parts.push_back(kerf.parts[p]);
      result.part_index.push_back(p);
    }
  return result;
}

struct CostBound {
  std::int64_t cost = 0;
  CostBoundKind kind = CostBoundKind::area;
};
CostBound bound_of(const KerfTask& kerf) {
  const NarrowTask task = narrow(kerf);
  if (task.parts.empty() || task.stock.empty()) return {};
  std::vector<CoverRow> rows{area_row(task.stock, task.parts)};
  CostBound bound{least_cover(task.stock, rows).value_or(0), CostBoundKind::area};
  for (CoverRow& row : size_rows(task.stock, task.parts)) rows.push_back(std::move(row));
  const std::int64_t by_sizes = least_cover(task.stock, rows).value_or(0);
  if (by_sizes > bound.cost) bound = {by_sizes, CostBoundKind::sizes};
  return bound;
}

// Numbers of kinds become numbers of single parts, each used once.
void name_singles(CutNode& node, const std::vector<std::size_t>& part_index,
                  std::vector<std::vector<std::size_t>>& singles) {
  if (node.part != no_part) {
    std::vector<std::size_t>& left = singles[part_index[node.part]];
    node.part = left.back();
    left.pop_back();
  }
  for (CutNode& child : node.row) name_singles(child, part_index, singles);
}

/// The sheets of the least cost, where every way can be gone through.
PanelSheets<CutPanel> every_way(const PlacingTask& task, const KerfTask& kerf, std::size_t merges) {
  const bool defects = std::ranges::any_of(task.stock, [](const StockKind& s) { return !s.defects.empty(); });
  const NarrowTask few = narrow(kerf);
  if (task.stages || defects || few.parts.empty()) return {};
  std::vector<KerfSize> sizes;
  for (const KerfStock& stock : few.stock) sizes.push_back(stock.size);
  const auto table = BlockTable::made(few.parts, sizes, merges);
  if (!table) return {};
  const auto least = least_cut(*table, few.stock);
  if (!least) return {};
  std::vector<std::vector<std::size_t>> singles(kerf.parts.size());
  for (std::size_t single = 0; single < kerf.kind_of.size(); ++single)
    singles[kerf.kind_of[single]].push_back(single);
  PanelSheets<CutPanel> sheets;
  const SheetMaker<CutPanel> maker = through_maker(task);
  for (const LeastCut::Sheet& sheet : least->sheets) {
    const KerfRect at = maker(few.stock_index[sheet.stock], 0).panels.at(0).at();
    CutNode root = enlarged(table->cut(sheet.choice, sheet.size), at.size);
    name_singles(root, few.part_index, singles);
    sheets.push_back(std::make_shared<const PanelSheet<CutPanel>>(
        PanelSheet<CutPanel>{few.stock_index[sheet.stock], {CutPanel(at, std::move(root))}}));
  }
  return sheets;
}

template <class Panel>
void take_over(const PlacingTask& task, const KerfTask& kerf, const SearchResult<Panel>& found,
               Placing& placing) {
  std::vector<std::size_t> missing(kerf.parts.size());
  for (const std::size_t single : found.unplaced) ++missing[kerf.kind_of[single]];
  for (std::size_t p = 0; p < missing.size(); ++p)
    if (missing[p] > 0) placing.unplaced.push_back({p, missing[p], PlacingFault::too_little_stock});
  for (const auto& sheet : found.sheets) placing.cuts.push_back(stock_cut(task, kerf, *sheet));
  // Alike beside alike, remnants first.
  std::ranges::stable_sort(placing.cuts, {}, [&](const StockCut& cut) {
    return std::pair(!task.stock[cut.kind].remnant, cut.kind);
  });
  placing.cost = found.cost;
  placing.rounds = found.rounds;
  for (const StockCut& cut : placing.cuts)
    if (!cut.offcuts.empty())
      placing.largest_offcut =
          std::max(placing.largest_offcut, Area::rectangle(cut.offcuts[0].width(), cut.offcuts[0].height()));
}

KerfTask of_placed(KerfTask kerf, const std::vector<std::size_t>& unplaced) {
  for (const std::size_t single : unplaced) --kerf.parts[kerf.kind_of[single]].count;
  return kerf;
}

template <class Panel, class Search>
Placing placed_by(const PlacingTask& task, const PlacingEffort& effort, const SheetMaker<Panel>& maker,
                  const Search& search) {
  Placing placing;
  const KerfTask kerf = without_misfits(kerf_task(task), maker, placing);
  PanelSheets<Panel> start;
  CostBound bound = bound_of(kerf);
  if constexpr (std::is_same_v<Panel, CutPanel>) {
    start = every_way(task, kerf, effort.merges);
    if (!start.empty()) {
      bound = {0, CostBoundKind::every_way};
      for (const auto& sheet : start) bound.cost += kerf.stock[sheet->stock].price;
    }
  }
  if (kerf.kind_of.empty()) return placing;
  const SearchResult<Panel> found = search(kerf, maker, {effort.rounds, effort.seed, bound.cost}, start);
  take_over(task, kerf, found, placing);
  if (!found.unplaced.empty()) bound = bound_of(of_placed(kerf, found.unplaced));
  placing.bound = bound.cost;
  placing.bound_kind = bound.kind;
  std::ranges::sort(placing.unplaced, {}, &UnplacedPart::part);
  return placing;
}

}  // namespace

Placing placed(const PlacingTask& task, const PlacingEffort& effort) {
  if (task.manner == CutManner::free) return placed_by(task, effort, free_maker(task), search_free);
  return placed_by(task, effort, through_maker(task), search_through);
}

}  // namespace berthwright
