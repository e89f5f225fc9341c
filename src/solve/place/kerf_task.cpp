#include "solve/place/kerf_task.h"

#include <algorithm>
#include <stdexcept>

namespace berthwright {
namespace {

Length ticks(std::int64_t count) { return Length::from_ticks(count); }

KerfRect whole_of(const StockKind& stock, Length kerf) {
  const Length twice = stock.trim + stock.trim;
  return {stock.trim.ticks(),
          stock.trim.ticks(),
          {(stock.length - twice + kerf).ticks(), (stock.width - twice + kerf).ticks()}};
}

// The blade may run within the defect, so that parts come up to its edges. It may be narrower than the blade.
std::vector<KerfRect> defects_of(const StockKind& stock, Length kerf) {
  std::vector<KerfRect> result;
  for (const Rect& defect : stock.defects) {
    const Point low = defect.low + Vector{kerf, kerf};
    result.push_back({low.x.ticks(),
                      low.y.ticks(),
                      {std::max(Length{}, defect.high.x - low.x).ticks(),
                       std::max(Length{}, defect.high.y - low.y).ticks()}});
  }
  return result;
}

bool meet(const KerfRect& a, const KerfRect& b) {
  return a.x < b.x + b.size.length && b.x < a.x + a.size.length && a.y < b.y + b.size.width &&
         b.y < a.y + a.size.width;
}

/// Cuts a sheet into panels without defects.
class DefectCutter {
 public:
  DefectCutter(std::vector<KerfRect> defects, std::uint64_t way, std::size_t stages)
      : defects_(std::move(defects)), way_(way), stages_(stages) {}

  void cut(const KerfRect& piece, std::size_t stage, PanelSheet<CutPanel>& sheet) {
    const auto defect = std::ranges::find_if(defects_, [&](const KerfRect& d) { return meet(d, piece); });
    if (defect == defects_.end()) {
      sheet.panels.emplace_back(piece, stages_, stage);
      return;
    }
    if (stage > stages_) return;
    const KerfRect& d = *defect;
    std::vector<std::pair<bool, std::int64_t>> lines;
    for (const std::int64_t x : {d.x, d.x + d.size.length})
      if (x > piece.x && x < piece.x + piece.size.length) lines.emplace_back(true, x);
    for (const std::int64_t y : {d.y, d.y + d.size.width})
      if (y > piece.y && y < piece.y + piece.size.width) lines.emplace_back(false, y);
    if (lines.empty()) return;  // the defect and nothing else
    const auto [crosswise, at] = lines[way_ % lines.size()];
    way_ = way_ / 4 + (way_ << 61U);
    sheet.cuts.push_back({piece, crosswise, at, stage});
    KerfRect before = piece;
    KerfRect beyond = piece;
    (crosswise ? before.size.length : before.size.width) = at - (crosswise ? piece.x : piece.y);
    (crosswise ? beyond.x : beyond.y) = at;
    (crosswise ? beyond.size.length : beyond.size.width) -=
        crosswise ? before.size.length : before.size.width;
    cut(before, stage + 1, sheet);
    cut(beyond, stage + 1, sheet);
  }

 private:
  std::vector<KerfRect> defects_;
  std::uint64_t way_;
  std::size_t stages_;
};

/// Kerf taken off again.
Rect finished(const KerfRect& at, Length kerf) {
  const Point low{ticks(at.x), ticks(at.y)};
  return {low, low + Vector{ticks(at.size.length) - kerf, ticks(at.size.width) - kerf}};
}

template <class Panel>
void add_places(const PlacingTask& task, const KerfTask& kerf, const Panel& panel, StockCut& cut) {
  panel.each_part([&](std::size_t single, const KerfRect& at) {
    const std::size_t kind = kerf.kind_of[single];
    cut.places.push_back({kind, finished(at, task.kerf), at.size != kerf.parts[kind].size});
  });
}

void add_offcut(const PlacingTask& task, const KerfTask& kerf, const KerfRect& at, StockCut& cut) {
  if (kerf.least_offcut > 0 && std::min(at.size.length, at.size.width) >= kerf.least_offcut)
    cut.offcuts.push_back(finished(at, task.kerf));
}

/// Walks down what through-cuts make of a panel.
class CutWriter {
 public:
  CutWriter(const PlacingTask& task, const KerfTask& kerf, StockCut& cut)
      : task_(task), kerf_(kerf), cut_(cut) {}

