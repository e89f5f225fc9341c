#include "geometry/slab_pair.h"

#include <algorithm>
#include <array>

namespace berthwright {
namespace {

/// A rectangle's merit while its peak is sought: the area, or where it has no height the (negative) height.
struct Tried {
  double merit;
  double last;  ///< place of its last end, 0 .. 1
};

class AreaPeak {
 public:
  explicit AreaPeak(const Pair& pair) : pair_(pair) {}

  Tried with_first(double first) const {
    const double high = std::min(pair_.high, pair_.first.high(first));
    const double low = std::max(pair_.low, pair_.first.low(first));
    const Bay& last = pair_.last;
    const double least = pair_.same ? first : 0;
    const double reach = last.left - pair_.first.x(first);  // width when the last end stands at 0
    const double run = last.right - last.left;
    Tried best{merit(first, least, low, high), least};
    const auto consider = [&](double at) {
      if (!(at > least)) return;
      const double clamped = std::min(at, 1.0);
      const double value = merit(first, clamped, low, high);
      if (value > best.merit) best = {value, clamped};
    };
    consider(1);
    const double rise = last.high_right - last.high_left;
    const double climb = last.low_right - last.low_left;
    if (rise >= 0 && climb <= 0) return best;  // opens toward the right: the far end is best
    if (rise != 0) consider((high - last.high_left) / rise);
    if (climb != 0) consider((low - last.low_left) / climb);
    // Peaks of (reach + run t)(base + slope t).
    const auto peak = [&](double base, double slope) {
      if (slope < 0) consider(-(reach * slope + run * base) / (2 * run * slope));
    };
    peak(last.high_left - low, rise);
    peak(high - last.low_left, -climb);
    peak(last.high_left - last.low_left, rise - climb);
    return best;
  }

  Span2 span(double first, double last) const {
    return {pair_.first.x(first), pair_.last.x(last),
            std::max({pair_.low, pair_.first.low(first), pair_.last.low(last)}),
            std::min({pair_.high, pair_.first.high(first), pair_.last.high(last)})};
  }

 private:
  double merit(double first, double at, double low, double high) const {
    const double height = std::min(high, pair_.last.high(at)) - std::max(low, pair_.last.low(at));
    return height <= 0 ? height : (pair_.last.x(at) - pair_.first.x(first)) * height;
  }

  const Pair& pair_;
};

// The values 0 <= t <= 1 at which a linear function, given at 0 and 1, is not negative.
struct Range {
  double low = 0;
  double high = 1;
  bool empty() const { return !(low <= high); }
  void keep(double at_0, double at_1) {
    if (at_0 >= 0 && at_1 >= 0) return;
    if (at_0 < 0 && at_1 < 0) {
      low = 2;
      return;
    }
    const double zero = at_0 / (at_0 - at_1);
    if (at_0 < 0)
      low = std::max(low, zero);
    else
      high = std::min(high, zero);
  }
};

struct Ends {
  double first;
  double last;
};

/// A convex polygon of possible ends, at most a box cut twice.
struct Possible {
  std::array<Ends, 8> corners;
  std::size_t count = 0;

  void add(Ends ends) { corners[count++] = ends; }

  template <typename Function>
  Possible where_not_negative(const Function& f) const {
    Possible result;
    for (std::size_t i = 0; i < count; ++i) {
      const Ends a = corners[i];
      const Ends b = corners[(i + 1) % count];
      const double at_a = f(a);
      const double at_b = f(b);
      if (at_a >= 0) result.add(a);
      if ((at_a >= 0) != (at_b >= 0)) {
        const double t = at_a / (at_a - at_b);
        result.add({a.first + (b.first - a.first) * t, a.last + (b.last - a.last) * t});
      }
    }
    return result;
  }
};

}  // namespace

Span2 largest_of(const Pair& pair, int sections) {
  const AreaPeak peak(pair);
  const Bay& first = pair.first;
  double best = 0;
  Tried found = peak.with_first(0);
  const auto consider = [&](double at) {
    const Tried tried = peak.with_first(at);
    if (tried.merit > found.merit) best = at, found = tried;
    return tried.merit;
  };
  const bool roof_opens = first.high_left < first.high_right && first.high_left < pair.high;
  const bool ground_opens = first.low_left > first.low_right && first.low_left > pair.low;
  if (roof_opens || ground_opens) {
    constexpr double golden = 0.6180339887498949;
    double low = 0;
    double high = 1;
    double left = 1 - golden;
    double right = golden;
    consider(1);
    double at_left = consider(left);
    double at_right = consider(right);
    for (int i = 0; i < sections; ++i) {
      if (at_left < at_right) {
        low = left, left = right, at_left = at_right;
        right = low + golden * (high - low);
        at_right = consider(right);
      } else {
        high = right, right = left, at_right = at_left;
        left = high - golden * (high - low);
        at_left = consider(left);
      }
    }
  }
  return peak.span(best, found.last);
}

std::optional<Span2> longest_of(const Pair& pair, double width) {
  if (pair.high - pair.low < width) return std::nullopt;
  const Bay& a = pair.first;
  const Bay& b = pair.last;
  const auto possible_in = [&](const Bay& bay) {
    Range range;
    range.keep(bay.high_left - bay.low_left - width, bay.high_right - bay.low_right - width);
    range.keep(bay.high_left - pair.low - width, bay.high_right - pair.low - width);
    range.keep(pair.high - bay.low_left - width, pair.high - bay.low_right - width);
    return range;
  };
  const Range first = possible_in(a);
  const Range last = possible_in(b);
  if (first.empty() || last.empty()) return std::nullopt;
  const auto under_first = [&](Ends e) { return a.high(e.first) - b.low(e.last) - width; };
  const auto under_last = [&](Ends e) { return b.high(e.last) - a.low(e.first) - width; };
  const AreaPeak heights(pair);
  const Ends outermost{first.low, last.high};
  if (under_first(outermost) >= 0 && under_last(outermost) >= 0)
    return heights.span(outermost.first, outermost.last);
  Possible box;
  box.add({first.low, last.low});
  box.add({first.high, last.low});
  box.add({first.high, last.high});
  box.add({first.low, last.high});
  const Possible possible = box.where_not_negative(under_first).where_not_negative(under_last);
  std::optional<Span2> best;
  for (std::size_t i = 0; i < possible.count; ++i) {
    const Span2 span = heights.span(possible.corners[i].first, possible.corners[i].last);
    if (!best || span.x2 - span.x1 > best->x2 - best->x1) best = span;
  }
  return best;
}

}  // namespace berthwright
