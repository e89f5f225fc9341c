#include "oracle/cord_raster.h"

#include <cmath>
#include <numeric>
#include <queue>

namespace berthwright::oracle {
namespace {

int inches_of(Length length) { return static_cast<int>(length.ticks() / ticks_per_inch); }

struct SquareFloor {
  int columns;
  int rows;
  std::vector<bool> taken;

  bool free(int x, int y) const {
    return x >= 0 && y >= 0 && x < columns && y < rows && !taken[static_cast<std::size_t>(x * rows + y)];
  }
  // Looked at a little to both sides, so that no corner is cut.
  bool clear(int x, int y, int dx, int dy) const {
    const double length = std::hypot(dx, dy);
    for (int i = 0; i <= 40; ++i)
      for (const double aside : {-0.02, 0.02}) {
        const double px = x + 0.5 + dx * i / 40.0 - aside * dy / length;
        const double py = y + 0.5 + dy * i / 40.0 + aside * dx / length;
        if (!free(static_cast<int>(std::floor(px)), static_cast<int>(std::floor(py)))) return false;
      }
    return true;
  }
};

std::vector<int> squares_about(const SquareFloor& floor, Point corner) {
  std::vector<int> found;
  for (const int dx : {-1, 0})
    for (const int dy : {-1, 0}) {
      const int x = inches_of(corner.x) + dx, y = inches_of(corner.y) + dy;
      if (floor.free(x, y)) found.push_back(x * floor.rows + y);
    }
  return found;
}

}  // namespace

double raster_way(const std::vector<Rect>& boxes, const Rect& room, Point from, Point to) {
  SquareFloor floor{inches_of(room.high.x), inches_of(room.high.y), {}};
  floor.taken.resize(static_cast<std::size_t>(floor.columns * floor.rows));
  for (const Rect& box : boxes)
    for (int x = std::max(0, inches_of(box.low.x)); x < std::min(floor.columns, inches_of(box.high.x)); ++x)
      for (int y = std::max(0, inches_of(box.low.y)); y < std::min(floor.rows, inches_of(box.high.y)); ++y)
        floor.taken[static_cast<std::size_t>(x * floor.rows + y)] = true;
  std::vector<double> best(floor.taken.size(), -1);
  using Entry = std::pair<double, int>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
  for (const int start : squares_about(floor, from))
    queue.push({best[static_cast<std::size_t>(start)] = 0, start});
  const std::vector<int> ends = squares_about(floor, to);
  while (!queue.empty()) {
    const auto [way, here] = queue.top();
    queue.pop();
    if (way > best[static_cast<std::size_t>(here)]) continue;
    for (const int end : ends)
      if (end == here) return way;
    const int x = here / floor.rows, y = here % floor.rows;
    for (int dx = -5; dx <= 5; ++dx)
      for (int dy = -5; dy <= 5; ++dy) {
        if (std::gcd(dx, dy) != 1 || !floor.free(x + dx, y + dy)) continue;
        const int next = (x + dx) * floor.rows + y + dy;
        const double length = way + std::hypot(dx, dy);
        double& known = best[static_cast<std::size_t>(next)];
        if ((known >= 0 && known <= length) || !floor.clear(x, y, dx, dy)) continue;
        queue.push({known = length, next});
      }
  }
  return -1;
}

}  // namespace berthwright::oracle
