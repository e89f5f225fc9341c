#include <berthwright/geometry/shortest_way.h>

#include <algorithm>
#include <utility>

#include <berthwright/exact/squared_length.h>

#include "geometry/free_angle.h"
#include "geometry/light.h"

namespace berthwright {
namespace {

constexpr Length a_micrometre = Length::millimetres(1, 1000);

Length straight_length(Point a, Point b) {
  const Int128 x = (b.x - a.x).ticks();
  const Int128 y = (b.y - a.y).ticks();
  return SquaredLength(x * x + y * y, 1).ceiling();
}

bool may_set_out(const std::vector<FreeAngle>& angles, Point toward) {
  return angles.empty() ||
         std::ranges::any_of(angles, [&](const FreeAngle& angle) { return angle.holds(toward); });
}

// A polygon inside the circle: the one around a circle of 9987/10000 of the radius reaches 0.12 % beyond
// that, and its corners are rounded outward by less than two ticks.
Region inside_of_disc(Point centre, Length radius) {
  const Length smaller = Length::from_ticks(radius.ticks() * 9987 / 10000 - 2);
  if (smaller <= Length{}) return {};
  return moved(Region(disc_around(smaller)), centre - Point{});
}

}  // namespace

ShortestWays::ShortestWays(Region free, Point goal)
    : free_(std::move(free)), goal_(goal), border_(edges(free_)) {
  if (free_.side_of(goal_) == Side::outside) return;
  for (const FreeAngle& angle : free_angles(border_))
    if (angle.juts()) bends_.push_back({angle.at, angle.out, angle.in, std::nullopt, std::nullopt});
  measure();
}

// Dijkstra's settling from the goal; sight is only tested where it would shorten a way.
void ShortestWays::measure() {
  const auto angle_at = [](const Bend& bend) { return FreeAngle{bend.at, bend.out, bend.in}; };
  const std::vector<FreeAngle> at_goal = free_angles_at(goal_, border_);
  std::vector<bool> settled(bends_.size());
  for (Bend& bend : bends_)
    if (bend.at == goal_ ||
        (angle_at(bend).holds(goal_) && may_set_out(at_goal, bend.at) && is_clear(bend.at, goal_, border_)))
      bend.to_goal = straight_length(bend.at, goal_);
  for (;;) {
    std::size_t nearest = bends_.size();
    for (std::size_t i = 0; i < bends_.size(); ++i)
      if (!settled[i] && bends_[i].to_goal &&
          (nearest == bends_.size() || *bends_[i].to_goal < *bends_[nearest].to_goal))
        nearest = i;
    if (nearest == bends_.size()) return;
    settled[nearest] = true;
    const Bend& here = bends_[nearest];
    for (std::size_t i = 0; i < bends_.size(); ++i) {
      Bend& there = bends_[i];
      if (settled[i] || there.at == here.at) continue;
      const Length length = *here.to_goal + straight_length(here.at, there.at);
      if (there.to_goal && *there.to_goal <= length) continue;
      if (!angle_at(here).holds(there.at) || !angle_at(there).holds(here.at) ||
          !is_clear(here.at, there.at, border_))
        continue;
      there.to_goal = length;
      there.next = nearest;
    }
  }
}

std::optional<ShortestWay> ShortestWays::from(Point start) const {
  if (free_.side_of(goal_) == Side::outside || free_.side_of(start) == Side::outside) return std::nullopt;
  if (start == goal_) return ShortestWay{Length{}, {start}};
  const std::vector<FreeAngle> at_start = free_angles_at(start, border_);
  if (may_set_out(at_start, goal_) && may_set_out(free_angles_at(goal_, border_), start) &&
      is_clear(start, goal_, border_))
    return ShortestWay{straight_length(start, goal_), {start, goal_}};
  std::vector<std::pair<Length, std::size_t>> candidates;
  for (std::size_t i = 0; i < bends_.size(); ++i)
    if (bends_[i].to_goal && bends_[i].at != start)
      candidates.emplace_back(*bends_[i].to_goal + straight_length(start, bends_[i].at), i);
  std::ranges::sort(candidates);
  for (const auto& [length, first] : candidates) {
    const Bend& bend = bends_[first];
    if (!FreeAngle{bend.at, bend.out, bend.in}.holds(start) || !may_set_out(at_start, bend.at) ||
        !is_clear(start, bend.at, border_))
      continue;
    ShortestWay way{length, {start}};
    for (std::optional<std::size_t> i = first; i; i = bends_[*i].next) way.path.push_back(bends_[*i].at);
    if (way.path.back() != goal_) way.path.push_back(goal_);
    return way;
  }
  return std::nullopt;
}

// A way that turns at a bend turns round what juts out there, to one side or, from neither, not at all: what
// is reached by turning to the other side is reached sooner past the bend.
Region ShortestWays::lit_by(const Bend& bend, Length length, const std::optional<Vector>& heading) const {
  Region lit = common(free_, inside_of_disc(bend.at, length));
  const Rect frame = grown(free_.bounds(), 1_in);
  if (heading) lit = common(lit, left_of(bend.at, {-heading->y, heading->x}, frame));
  const Point before = after(bend);
  if (before != bend.at) {
    const std::int64_t out = cross(before, bend.at, bend.out);
    const std::int64_t in = cross(before, bend.at, bend.in);
    const Vector along = bend.at - before;
    if (out >= 0 && in >= 0)
      lit = common(lit, left_of(bend.at, along, frame));
    else if (out <= 0 && in <= 0)
      lit = common(lit, left_of(bend.at, {-along.x, -along.y}, frame));
    else
      return {};
  }
  return seen_from(bend.at, lit, free_);
}

Region ShortestWays::within(Length length, std::optional<Vector> heading) const {
  if (free_.side_of(goal_) == Side::outside) return {};
  const Length enough = length - a_micrometre;
  std::vector<Region> lit{lit_by({goal_, goal_, goal_, Length{}, std::nullopt}, enough, heading)};
  for (const Bend& bend : bends_)
    if (bend.to_goal && *bend.to_goal < enough) lit.push_back(lit_by(bend, enough - *bend.to_goal, heading));
  return united(lit);
}

}  // namespace berthwright
