#include "solve/place/placing_search.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <optional>

#include "solve/place/stock_choices.h"

namespace berthwright {
namespace {

/// SplitMix64 (Steele, Lea & Flood 2014): the same numbers everywhere.
class SearchDice {
 public:
  explicit SearchDice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9E3779B97F4A7C15U);
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
  }
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
  bool once_in(std::size_t count) { return below(count) == 0; }

 private:
  std::uint64_t state_;
};

Int128 area_of(const KerfSize& size) { return Int128{size.length} * size.width; }

/// Where a part may go, and how good that is; the least is best.
struct PartFit {
  Int128 badness = 0;
  std::size_t sheet = 0;
  std::size_t panel = 0;
  std::size_t space = 0;
  KerfSize size;
};

enum class FitRule { least_side, least_area, longest_side };

template <class Panel>
struct SearchState {
  PanelSheets<Panel> sheets;
  std::vector<std::size_t> outside;
  Int128 waiting = 0;  // their area
  std::int64_t cost = 0;
};

template <class Panel>
class PlacingSearch {
 public:
  using State = SearchState<Panel>;

  PlacingSearch(const KerfTask& task, const SheetMaker<Panel>& maker, const SearchLimits& limits)
      : task_(task), maker_(maker), limits_(limits), dice_(limits.seed) {}

  SearchResult<Panel> run(const PanelSheets<Panel>& start) {
    State best = first(start);
    if (!best.outside.empty()) squeeze_in(best);
    cheapen(best);
    enlarge_offcut(best);
    SearchResult<Panel> result{best.sheets, best.outside, best.cost, rounds_};
    std::ranges::sort(result.unplaced);
    return result;
  }

 private:
  const KerfPart& part(std::size_t single) const { return task_.parts[task_.kind_of[single]]; }
  Int128 part_area(std::size_t single) const { return area_of(part(single).size); }

  void settle(State& state) const {
    std::erase_if(state.sheets, [](const auto& sheet) { return holds_nothing(*sheet); });
    state.cost = 0;
    for (const auto& sheet : state.sheets) state.cost += task_.stock[sheet->stock].price;
  }

  static bool holds_nothing(const PanelSheet<Panel>& sheet) {
    bool nothing = true;
    for (const Panel& panel : sheet.panels)
      panel.each_part([&](std::size_t, const KerfRect&) { nothing = false; });
    return nothing;
  }

  State first(const PanelSheets<Panel>& start) {
    State best;
    if (!start.empty()) {
      best.sheets = start;
      settle(best);
      return best;
    }
    opening_ = true;
    for (std::size_t attempt = 0; attempt < 2 * task_.stock.size() + 4; ++attempt) {
      State state;
      state.outside.resize(task_.kind_of.size());
      std::iota(state.outside.begin(), state.outside.end(), std::size_t{});
      favourite_ = attempt < task_.stock.size() ? std::optional(attempt) : std::nullopt;
      put_in(state);
      settle(state);
      if (attempt == 0 || std::pair(state.waiting, state.cost) < std::pair(best.waiting, best.cost))
        best = std::move(state);
    }
    opening_ = false;
    return best;
  }

  // Every choice of stock that costs less, the roomiest first; those that fail again, with more rounds.
  void cheapen(State& best) {
    if (!best.outside.empty() || best.cost <= limits_.bound) return;
    std::vector<StockChoice> choices = stock_choices(task_, limits_.bound, best.cost - 1);
    for (std::size_t each = 500; rounds_ < limits_.rounds; each *= 4) {
      std::erase_if(choices, [&](const StockChoice& choice) { return choice.cost >= best.cost; });
      if (choices.empty()) return;
      for (const StockChoice& choice : choices)
        if (choice.cost < best.cost && rounds_ < limits_.rounds)
          if (State found = packed(choice, std::min(each, limits_.rounds - rounds_)); found.outside.empty())
            best = std::move(found);
    }
  }

  // Where stock is scarce: all of it, and of the rest what was used at first.
  void squeeze_in(State& best) {
    StockChoice all;
    for (const KerfStock& stock : task_.stock) all.counts.push_back(stock.count.value_or(0));
    for (const auto& sheet : best.sheets)
      if (!task_.stock[sheet->stock].count) ++all.counts[sheet->stock];
    for (std::size_t& count : all.counts) count = std::min(count, task_.kind_of.size());
    State found = packed(all, limits_.rounds / 4);
    if (found.waiting < best.waiting) best = std::move(found);
  }

  State packed(const StockChoice& choice, std::size_t rounds) {
    State now;
    for (std::size_t s = 0; s < choice.counts.size(); ++s)
      for (std::size_t n = 0; n < choice.counts[s]; ++n)
        now.sheets.push_back(std::make_shared<const PanelSheet<Panel>>(maker_(s, dice_.next())));
    now.outside.resize(task_.kind_of.size());
    std::iota(now.outside.begin(), now.outside.end(), std::size_t{});
    put_in(now);
    std::array<Int128, 50> late{};
    late.fill(now.waiting);
    for (std::size_t round = 0; round < rounds && !now.outside.empty(); ++round, ++rounds_) {
      State next = now;
      take_out(next);
      put_in(next);
      const std::size_t slot = round % late.size();
      if (next.waiting <= now.waiting || next.waiting <= late[slot]) now = std::move(next);
      late[slot] = now.waiting;
    }
    settle(now);
    return now;
  }

