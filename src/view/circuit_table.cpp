#include "view/circuit_table.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "view/lettering.h"
#include "view/load_words.h"

namespace berthwright {
namespace {

constexpr std::size_t most_table_rows = 14;
constexpr PaperLength table_pitch = paper_mm(36, 10);
constexpr PaperLength table_head = paper_mm(48, 10);
constexpr PaperLength figure_column = paper_mm(17);
constexpr PaperLength verdict_column = paper_mm(17);
constexpr PaperLength load_indent = paper_mm(3);

/// One row: a name, and under the four heads a figure or nothing.
struct TableRow {
  bool of_load = false;
  std::string name;
  std::array<std::string, 4> figures{};
  std::string verdict{};
};

std::int64_t tenths_counted(std::int64_t hundredths_of_watts, int volts) {
  return (hundredths_of_watts + std::int64_t{10} * volts - 1) / (std::int64_t{10} * volts);
}

TableRow table_row(const Plan& plan, const std::string& name, const BreakerFigures& figures) {
  const int volts = plan->supply->volts;
  const std::string least = figures.is_known() ? "" : "≥ ";
  return {false,
          name,
          {amperes_text(std::int64_t{10} * figures.breaker), amperes_text(std::int64_t{8} * figures.breaker),
           least + amperes_text(tenths_of_ampere(figures.watts(), volts)),
           least + amperes_text(tenths_counted(figures.counted, volts))},
          std::string(word(term_of(figures.status), plan->english))};
}

TableRow table_row(const Plan& plan, const CircuitLoad& load, bool too_large) {
  const int volts = plan->supply->volts;
  return {true,
          load.name + (load.draw.continuous ? ", continuous" : "") + (load.plugged ? ", by a cord" : ""),
          {"", "", amperes_text(tenths_of_ampere(load.draw.watts, volts)),
           amperes_text(tenths_counted(counted_hundredths(load.draw), volts))},
          too_large ? "too much" : ""};
}

std::vector<TableRow> table_rows(const Plan& plan, const SupplyFigures& supply) {
  std::vector<TableRow> rows;
  for (std::size_t i = 0; i < supply.circuits.size(); ++i) {
    const BreakerFigures& figures = supply.circuits[i];
    rows.push_back(table_row(plan, plan->supply->circuits[i].name, figures));
    for (std::size_t k = 0; k < supply.loads.size(); ++k)
      if (supply.loads[k].circuit == i)
        rows.push_back(table_row(plan, supply.loads[k],
                                 std::ranges::find(figures.too_large, k) != figures.too_large.end()));
  }
  const std::string unknown(word(Term::unknown, plan->english));
  for (const CircuitLoad& load : supply.loads) {
    if (load.circuit) continue;
    TableRow row = table_row(plan, load, false);
    row.name += ", on no circuit of the plan";
    row.verdict = unknown;
    rows.push_back(std::move(row));
  }
  for (const std::string& name : supply.no_figure)
    rows.push_back({true, name + ", watts not given", {}, unknown});
  if (supply.whole) rows.push_back(table_row(plan, "Whole supply", *supply.whole));
  return rows;
}

class TableMarks {
 public:
  explicit TableMarks(PaperLength width) : width_(width) {}

  PaperLength name_width() const { return width_ - figure_column * 4 - verdict_column; }

  void rule(PaperLength y) { marks_.emplace_back(straight(Ink::rule, {{}, y}, {width_, y})); }

  void add(const TableRow& row, PaperLength baseline, Ink ink) {
    const auto set = [&](PaperLength x, Anchor anchor, const std::string& words) {
      if (!words.empty())
        marks_.emplace_back(Text{ink, {x, baseline}, lettering::note, anchor, false, words});
    };
    set(row.of_load ? load_indent : PaperLength{}, Anchor::start, row.name);
    for (std::size_t i = 0; i < row.figures.size(); ++i)
      set(name_width() + figure_column * static_cast<std::int64_t>(i + 1), Anchor::end, row.figures[i]);
    set(width_, Anchor::end, row.verdict);
  }

  std::vector<Mark> marks() && { return std::move(marks_); }

 private:
  PaperLength width_;
  std::vector<Mark> marks_;
};

}  // namespace

std::optional<CircuitTable> circuit_table(const Plan& plan, const Loads& loads, PaperLength width) {
  if (!loads.supply) return std::nullopt;
  const std::vector<TableRow> rows = table_rows(plan, *loads.supply);
  TableMarks table(width);
  if (rows.size() > most_table_rows) return std::nullopt;
  for (const TableRow& row : rows)
    if (text_width(row.name, lettering::note) + load_indent > table.name_width()) return std::nullopt;
  PaperLength baseline = paper_mm(26, 10);
  table.add({false,
             "Circuits, " + std::to_string(plan->supply->volts) + " V",
             {"breaker", "for hours", "all on", "counts as"},
             {}},
            baseline, Ink::label);
  table.rule(baseline + paper_mm(11, 10));
  baseline = baseline + table_head;
  for (const TableRow& row : rows) {
    table.add(row, baseline, Ink::note);
    baseline = baseline + table_pitch;
  }
  return CircuitTable{std::move(table).marks(), baseline};
}

}  // namespace berthwright
