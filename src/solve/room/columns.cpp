#include "solve/room/columns.h"

#include <algorithm>
#include <utility>

#include "geometry/ring.h"

namespace berthwright {

namespace {

Length height_at(const Edge& edge, Length x) {
  return edge.from.y +
         rounded_part(edge.to.y - edge.from.y, (x - edge.from.x).ticks(), (edge.to.x - edge.from.x).ticks());
}

bool reaches_across(const Edge& edge, Length from, Length to) {
  return std::min(edge.from.x, edge.to.x) <= from && to <= std::max(edge.from.x, edge.to.x);
}

}  // namespace

std::vector<Length> cuts_through(const std::vector<const Region*>& regions, std::vector<Length> more) {
  std::vector<Length> cuts = std::move(more);
  for (const Region* region : regions)
    for (const Edge& edge : edges(*region)) cuts.push_back(edge.from.x);
  std::ranges::sort(cuts);
  cuts.erase(std::ranges::unique(cuts).begin(), cuts.end());
  return cuts;
}

std::vector<Column> columns_of(const Region& region, const std::vector<Length>& cuts) {
  const std::vector<Edge> border = edges(region);
  std::vector<Column> columns;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    Column column{cuts[i], cuts[i + 1], {}};
    std::vector<std::pair<Length, Length>> heights;
    for (const Edge& edge : border)
      if (reaches_across(edge, column.from, column.to))
        heights.emplace_back(height_at(edge, column.from), height_at(edge, column.to));
    std::ranges::sort(heights, {}, [](const auto& at) { return at.first + at.second; });
    for (std::size_t k = 0; k + 1 < heights.size(); k += 2)
      column.stretches.push_back(
          {heights[k].first, heights[k].second, heights[k + 1].first, heights[k + 1].second});
    columns.push_back(std::move(column));
  }
  return columns;
}

}  // namespace berthwright
