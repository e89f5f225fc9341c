#include "geometry/slab_search.h"

#include <algorithm>
#include <limits>

#include "geometry/slab_pair.h"

namespace berthwright {
namespace {

constexpr double same_value = 1e-12;
constexpr double unbounded = std::numeric_limits<double>::infinity();
constexpr int quick_sections = 20;
constexpr int fine_sections = 80;

/// Walks from every room to the right through rooms that share heights, keeping the heights free all the way.
class SlabWalk {
 public:
  SlabWalk(const Slabs& slabs, const Sought& sought)
      : slabs_(slabs), sought_(sought), least_(sought.goal.width.value_or(0)), floor_(sought.floor) {
    find_reaches();
  }

  Best run() {
    for (std::size_t slab = 0; slab + 1 < slabs_.starts.size(); ++slab)
      for (std::size_t i = slabs_.starts[slab]; i < slabs_.starts[slab + 1]; ++i) start(slab, i);
    return std::move(best_);
  }

 private:
  // How far right a rectangle that has reached a room may get at all.
  void find_reaches() {
    reaches_.resize(slabs_.rooms.size());
    for (std::size_t slab = slabs_.starts.size() - 1; slab-- > 0;)
      for (std::size_t i = slabs_.starts[slab]; i < slabs_.starts[slab + 1]; ++i) {
        const Room& room = slabs_.rooms[i];
        double reach = slabs_.cuts[slab + 1];
        for (std::size_t next = room.next_begin; next < room.next_end; ++next)
          if (is_open(std::max(room.low_right, slabs_.rooms[next].low_left),
                      std::min(room.high_right, slabs_.rooms[next].high_left)))
            reach = std::max(reach, reaches_[next]);
        reaches_[i] = reach;
      }
  }

  bool is_open(double low, double high) const {
    return sought_.goal.width ? high - low >= least_ : high > low;
  }

  double bound(double length, double height) const {
    if (!sought_.goal.width) return height > 0 ? length * height : 0;
    return height >= least_ ? length : 0;
  }

  void start(std::size_t slab, std::size_t i) {
    const Room& room = slabs_.rooms[i];
    left_ = slabs_.cuts[slab];
    pair_.first = bay(slab, room);
    first_low_ = std::min(room.low_left, room.low_right);
    first_high_ = std::max(room.high_left, room.high_right);
    if (bound(reaches_[i] - left_, first_high_ - first_low_) <= floor_) return;
    solve(slab, room, true, -unbounded, unbounded);
    onward(slab, room, room.low_right, room.high_right);
  }

  void onward(std::size_t slab, const Room& room, double low, double high) {
    for (std::size_t next = room.next_begin; next < room.next_end; ++next) {
      const Room& there = slabs_.rooms[next];
      const double from = std::max(low, there.low_left);
      const double to = std::min(high, there.high_left);
      if (!is_open(from, to) || bound(reaches_[next] - left_, to - from) <= floor_) continue;
      solve(slab + 1, there, false, from, to);
      onward(slab + 1, there, std::max(from, there.low_right), std::min(to, there.high_right));
    }
  }

  void solve(std::size_t slab, const Room& last, bool same, double low, double high) {
    const double top = std::min({high, first_high_, std::max(last.high_left, last.high_right)});
    const double bottom = std::max({low, first_low_, std::min(last.low_left, last.low_right)});
    if (bound(slabs_.cuts[slab + 1] - left_, top - bottom) <= floor_) return;
    pair_.last = bay(slab, last);
    pair_.same = same;
    pair_.low = low;
    pair_.high = high;
    if (!sought_.goal.width) {
      const Span2 span = largest_of(pair_, sought_.fine ? fine_sections : quick_sections);
      if (span.y2 > span.y1 && span.x2 > span.x1) take(span, (span.x2 - span.x1) * (span.y2 - span.y1));
    } else if (const std::optional<Span2> span = longest_of(pair_, least_)) {
      if (span->x2 > span->x1) take(*span, span->x2 - span->x1);
    }
  }

  void take(const Span2& span, double value) {
    if (value <= floor_) return;
    if (best_.spans.empty() || value > best_.value) {
      if (value * (1 - same_value) > best_.value) best_.spans.clear();
      best_.value = value;
      floor_ = std::max(floor_, value * (1 - same_value));
    }
    best_.spans.push_back(span);
  }

  Bay bay(std::size_t slab, const Room& room) const {
    return {slabs_.cuts[slab], slabs_.cuts[slab + 1], room.low_left,
            room.low_right,    room.high_left,        room.high_right};
  }

  const Slabs& slabs_;
  const Sought& sought_;
  const double least_;
  double floor_;
  std::vector<double> reaches_;
  Pair pair_;
  double left_ = 0;
  double first_low_ = 0;
  double first_high_ = 0;
  Best best_;
};

}  // namespace

Best best_along(const Slabs& slabs, const Sought& sought) { return SlabWalk(slabs, sought).run(); }

}  // namespace berthwright
