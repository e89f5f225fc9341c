#include "solve/bed/ridges.h"

#include <algorithm>
#include <optional>

#include "geometry/segment.h"

namespace berthwright {

namespace {

constexpr Length edges_meet_within = Length::inches(1, 16);
// Pieces pressed together lie over each other by at most this along their joint.
constexpr Length pressed_within = Length::inches(1, 2);

SquaredLength squared_length(const Edge& edge) { return squared_distance(edge.from, {edge.to, edge.to}); }

// The longest stretch of an edge of `a` along which an edge of `b` runs within `apart`.
std::optional<Edge> longest_stretch(const Region& a, const Region& b, Length apart) {
  std::optional<Edge> longest;
  for (const Edge& along : edges(a))
    for (const Edge& beside : edges(b)) {
      const Edge stretch{nearest_point(beside.from, along), nearest_point(beside.to, along)};
      const bool beside_all_along = squared_distance(stretch.from, beside) <= SquaredLength::of(apart) &&
                                    squared_distance(stretch.to, beside) <= SquaredLength::of(apart);
      if (!beside_all_along || squared_length(stretch) <= SquaredLength::of(apart)) continue;
      if (!longest || squared_length(stretch) > squared_length(*longest)) longest = stretch;
    }
  return longest;
}

std::optional<Ridge> ridge_between(const Placed& a, const Placed& b) {
  if (a.solid.top() == b.solid.top()) return std::nullopt;
  const Region& first = a.solid.outline();
  const Region& second = b.solid.outline();
  if (!overlaps(grown(first.bounds(), pressed_within), second.bounds())) return std::nullopt;
  const std::optional<Edge> shared =
      longest_stretch(first, second, overlaps(first, second) ? pressed_within : edges_meet_within);
  if (!shared) return std::nullopt;
  const Placed& lower = a.solid.top() < b.solid.top() ? a : b;
  const Placed& higher = &lower == &a ? b : a;
  const Point middle{half(shared->from.x + shared->to.x), half(shared->from.y + shared->to.y)};
  return Ridge{lower.piece->id, higher.piece->id, higher.solid.top() - lower.solid.top(), middle};
}

}  // namespace

std::vector<Ridge> ridges_between(const std::vector<const Placed*>& pieces) {
  std::vector<Ridge> ridges;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    for (std::size_t j = i + 1; j < pieces.size(); ++j)
      if (std::optional<Ridge> ridge = ridge_between(*pieces[i], *pieces[j])) ridges.push_back(*ridge);
  std::ranges::stable_sort(ridges, std::ranges::greater{}, &Ridge::step);
  return ridges;
}

}  // namespace berthwright