  // The cost stays; of the spaces the largest grows.
  void enlarge_offcut(State& best) {
    if (task_.least_offcut <= 0 || !best.outside.empty()) return;
    Int128 largest = largest_of(best);
    State now = best;
    Int128 current = largest;
    std::array<Int128, 50> late{};
    late.fill(current);
    for (std::size_t round = 0; round < limits_.rounds / 4; ++round, ++rounds_) {
      State next = now;
      take_out(next);
      put_in(next);
      if (!next.outside.empty()) continue;
      const Int128 space = largest_of(next);
      const std::size_t slot = round % late.size();
      if (space >= current || space >= late[slot]) {
        now = std::move(next);
        current = space;
      }
      late[slot] = current;
      if (current > largest) {
        best = now;
        largest = current;
      }
    }
    settle(best);
  }

  Int128 largest_of(const State& state) const {
    Int128 largest = 0;
    for (const auto& sheet : state.sheets)
      largest = std::max(largest, largest_space(*sheet, task_.least_offcut));
    return largest;
  }

  void empty_sheet(State& state, std::size_t index) {
    auto& sheet = state.sheets[index];
    for (const Panel& panel : sheet->panels)
      panel.each_part([&](std::size_t single, const KerfRect&) { state.outside.push_back(single); });
    sheet = std::make_shared<const PanelSheet<Panel>>(maker_(sheet->stock, dice_.next()));
  }

  // A whole sheet, what lies in a window on one or two sheets, or some parts anywhere on them.
  void take_out(State& state) {
    if (state.sheets.empty()) return;
    if (dice_.once_in(6)) {
      empty_sheet(state, dice_.below(state.sheets.size()));
      return;
    }
    const std::size_t sheets = 1 + dice_.below(2);
    const bool scattered = dice_.once_in(3);
    for (std::size_t n = 0; n < sheets; ++n) {
      auto& sheet = state.sheets[dice_.below(state.sheets.size())];
      PanelSheet<Panel> changed = *sheet;
      for (Panel& panel : changed.panels) {
        const KerfRect window = window_in(panel.at());
        const std::size_t share = 2 + dice_.below(3);
        panel.take_out(
            [&](std::size_t, const KerfRect& at) {
              return scattered ? dice_.once_in(share) : meets_window(at, window);
            },
            state.outside);
      }
      sheet = std::make_shared<const PanelSheet<Panel>>(std::move(changed));
    }
  }

  KerfRect window_in(const KerfRect& panel) {
    const auto side = [&](std::int64_t whole) {
      return std::max<std::int64_t>(1, whole * static_cast<std::int64_t>(1 + dice_.below(6)) / 10);
    };
    const KerfSize size{side(panel.size.length), side(panel.size.width)};
    const auto low = [&](std::int64_t whole, std::int64_t part) {
      return static_cast<std::int64_t>(dice_.below(static_cast<std::size_t>(whole - part + 1)));
    };
    return {panel.x + low(panel.size.length, size.length), panel.y + low(panel.size.width, size.width), size};
  }
  static bool meets_window(const KerfRect& a, const KerfRect& b) {
    return a.x < b.x + b.size.length && b.x < a.x + a.size.length && a.y < b.y + b.size.width &&
           b.y < a.y + a.size.width;
  }

  void sort_outside(State& state) {
    const std::size_t rule = dice_.below(4);
    std::vector<std::pair<Int128, std::size_t>> order;
    for (const std::size_t single : state.outside) {
      const KerfSize& size = part(single).size;
      const Int128 key = rule == 0   ? area_of(size)
                         : rule == 1 ? Int128{std::max(size.length, size.width)}
                         : rule == 2 ? Int128{size.length + size.width}
                                     : area_of(size);
      // Up to a quarter less, by chance.
      const auto blur = static_cast<std::int64_t>(dice_.below(256));
      order.emplace_back(-key * (1024 - blur), single);
    }
    std::ranges::sort(order);
    for (std::size_t i = 0; i < order.size(); ++i) state.outside[i] = order[i].second;
  }

  void put_in(State& state) {
    sort_outside(state);
    rule_ = static_cast<FitRule>(dice_.below(3));
    std::vector<std::size_t> left;
    std::vector<bool> hopeless(task_.parts.size());
    std::vector<std::size_t> used(task_.stock.size());
    for (const auto& sheet : state.sheets) ++used[sheet->stock];
    // Sheets are changed in place here, each copied once.
    std::vector<std::shared_ptr<PanelSheet<Panel>>> open(state.sheets.size());
    for (const std::size_t single : state.outside) {
      const std::size_t kind = task_.kind_of[single];
      if (hopeless[kind]) {
        left.push_back(single);
        continue;
      }
      if (put_best(state, open, single)) continue;
      if (const auto stock = new_sheet_for(single, used)) {
        ++used[*stock];
        state.sheets.push_back(std::make_shared<PanelSheet<Panel>>(maker_(*stock, dice_.next())));
        open.emplace_back();
        hopeless.assign(hopeless.size(), false);
        if (put_best(state, open, single)) continue;
      }
      hopeless[kind] = true;
      left.push_back(single);
    }
    state.outside = std::move(left);
    state.waiting = 0;
    for (const std::size_t out : state.outside) state.waiting += part_area(out);
  }

