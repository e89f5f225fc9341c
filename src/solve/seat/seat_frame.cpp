#include "solve/seat/seat_frame.h"

#include <algorithm>
#include <stdexcept>

#include "geometry/ring.h"

namespace berthwright {

namespace {

// Counter-clockwise quarters that bring the way a seat faces to +x; the left wall is at y = 0.
Turn turn_of(Wall faces) {
  switch (faces) {
    case Wall::rear:
      return Turn::quarters(0);
    case Wall::left:
      return Turn::quarters(1);
    case Wall::front:
      return Turn::quarters(2);
    case Wall::right:
      return Turn::quarters(3);
  }
  throw std::logic_error("Wall out of range");
}

}  // namespace

SeatFrame::SeatFrame(Wall faces)
    : into_{false, turn_of(faces), {}}, back_{false, into_.turn.reversed(), {}} {}

std::vector<SeatSpan> stretches_across(const Region& region, Length x) {
  std::vector<Length> crossings;
  for (const Edge& edge : edges(region)) {
    if ((edge.from.x <= x) == (edge.to.x <= x)) continue;
    crossings.push_back(edge.from.y + rounded_part(edge.to.y - edge.from.y, (x - edge.from.x).ticks(),
                                                   (edge.to.x - edge.from.x).ticks()));
  }
  std::ranges::sort(crossings);
  std::vector<SeatSpan> stretches;
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
    if (crossings[i] < crossings[i + 1]) stretches.push_back({crossings[i], crossings[i + 1]});
  return stretches;
}

std::vector<SeatSpan> left_of(SeatSpan range, std::vector<SeatSpan> taken) {
  std::ranges::sort(taken, {}, &SeatSpan::from);
  std::vector<SeatSpan> left;
  Length at = range.from;
  for (const SeatSpan& stretch : taken) {
    if (stretch.from > at) left.push_back({at, std::min(stretch.from, range.to)});
    at = std::max(at, stretch.to);
    if (at >= range.to) return left;
  }
  left.push_back({at, range.to});
  return left;
}

std::vector<SeatSpan> joined(std::vector<SeatSpan> stretches, Length bridge) {
  std::ranges::sort(stretches, {}, &SeatSpan::from);
  std::vector<SeatSpan> joined;
  for (const SeatSpan& stretch : stretches) {
    if (!joined.empty() && stretch.from <= joined.back().to + bridge)
      joined.back().to = std::max(joined.back().to, stretch.to);
    else
      joined.push_back(stretch);
  }
  return joined;
}

SeatSpan longest(const std::vector<SeatSpan>& stretches) {
  const auto found = std::ranges::max_element(stretches, {}, &SeatSpan::length);
  return found == stretches.end() ? SeatSpan{} : *found;
}

}  // namespace berthwright
