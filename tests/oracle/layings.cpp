#include "oracle/layings.h"

#include <algorithm>
#include <cstddef>

namespace berthwright::oracle {
namespace {

struct LayingSearch {
  TilingCase at;
  bool by_cells = false;
  int openings = 0;
  int open = 0;
  int best = -1;

  bool set(std::size_t x, std::size_t y, int length, int width, bool from) {
    const std::size_t x_end = x + static_cast<std::size_t>(length);
    const std::size_t y_end = y + static_cast<std::size_t>(width);
    if (y_end > at.free.size() || x_end > at.free[0].size()) return false;
    for (std::size_t j = y; j < y_end; ++j)
      for (std::size_t i = x; i < x_end; ++i)
        if (at.free[j][i] != from) return false;
    for (std::size_t j = y; j < y_end; ++j)
      for (std::size_t i = x; i < x_end; ++i) at.free[j][i] = !from;
    return true;
  }

  void go() {
    if (best >= 0 && open >= best) return;
    for (std::size_t y = 0; y < at.free.size(); ++y)
      for (std::size_t x = 0; x < at.free[y].size(); ++x)
        if (at.free[y][x]) {
          next(x, y);
          return;
        }
    best = open;
  }

  void next(std::size_t x, std::size_t y) {
    for (CellTile& tile : at.tiles)
      for (const bool turned : {false, true}) {
        const int length = turned ? tile.width : tile.length;
        const int width = turned ? tile.length : tile.width;
        if (tile.count == 0 || !set(x, y, length, width, true)) continue;
        --tile.count;
        go();
        ++tile.count;
        set(x, y, length, width, false);
      }
    if (by_cells) return leave(x, y, 1, 1);
    if (openings == 0) return;
    --openings;
    for (int length = 1; length <= static_cast<int>(at.free[y].size()); ++length)
      for (int width = 1; width <= static_cast<int>(at.free.size()); ++width) leave(x, y, length, width);
    ++openings;
  }

  void leave(std::size_t x, std::size_t y, int length, int width) {
    if (!set(x, y, length, width, true)) return;
    open += length * width;
    go();
    open -= length * width;
    set(x, y, length, width, false);
  }
};

}  // namespace

int least_open(const TilingCase& of, int openings) {
  LayingSearch search{of, false, openings};
  search.go();
  return search.best;
}

int least_open(const TilingCase& of) {
  LayingSearch search{of, true};
  search.go();
  return search.best;
}

}  // namespace berthwright::oracle
