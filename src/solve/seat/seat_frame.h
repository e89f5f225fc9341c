#pragma once

#include <vector>

#include <berthwright/geometry/placement.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// The plan turned so that a person on the seat looks along +x: x runs forward, y across.
class SeatFrame {
 public:
  explicit SeatFrame(Wall faces);
  Region in(const Region& plan) const { return into_(plan); }
  Region out(const Region& turned) const { return back_(turned); }
  Point out(Point turned) const { return back_(turned); }

 private:
  Placement into_;
  Placement back_;
};

struct SeatSpan {
  Length from;
  Length to;
  Length length() const { return to - from; }
};

/// The stretches along y in which the line at `x` runs inside the region; slanted borders rounded to a tick.
std::vector<SeatSpan> stretches_across(const Region& region, Length x);

/// What is left of `range` without `taken`, in order.
std::vector<SeatSpan> left_of(SeatSpan range, std::vector<SeatSpan> taken);

/// Joins stretches no more than `bridge` apart.
std::vector<SeatSpan> joined(std::vector<SeatSpan> stretches, Length bridge);

/// The longest, the first of equal ones; empty when there is none.
SeatSpan longest(const std::vector<SeatSpan>& stretches);

}  // namespace berthwright
