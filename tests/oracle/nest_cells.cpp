#include "oracle/nest_cells.h"

#include <algorithm>
#include <set>

namespace berthwright::oracle {
namespace {

using Cells = std::vector<std::pair<int, int>>;

Cells turned_cells(Cells cells, int quarters) {
  for (auto& [x, y] : cells)
    for (int k = 0; k < quarters; ++k) {
      const int old = x;
      x = -y;
      y = old;
    }
  const auto low_x = std::ranges::min_element(cells, {}, &std::pair<int, int>::first)->first;
  const auto low_y = std::ranges::min_element(cells, {}, &std::pair<int, int>::second)->second;
  for (auto& [x, y] : cells) x -= low_x, y -= low_y;
  std::ranges::sort(cells);
  return cells;
}

struct CellNester {
  const std::vector<CellPart>& parts;
  int rows;
  int columns;
  std::set<std::pair<int, int>> taken{};

  bool lay(std::size_t next) {
    if (next == parts.size()) return true;
    std::set<Cells> turns;
    for (const int quarter : parts[next].quarters) turns.insert(turned_cells(parts[next].cells, quarter));
    for (const Cells& cells : turns)
      for (int x = 0; x < columns; ++x)
        for (int y = 0; y < rows; ++y)
          if (lay_at(cells, x, y, next)) return true;
    return false;
  }

  bool lay_at(const Cells& cells, int x, int y, std::size_t next) {
    for (const auto& [cx, cy] : cells)
      if (x + cx >= columns || y + cy >= rows || taken.contains({x + cx, y + cy})) return false;
    for (const auto& [cx, cy] : cells) taken.insert({x + cx, y + cy});
    const bool done = lay(next + 1);
    for (const auto& [cx, cy] : cells) taken.erase({x + cx, y + cy});
    return done;
  }
};

}  // namespace

int fewest_columns(const std::vector<CellPart>& parts, int rows) {
  std::size_t cells = 0;
  for (const CellPart& part : parts) cells += part.cells.size();
  for (int columns = 1; columns <= static_cast<int>(cells); ++columns)
    if (CellNester{parts, rows, columns}.lay(0)) return columns;
  return -1;
}

}  // namespace berthwright::oracle
