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

bool lies_within(const KerfPart& part, const KerfSize& size) {
  const bool straight = part.size.length <= size.length && part.size.width <= size.width;
  return straight || (part.turns && part.size.width <= size.length && part.size.length <= size.width);
}

/// Parts and stock without the kinds of which there are none and stock that no part lies on, for bounds and
/// for every way.
struct NarrowTask {
  std::vector<KerfStock> stock;
  std::vector<std::size_t> stock_index{};
  std::vector<KerfPart> parts;
  std::vector<std::size_t> part_index{};
};
NarrowTask narrow(const KerfTask& kerf) {
  NarrowTask result;
  for (std::size_t s = 0; s < kerf.stock.size(); ++s)
    if (kerf.stock[s].count != std::size_t{0} && std::ranges::any_of(kerf.parts, [&](const KerfPart& part) {
          return part.count > 0 && lies_within(part, kerf.stock[s].size);
        })) {
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

/// What comes of going through every way, without regard to defects and to how often the fence is turned.
struct EveryWay {
  bool gone = false;               ///< it could be done
  PanelSheets<CutPanel> sheets{};  ///< of the least cost; none: the stock does not suffice
};

EveryWay every_way(const PlacingTask& task, const KerfTask& kerf, std::size_t merges) {
  const NarrowTask few = narrow(kerf);
  if (few.parts.empty() || few.stock.empty()) return {};
  std::vector<KerfSize> sizes;
  for (const KerfStock& stock : few.stock) sizes.push_back(stock.size);
  const auto table = BlockTable::made(few.parts, sizes, merges);
  if (!table) return {};
  EveryWay result{true};
  const auto least = least_cut(*table, few.stock);
  if (!least) return result;
  std::vector<std::vector<std::size_t>> singles(kerf.parts.size());
  for (std::size_t single = 0; single < kerf.kind_of.size(); ++single)
    singles[kerf.kind_of[single]].push_back(single);
  for (const LeastCut::Sheet& sheet : least->sheets) {
    const KerfRect at = whole_panel(task, few.stock_index[sheet.stock]);
    CutNode root = enlarged(table->cut(sheet.choice, sheet.size), at.size);
    name_singles(root, few.part_index, singles);
    result.sheets.push_back(std::make_shared<const PanelSheet<CutPanel>>(
        PanelSheet<CutPanel>{few.stock_index[sheet.stock], {CutPanel(at, std::move(root))}}));
  }
  return result;
}

/// Whether the sheets keep to the stages, and no stock has defects.
bool is_allowed(const PlacingTask& task, const PanelSheets<CutPanel>& sheets) {
  const std::size_t most = task.stages.value_or(no_part);
  return std::ranges::all_of(task.stock, [](const StockKind& s) { return s.defects.empty(); }) &&
         std::ranges::all_of(
             sheets, [&](const auto& sheet) { return stages_in(sheet->panels.front().root()) <= most; });
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
    const EveryWay ways = every_way(task, kerf, effort.merges);
    if (!ways.sheets.empty()) {
      bound = {0, CostBoundKind::every_way};
      for (const auto& sheet : ways.sheets) bound.cost += kerf.stock[sheet->stock].price;
      if (is_allowed(task, ways.sheets)) start = ways.sheets;
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

std::size_t count_of(const std::vector<UnplacedPart>& unplaced) {
  std::size_t count = 0;
  for (const UnplacedPart& part : unplaced) count += part.count;
  return count;
}

// Whatever through-cuts do, a knife does too; bounds of through-cuts do not hold for it.
Placing placed_freely(const PlacingTask& task, const PlacingEffort& effort) {
  Placing best = placed_by(task, effort, free_maker(task), search_free);
  if (best.proven()) return best;
  Placing sawn = placed_by(task, effort, through_maker(task), search_through);
  const auto worth = [](const Placing& of) { return std::pair(count_of(of.unplaced), of.cost); };
  if (worth(sawn) >= worth(best)) return best;
  for (StockCut& cut : sawn.cuts) cut.cuts.clear();
  // Fewer parts without a place are a bound for other parts.
  sawn.bound = count_of(sawn.unplaced) == count_of(best.unplaced) ? best.bound : 0;
  sawn.bound_kind = best.bound_kind;
  return sawn;
}

Placing placed_on_sheets(const PlacingTask& task, const PlacingEffort& effort) {
  if (task.manner == CutManner::free) return placed_freely(task, effort);
  return placed_by(task, effort, through_maker(task), search_through);
}

/// The task with so many steps of the roll in its place, and no other roll.
PlacingTask with_length_of(const PlacingTask& task, std::size_t roll, std::int64_t steps) {
  PlacingTask result = task;
  for (std::size_t s = 0; s < task.stock.size(); ++s) {
    StockKind& stock = result.stock[s];
    if (!stock.sold_by) continue;
    stock.count = s == roll && steps > 0 ? 1 : 0;
    if (s != roll) continue;
    stock.length = *stock.sold_by * steps;
    stock.price = stock.price * steps;
  }
  return result;
}

/// Whether bounds leave it open that all parts come out of that.
bool may_suffice(const PlacingTask& task, std::size_t merges) {
  Placing misfits;
  const KerfTask kerf = task.manner == CutManner::free
                            ? without_misfits(kerf_task(task), free_maker(task), misfits)
                            : without_misfits(kerf_task(task), through_maker(task), misfits);
  if (!misfits.unplaced.empty()) return false;
  const NarrowTask few = narrow(kerf);
  std::vector<CoverRow> rows = size_rows(few.stock, few.parts);
  rows.push_back(area_row(few.stock, few.parts));
  if (!least_cover(few.stock, rows)) return false;
  if (task.manner == CutManner::free) return true;
  const EveryWay ways = every_way(task, kerf, merges);
  return !ways.gone || !ways.sheets.empty();
}

/// The task without the parts that do not lie even on the whole roll; they are told in the placing.
PlacingTask without_misfits_of(const PlacingTask& task, std::size_t roll, Placing& placing) {
  const std::int64_t most = task.stock[roll].length.ticks() / task.stock[roll].sold_by->ticks();
  const PlacingTask whole = with_length_of(task, roll, most);
  if (task.manner == CutManner::free)
    without_misfits(kerf_task(whole), free_maker(whole), placing);
  else
    without_misfits(kerf_task(whole), through_maker(whole), placing);
  PlacingTask result = task;
  for (const UnplacedPart& misfit : placing.unplaced) result.parts[misfit.part].count = 0;
  return result;
}

/// The shortest length off the roll on which all parts find a place, tried one step after the other.
Placing placed_on_roll(const PlacingTask& task, std::size_t roll, const PlacingEffort& effort) {
  const StockKind& stock = task.stock[roll];
  const std::int64_t most = stock.length.ticks() / stock.sold_by->ticks();
  Placing misfits;
  const PlacingTask fitting = without_misfits_of(task, roll, misfits);
  std::int64_t least = 0;
  while (least < most && !may_suffice(with_length_of(fitting, roll, least), effort.merges)) ++least;
  PlacingEffort each = effort;
  each.rounds = effort.rounds / 8;
  std::int64_t steps = least;
  Placing placing = placed_on_sheets(with_length_of(fitting, roll, steps), each);
  while (!placing.unplaced.empty() && steps < most)
    placing = placed_on_sheets(with_length_of(fitting, roll, ++steps), each);
  // A shorter length might do for the parts that found a place on the whole roll.
  if (placing.unplaced.empty()) placing.bound = std::min(placing.cost, stock.price * least);
  placing.unplaced.insert(placing.unplaced.end(), misfits.unplaced.begin(), misfits.unplaced.end());
  std::ranges::sort(placing.unplaced, {}, &UnplacedPart::part);
  return placing;
}

}  // namespace

Placing placed(const PlacingTask& task, const PlacingEffort& effort) {
  const auto roll =
      std::ranges::find_if(task.stock, [](const StockKind& s) { return s.sold_by.has_value(); });
  if (roll == task.stock.end()) return placed_on_sheets(task, effort);
  return placed_on_roll(task, static_cast<std::size_t>(roll - task.stock.begin()), effort);
}

}  // namespace berthwright
