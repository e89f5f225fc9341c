#include "oracle/height_grid.h"

#include <algorithm>

namespace berthwright::oracle {

Above look_up(const std::vector<Box>& boxes, const std::vector<Corner>& roof, double level, double x,
              double y) {
  Above above{1e9, "nothing"};
  for (std::size_t i = 0; i + 1 < roof.size(); ++i) {
    const Corner& a = roof[i];
    const Corner& b = roof[i + 1];
    if (x < a.along || x >= b.along) continue;
    const double roof_height = a.height + (b.height - a.height) * (x - a.along) / (b.along - a.along);
    above = {roof_height - level, "roof"};
  }
  for (const Box& box : boxes) {
    const bool over = box.x < x && x < box.x + box.length && box.y < y && y < box.y + box.width;
    const double height = std::max(0.0, box.base - level);
    if (over && box.top > level && height < above.height) above = {height, box.name};
  }
  return above;
}

namespace {

using Heights = std::vector<std::vector<double>>;

bool is_clear(const Heights& heights, int x, int low, int width, double least) {
  for (int y = low; y < low + width; ++y)
    if (heights[static_cast<std::size_t>(x)][static_cast<std::size_t>(y)] < least) return false;
  return true;
}

// Longest foot beyond column `x` (not counted) within the slot of one person.
int feet(const Heights& heights, int x, int slot, int shoulder) {
  const int foot = std::min(shoulder, 16);
  int best = 0;
  for (int low = slot; low + foot <= slot + shoulder; ++low) {
    int run = 0;
    while (run < 24 && x + run < static_cast<int>(heights.size()) &&
           is_clear(heights, x + run, low, foot, 12))
      ++run;
    best = std::max(best, run);
  }
  return best;
}

int one_way(const Heights& heights, const std::vector<int>& shoulders) {
  int width = 0;
  for (const int shoulder : shoulders) width += shoulder;
  const int length = static_cast<int>(heights.size());
  const int across = static_cast<int>(heights.front().size());
  int best = 0;
  for (int low = 0; low + width <= across; ++low)
    for (int from = 0; from < length; ++from)
      for (int to = from; to < length && is_clear(heights, to, low, width, 24); ++to) {
        int beyond = 24;
        int slot = low;
        for (const int shoulder : shoulders) {
          beyond = std::min(beyond, feet(heights, to + 1, slot, shoulder));
          slot += shoulder;
        }
        best = std::max(best, to + 1 - from + beyond);
      }
  return best;
}

}  // namespace

int longest_place(const Heights& heights, const std::vector<int>& shoulders) {
  Heights turned = heights;
  std::reverse(turned.begin(), turned.end());
  return std::max(one_way(heights, shoulders), one_way(turned, shoulders));
}

}  // namespace berthwright::oracle
