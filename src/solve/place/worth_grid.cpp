#include "solve/place/worth_grid.h"

#include <algorithm>
#include <set>

namespace berthwright {
namespace {

// Index of the greatest value that is not more.
std::size_t floor_index(const std::vector<std::int64_t>& values, std::int64_t value) {
  return static_cast<std::size_t>(std::ranges::upper_bound(values, value) - values.begin()) - 1;
}

}  // namespace

std::vector<std::int64_t> side_sums(const std::vector<std::int64_t>& sides, std::int64_t extent) {
  std::set<std::int64_t> sums{0};
  // A sum found is visited later, since all sides are positive.
  for (auto sum = sums.begin(); sum != sums.end(); ++sum)
    for (const std::int64_t side : sides)
      if (*sum + side <= extent) sums.insert(*sum + side);
  sums.insert(extent);
  return {sums.begin(), sums.end()};
}

WorthGrid::WorthGrid(std::int64_t length, std::int64_t width, std::vector<WorthyBox> boxes)
    : boxes_(std::move(boxes)) {
  std::erase_if(boxes_, [&](const WorthyBox& box) { return box.length > length || box.width > width; });
  std::vector<std::int64_t> lengths;
  std::vector<std::int64_t> widths;
  for (const WorthyBox& box : boxes_) {
    lengths.push_back(box.length);
    widths.push_back(box.width);
  }
  xs_ = side_sums(lengths, length);
  ys_ = side_sums(widths, width);
  fill_single();
  fill_inside();
}

void WorthGrid::fill_single() {
  single_.assign(xs_.size() * ys_.size(), 0);
  for (const WorthyBox& box : boxes_) {
    std::int64_t& best = at(single_, floor_index(xs_, box.length), floor_index(ys_, box.width));
    best = std::max(best, box.worth);
  }
  for (std::size_t i = 0; i < xs_.size(); ++i)
    for (std::size_t j = 0; j < ys_.size(); ++j) {
      std::int64_t& best = at(single_, i, j);
      if (i > 0) best = std::max(best, at(single_, i - 1, j));
      if (j > 0) best = std::max(best, at(single_, i, j - 1));
    }
}

void WorthGrid::fill_inside() {
  inside_ = single_;
  for (std::size_t i = 0; i < xs_.size(); ++i)
    for (std::size_t j = 0; j < ys_.size(); ++j) {
      std::int64_t best = at(inside_, i, j);
      std::size_t rest = i;
      for (std::size_t a = 1; 2 * xs_[a] <= xs_[i] && a < i; ++a) {
        while (xs_[rest] > xs_[i] - xs_[a]) --rest;
        best = std::max(best, at(inside_, a, j) + at(inside_, rest, j));
      }
      rest = j;
      for (std::size_t b = 1; 2 * ys_[b] <= ys_[j] && b < j; ++b) {
        while (ys_[rest] > ys_[j] - ys_[b]) --rest;
        best = std::max(best, at(inside_, i, b) + at(inside_, i, rest));
      }
      at(inside_, i, j) = best;
    }
}

void WorthGrid::with_beside() {
  beside_.assign(inside_.size(), 0);
  for (std::size_t i = xs_.size(); i-- > 0;)
    for (std::size_t j = ys_.size(); j-- > 0;) {
      std::int64_t best = 0;
      for (std::size_t k = i + 1; k < xs_.size(); ++k)
        best = std::max(best, at(beside_, k, j) + at(inside_, floor_index(xs_, xs_[k] - xs_[i]), j));
      for (std::size_t k = j + 1; k < ys_.size(); ++k)
        best = std::max(best, at(beside_, i, k) + at(inside_, i, floor_index(ys_, ys_[k] - ys_[j])));
      at(beside_, i, j) = best;
    }
}

std::int64_t WorthGrid::beside(std::int64_t length, std::int64_t width) const {
  return at(beside_, floor_index(xs_, length), floor_index(ys_, width));
}

std::vector<WorthGrid::Spot> WorthGrid::best() const {
  std::vector<Spot> spots;
  trace(xs_.size() - 1, ys_.size() - 1, {}, spots);
  return spots;
}

void WorthGrid::trace(std::size_t i, std::size_t j, Spot from, std::vector<Spot>& spots) const {
  const std::int64_t best = at(inside_, i, j);
  if (best == 0) return;
  if (at(single_, i, j) == best) {
    for (std::size_t b = 0; b < boxes_.size(); ++b)
      if (boxes_[b].worth == best && boxes_[b].length <= xs_[i] && boxes_[b].width <= ys_[j]) {
        spots.push_back({b, from.x, from.y});
        return;
      }
  }
  for (std::size_t a = 1; a < i; ++a) {
    const std::size_t rest = floor_index(xs_, xs_[i] - xs_[a]);
    if (at(inside_, a, j) + at(inside_, rest, j) != best) continue;
    trace(a, j, from, spots);
    trace(rest, j, {0, from.x + xs_[a], from.y}, spots);
    return;
  }
  for (std::size_t b = 1; b < j; ++b) {
    const std::size_t rest = floor_index(ys_, ys_[j] - ys_[b]);
    if (at(inside_, i, b) + at(inside_, i, rest) != best) continue;
    trace(i, b, from, spots);
    trace(i, rest, {0, from.x, from.y + ys_[b]}, spots);
    return;
  }
}

}  // namespace berthwright