  std::optional<std::size_t> new_sheet_for(std::size_t single, const std::vector<std::size_t>& used) {
    if (!opening_) return {};
    std::vector<std::size_t> able;
    for (std::size_t s = 0; s < task_.stock.size(); ++s) {
      const KerfStock& stock = task_.stock[s];
      const bool there = !stock.count || used[s] < *stock.count;
      if (there && lies_on(part(single), stock.size)) able.push_back(s);
    }
    if (able.empty()) return {};
    // What costs nothing is there already: it comes first.
    for (const std::size_t s : able)
      if (task_.stock[s].price == 0 && !dice_.once_in(8)) return s;
    if (favourite_ && std::ranges::find(able, *favourite_) != able.end()) return favourite_;
    return able[dice_.below(able.size())];
  }

  static bool lies_on(const KerfPart& part, const KerfSize& size) {
    const bool straight = part.size.length <= size.length && part.size.width <= size.width;
    return straight || (part.turns && part.size.width <= size.length && part.size.length <= size.width);
  }

  bool put_best(State& state, std::vector<std::shared_ptr<PanelSheet<Panel>>>& open, std::size_t single) {
    const KerfPart& kind = part(single);
    std::optional<PartFit> best;
    for (std::size_t s = 0; s < state.sheets.size(); ++s)
      for (std::size_t p = 0; p < state.sheets[s]->panels.size(); ++p) {
        look_at(state.sheets[s]->panels[p], kind.size, {0, s, p, 0, kind.size}, best);
        const KerfSize turned{kind.size.width, kind.size.length};
        if (kind.turns && turned != kind.size)
          look_at(state.sheets[s]->panels[p], turned, {0, s, p, 0, turned}, best);
      }
    if (!best) return false;
    auto& sheet = open[best->sheet];
    if (!sheet) {
      sheet = std::make_shared<PanelSheet<Panel>>(*state.sheets[best->sheet]);
      state.sheets[best->sheet] = sheet;
    }
    Panel& panel = sheet->panels[best->panel];
    const KerfSize space = panel.spaces()[best->space].size;
    // The larger rest stays whole, mostly.
    const bool cross_first =
        (space.length - best->size.length > space.width - best->size.width) != dice_.once_in(5);
    return panel.put(best->space, single, best->size, cross_first) ||
           panel.put(best->space, single, best->size, !cross_first);
  }

  void look_at(const Panel& panel, const KerfSize& size, PartFit fit, std::optional<PartFit>& best) {
    for (const PanelSpace& space : panel.spaces()) {
      const std::int64_t beside = space.size.length - size.length;
      const std::int64_t behind = space.size.width - size.width;
      if (beside < 0 || behind < 0) continue;
      switch (rule_) {
        case FitRule::least_side:
          fit.badness = std::min(beside, behind);
          break;
        case FitRule::least_area:
          fit.badness = area_of(space.size);
          break;
        case FitRule::longest_side:
          fit.badness = std::max(beside, behind);
          break;
      }
      fit.space = space.index;
      // Now and then the best is passed over.
      if ((!best || fit.badness < best->badness) && !dice_.once_in(50)) best = fit;
    }
  }

  const KerfTask& task_;
  const SheetMaker<Panel>& maker_;
  SearchLimits limits_;
  SearchDice dice_;
  FitRule rule_ = FitRule::least_side;
  bool opening_ = false;  // new sheets may be begun
  std::size_t rounds_ = 0;
  std::optional<std::size_t> favourite_{};
};

}  // namespace

template <class Panel>
Int128 largest_space(const PanelSheet<Panel>& sheet, std::int64_t least_side) {
  Int128 largest = 0;
  for (const Panel& panel : sheet.panels)
    for (const PanelSpace& space : panel.spaces())
      if (std::min(space.size.length, space.size.width) >= least_side)
        largest = std::max(largest, area_of(space.size));
  return largest;
}
template Int128 largest_space(const PanelSheet<CutPanel>&, std::int64_t);
template Int128 largest_space(const PanelSheet<FreePanel>&, std::int64_t);

SearchResult<CutPanel> search_through(const KerfTask& task, const SheetMaker<CutPanel>& maker,
                                      const SearchLimits& limits, const PanelSheets<CutPanel>& start) {
  return PlacingSearch<CutPanel>(task, maker, limits).run(start);
}
SearchResult<FreePanel> search_free(const KerfTask& task, const SheetMaker<FreePanel>& maker,
                                    const SearchLimits& limits, const PanelSheets<FreePanel>& start) {
  return PlacingSearch<FreePanel>(task, maker, limits).run(start);
}

}  // namespace berthwright
