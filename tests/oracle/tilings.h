#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace berthwright::oracle {

struct CellTile {
  int length = 1;
  int width = 1;
  int count = 1;
};

/// A bay of whole cells, rows of y first.
struct TilingCase {
  std::vector<std::vector<bool>> free;
  std::vector<CellTile> tiles;
  int fillers = 0;
};

struct TilingCount {
  std::optional<int> fewest_fillers;  ///< none: it cannot be covered
  std::size_t ways = 0;               ///< with so few
};

/// Every way to cover the free cells with all tiles and at most so many rectangles more, cell by cell. Slow.
TilingCount count_tilings(const TilingCase& of);

}  // namespace berthwright::oracle
