#include "oracle/grid_way.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "oracle/clearance.h"

namespace berthwright::oracle {
namespace {

double distance(const Edge& edge, double x, double y) {
  const double ax = static_cast<double>(edge.from.x.ticks()), ay = static_cast<double>(edge.from.y.ticks());
  const double dx = static_cast<double>(edge.to.x.ticks()) - ax;
  const double dy = static_cast<double>(edge.to.y.ticks()) - ay;
  const double at = std::clamp(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
  return std::hypot(ax + dx * at - x, ay + dy * at - y);
}

/// Sets of cells that are joined, each knowing whether it holds a start and an end.
class Pools {
 public:
  explicit Pools(const std::vector<FloodCell>& cells)
      : parent_(cells.size()), starts_(cells.size()), ends_(cells.size()) {
    std::iota(parent_.begin(), parent_.end(), 0U);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      starts_[i] = cells[i].starts;
      ends_[i] = cells[i].ends;
    }
  }
  std::size_t top(std::size_t i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  bool join(std::size_t a, std::size_t b) {
    a = top(a);
    b = top(b);
    parent_[b] = a;
    starts_[a] = starts_[a] || starts_[b];
    ends_[a] = ends_[a] || ends_[b];
    return starts_[a] && ends_[a];
  }

 private:
  std::vector<std::size_t> parent_;
  std::vector<bool> starts_;
  std::vector<bool> ends_;
};

}  // namespace

double flooded(const std::vector<FloodCell>& cells, std::size_t rows) {
  const std::size_t columns = cells.size() / rows;
  std::vector<std::size_t> order(cells.size());
  std::iota(order.begin(), order.end(), 0U);
  std::ranges::sort(order,
                    [&](std::size_t a, std::size_t b) { return cells[a].clearance > cells[b].clearance; });
  Pools pools(cells);
  std::vector<bool> wet(cells.size());
  for (const std::size_t cell : order) {
    if (cells[cell].clearance <= 0) break;
    wet[cell] = true;
    if (pools.join(cell, cell)) return cells[cell].clearance;
    const std::size_t i = cell / rows, k = cell % rows;
    for (std::size_t next_i = i == 0 ? 0 : i - 1; next_i <= std::min(i + 1, columns - 1); ++next_i)
      for (std::size_t next_k = k == 0 ? 0 : k - 1; next_k <= std::min(k + 1, rows - 1); ++next_k) {
        const std::size_t next = next_i * rows + next_k;
        if (wet[next] && pools.join(cell, next)) return cells[cell].clearance;
      }
  }
  return -1;
}

double widest_clearance(const Region& free, const std::vector<Edge>& from, const Rect& goal, double step) {
  const Rect bounds = free.bounds();
  const auto columns = static_cast<std::size_t>(static_cast<double>(bounds.width().ticks()) / step);
  const auto rows = static_cast<std::size_t>(static_cast<double>(bounds.height().ticks()) / step);
  std::vector<FloodCell> cells(columns * rows);
  for (std::size_t i = 0; i < columns; ++i)
    for (std::size_t k = 0; k < rows; ++k) {
      const double x = static_cast<double>(bounds.low.x.ticks()) + (static_cast<double>(i) + 0.5) * step;
      const double y = static_cast<double>(bounds.low.y.ticks()) + (static_cast<double>(k) + 0.5) * step;
      FloodCell& cell = cells[i * rows + k];
      cell.clearance = clearance(free, x, y);
      cell.starts = std::ranges::any_of(
          from, [&](const Edge& e) { return distance(e, x, y) - cell.clearance < 0.71 * step; });
      cell.ends = x > static_cast<double>(goal.low.x.ticks()) &&
                  x < static_cast<double>(goal.high.x.ticks()) &&
                  y > static_cast<double>(goal.low.y.ticks()) && y < static_cast<double>(goal.high.y.ticks());
    }
  return flooded(cells, rows);
}

}  // namespace berthwright::oracle
