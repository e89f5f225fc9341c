#include "oracle/tilings.h"

namespace berthwright::oracle {
namespace {

struct Counter {
  TilingCase at;
  std::vector<std::size_t> ways_by_fillers;

  bool fill(std::size_t x, std::size_t y, int length, int width, bool from, bool to) {
    for (std::size_t row = y; row < y + static_cast<std::size_t>(width); ++row)
      for (std::size_t column = x; column < x + static_cast<std::size_t>(length); ++column)
        if (row >= at.free.size() || column >= at.free[row].size() || at.free[row][column] != from)
          return false;
    for (std::size_t row = y; row < y + static_cast<std::size_t>(width); ++row)
      for (std::size_t column = x; column < x + static_cast<std::size_t>(length); ++column)
        at.free[row][column] = to;
    return true;
  }

  void go(std::size_t fillers) {
    for (std::size_t y = 0; y < at.free.size(); ++y)
      for (std::size_t x = 0; x < at.free[y].size(); ++x)
        if (at.free[y][x]) {
          cover(x, y, fillers);
          return;
        }
    for (const CellTile& tile : at.tiles)
      if (tile.count > 0) return;
    ++ways_by_fillers[fillers];
  }

  void cover(std::size_t x, std::size_t y, std::size_t fillers) {
    for (CellTile& tile : at.tiles) {
      if (tile.count == 0) continue;
      --tile.count;
      for (const bool turned : {false, true}) {
        const int length = turned ? tile.width : tile.length;
        const int width = turned ? tile.length : tile.width;
        if (turned && length == width) continue;
        if (!fill(x, y, length, width, true, false)) continue;
        go(fillers);
        fill(x, y, length, width, false, true);
      }
      ++tile.count;
    }
    if (static_cast<int>(fillers) == at.fillers) return;
    for (int length = 1; length <= static_cast<int>(at.free[y].size()); ++length)
      for (int width = 1; width <= static_cast<int>(at.free.size()); ++width) {
        if (!fill(x, y, length, width, true, false)) continue;
        go(fillers + 1);
        fill(x, y, length, width, false, true);
      }
  }
};

}  // namespace

TilingCount count_tilings(const TilingCase& of) {
  Counter counter{of, std::vector<std::size_t>(static_cast<std::size_t>(of.fillers) + 1)};
  counter.go(0);
  for (std::size_t fillers = 0; fillers < counter.ways_by_fillers.size(); ++fillers)
    if (counter.ways_by_fillers[fillers] > 0)
      return {static_cast<int>(fillers), counter.ways_by_fillers[fillers]};
  return {};
}

}  // namespace berthwright::oracle
