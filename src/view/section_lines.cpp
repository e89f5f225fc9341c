#include "view/section_lines.h"

#include <algorithm>
#include <iterator>

#include "view/section.h"

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

// The fewest lines we find: each time the one that serves most of what is not yet served, a known one first.
std::vector<Length> chosen(std::vector<Wanted> open, const std::vector<Length>& known) {
  std::vector<Length> lines;
  while (!open.empty()) {
    const auto served = [&](Length at) {
      return std::ranges::count_if(open, [&](const Wanted& w) { return w.from <= at && at <= w.to; });
    };
    std::vector<Length> candidates = known;
    for (const Wanted& one : open) candidates.push_back(one.middle);
    const Length best = *std::ranges::max_element(candidates, {}, served);  // of equals the first
    lines.push_back(best);
    std::erase_if(open, [&](const Wanted& w) { return w.from <= best && best <= w.to; });
  }
  std::ranges::sort(lines);
  return lines;
}

}  // namespace

std::vector<CutLine> section_lines(const DrawnConfiguration& of, const std::vector<SittingPlace>& places,
                                   const std::vector<CutLine>& known) {
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
    std::vector<Length> planes;
    for (const CutLine& line : known)
      if (line.along == along) planes.push_back(line.at);
    for (const Length at : chosen(mine, planes)) lines.push_back({along, at});
  }
  return lines;
}

std::vector<std::vector<SectionCut>> section_cuts(const std::vector<DrawnConfiguration>& all) {
  std::vector<std::vector<SectionCut>> cuts;
  std::vector<CutLine> known;
  for (const DrawnConfiguration& of : all) {
    std::vector<SectionCut> mine;
    for (const CutLine& line : section_lines(of, sitting_places(*of.answer), known)) {
      if (room_in((*of.plan)->interior, line).empty()) continue;
      const auto same = std::ranges::find(known, line);
      mine.push_back({line, section_letter(static_cast<std::size_t>(same - known.begin()))});
      if (same == known.end()) known.push_back(line);
    }
    std::ranges::stable_sort(
        mine, {}, [&](const SectionCut& cut) { return std::ranges::find(known, cut.line) - known.begin(); });
    cuts.push_back(std::move(mine));
  }
  return cuts;
}

}  // namespace berthwright
