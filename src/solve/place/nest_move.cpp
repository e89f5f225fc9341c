#include "solve/place/nest_move.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace berthwright {
namespace {

// How many places of each kind a move tries, how many of the best it follows, and the borders it heeds: our
// own choice, by the published sets.
constexpr int looks_anywhere = 8;
constexpr int looks_beside = 8;
constexpr int looks_near = 5;
constexpr std::size_t followed = 3;
constexpr std::size_t most_borders = 4;

constexpr double any_cost = std::numeric_limits<double>::max();

std::int64_t nearest_tick(double x) { return static_cast<std::int64_t>(std::floor(x + 0.5)); }

NestPoint on_line(NestPoint at, NestPoint way, double along) {
  return {at.x + nearest_tick(along * static_cast<double>(way.x)),
          at.y + nearest_tick(along * static_cast<double>(way.y))};
}

// Not left of the line: rounding may have led there.
NestPoint off(NestPoint p, NestPoint at, NestPoint way) {
  for (int k = 0; k < 2 && cross(way, p - at) > 0; ++k) {
    if (std::abs(way.y) >= std::abs(way.x))
      p.x += way.y > 0 ? 1 : -1;
    else
      p.y += way.x > 0 ? -1 : 1;
  }
  return p;
}

}  // namespace

void NestMover::move(std::size_t part) {
  part_ = part;
  best_.clear();
  const NestSpot old = layout_.spots()[part];
  const double now = layout_.cost_of(part);
  const NestTask::Part& turns = layout_.task().parts[part];
  const auto any_shape = [&] { return turns.first + dice_.below(turns.count); };
  look(old);
  for (int k = 0; k < looks_anywhere; ++k) look_anywhere(any_shape());
  for (int k = 0; k < looks_beside; ++k) look_beside(any_shape());
  for (int k = 0; k < looks_near; ++k) look_near({k % 4 == 0 ? any_shape() : old.shape, old.at});
  Candidate least{now, old};
  for (Candidate& candidate : best_) {
    follow(candidate);
    if (candidate.cost < least.cost) least = candidate;
    if (least.cost == 0) break;
  }
  if (least.cost < now) layout_.place(part, least.spot);
}

// Keeps the best few that are not alike.
void NestMover::look(const NestSpot& spot) {
  const bool full = best_.size() >= followed;
  const double most = full ? best_.back().cost : any_cost;
  const double cost = layout_.cost(part_, spot, most);
  if (cost >= most) return;
  const NestShape& s = layout_.task().shapes[spot.shape];
  const auto alike = std::ranges::find_if(best_, [&](const Candidate& other) {
    return other.spot.shape == spot.shape && std::abs(other.spot.at.x - spot.at.x) < s.width / 10 &&
           std::abs(other.spot.at.y - spot.at.y) < s.height / 10;
  });
  if (alike != best_.end()) {
    if (cost >= alike->cost) return;
    best_.erase(alike);
  } else if (full) {
    best_.pop_back();
  }
  const auto after = std::ranges::find_if(best_, [&](const Candidate& other) { return other.cost > cost; });
  best_.insert(after, {cost, spot});
}

void NestMover::look_anywhere(std::size_t shape) {
  const NestLayout::Room room = layout_.any_room(shape, dice_);
  if (room.empty()) return;
  const std::int64_t x = room.low.x + dice_.upto(room.high.x - room.low.x);
  look({shape, {x, room.low.y + dice_.upto(room.high.y - room.low.y)}});
}

// At a corner of what another part leaves free.
void NestMover::look_beside(std::size_t shape) {
  const std::size_t other = dice_.below(layout_.size());
  if (other == part_) return;
  const NestSpot& beside = layout_.spots()[other];
  const NestPairs::Seen seen = layout_.pairs().of(beside.shape, shape);
  const NestBorder& border = seen.pair->border()[dice_.below(seen.pair->border().size())];
  const double along = dice_.below(2) == 0 ? border.low : border.high;
  const double sign = seen.turned ? -1 : 1;
  const NestPoint at{beside.at.x + nearest_tick(sign * (static_cast<double>(border.at.x) +
                                                        along * static_cast<double>(border.way.x))),
                     beside.at.y + nearest_tick(sign * (static_cast<double>(border.at.y) +
                                                        along * static_cast<double>(border.way.y)))};
  const NestLayout::Room room = layout_.room_at(shape, at);
  if (!room.empty() && room.nearest(at) == at) look({shape, at});
}

