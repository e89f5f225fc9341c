#include "view/seen.h"

#include <algorithm>
#include <array>
#include <limits>
#include <tuple>

namespace berthwright {
namespace {

constexpr std::int64_t samples = 24;           // along each side
constexpr std::size_t in_a_row = samples + 2;  // with one beyond each end

/// Points spread over a box, told apart by whether they are seen. All first indices are columns.
struct SeenGrid {
  std::array<PaperLength, in_a_row> x;
  std::array<PaperLength, in_a_row> y;
  std::array<std::array<bool, in_a_row>, in_a_row> seen{};
};

SeenGrid grid_over(const PaperBox& box) {
  SeenGrid grid;
  for (std::size_t i = 0; i < in_a_row; ++i) {
    const std::int64_t odd = 2 * static_cast<std::int64_t>(i) - 1;
    grid.x[i] = box.low.x + box.width() * odd / (2 * samples);
    grid.y[i] = box.low.y + box.height() * odd / (2 * samples);
  }
  return grid;
}

void look(SeenGrid& grid, const std::vector<PaperRing>& rings,
          const std::vector<const std::vector<PaperRing>*>& over) {
  for (std::size_t j = 0; j < in_a_row; ++j) {
    const LevelCut own(rings, grid.y[j]);
    if (own.empty()) continue;
    std::vector<LevelCut> covers;
    for (const auto* other : over)
      if (LevelCut cut(*other, grid.y[j]); !cut.empty()) covers.push_back(std::move(cut));
    for (std::size_t i = 0; i < in_a_row; ++i) {
      const PaperLength x = grid.x[i];
      grid.seen[i][j] =
          own.inside(x) && std::ranges::none_of(covers, [&](const LevelCut& cut) { return cut.inside(x); });
    }
  }
}

constexpr std::int64_t far_off = std::numeric_limits<std::int64_t>::max();
using Distances = std::array<std::array<std::int64_t, in_a_row>, in_a_row>;

// Of each point the distance to the nearest hidden one of its column.
Distances down_the_columns(const SeenGrid& grid) {
  Distances out{};
  for (std::size_t i = 0; i < in_a_row; ++i) {
    bool met = false;
    PaperLength last;
    const auto visit = [&](std::size_t j) {
      if (!grid.seen[i][j]) last = grid.y[j];
      met = met || !grid.seen[i][j];
      if (met) out[i][j] = std::min(out[i][j], std::abs((grid.y[j] - last).micrometres()));
    };
    out[i].fill(far_off);
    for (std::size_t j = 0; j < in_a_row; ++j) visit(j);
    met = false;
    for (std::size_t j = in_a_row; j-- > 0;) visit(j);
  }
  return out;
}

// How far the point is from all that are hidden, in rows and columns: columns are asked from the nearest on.
std::int64_t clear_of_hidden(const SeenGrid& grid, const Distances& down, std::size_t i, std::size_t j) {
  std::int64_t clear = down[i][j];
  const auto ask = [&](std::size_t k) {
    const std::int64_t aside = std::abs((grid.x[i] - grid.x[k]).micrometres());
    clear = std::min(clear, std::max(aside, down[k][j]));
    return aside < clear;
  };
  for (std::size_t k = i; k-- > 0 && ask(k);) continue;
  for (std::size_t k = i + 1; k < in_a_row && ask(k); ++k) continue;
  return clear;
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
  SeenGrid grid = grid_over(box);
  look(grid, rings, over);
  const Distances down = down_the_columns(grid);
  std::optional<PaperPoint> best;
  std::tuple<std::int64_t, std::int64_t> best_rank;
  for (std::size_t i = 0; i < in_a_row; ++i)
    for (std::size_t j = 0; j < in_a_row; ++j) {
      if (!grid.seen[i][j]) continue;
      const std::int64_t clear = clear_of_hidden(grid, down, i, j);
      if (best && clear < std::get<0>(best_rank)) continue;
      const PaperPoint p{grid.x[i], grid.y[j]};
      const PaperPoint c = box.centre();
      const std::tuple rank{
          clear, -std::max(std::abs((p.x - c.x).micrometres()), std::abs((p.y - c.y).micrometres()))};
      if (best && rank <= best_rank) continue;
      best = p;
      best_rank = rank;
    }
  return best;
}

}  // namespace berthwright
