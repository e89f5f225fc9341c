#include "support/shapes.h"

namespace berthwright::support {
namespace {

// The engine is fixed by the standard, its distributions are not.
std::int64_t below(std::mt19937_64& random, std::int64_t end) {
  return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(end));
}

}  // namespace

Polygon random_polygon(std::mt19937_64& random, int corners, int cells, std::int64_t step) {
  while (true) {
    std::vector<Point> ring;
    for (int i = 0; i < corners; ++i)
      ring.push_back(at(below(random, cells + 1) * step, below(random, cells + 1) * step));
    if (auto found = Polygon::checked(std::move(ring))) return *found;
  }
}

Region random_boxes(std::mt19937_64& random, int count, int cells, std::int64_t step) {
  std::vector<Region> added, taken;
  for (int i = 0; i < count; ++i) {
    const std::int64_t left = below(random, cells), bottom = below(random, cells);
    const std::int64_t right = left + 1 + below(random, (cells - left + 1) / 2);
    const std::int64_t top = bottom + 1 + below(random, (cells - bottom + 1) / 2);
    (i % 3 == 2 ? taken : added).push_back(box(left * step, bottom * step, right * step, top * step));
  }
  return without(united(added), united(taken));
}

Region random_region(std::mt19937_64& random, int cells, std::int64_t step) {
  const Polygon base = random_polygon(random, 3 + static_cast<int>(below(random, 4)), cells, step);
  const Polygon more = random_polygon(random, 3 + static_cast<int>(below(random, 3)), cells, step);
  if (below(random, 2) == 0) return base;
  const Region result = without(base, more);
  return result.empty() ? Region(base) : result;
}

}  // namespace berthwright::support
