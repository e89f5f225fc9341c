#include "view/load_bars.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "exact/spelling.h"
#include "view/lettering.h"
#include "view/load_words.h"
#include "view/signs.h"

namespace berthwright {
namespace {

constexpr std::int64_t bar_whole = 10'000;
constexpr PaperLength least_bar_cell = paper_mm(74);
constexpr PaperLength between_bar_cells = paper_mm(6);
constexpr PaperLength above_bar_lines = paper_mm(37, 10);
constexpr PaperLength bar_line_pitch = paper_mm(34, 10);
constexpr PaperLength bar_height = paper_mm(24, 10);
constexpr PaperLength below_bar_lines = paper_mm(89, 10);
constexpr PaperLength bar_words_pitch = paper_mm(34, 10);
constexpr PaperLength bar_tag_width = paper_mm(14);
constexpr PaperLength least_bar_mark = paper_mm(8, 10);

/// A part of a load in ten-thousandths, a hundred times it at most: no axis shows more.
std::optional<std::int64_t> bar_part(const std::optional<Mass>& load, Mass whole, Rounding rounding) {
  constexpr Int128 farthest_shown = Int128{100} * bar_whole;
  if (!load) return std::nullopt;
  const Int128 part = rounded(Int128{load->units()} * bar_whole, whole.units(), rounding);
  return static_cast<std::int64_t>(std::clamp(part, -farthest_shown, farthest_shown));
}

Mass aside_allowed(Mass axle) { return Mass::from_units(axle.units() * most_aside_percent / 100); }

std::string in_bar_unit(const std::string& both_units) { return both_units.substr(0, both_units.find(" (")); }

std::string bar_mass(Mass mass, Unit own, Rounding rounding) {
  return in_bar_unit(mass_text(mass, own, rounding));
}

/// "207 to 213 lb", in the plan's own unit alone.
std::string bar_load(const LoadSpan& load, Unit own) {
  if (!load.low && !load.high) return "unknown";
  if (!load.high) return "at least " + bar_mass(*load.low, own, Rounding::down);
  if (!load.low) return "at most " + bar_mass(*load.high, own, Rounding::up);
  if (load.is_known()) return bar_mass(*load.high, own, Rounding::up);
  const std::string low = bar_mass(*load.low, own, Rounding::down);
  return low.substr(0, low.find(' ')) + " to " + bar_mass(*load.high, own, Rounding::up);
}

/// The bars of one configuration, one after the other.
class BarsOf {
 public:
  using Kind = LoadVerdict::Kind;
  BarsOf(const Plan& plan, const Loads& loads)
      : plan_(plan),
        balances_(different_balances(loads)),
        verdicts_(verdicts_on(plan, loads)),
        chassis_(*plan->chassis) {}

  std::vector<LoadBar> bars() && {
    if (chassis_.towed) add_share();
    add_plate("Plate of the coupling", Kind::coupling_limit, chassis_.coupling_limit,
              [](const Balance& one) { return one.coupling; });
    add_plate("Plate of the axle", Kind::axle_limit, chassis_.axle_limit,
              [](const Balance& one) { return one.axle; });
    add_plate("Plate of the whole", Kind::whole_limit, chassis_.whole_limit, [](const Balance& one) {
      return one.whole ? std::optional(LoadSpan{one.whole->least, one.whole->most}) : std::nullopt;
    });
    add_sides();
    return std::move(bars_);
  }

 private:
  void add_share() {
    const ShareRange& range = share_range(chassis_.range);
    const auto& told = balances_.front()->share;
    LoadBar bar{"Share on the coupling",
                verdict(Kind::share),
                (told ? share_text(*told, range) + (range.of_plate ? " of the plate, " : " of the whole, ") +
                            bar_load(balances_.front()->coupling.value_or(LoadSpan{}), plan_->unit)
                      : "unknown"),
                "asked " + std::to_string(range.least) + " to " + std::to_string(range.most) + " %",
                range.least * std::int64_t{100},
                range.most * std::int64_t{100},
                {}};
    for (const Balance* one : balances_)
      bar.lines.push_back(line(*one, one->share ? std::optional(one->share->low) : std::nullopt,
                               one->share ? std::optional(one->share->high) : std::nullopt));
    bars_.push_back(std::move(bar));
  }

