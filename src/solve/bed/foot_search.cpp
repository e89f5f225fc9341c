#include "solve/bed/foot_search.h"

#include <algorithm>
#include <numeric>

#include <berthwright/geometry/placement.h>

#include "geometry/inscribed.h"

namespace berthwright {

namespace {

// Between slanted edges the best strip need not touch a corner.
constexpr Length slanted_step = 1_in;
constexpr Length rounding = 8 * one_tick;

Length foot_of(Length shoulder) { return std::min(shoulder, foot_width); }

std::vector<Edge> turned(const std::vector<Edge>& border, Turn turn) {
  const Placement placement{false, turn, {}};
  std::vector<Edge> result;
  result.reserve(border.size());
  for (const Edge& edge : border) {
    const Edge moved{placement(edge.from), placement(edge.to)};
    if (moved.from != moved.to) result.push_back(moved);
  }
  return result;
}

Corners corners_of(const Rect& rect) {
  return {rect.low, {rect.high.x, rect.low.y}, rect.high, {rect.low.x, rect.high.y}};
}

Corners turned(Corners corners, Turn turn) {
  const Placement placement{false, turn, {}};
  for (Point& corner : corners) corner = placement(corner);
  return corners;
}

Rect drawn_in(const Rect& rect, Length by) { return grown(rect, -by); }

}  // namespace

/// Shoulders from `from` to `to` over the strip, and for each person how far the feet go on and where.
struct FootSearch::Spot {
  Length length;
  bool ahead = true;
  Length low;
  Length from;
  Length to;
  Length feet;                   ///< length of the foot rectangles, the same for all
  std::vector<Length> foot_low;  ///< one for each person
};

FootSearch::FootSearch(const LyingSpace& space, std::span<const Length> shoulders, Turn turn)
    : turn_(turn),
      shoulders_(shoulders.begin(), shoulders.end()),
      width_(std::accumulate(shoulders.begin(), shoulders.end(), Length{})),
      head_(edges(space.head)),
      foot_(edges(space.foot)),
      turned_head_(turned(head_, turn.reversed())),
      turned_foot_(turned(foot_, turn.reversed())) {
  for (const std::vector<Edge>* border : {&turned_head_, &turned_foot_})
    for (const Edge& edge : *border)
      slanted_ = slanted_ || (edge.from.x != edge.to.x && edge.from.y != edge.to.y);
  const auto by_x = [](const Edge& a, const Edge& b) { return a.from.x < b.from.x; };
  const auto [first, last] = std::minmax_element(turned_foot_.begin(), turned_foot_.end(), by_x);
  farthest_ = {first->from.x, last->from.x};
}

// Strips whose border, or that of someone's feet at either end of their shoulders, touches a corner.
std::vector<Length> FootSearch::strips() const {
  std::vector<Length> lows;
  for (const Edge& edge : turned_head_)
    for (const Length low : {edge.from.y, edge.from.y - width_}) lows.push_back(low);
  Length slot;
  for (const Length shoulder : shoulders_) {
    const Length foot = foot_of(shoulder);
    for (const Edge& edge : turned_foot_)
      for (const Length foot_low : {edge.from.y, edge.from.y - foot})
        for (const Length low : {foot_low - slot, foot_low - slot - (shoulder - foot)}) lows.push_back(low);
    slot += shoulder;
  }
  const auto [low, high] =
      std::minmax_element(turned_head_.begin(), turned_head_.end(),
                          [](const Edge& a, const Edge& b) { return a.from.y < b.from.y; });
  const Length least = low->from.y;
  const Length most = high->from.y - width_;
  if (slanted_)
    for (Length by; least + by < most; by += slanted_step) {
      lows.push_back(least + by);
      lows.push_back(most - by);
    }
  std::ranges::sort(lows);
  lows.erase(std::unique(lows.begin(), lows.end()), lows.end());
  std::erase_if(lows, [&](Length strip) { return strip < least || strip > most; });
  return lows;
}

// How far beyond `end` the feet of a person whose shoulders begin at `slot` get, at most `foot_length`.
std::optional<Length> FootSearch::reach(Length slot, Length width, Length end, bool ahead,
                                        Length& foot_low) const {
  const Length foot = foot_of(width);
  const Length last = slot + width - foot;
  std::vector<Length> lows{slot, last};
  for (const Edge& edge : turned_foot_)
    for (const Length low : {edge.from.y, edge.from.y - foot})
      if (slot < low && low < last) lows.push_back(low);
  std::ranges::sort(lows);
  lows.erase(std::unique(lows.begin(), lows.end()), lows.end());
  std::optional<Length> best;
  for (const Length low : lows)
    for (const FreeStretch& free : free_stretches(low, low + foot, turned_foot_)) {
      const bool meets_end =
          ahead ? free.from < end && end <= free.to + rounding : end < free.to && free.from - rounding <= end;
      if (!meets_end) continue;
      const Length on = std::clamp(ahead ? free.to - end : end - free.from, Length{}, foot_length);
      if (!best || on > *best) best = on, foot_low = low;
    }
  return best;
}

void FootSearch::try_strip(Length low, Spot& best) const {
  for (const FreeStretch& free : free_stretches(low, low + width_, turned_head_)) {
    const Length along = free.to - free.from;
    for (const bool ahead : {true, false}) {
      const Length beyond = ahead ? farthest_.to - free.to : free.from - farthest_.from;
      if (along + std::min(beyond, foot_length) <= best.length) continue;
      Spot spot{along, ahead, low, free.from, free.to, foot_length, {}};
      Length slot = low;
      for (const Length shoulder : shoulders_) {
        Length foot_low = slot;
        const std::optional<Length> on = reach(slot, shoulder, ahead ? free.to : free.from, ahead, foot_low);
        spot.feet = std::min(spot.feet, on.value_or(Length{}));
        spot.foot_low.push_back(foot_low);
        slot += shoulder;
      }
      spot.length = along + spot.feet;
      if (spot.length > best.length) best = spot;
    }
  }
}

// Corners go back to the lattice; where that is not certainly inside the place is drawn in.
std::optional<LyingPlace> FootSearch::settled(const Spot& spot) const {
  for (const int ticks : {0, 1, 2, 3}) {
    const Length inset = ticks * one_tick;
    LyingPlace place;
    const Rect rect{{spot.from, spot.low}, {spot.to, spot.low + width_}};
    place.shoulders = turned(corners_of(drawn_in(rect, inset)), turn_);
    if (!is_inscribed(place.shoulders, head_)) continue;
    const Held held = held_by(place.shoulders);
    place.width = std::min(held.across, width_);
    place.length = held.along;
    place.turn = turn_;
    bool inside = place.width >= width_ - turning_slack;
    Length feet = spot.feet;
    for (std::size_t i = 0; i < shoulders_.size() && feet > 2 * rounding; ++i) {
      const Length from = spot.ahead ? spot.to - inset : spot.from - spot.feet + inset;
      const Length to = spot.ahead ? spot.to + spot.feet - inset : spot.from + inset;
      const Length foot = foot_of(shoulders_[i]);
      const Rect at{{from, spot.foot_low[i] + inset}, {to, spot.foot_low[i] + foot - inset}};
      place.feet.push_back(turned(corners_of(at), turn_));
      inside = inside && is_inscribed(place.feet.back(), foot_);
      feet = std::min(feet, held_by(place.feet.back()).along);
    }
    if (!inside) continue;
    if (!place.feet.empty()) place.length += feet;
    if (!spot.ahead)
      place.turn = Turn::toward((place.shoulders[0].x - place.shoulders[1].x).ticks(),
                                (place.shoulders[0].y - place.shoulders[1].y).ticks());
    return place;
  }
  return std::nullopt;
}

std::optional<LyingPlace> FootSearch::longer_than(Length floor) const {
  Spot best;
  best.length = floor;
  for (const Length low : strips()) try_strip(low, best);
  if (best.foot_low.empty()) return std::nullopt;
  std::optional<LyingPlace> place = settled(best);
  return place && place->length > floor ? place : std::nullopt;
}

}  // namespace berthwright
