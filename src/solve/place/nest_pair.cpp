#include "solve/place/nest_pair.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace berthwright {
namespace {

using Stretches = std::vector<std::pair<double, double>>;

// Corners in the order of their edges' directions, the lowest first.
std::size_t lowest_of(const NestRing& ring) {
  return static_cast<std::size_t>(
      std::ranges::min_element(ring,
                               [](NestPoint a, NestPoint b) { return a.y != b.y ? a.y < b.y : a.x < b.x; }) -
      ring.begin());
}

// Of `a` and of `b` turned half round, both convex.
NestRing sum_of(const NestRing& a, const NestRing& b) {
  NestRing turned(b);
  for (NestPoint& p : turned) p = {-p.x, -p.y};
  const std::size_t i0 = lowest_of(a);
  const std::size_t j0 = lowest_of(turned);
  NestRing ring;
  for (std::size_t i = 0, j = 0; i < a.size() || j < turned.size();) {
    const NestPoint p = a[(i0 + i) % a.size()];
    const NestPoint q = turned[(j0 + j) % turned.size()];
    ring.push_back(p + q);
    const NestPoint u = a[(i0 + i + 1) % a.size()] - p;
    const NestPoint v = turned[(j0 + j + 1) % turned.size()] - q;
    const std::int64_t side = i == a.size() ? -1 : j == turned.size() ? 1 : cross(u, v);
    if (side >= 0) ++i;
    if (side <= 0) ++j;
  }
  return ring;
}

bool is_within(const NestRing& ring, NestPoint p) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const NestPoint a = ring[i];
    if (cross(ring[i + 1 == ring.size() ? 0 : i + 1] - a, p - a) <= 0) return false;
  }
  return true;
}

// The part of the edge, drawn out both ways by its length, strictly within the ring; `first` >= `second`:
// none.
std::pair<double, double> part_within(const NestBorder& edge, const NestRing& ring) {
  double low = -1;
  double high = 2;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const NestPoint a = ring[i];
    const NestPoint along = ring[(i + 1) % ring.size()] - a;
    const std::int64_t start = cross(along, edge.at - a);
    const std::int64_t change = cross(along, edge.way);
    if (change == 0 && start <= 0) return {1, 0};
    if (change == 0) continue;
    const double meets = -static_cast<double>(start) / static_cast<double>(change);
    if (change > 0)
      low = std::max(low, meets);
    else
      high = std::min(high, meets);
    if (low >= high) return {1, 0};
  }
  return {low, high};
}

// Whether all of `e` lies along `f`, the same way.
bool lies_along(const NestBorder& e, const NestBorder& f) {
  if (cross(e.way, f.way) != 0 || cross(f.way, e.at - f.at) != 0) return false;
  const auto on_f = [&](double along_e) {
    const double dx = static_cast<double>(e.at.x - f.at.x) + along_e * static_cast<double>(e.way.x);
    const double dy = static_cast<double>(e.at.y - f.at.y) + along_e * static_cast<double>(e.way.y);
    return (dx * static_cast<double>(f.way.x) + dy * static_cast<double>(f.way.y)) * f.per_length *
           f.per_length;
  };
  return on_f(e.low) >= f.low && on_f(e.high) <= f.high && on_f(e.low) <= on_f(e.high);
}

void take_out(Stretches& kept, std::pair<double, double> out) {
  if (out.first >= out.second) return;
  Stretches result;
  for (const auto& one : kept) {
    if (out.second <= one.first || out.first >= one.second) {
      result.push_back(one);
      continue;
    }
    if (one.first <= out.first) result.emplace_back(one.first, out.first);
    if (out.second <= one.second) result.emplace_back(out.second, one.second);
  }
  kept = std::move(result);
}

double squared_distance(const NestBorder& e, double x, double y) {
  const double ux = static_cast<double>(e.way.x);
  const double uy = static_cast<double>(e.way.y);
  const double dx = x - static_cast<double>(e.at.x);
  const double dy = y - static_cast<double>(e.at.y);
  const double along = std::clamp((dx * ux + dy * uy) * e.per_length * e.per_length, e.low, e.high);
  const double rx = dx - along * ux;
  const double ry = dy - along * uy;
  return rx * rx + ry * ry;
}

}  // namespace

NestPair::NestPair(const NestShape& first, const NestShape& second)
    : low_{-second.width, -second.height}, high_{first.width, first.height} {
  for (const NestRing& a : first.convex)
    for (const NestRing& b : second.convex) {
      Sum sum{sum_of(a, b), {}, {}};
      sum.low = sum.high = sum.ring.front();
      for (const NestPoint p : sum.ring) {
        sum.low = {std::min(sum.low.x, p.x), std::min(sum.low.y, p.y)};
        sum.high = {std::max(sum.high.x, p.x), std::max(sum.high.y, p.y)};
      }
      sums_.push_back(std::move(sum));
    }
  find_border();
  drop_needless_spots();
  lay_grid();
}

bool NestPair::clash(NestPoint place) const {
  for (const Sum& sum : sums_)
    if (place.x > sum.low.x && place.x < sum.high.x && place.y > sum.low.y && place.y < sum.high.y &&
        is_within(sum.ring, place))
      return true;
  return false;
}

