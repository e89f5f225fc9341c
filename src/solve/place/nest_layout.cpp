#include "solve/place/nest_layout.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace berthwright {
NestPairs::NestPairs(const NestTask& task) : task_(task), pairs_(task.shapes.size() * task.shapes.size()) {}

NestPairs::~NestPairs() {
  for (const auto& pair : pairs_) delete pair.load();
}

NestPairs::Seen NestPairs::of(std::size_t first, std::size_t second) {
  const bool turned = second < first;
  const std::size_t a = turned ? second : first;
  const std::size_t b = turned ? first : second;
  std::atomic<const NestPair*>& place = pairs_[a * task_.shapes.size() + b];
  const NestPair* pair = place.load(std::memory_order_acquire);
  if (pair == nullptr) {
    auto made = std::make_unique<const NestPair>(task_.shapes[a], task_.shapes[b]);
    // Another thread may have been sooner with the same.
    if (place.compare_exchange_strong(pair, made.get())) pair = made.release();
  }
  return {pair, turned};
}

bool NestPairs::clash(const NestSpot& a, const NestSpot& b) {
  const NestShape& s = task_.shapes[a.shape];
  const NestShape& t = task_.shapes[b.shape];
  if (a.at.x >= b.at.x + t.width || b.at.x >= a.at.x + s.width || a.at.y >= b.at.y + t.height ||
      b.at.y >= a.at.y + s.height)
    return false;
  const Seen seen = of(a.shape, b.shape);
  return seen.pair->clash(seen.place(a.at, b.at));
}

NestLayout::NestLayout(const NestTask& task, NestPairs& pairs)
    : task_(task), pairs_(pairs), spots_(task.parts.size()), boxes_(task.parts.size()) {
  const std::size_t n = task.parts.size();
  weights_.assign(n * n, 1);
  severities_.assign(n * n, 0);
  double largest = 0;
  for (const NestShape& shape : task.shapes) largest = std::max(largest, shape.area);
  // Overlaps of large parts count for much more: small ones give way (about the 5/4th power of both areas;
  // tried on the published sets).
  for (const NestTask::Part& a : task.parts)
    for (const NestTask::Part& b : task.parts) {
      const double size =
          std::sqrt(task.shapes[a.first].area / largest * task.shapes[b.first].area / largest);
      scales_.push_back(size * std::sqrt(std::sqrt(size)));
    }
}

NestPoint NestLayout::Room::nearest(NestPoint p) const {
  return {std::clamp(p.x, low.x, high.x), std::clamp(p.y, low.y, high.y)};
}

NestLayout::Room NestLayout::room(std::size_t shape, std::int64_t bay) const {
  const NestShape& s = task_.shapes[shape];
  const std::int64_t length = bay == ground_.count - 1 ? ground_.last : ground_.bay;
  return {{bay * ground_.bay, 0}, {bay * ground_.bay + length - s.width, ground_.width - s.height}};
}

NestLayout::Room NestLayout::room_at(std::size_t shape, NestPoint at) const {
  const std::int64_t middle = at.x + task_.shapes[shape].width / 2;
  const std::int64_t bay = std::clamp<std::int64_t>(middle / ground_.bay, 0, ground_.count - 1);
  const Room here = room(shape, bay);
  return here.empty() && bay > 0 ? room(shape, bay - 1) : here;
}

NestLayout::Room NestLayout::any_room(std::size_t shape, NestDice& dice) const {
  if (ground_.count == 1) return room(shape, 0);
  const std::int64_t bay = static_cast<std::int64_t>(dice.below(static_cast<std::size_t>(ground_.count)));
  const Room there = room(shape, bay);
  return there.empty() ? room(shape, 0) : there;
}

NestLayout::Box NestLayout::box_of(const NestSpot& spot) const {
  const NestShape& s = task_.shapes[spot.shape];
  return {spot.at, spot.at + NestPoint{s.width, s.height}};
}

// The root makes a little overlap cost much: few pairs are left with all of it, where one step can end it.
double NestLayout::severity_of(std::size_t a, std::size_t b, double depth) const {
  return std::sqrt(depth) * scales_[a * size() + b];
}

void NestLayout::place_all(const NestGround& ground, const NestSpots& spots) {
  ground_ = ground;
  spots_ = spots;
  for (std::size_t i = 0; i < size(); ++i) boxes_[i] = box_of(spots_[i]);
  for (std::size_t i = 0; i < size(); ++i) place(i, spots[i]);
}

void NestLayout::place(std::size_t part, const NestSpot& spot) {
  spots_[part] = spot;
  const Box box = boxes_[part] = box_of(spot);
  for (std::size_t j = 0; j < size(); ++j) {
    double value = 0;
    const Box& o = boxes_[j];
    if (j != part && o.low.x < box.high.x && box.low.x < o.high.x && o.low.y < box.high.y &&
        box.low.y < o.high.y) {
      const NestPairs::Seen seen = pairs_.of(spots_[j].shape, spot.shape);
      const NestPoint place = seen.place(spots_[j].at, spot.at);
      // The exact test decides; near corners of the border the depth may miss it by a tick.
      if (seen.pair->clash(place)) value = severity_of(part, j, std::max(1.0, seen.pair->depth(place).depth));
    }
    severities_[part * size() + j] = severities_[j * size() + part] = value;
  }
}

double NestLayout::cost(std::size_t part, const NestSpot& spot, double most, std::vector<Touch>* touches) {
  ++looks_;
  if (touches != nullptr) touches->clear();
  const Box box = box_of(spot);
  const double* weights = &weights_[part * size()];
  double sum = 0;
  for (std::size_t j = 0; j < boxes_.size(); ++j) {
    const Box& o = boxes_[j];
    if (o.low.x >= box.high.x || box.low.x >= o.high.x || o.low.y >= box.high.y || box.low.y >= o.high.y ||
        j == part)
      continue;
    const NestPairs::Seen seen = pairs_.of(spots_[j].shape, spot.shape);
    const NestPair::Depth found = seen.pair->depth(seen.place(spots_[j].at, spot.at));
    if (found.depth <= 0) continue;
    const double one = weights[j] * severity_of(part, j, found.depth);
    sum += one;
    if (sum > most) return sum;
    if (touches != nullptr) touches->push_back({found.border, spots_[j].at, seen.turned, one});
  }
  return sum;
}

double NestLayout::cost_of(std::size_t part) const {
  double sum = 0;
  for (std::size_t k = part * size(); k < (part + 1) * size(); ++k) sum += weights_[k] * severities_[k];
  return sum;
}

bool NestLayout::overlaps(std::size_t part) const {
  const auto begin = severities_.begin() + static_cast<std::ptrdiff_t>(part * size());
  return std::any_of(begin, begin + static_cast<std::ptrdiff_t>(size()), [](double s) { return s > 0; });
}

double NestLayout::severity() const {
  double sum = 0;
  for (const double s : severities_) sum += s;
  return sum / 2;
}

double NestLayout::cost_of_all() const {
  double sum = 0;
  for (std::size_t k = 0; k < severities_.size(); ++k) sum += weights_[k] * severities_[k];
  return sum / 2;
}

void NestLayout::forget() { std::ranges::fill(weights_, 1.0); }

void NestLayout::learn() {
  const double worst = *std::ranges::max_element(severities_);
  for (std::size_t k = 0; k < weights_.size(); ++k)
    weights_[k] = severities_[k] > 0 ? weights_[k] * (1.2 + 0.8 * severities_[k] / worst)
                                     : std::max(1.0, weights_[k] * 0.95);
}

}  // namespace berthwright
