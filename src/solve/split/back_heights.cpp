#include "solve/split/back_heights.h"

#include <algorithm>
#include <set>

namespace berthwright {
namespace {

// What lies between two sides of parts, along or across.
std::set<Length> spans(const NightBay& bay) {
  std::set<Length> result;
  for (const bool along : {true, false}) {
    std::set<Length> lines;
    for (const Rect& part : bay.parts)
      for (const Point& p : {part.low, part.high}) lines.insert(along ? p.x : p.y);
    for (const Length low : lines)
      for (const Length high : lines)
        if (low < high) result.insert(high - low);
  }
  return result;
}

}  // namespace

std::vector<Length> back_heights(const NightBay& bay, const SplitLimits& limits) {
  std::set<Length> seats{Length{}};
  for (const Lid& lid : bay.lids) {
    seats.insert(lid.depth());
    if (lid.depth() > limits.thickness) seats.insert(lid.depth() - limits.thickness);
  }
  std::set<Length> result;
  const auto keep = [&](Length height) {
    if (height >= limits.least_back && height <= limits.most_back) result.insert(height);
  };
  for (Length height; height <= limits.most_back; height += limits.step) keep(height);
  keep(limits.least_back);
  keep(limits.most_back);
  for (const Length span : spans(bay))
    for (const Length one : seats)
      for (const Length other : seats)
        for (const std::int64_t backs : {1, 2, 3, 4}) {
          const Length rest = span - one - other;
          if (rest > Length{} && rest.ticks() % backs == 0) keep(Length::from_ticks(rest.ticks() / backs));
        }
  return {result.begin(), result.end()};
}

std::vector<std::vector<Length>> one_of(const std::vector<Length>& heights, std::size_t lids) {
  if (lids == 0) return {{}};
  std::vector<std::vector<Length>> result;
  for (const Length height : heights) result.emplace_back(lids, height);
  return result;
}

std::vector<std::vector<Length>> one_or_two_of(const std::vector<Length>& heights, std::size_t lids) {
  std::vector<std::vector<Length>> result = one_of(heights, lids);
  if (lids < 2) return result;
  for (const Length one : heights)
    for (const Length other : heights) {
      if (one == other) continue;
      // The first lid has `one`, so that each choice comes once.
      for (std::size_t choice = 1; choice < (std::size_t{1} << (lids - 1)); ++choice) {
        std::vector<Length> of_lids{one};
        for (std::size_t lid = 1; lid < lids; ++lid)
          of_lids.push_back((choice >> (lid - 1)) % 2 == 1 ? other : one);
        result.push_back(std::move(of_lids));
      }
    }
  return result;
}

Length height_of_ease(const SplitLimits& limits) {
  return std::clamp(std::max(16_in, 12_in + limits.thickness), limits.least_back, limits.most_back);
}

bool is_at_ease(Length back) { return back >= 14_in && back <= 18_in; }

}  // namespace berthwright