void NestPair::find_border() {
  for (const Sum& sum : sums_)
    for (std::size_t i = 0; i < sum.ring.size(); ++i) {
      const NestPoint at = sum.ring[i];
      const NestPoint to = sum.ring[(i + 1) % sum.ring.size()];
      NestBorder edge{at, to - at};
      edge.per_length = 1 / std::sqrt(static_cast<double>(edge.way.x) * static_cast<double>(edge.way.x) +
                                      static_cast<double>(edge.way.y) * static_cast<double>(edge.way.y));
      Stretches kept{{0, 1}};
      for (const Sum& other : sums_) {
        if (&other == &sum || std::max(at.x, to.x) < other.low.x || std::min(at.x, to.x) > other.high.x ||
            std::max(at.y, to.y) < other.low.y || std::min(at.y, to.y) > other.high.y)
          continue;
        take_out(kept, part_within(edge, other.ring));
        if (kept.empty()) break;
      }
      for (const auto& [low, high] : kept) {
        edge.low = low, edge.high = high;
        if (std::ranges::none_of(border_, [&](const NestBorder& f) { return lies_along(edge, f); }))
          border_.push_back(edge);
      }
    }
}

// A single place allowed amid others that are not stays; the end of a longer stretch says nothing new.
void NestPair::drop_needless_spots() {
  std::vector<NestBorder> kept;
  for (const NestBorder& e : border_) {
    const double x = static_cast<double>(e.at.x) + e.low * static_cast<double>(e.way.x);
    const double y = static_cast<double>(e.at.y) + e.low * static_cast<double>(e.way.y);
    const auto is_at = [&](const NestBorder& f) { return squared_distance(f, x, y) < 0.25; };
    const bool needless =
        e.is_spot() &&
        (std::ranges::any_of(border_, [&](const NestBorder& f) { return !f.is_spot() && is_at(f); }) ||
         std::ranges::any_of(kept, is_at));
    if (!needless) kept.push_back(e);
  }
  border_ = std::move(kept);
}

void NestPair::rule_lines() {
  for (const NestBorder& e : border_)
    lines_.push_back({static_cast<double>(e.at.x), static_cast<double>(e.at.y),
                      static_cast<double>(e.way.x) * e.per_length,
                      static_cast<double>(e.way.y) * e.per_length, e.low / e.per_length,
                      e.high / e.per_length});
}

void NestPair::lay_grid() {
  rule_lines();
  const std::int64_t longest = std::max(high_.x - low_.x, high_.y - low_.y);
  const std::int64_t squares = border_.size() > 60 ? 32 : border_.size() > 24 ? 20 : 12;
  while ((longest >> shift_) >= squares) ++shift_;
  columns_ = ((high_.x - low_.x) >> shift_) + 1;
  rows_ = ((high_.y - low_.y) >> shift_) + 1;
  const double side = static_cast<double>(std::int64_t{1} << shift_);
  const double reach = side * 0.70710679;
  std::vector<double> distances(border_.size());
  for (std::int64_t row = 0; row < rows_; ++row)
    for (std::int64_t column = 0; column < columns_; ++column) {
      first_.push_back(static_cast<std::uint32_t>(near_.size()));
      const double x = static_cast<double>(low_.x) + (static_cast<double>(column) + 0.5) * side;
      const double y = static_cast<double>(low_.y) + (static_cast<double>(row) + 0.5) * side;
      double least = std::numeric_limits<double>::max();
      for (std::size_t e = 0; e < border_.size(); ++e)
        least = std::min(least, distances[e] = squared_distance(border_[e], x, y));
      const double nearest = std::sqrt(least);
      if (nearest > reach && !clash({static_cast<std::int64_t>(x), static_cast<std::int64_t>(y)})) continue;
      const double within = (nearest + 2 * reach) * (nearest + 2 * reach);
      for (std::size_t e = 0; e < border_.size(); ++e)
        if (distances[e] <= within) near_.push_back(static_cast<std::uint16_t>(e));
    }
  first_.push_back(static_cast<std::uint32_t>(near_.size()));
}

NestPair::Depth NestPair::depth(NestPoint place) const {
  if (place.x <= low_.x || place.x >= high_.x || place.y <= low_.y || place.y >= high_.y) return {};
  const std::int64_t square = ((place.y - low_.y) >> shift_) * columns_ + ((place.x - low_.x) >> shift_);
  const auto begin = first_[static_cast<std::size_t>(square)];
  const auto end = first_[static_cast<std::size_t>(square) + 1];
  if (begin == end) return {};
  const double x = static_cast<double>(place.x);
  const double y = static_cast<double>(place.y);
  double least = std::numeric_limits<double>::max();
  double steepest = 0;
  std::uint16_t best = 0;
  bool inside = false;
  for (auto k = begin; k < end; ++k) {
    const Line& line = lines_[near_[k]];
    const double dx = x - line.x;
    const double dy = y - line.y;
    const double off = line.ux * dy - line.uy * dx;
    const double along = line.ux * dx + line.uy * dy;
    const double beyond = std::max(std::max(line.low - along, along - line.high), 0.0);
    const double squared = off * off + beyond * beyond;
    if (squared > least * (1 + 1e-9)) continue;
    // Where two stretches are as near, the one whose line is farther says on which side the place lies.
    const bool within = line.high - line.low < 0.5 ? squared > 0.25 : off > 1e-6;
    if (squared >= least * (1 - 1e-9) &&
        std::abs(off) * (1 + 1e-9) < steepest + (within ? 0 : 2e-9 * steepest))
      continue;
    least = std::min(squared, least);
    steepest = std::abs(off);
    inside = within;
    best = near_[k];
  }
  if (!inside) return {};
  return {std::sqrt(least), &border_[best]};
}

}  // namespace berthwright
