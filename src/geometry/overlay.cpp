#include "geometry/overlay.h"

#include <algorithm>

namespace berthwright {
namespace {

// Half-edge 2i runs along strand i from low to high, 2i + 1 back.
class Spokes {
 public:
  explicit Spokes(std::span<const Strand> strands) : strands_(strands) {
    for (const Strand& strand : strands) {
      corners_.push_back(strand.low);
      corners_.push_back(strand.high);
    }
    std::ranges::sort(corners_);
    corners_.erase(std::unique(corners_.begin(), corners_.end()), corners_.end());
    at_.resize(corners_.size());
    for (std::size_t h = 0; h < 2 * strands.size(); ++h) at_[corner_of(h)].push_back(h);
    for (auto& spokes : at_)
      std::ranges::sort(spokes, [&](std::size_t a, std::size_t b) { return turns_before(a, b); });
  }

  std::span<const Point> corners() const { return corners_; }
  // Counter-clockwise, beginning after the direction straight down.
  std::span<const std::size_t> at(std::size_t corner) const { return at_[corner]; }
  std::size_t corner_of(std::size_t half) const {
    const auto found = std::ranges::lower_bound(corners_, origin(half));
    return static_cast<std::size_t>(found - corners_.begin());
  }
  Winding gain(std::size_t half) const {
    const Winding gain = strands_[half / 2].gain;
    return half % 2 == 0 ? gain : Winding{} - gain;
  }

 private:
  Point origin(std::size_t half) const {
    return half % 2 == 0 ? strands_[half / 2].low : strands_[half / 2].high;
  }
  bool turns_before(std::size_t a, std::size_t b) const {
    if (a % 2 != b % 2) return a % 2 == 0;
    return cross(origin(a), origin(a ^ 1), origin(b ^ 1)) > 0;
  }

  std::span<const Strand> strands_;
  std::vector<Point> corners_;
  std::vector<std::vector<std::size_t>> at_;
};

// The winding just left of a corner that no strand reaches from the left.
Winding winding_left_of(Point corner, std::span<const Strand> strands) {
  Winding result;
  for (const Strand& strand : strands) {
    if (strand.low.x < corner.x && corner.x <= strand.high.x && cross(strand.low, strand.high, corner) > 0)
      result = result + strand.gain;
  }
  return result;
}

}  // namespace

std::vector<Banks> windings(std::span<const Strand> noded) {
  const Spokes spokes(noded);
  std::vector<Winding> left(2 * noded.size());
  std::vector<bool> seen(spokes.corners().size());
  std::vector<std::pair<std::size_t, std::size_t>> todo;  // a corner and a spoke of it whose left is known
  for (std::size_t corner = 0; corner < seen.size(); ++corner) {
    if (seen[corner]) continue;
    const std::size_t last = spokes.at(corner).back();
    left[last] = winding_left_of(spokes.corners()[corner], noded);
    seen[corner] = true;
    todo.push_back({corner, last});
    while (!todo.empty()) {
      const auto [here, known] = todo.back();
      todo.pop_back();
      const auto around = spokes.at(here);
      const auto start = static_cast<std::size_t>(std::ranges::find(around, known) - around.begin());
      for (std::size_t step = 0; step < around.size(); ++step) {
        const std::size_t before = around[(start + step) % around.size()];
        const std::size_t half = around[(start + step + 1) % around.size()];
        left[half ^ 1] = left[before];
        left[half] = left[before] + spokes.gain(half);
        const std::size_t there = spokes.corner_of(half ^ 1);
        if (seen[there]) continue;
        seen[there] = true;
        todo.push_back({there, half ^ 1});
      }
    }
  }
  std::vector<Banks> result;
  result.reserve(noded.size());
  for (std::size_t i = 0; i < noded.size(); ++i) result.push_back({left[2 * i], left[2 * i + 1]});
  return result;
}

Region wound_round(std::span<const Edge> edges) {
  return overlaid(strands(edges), [](Winding w) { return w.first > 0; });
}

}  // namespace berthwright
