#include "geometry/border.h"

#include <algorithm>

#include "geometry/strands.h"

namespace berthwright {
namespace {

// Rounding a crossing bends both edges by less than a tick, which may make them cross others; seldom twice.
constexpr int most_rounds = 8;

std::vector<Edge> edges_of(const std::vector<Strand>& strands) {
  std::vector<Edge> result;
  for (const Strand& strand : strands) result.push_back({strand.low, strand.high});
  return result;
}

bool crosses(const Edge& a, const Edge& b) {
  const auto apart = [](const Edge& line, const Edge& other) {
    const std::int64_t from = cross(line.from, line.to, other.from);
    const std::int64_t to = cross(line.from, line.to, other.to);
    return (from < 0 && to > 0) || (from > 0 && to < 0);
  };
  return apart(a, b) && apart(b, a);
}

Point crossing_point(const Edge& a, const Edge& b) {
  const auto from = static_cast<double>(cross(b.from, b.to, a.from));
  const auto to = static_cast<double>(cross(b.from, b.to, a.to));
  const double at = from / (from - to);
  const auto along = [&](Length length) {
    return Length::from_ticks(static_cast<std::int64_t>(static_cast<double>(length.ticks()) * at));
  };
  return a.from + Vector{along(a.to.x - a.from.x), along(a.to.y - a.from.y)};
}

}  // namespace

std::vector<Edge> cut_border(const Region& region) { return edges_of(cut_at_ends(strands(edges(region)))); }

std::vector<Edge> uncrossed(std::vector<Edge> border) {
  for (int round = 0; round < most_rounds; ++round) {
    bool found = false;
    for (std::size_t i = 0; i < border.size(); ++i)
      for (std::size_t k = i + 1; k < border.size(); ++k) {
        if (!crosses(border[i], border[k])) continue;
        const Point meeting = crossing_point(border[i], border[k]);
        for (const std::size_t cut : {i, k}) {
          border.push_back({meeting, border[cut].to});
          border[cut].to = meeting;
        }
        found = true;
      }
    if (!found) break;
    border = edges_of(cut_at_ends(strands(border)));
  }
  std::vector<Edge> result;
  for (const Edge& edge : border)
    if (std::none_of(result.begin(), result.end(), [&](const Edge& kept) { return crosses(kept, edge); }))
      result.push_back(edge);
  return result;
}

}  // namespace berthwright
