#include "view/seen.h"

#include <algorithm>
#include <tuple>

namespace berthwright {
namespace {

constexpr std::int64_t samples = 24;  // along each side

std::int64_t distance(PaperPoint a, PaperPoint b) {
  return std::max(std::abs((a.x - b.x).micrometres()), std::abs((a.y - b.y).micrometres()));
}

}  // namespace

std::optional<PaperPoint> middle_of_seen(const std::vector<PaperRing>& rings,
                                         std::span<const std::vector<PaperRing>* const> above) {
  PaperBox box = bounds(rings.front());
  for (const PaperRing& ring : rings) box = hull(box, bounds(ring));
  const PaperBox sampled =
      grown(box, std::max(box.width(), box.height()) / samples + PaperLength::micrometres(1));
  std::vector<const std::vector<PaperRing>*> over;
  for (const auto* other : above)
    if (std::ranges::any_of(*other, [&](const PaperRing& ring) { return overlaps(bounds(ring), sampled); }))
      over.push_back(other);
  std::vector<PaperPoint> seen;
  std::vector<PaperPoint> hidden;
  for (std::int64_t i = -1; i <= samples; ++i)
    for (std::int64_t j = -1; j <= samples; ++j) {
      const PaperPoint p{box.low.x + box.width() * (2 * i + 1) / (2 * samples),
                         box.low.y + box.height() * (2 * j + 1) / (2 * samples)};
      const bool is_seen = inside(rings, p) &&
                           std::ranges::none_of(over, [&](const auto* other) { return inside(*other, p); });
      (is_seen ? seen : hidden).push_back(p);
    }
  std::optional<PaperPoint> best;
  std::tuple<std::int64_t, std::int64_t> best_rank;
  for (const PaperPoint p : seen) {
    std::int64_t clear = distance(p, hidden.front());
    for (const PaperPoint q : hidden) {
      clear = std::min(clear, distance(p, q));
      if (best && clear < std::get<0>(best_rank)) break;
    }
    const std::tuple rank{clear, -distance(p, box.centre())};
    if (best && rank <= best_rank) continue;
    best = p;
    best_rank = rank;
  }
  return best;
}

}  // namespace berthwright
