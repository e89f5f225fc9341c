#pragma once

#include <utility>
#include <vector>

namespace berthwright::oracle {

/// Cells (column, row) of a part, and the quarter turns it may take.
struct CellPart {
  std::vector<std::pair<int, int>> cells;
  std::vector<int> quarters{0};
};

/// The least number of columns in which all parts lie on whole cells, `rows` high: every way is tried. Slow.
int fewest_columns(const std::vector<CellPart>& parts, int rows);

}  // namespace berthwright::oracle