  template <class LoadOf>
  void add_plate(const char* name, Kind kind, const std::optional<Mass>& limit, const LoadOf& load_of) {
    if (!limit) return;
    const LoadSpan told = load_of(*balances_.front()).value_or(LoadSpan{});
    LoadBar bar{name,
                verdict(kind),
                bar_load(told, plan_->unit),
                "allowed at most " + bar_mass(*limit, plan_->unit, Rounding::down),
                0,
                bar_whole,
                {}};
    for (const Balance* one : balances_) {
      const LoadSpan load = load_of(*one).value_or(LoadSpan{});
      bar.lines.push_back(
          line(*one, bar_part(load.low, *limit, Rounding::down), bar_part(load.high, *limit, Rounding::up)));
    }
    bars_.push_back(std::move(bar));
  }

  void add_sides() {
    const Balance& told = *balances_.front();
    if (!told.side || !told.axle || !told.axle->low || *told.axle->low <= Mass{}) return;
    constexpr std::int64_t most = most_aside_percent * std::int64_t{100};
    LoadBar bar{"Right less left wheels",
                verdict(Kind::sides),
                own_change(*told.side),
                "allowed at most " + std::to_string(most_aside_percent) + " % of the axle, " +
                    bar_mass(aside_allowed(*told.axle->low), plan_->unit, Rounding::down),
                -most,
                most,
                {}};
    for (const Balance* one : balances_) {
      const bool has_axle = one->side && one->axle && one->axle->low && *one->axle->low > Mass{};
      const auto part = [&](const std::optional<Mass>& load, Rounding rounding) {
        return has_axle ? bar_part(load, *one->axle->low, rounding) : std::nullopt;
      };
      const LoadSpan side = one->side.value_or(LoadSpan{});
      bar.lines.push_back(line(*one, part(side.low, Rounding::down), part(side.high, Rounding::up)));
    }
    bars_.push_back(std::move(bar));
  }

  std::string own_change(const LoadSpan& change) const {
    if (!change.low && !change.high) return "unknown";
    const std::string words = change_text(change, plan_->unit);
    std::string own;
    for (std::size_t at = 0; at < words.size();) {
      const std::size_t open = words.find(" (", at);
      own += words.substr(at, open == std::string::npos ? open : open - at);
      at = open == std::string::npos ? words.size() : words.find(')', open) + 1;
    }
    return own;
  }

  LoadBar::Line line(const Balance& balance, std::optional<std::int64_t> low,
                     std::optional<std::int64_t> high) const {
    return {balances_.size() > 1 ? std::string(word(balance.tanks)) : std::string{}, low, high};
  }

  /// The worst of all balances: a plate that full tanks break is broken.
  std::string verdict(Kind kind) const {
    LoadVerdict worst{kind, Status::met};
    for (const LoadVerdict& one : verdicts_) {
      if (one.kind != kind) continue;
      const bool is_worse = one.status == Status::not_met
                                ? worst.status != Status::not_met
                                : worst.status == Status::met && one.status != Status::met;
      if (is_worse) worst = one;
    }
    std::string words(word(term_of(worst.status), plan_->english));
    if (worst.status != Status::met && balances_.size() > 1)
      words += ", tanks " + std::string(word(worst.tanks));
    return words;
  }

