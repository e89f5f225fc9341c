#include "solve/split/disjoint_rects.h"

#include <algorithm>
#include <set>

namespace berthwright {

std::vector<Rect> disjoint_rects(std::span<const Rect> rects) {
  std::set<Length> xs;
  for (const Rect& r : rects) {
    xs.insert(r.low.x);
    xs.insert(r.high.x);
  }
  std::vector<Rect> result;
  if (xs.empty()) return result;
  for (auto x = xs.begin(), next = std::next(x); next != xs.end(); x = next++) {
    std::vector<std::pair<Length, Length>> stretches;
    for (const Rect& r : rects)
      if (r.low.x <= *x && r.high.x >= *next) stretches.emplace_back(r.low.y, r.high.y);
    std::ranges::sort(stretches);
    for (std::size_t i = 0; i < stretches.size();) {
      Length low = stretches[i].first;
      Length high = stretches[i].second;
      for (++i; i < stretches.size() && stretches[i].first <= high; ++i)
        high = std::max(high, stretches[i].second);
      if (low < high) result.push_back({{*x, low}, {*next, high}});
    }
  }
  return result;
}

}  // namespace berthwright
