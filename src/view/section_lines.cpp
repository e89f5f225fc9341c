#include "view/section_lines.h"

#include <algorithm>

namespace berthwright {
namespace {

using Along = CutLine::Along;

constexpr Length one_and_the_same = 3_in;

// Something that wants to be cut: best at `middle`, well enough between `from` and `to`.
struct Wanted {
  Along along;
  Length middle;
  Length from;
  Length to;
};

Wanted wanted(Along along, const Rect& box) {
  const Length low = along == Along::x ? box.low.y : box.low.x;
  const Length high = along == Along::x ? box.high.y : box.high.x;
  const Length quarter = half(half(high - low));
  return {along, half(low + high), std::min(low + quarter, half(low + high) - one_and_the_same),
          std::max(high - quarter, half(low + high) + one_and_the_same)};
}

std::optional<Rect> bed_box(const BedAnswer& bed) {
  if (bed.mattress.closed.empty()) return std::nullopt;
  if (!bed.room.largest) return bed.mattress.closed.bounds();
  const auto& corners = bed.room.largest->corners;
  Rect box{corners[0], corners[0]};
  for (const Point corner : corners) box = hull(box, {corner, corner});
  return box;
}

// The way a person looks, along which the section shows them from the side.
Along looks_along(Wall faces) { return faces == Wall::front || faces == Wall::rear ? Along::x : Along::y; }

// The fewest lines we find: each time the middle that serves most of what is not yet served.
std::vector<Length> chosen(std::vector<Wanted> open) {
  std::vector<Length> lines;
  while (!open.empty()) {
    const auto served = [&](Length at) {
      return std::ranges::count_if(open, [&](const Wanted& w) { return w.from <= at && at <= w.to; });
    };
    Length best = open.front().middle;
    for (const Wanted& one : open)
      if (served(one.middle) > served(best)) best = one.middle;
    lines.push_back(best);
    std::erase_if(open, [&](const Wanted& w) { return w.from <= best && best <= w.to; });
  }
  std::ranges::sort(lines);
  return lines;
}

}  // namespace

std::vector<CutLine> section_lines(const DrawnConfiguration& of, const std::vector<SittingPlace>& places) {
  std::vector<Wanted> all;
  std::optional<Rect> first;
  for (const BedAnswer& bed : of.answer->beds) {
    const std::optional<Rect> box = bed_box(bed);
    if (!box) continue;
    if (!first) first = box;
    for (const Along along : {Along::x, Along::y}) all.push_back(wanted(along, *box));
  }
  for (const SittingPlace& place : places) {
    if (!first) first = place.clear;
    all.push_back(wanted(looks_along(place.faces), place.clear));
  }
  if (!first) return {};
  std::vector<CutLine> lines;
  for (const Along along : {Along::x, Along::y}) {
    std::vector<Wanted> mine;
    std::ranges::copy_if(all, std::back_inserter(mine), [&](const Wanted& w) { return w.along == along; });
    if (mine.empty()) mine.push_back(wanted(along, *first));
    for (const Length at : chosen(mine)) lines.push_back({along, at});
  }
  return lines;
}

}  // namespace berthwright