  const Plan& plan_;
  std::vector<const Balance*> balances_;
  std::vector<LoadVerdict> verdicts_;
  const Chassis& chassis_;
  std::vector<LoadBar> bars_;
};

PaperLength bar_cell_height(const LoadBar& bar) {
  return above_bar_lines + bar_line_pitch * static_cast<std::int64_t>(bar.lines.size()) + below_bar_lines;
}

std::size_t bar_columns(PaperLength width) {
  const std::int64_t fitting =
      (width + between_bar_cells).micrometres() / (least_bar_cell + between_bar_cells).micrometres();
  return static_cast<std::size_t>(std::max<std::int64_t>(1, fitting));
}

Text bar_words(PaperPoint at, Anchor anchor, std::string words) {
  return {Ink::note, at, lettering::note, anchor, false, std::move(words)};
}

/// An axis on paper, from left to right.
struct BarAxis {
  std::int64_t from;
  std::int64_t to;
  PaperLength left;
  PaperLength right;
  PaperLength at(std::int64_t value) const {
    return left + PaperLength::micrometres((right - left).micrometres() * (value - from) / (to - from));
  }
};

void add_bar_line(std::vector<Mark>& marks, const LoadBar& bar, const LoadBar::Line& line,
                  const BarAxis& axis, PaperLength top) {
  const PaperLength bottom = top + bar_height;
  const auto box = [&](Ink ink, PaperLength from, PaperLength to, PaperLength inset) {
    marks.emplace_back(closed_path(ink, PaperBox{{from, top + inset}, {to, bottom - inset}}));
  };
  box(Ink::asked_range, axis.at(bar.least), axis.at(bar.most), {});
  const PaperLength middle = (top + bottom) / 2;
  marks.emplace_back(straight(Ink::rule, {axis.left, middle}, {axis.right, middle}));
  marks.emplace_back(straight(Ink::rule, {axis.at(0), top}, {axis.at(0), bottom}));
  if (!line.low && !line.high) return;
  PaperLength from = line.low ? axis.at(*line.low) : axis.left;
  PaperLength to = line.high ? axis.at(*line.high) : axis.right;
  // So thin a figure is drawn as a mark about its middle.
  if (to - from < least_bar_mark) {
    const PaperLength centre = (from + to) / 2;
    from = centre - least_bar_mark / 2;
    to = centre + least_bar_mark / 2;
  }
  const PaperLength head = paper_mm(26, 10);
  if (!line.high) marks.emplace_back(arrow_head({to, middle}, {from, middle}, head));
  if (!line.low) marks.emplace_back(arrow_head({from, middle}, {to, middle}, head));
  box(Ink::figure_span, line.low ? from : from + head, line.high ? to : to - head, paper_mm(7, 10));
}

std::vector<Mark> bar_cell_marks(const LoadBar& bar, PaperPoint corner, PaperLength width) {
  std::vector<Mark> marks;
  const PaperLength baseline = corner.y + paper_mm(22, 10);
  marks.emplace_back(bar_words({corner.x, baseline}, Anchor::start, bar.name));
  marks.emplace_back(bar_words({corner.x + width, baseline}, Anchor::end, bar.verdict));
  const bool tagged = !bar.lines.front().tanks.empty();
  const BarAxis axis{bar.from(), bar.to(), corner.x + (tagged ? bar_tag_width : PaperLength{}),
                     corner.x + width};
  PaperLength top = corner.y + above_bar_lines;
  for (const LoadBar::Line& line : bar.lines) {
    if (tagged) marks.emplace_back(bar_words({corner.x, top + paper_mm(21, 10)}, Anchor::start, line.tanks));
    add_bar_line(marks, bar, line, axis, top);
    top = top + bar_line_pitch;
  }
  top = top + paper_mm(21, 10);
  marks.emplace_back(bar_words({corner.x, top}, Anchor::start, bar.figures));
  marks.emplace_back(bar_words({corner.x, top + bar_words_pitch}, Anchor::start, bar.asked));
  return marks;
}

/// The cells of every row, left to right.
template <class Take>
PaperLength bars_in_rows(const std::vector<LoadBar>& bars, PaperLength width, const Take& take) {
  const std::size_t columns = bar_columns(width);
  const auto count = static_cast<std::int64_t>(columns);
  const PaperLength cell = (width - between_bar_cells * (count - 1)) / count;
  PaperLength top;
  for (std::size_t row = 0; row < bars.size(); row += columns) {
    PaperLength height;
    for (std::size_t i = row; i < std::min(row + columns, bars.size()); ++i) {
      const auto column = static_cast<std::int64_t>(i - row);
      take(bars[i], PaperPoint{(cell + between_bar_cells) * column, top}, cell);
      height = std::max(height, bar_cell_height(bars[i]));
    }
    top = top + height;
  }
  return top;
}

}  // namespace

std::int64_t LoadBar::from() const {
  std::int64_t least_told = std::min<std::int64_t>(0, least * 2);
  for (const Line& line : lines)
    for (const auto& end : {line.low, line.high})
      least_told = std::min(least_told, end.value_or(0) * 11 / 10);
  return least_told;
}

std::int64_t LoadBar::to() const {
  std::int64_t most_told = most * 4 / 3;
  for (const Line& line : lines)
    for (const auto& end : {line.low, line.high}) most_told = std::max(most_told, end.value_or(0) * 11 / 10);
  return most_told;
}

std::vector<LoadBar> load_bars(const Plan& plan, const Loads& loads) {
  if (!plan->chassis) return {};
  return BarsOf(plan, loads).bars();
}

PaperLength height_of(const std::vector<LoadBar>& bars, PaperLength width) {
  return bars_in_rows(bars, width, [](const LoadBar&, PaperPoint, PaperLength) {});
}

std::vector<Mark> marks_of(const std::vector<LoadBar>& bars, const PaperBox& box) {
  std::vector<Mark> marks;
  bars_in_rows(bars, box.width(), [&](const LoadBar& bar, PaperPoint from, PaperLength width) {
    add(marks, bar_cell_marks(bar, {box.low.x + from.x, box.low.y + from.y}, width));
  });
  return marks;
}

}  // namespace berthwright