  void write(const CutNode& node, KerfRect at, std::size_t stage) {
    if (node.empty()) add_offcut(task_, kerf_, at, cut_);
    KerfRect rest = at;
    for (std::size_t i = 0; i + 1 < node.row.size(); ++i) {
      const std::int64_t step = node.along ? node.row[i].size.length : node.row[i].size.width;
      const std::int64_t line = (node.along ? rest.x : rest.y) + step;
      cut_.cuts.push_back({finished(rest, task_.kerf), node.along, ticks(line) - task_.kerf, stage});
      (node.along ? rest.x : rest.y) = line;
      (node.along ? rest.size.length : rest.size.width) -= step;
    }
    for (const CutNode& child : node.row) {
      write(child, {at.x, at.y, child.size}, stage + 1);
      (node.along ? at.x : at.y) += node.along ? child.size.length : child.size.width;
    }
  }

 private:
  const PlacingTask& task_;
  const KerfTask& kerf_;
  StockCut& cut_;
};

void sort_cut(StockCut& cut) {
  std::ranges::stable_sort(cut.places, {}, [](const StockPlace& place) { return place.at.low; });
  std::ranges::stable_sort(cut.offcuts, std::greater{}, [](const Rect& offcut) {
    return Area::rectangle(offcut.width(), offcut.height()).doubled();
  });
}

void refuse_nonsense(const PlacingTask& task) {
  if (task.kerf < Length{}) throw std::invalid_argument("a kerf below nothing");
  for (const StockPart& part : task.parts)
    if (part.length <= Length{} || part.width <= Length{}) throw std::invalid_argument("a part without size");
  for (const StockKind& stock : task.stock)
    if (stock.trim < Length{} || stock.price < 0)
      throw std::invalid_argument("a trim or a price below nothing");
}

}  // namespace

KerfTask kerf_task(const PlacingTask& task) {
  refuse_nonsense(task);
  KerfTask result;
  for (const StockKind& stock : task.stock) {
    KerfStock entry{whole_of(stock, task.kerf).size, stock.price, stock.count};
    if (std::min(entry.size.length, entry.size.width) <= task.kerf.ticks()) entry = {{1, 1}, stock.price, 0};
    entry.usable = Int128{entry.size.length} * entry.size.width;
    result.stock.push_back(entry);
  }
  for (const StockPart& part : task.parts) {
    result.kind_of.insert(result.kind_of.end(), part.count, result.parts.size());
    const KerfSize size{(part.length + task.kerf).ticks(), (part.width + task.kerf).ticks()};
    result.parts.push_back({size, part.count, part.lay == PartLay::quarters && size.length != size.width});
  }
  if (task.least_offcut > Length{}) result.least_offcut = (task.least_offcut + task.kerf).ticks();
  return result;
}

SheetMaker<CutPanel> through_maker(const PlacingTask& task) {
  return [&task](std::size_t stock, std::uint64_t way) {
    PanelSheet<CutPanel> sheet{stock, {}};
    const StockKind& kind = task.stock[stock];
    DefectCutter cutter(defects_of(kind, task.kerf), way, task.stages.value_or(no_part));
    cutter.cut(whole_of(kind, task.kerf), 1, sheet);
    return sheet;
  };
}

SheetMaker<FreePanel> free_maker(const PlacingTask& task) {
  return [&task](std::size_t stock, std::uint64_t /*way*/) {
    const StockKind& kind = task.stock[stock];
    return PanelSheet<FreePanel>{stock, {FreePanel(whole_of(kind, task.kerf), defects_of(kind, task.kerf))}};
  };
}

StockCut stock_cut(const PlacingTask& task, const KerfTask& kerf, const PanelSheet<CutPanel>& sheet) {
  StockCut cut{sheet.stock};
  for (const KerfCut& before : sheet.cuts)
    cut.cuts.push_back(
        {finished(before.piece, task.kerf), before.crosswise, ticks(before.at) - task.kerf, before.stage});
  for (const CutPanel& panel : sheet.panels) {
    add_places(task, kerf, panel, cut);
    CutWriter(task, kerf, cut).write(panel.root(), panel.at(), panel.first_stage());
  }
  sort_cut(cut);
  return cut;
}

StockCut stock_cut(const PlacingTask& task, const KerfTask& kerf, const PanelSheet<FreePanel>& sheet) {
  StockCut cut{sheet.stock};
  for (const FreePanel& panel : sheet.panels) {
    add_places(task, kerf, panel, cut);
    FreePanel left = panel;
    // The largest that is left, again and again: offcuts do not overlap.
    while (!left.empty().empty()) {
      const KerfRect largest = *std::ranges::max_element(
          left.empty(), {}, [](const KerfRect& e) { return Int128{e.size.length} * e.size.width; });
      add_offcut(task, kerf, largest, cut);
      left = left.without(largest);
    }
  }
  sort_cut(cut);
  return cut;
}

}  // namespace berthwright
