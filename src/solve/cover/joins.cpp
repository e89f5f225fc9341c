#include "solve/cover/joins.h"

#include <algorithm>
#include <utility>

namespace berthwright {
namespace {

const JoinStretch* stretch_at(std::span<const JoinStretch> stretches, Length at) {
  // Where two stretches touch, the better one counts.
  const JoinStretch* best = nullptr;
  for (const JoinStretch& one : stretches)
    if (one.from <= at && at <= one.to &&
        (best == nullptr || std::pair(one.front, one.seen) < std::pair(best->front, best->seen)))
      best = &one;
  return best;
}

std::vector<Join> candidates(std::span<const JoinStretch> stretches, Length total, Length shortest,
                             Length longest) {
  std::vector<Length> anchors{Length{}, total};
  for (const JoinStretch& one : stretches) anchors.insert(anchors.end(), {one.from, one.to});
  // Two strips side by side are together longer than `longest`, or the join between them could go: so many
  // strips at most.
  const std::int64_t most = 2 * total.ticks() / longest.ticks() + 1;
  std::vector<Length> places;
  for (const Length anchor : anchors)
    for (std::int64_t i = 0; i <= most; ++i)
      for (std::int64_t j = 0; i + j <= most; ++j)
        for (const Length place : {anchor + longest * i + shortest * j, anchor - longest * i - shortest * j})
          if (shortest <= place && place <= total - shortest) places.push_back(place);
  std::ranges::sort(places);
  places.erase(std::ranges::unique(places).begin(), places.end());
  std::vector<Join> joins;
  for (const Length place : places)
    if (const JoinStretch* there = stretch_at(stretches, place))
      joins.push_back({place, there->edge, there->front, there->seen});
  return joins;
}

JoinCost with(JoinCost cost, const Join& join, Length total) {
  cost.on_front += join.front ? 1 : 0;
  cost.joins += 1;
  cost.seen += join.seen;
  cost.from_ends += std::min(join.at, total - join.at).ticks();
  return cost;
}

// The best way to have a join here, and the one before it.
struct Reached {
  JoinCost cost;
  std::optional<std::size_t> before;
};

}  // namespace

JoinCost cost_of(std::span<const Join> joins, Length total) {
  JoinCost cost;
  for (const Join& join : joins) cost = with(cost, join, total);
  return cost;
}

std::optional<std::vector<Join>> best_joins(std::span<const JoinStretch> stretches, Length total,
                                            Length shortest, Length longest) {
  if (total <= longest) return std::vector<Join>{};
  if (longest <= Length{} || shortest > longest) return std::nullopt;
  const std::vector<Join> places = candidates(stretches, total, shortest, longest);
  const auto fits = [&](Length strip) { return shortest <= strip && strip <= longest; };
  std::vector<std::optional<Reached>> reached(places.size());
  std::optional<std::size_t> best;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (fits(places[i].at)) reached[i] = {with({}, places[i], total), std::nullopt};
    for (std::size_t j = 0; j < i; ++j) {
      if (!reached[j] || !fits(places[i].at - places[j].at)) continue;
      const JoinCost cost = with(reached[j]->cost, places[i], total);
      if (!reached[i] || cost < reached[i]->cost) reached[i] = {cost, j};
    }
    if (reached[i] && fits(total - places[i].at) && (!best || reached[i]->cost < reached[*best]->cost))
      best = i;
  }
  if (!best) return std::nullopt;
  std::vector<Join> joins;
  for (std::optional<std::size_t> i = best; i; i = reached[*i]->before) joins.push_back(places[*i]);
  std::ranges::reverse(joins);
  return joins;
}

}  // namespace berthwright
