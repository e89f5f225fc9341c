#include "solve/split/skyline.h"

#include <algorithm>
#include <set>
#include <stdexcept>
#include <tuple>

namespace berthwright {
namespace {

using Interval = std::pair<Length, Length>;

// Of the rectangles that reach across from `low` to `high`, what they take along y; rising, joined.
std::vector<Interval> across_of(const std::vector<Rect>& rects, Length low, Length high) {
  std::vector<Interval> all;
  for (const Rect& r : rects)
    if (r.low.x <= low && r.high.x >= high) all.emplace_back(r.low.y, r.high.y);
  std::ranges::sort(all);
  std::vector<Interval> result;
  for (const Interval& one : all)
    if (!result.empty() && one.first <= result.back().second)
      result.back().second = std::max(result.back().second, one.second);
    else
      result.push_back(one);
  return result;
}

std::vector<Interval> less(const std::vector<Interval>& whole, const std::vector<Interval>& taken) {
  std::vector<Interval> result;
  for (auto [low, high] : whole) {
    for (const Interval& out : taken) {
      if (out.second <= low || out.first >= high) continue;
      if (out.first > low) result.emplace_back(low, out.first);
      low = out.second;
    }
    if (low < high) result.emplace_back(low, high);
  }
  return result;
}

}  // namespace

Skyline::Skyline(const std::vector<Rect>& parts, const std::vector<Rect>& taken) {
  std::set<Length> xs;
  for (const std::vector<Rect>* rects : {&parts, &taken})
    for (const Rect& r : *rects) xs.insert({r.low.x, r.high.x});
  std::vector<Column> columns;
  for (auto x = xs.begin(); x != xs.end() && std::next(x) != xs.end(); ++x) {
    const Length high = *std::next(x);
    Column column = less(across_of(parts, *x, high), across_of(taken, *x, high));
    if (column.empty()) continue;
    const auto [base, top] = column.front();
    const auto same = std::ranges::find(columns, column);
    stretches_.push_back({*x, high, base, top, static_cast<std::size_t>(same - columns.begin()), 0});
    if (same == columns.end()) columns.push_back(std::move(column));
  }
  columns_ = std::make_shared<const std::vector<Column>>(std::move(columns));
  join_alike();
}

void Skyline::join_alike() {
  std::size_t kept = 0;
  for (std::size_t i = 1; i < stretches_.size(); ++i) {
    Stretch& last = stretches_[kept];
    const Stretch& next = stretches_[i];
    if (last.high == next.low && last.base == next.base && last.column == next.column)
      last.high = next.high;
    else
      stretches_[++kept] = next;
  }
  if (!stretches_.empty()) stretches_.resize(kept + 1);
}

Int128 Skyline::free_area() const {
  Int128 sum = 0;
  for (const Stretch& stretch : stretches_) {
    Length free = stretch.free();
    const Column& column = (*columns_)[stretch.column];
    for (std::size_t next = stretch.interval + 1; next < column.size(); ++next)
      free += column[next].second - column[next].first;
    sum += Int128{free.ticks()} * (stretch.high - stretch.low).ticks();
  }
  return sum;
}

std::vector<Skyline::Valley> Skyline::valleys() const {
  std::vector<Valley> result;
  for (std::size_t i = 0; i < stretches_.size();) {
    const std::size_t first = i;
    for (++i; i < stretches_.size() && stretches_[i].low == stretches_[i - 1].high &&
              stretches_[i].base == stretches_[first].base;)
      ++i;
    const Stretch& low = stretches_[first];
    const Stretch& high = stretches_[i - 1];
    // A neighbour that begins lower may be free at this height too.
    const bool open_before =
        first > 0 && stretches_[first - 1].high == low.low && stretches_[first - 1].base < low.base;
    const bool open_after =
        i < stretches_.size() && stretches_[i].low == high.high && stretches_[i].base < low.base;
    if (!open_before && !open_after) result.push_back({low.low, high.high, low.base});
  }
  return result;
}

Skyline::Valley Skyline::lowest() const {
  if (covered()) throw std::logic_error("all is covered");
  const auto first = std::ranges::min_element(stretches_, {}, &Stretch::base);
  auto last = first;
  while (std::next(last) != stretches_.end() && std::next(last)->low == last->high &&
         std::next(last)->base == first->base)
    ++last;
  return {first->low, last->high, first->base};
}

Point Skyline::corner() const {
  const Valley valley = lowest();
  return {valley.low, valley.base};
}

std::optional<Skyline> Skyline::with(Vector size) const {
  const Valley valley = lowest();
  const Length end = valley.low + size.x;
  if (end > valley.high) return std::nullopt;
  std::size_t from = 0;
  while (stretches_[from].base != valley.base) ++from;
  std::size_t to = from;
  for (; to < stretches_.size() && stretches_[to].low < end; ++to)
    if (stretches_[to].free() < size.y) return std::nullopt;
  Skyline result;
  result.columns_ = columns_;
  result.stretches_.reserve(stretches_.size() + 1);
  for (std::size_t i = 0; i < stretches_.size(); ++i) {
    Stretch stretch = stretches_[i];
    if (i < from || i >= to) {
      result.stretches_.push_back(stretch);
      continue;
    }
    Stretch beside = stretch;
    stretch.high = std::min(stretch.high, end);
    stretch.base += size.y;
    const Column& column = (*columns_)[stretch.column];
    bool is_free = true;
    if (stretch.base == stretch.top) {
      is_free = ++stretch.interval < column.size();
      if (is_free) std::tie(stretch.base, stretch.top) = column[stretch.interval];
    }
    if (is_free) result.stretches_.push_back(stretch);
    if (beside.high > end) {
      beside.low = end;
      result.stretches_.push_back(beside);
    }
  }
  result.join_alike();
  return result;
}

void Skyline::append_key(std::vector<std::int64_t>& key) const {
  for (const Stretch& stretch : stretches_)
    for (const Length at : {stretch.low, stretch.high, stretch.base}) key.push_back(at.ticks());
}

}  // namespace berthwright