void NestMover::look_near(const NestSpot& spot) {
  const NestLayout::Room room = layout_.room_at(spot.shape, spot.at);
  if (room.empty()) return;
  const NestShape& s = layout_.task().shapes[spot.shape];
  const NestPoint reach{s.width / 4, s.height / 4};
  const std::int64_t x = spot.at.x + dice_.upto(2 * reach.x) - reach.x;
  look({spot.shape, room.nearest({x, spot.at.y + dice_.upto(2 * reach.y) - reach.y})});
}

void NestMover::follow(Candidate& candidate) {
  for (int k = 0; k < 12 && candidate.cost > 0; ++k)
    if (!step(candidate)) return;
}

bool NestMover::step(Candidate& candidate) {
  const NestSpot& spot = candidate.spot;
  layout_.cost(part_, spot, any_cost, &touches_);
  std::ranges::sort(touches_, [](const auto& a, const auto& b) { return a.cost > b.cost; });
  if (touches_.size() > most_borders) touches_.resize(most_borders);
  const NestLayout::Room room = layout_.room_at(spot.shape, spot.at);
  lines_.clear();
  targets_.clear();
  aim_at_borders(room, spot.at);
  aim_at_crossings(room, touches_.size());
  Candidate better = candidate;
  for (const NestPoint target : targets_) {
    if (target == spot.at) continue;
    const double cost = layout_.cost(part_, {spot.shape, target}, better.cost);
    if (cost < better.cost) better = {cost, {spot.shape, target}};
    if (cost == 0) break;
  }
  const bool helps = better.cost < candidate.cost * 0.999;
  if (helps) candidate = better;
  return helps;
}

void NestMover::aim(const NestLayout::Room& room, NestPoint target) {
  targets_.push_back(room.nearest(target));
}

// The nearest place off each part overlapped, and those straight along x and along y.
void NestMover::aim_at_borders(const NestLayout::Room& room, NestPoint from) {
  for (const NestLayout::Touch& touch : touches_) {
    const NestBorder& b = *touch.border;
    const Line line =
        touch.turned ? Line{touch.origin - b.at, NestPoint{} - b.way} : Line{touch.origin + b.at, b.way};
    lines_.push_back(line);
    const auto add = [&](double along) {
      aim(room, off(on_line(line.at, line.way, along), line.at, line.way));
    };
    const NestPoint d = from - line.at;
    const double dx = static_cast<double>(d.x);
    const double dy = static_cast<double>(d.y);
    const double ux = static_cast<double>(line.way.x);
    const double uy = static_cast<double>(line.way.y);
    add(std::clamp((dx * ux + dy * uy) * b.per_length * b.per_length, b.low, b.high));
    if (line.way.x != 0 && line.way.y != 0) {
      add(dx / ux);
      add(dy / uy);
    }
  }
}

// Of the borders with each other; where they are few, with the sides of the room too.
void NestMover::aim_at_crossings(const NestLayout::Room& room, std::size_t borders) {
  if (borders <= 2) {
    lines_.push_back({room.low, {-1, 0}});
    lines_.push_back({room.low, {0, 1}});
    lines_.push_back({room.high, {1, 0}});
    lines_.push_back({room.high, {0, -1}});
  }
  for (std::size_t i = 0; i < borders; ++i)
    for (std::size_t j = i + 1; j < lines_.size(); ++j) {
      const Line& a = lines_[i];
      const Line& b = lines_[j];
      const std::int64_t opening = cross(a.way, b.way);
      if (opening == 0) continue;
      const double along = static_cast<double>(cross(b.at - a.at, b.way)) / static_cast<double>(opening);
      const NestPoint there = on_line(a.at, a.way, along);
      const NestPoint free = off(off(there, a.at, a.way), b.at, b.way);
      if (free.x >= room.low.x - 1 && free.x <= room.high.x + 1 && free.y >= room.low.y - 1 &&
          free.y <= room.high.y + 1)
        aim(room, free);
    }
}

}  // namespace berthwright
