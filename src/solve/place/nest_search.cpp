#include "solve/place/nest_search.h"

#include <algorithm>
#include <cmath>

#include "solve/place/nest_build.h"
#include "solve/place/nest_move.h"

namespace berthwright {
namespace {

// By how much the ground is shortened at first and at last: our own choice, by the published sets.
constexpr double first_share = 0.02;
constexpr double least_share = 0.001;

}  // namespace

NestSearch::NestSearch(NestPairs& pairs, const NestBuilt& built, const Manner& manner)
    : task_(pairs.task()),
      pairs_(pairs),
      layout_(task_, pairs_),
      dice_(manner.seed),
      persistence_(manner.persistence) {
  double all = 0;
  for (const NestTask::Part& part : task_.parts) all += task_.shapes[part.first].area;
  double sum = 0;
  for (const std::size_t part : largest_first(task_)) {
    if (sum > 0.75 * all) break;
    sum += task_.shapes[task_.parts[part].first].area;
    large_.push_back(part);
  }
  share_ = first_share;
  adopt(built);
}

void NestSearch::adopt(const NestBuilt& other) {
  best_ = other;
  pool_.clear();
}

void NestSearch::keep() {
  best_ = {closed_up(task_, layout_.ground(), layout_.spots()), layout_.spots()};
  pool_.clear();
  // The last ticks, where no search would find them.
  if (best_.ground.length() - goal_.least < goal_.least / 100) push();
}

void NestSearch::push() {
  best_.spots = pushed_left(pairs_, best_.ground, best_.spots);
  best_.ground = closed_up(task_, best_.ground, best_.spots);
}

NestGround NestSearch::shorter(double share) const {
  NestGround ground = best_.ground;
  const auto by = static_cast<std::int64_t>(std::llround(static_cast<double>(ground.length()) * share));
  ground.last -= std::clamp<std::int64_t>(by, 1, ground.length() - goal_.least);
  const bool holds_any =
      std::ranges::any_of(task_.shapes, [&](const NestShape& s) { return s.width <= ground.last; });
  if (ground.count > 1 && !holds_any) {
    --ground.count;
    ground.last = ground.bay;
  }
  return ground;
}

// Parts right of a line drawn at random in the last bay go left by what it lost; those of a bay that is gone,
// to any other.
void NestSearch::shorten(const NestGround& ground) {
  NestSpots spots = best_.spots;
  const std::int64_t by = best_.ground.length() - ground.length();
  const std::int64_t start = (best_.ground.count - 1) * best_.ground.bay;
  const std::int64_t line = start + dice_.upto(best_.ground.last);
  for (NestSpot& spot : spots)
    if (ground.count < best_.ground.count && spot.at.x >= start)
      spot.at.x -= ground.bay * (1 + dice_.upto(ground.count - 1));
    else if (ground.count == best_.ground.count && spot.at.x + task_.shapes[spot.shape].width / 2 > line)
      spot.at.x = std::max(start, spot.at.x - by);
  layout_.lie_on(ground);
  for (std::size_t part = 0; part < spots.size(); ++part) settle(part, spots[part]);
  layout_.place_all(ground, spots);
}

// To the nearest place on the ground, in another turn if it has become too short for this one.
void NestSearch::settle(std::size_t part, NestSpot& spot) {
  const NestTask::Part& turns = task_.parts[part];
  NestLayout::Room room = layout_.room_at(spot.shape, spot.at);
  for (std::size_t k = 0; room.empty() && k < turns.count; ++k) {
    spot.shape = turns.first + k;
    room = layout_.room_at(spot.shape, spot.at);
  }
  spot.at = room.nearest(spot.at);
}

// One pass over the parts that overlap. True: better than the least before by more than a little.
bool NestSearch::round(Tried& least) {
  std::vector<std::size_t> order;
  for (std::size_t part = 0; part < layout_.size(); ++part)
    if (layout_.overlaps(part)) order.push_back(part);
  for (std::size_t i = order.size(); i > 1; --i) std::swap(order[i - 1], order[dice_.below(i)]);
  NestMover mover(layout_, dice_);
  for (const std::size_t part : order)
    if (layout_.overlaps(part)) mover.move(part);
  const double severity = layout_.severity();
  const bool much = severity < 0.98 * least.severity;
  if (severity < least.severity) least = {severity, layout_.spots()};
  if (severity > 0) layout_.learn();
  return much;
}

NestSearch::Tried NestSearch::separated(const Persistence& limits) {
  layout_.forget();
  Tried least{layout_.severity(), layout_.spots()};
  for (std::size_t strike = 0; strike < limits.strikes && least.severity > 0 && !is_over(); ++strike) {
    const double before = least.severity;
    for (std::size_t tried = 0; tried < limits.rounds && least.severity > 0 && !is_over(); ++tried)
      if (round(least)) tried = 0;
    if (least.severity < 0.98 * before) strike = 0;
    layout_.place_all(layout_.ground(), least.spots);
  }
  return least;
}

// Two large parts change places, each in any turn that fits there.
void NestSearch::exchange_two() {
  NestSpots spots = layout_.spots();
  for (int tried = 0; tried < 50; ++tried) {
    const std::size_t a = large_[dice_.below(large_.size())];
    const std::size_t b = large_[dice_.below(large_.size())];
    if (task_.parts[a].first == task_.parts[b].first) continue;
    std::swap(spots[a].at, spots[b].at);
    for (const std::size_t part : {a, b}) {
      const NestTask::Part& turns = task_.parts[part];
      const std::size_t shape = turns.first + dice_.below(turns.count);
      if (!layout_.room_at(shape, spots[part].at).empty()) spots[part].shape = shape;
      settle(part, spots[part]);
    }
    break;
  }
  layout_.place_all(layout_.ground(), spots);
}

void NestSearch::explore(const Goal& goal) {
  goal_ = goal;
  while (may_begin())
    if (pool_.empty())
      try_shorter();
    else
      try_otherwise();
}

void NestSearch::try_shorter() {
  tried_ = shorter(share_);
  shorten(tried_);
  Tried tried = separated(persistence_);
  if (tried.severity == 0)
    keep();
  else if (share_ > least_share)
    share_ = std::max(least_share, share_ / 2);
  else
    pool_.push_back(std::move(tried));
}

// From a layout of the pool, the less overlap the likelier.
void NestSearch::try_otherwise() {
  const double from = std::abs(dice_.share() + dice_.share() + dice_.share() - 1.5) / 1.5;
  const auto chosen = static_cast<std::size_t>(from * from * static_cast<double>(pool_.size()));
  layout_.place_all(tried_, pool_[std::min(chosen, pool_.size() - 1)].spots);
  exchange_two();
  Tried tried = separated(persistence_);
  if (tried.severity == 0) return keep();
  pool_.push_back(std::move(tried));
  std::ranges::stable_sort(pool_, {}, &Tried::severity);
  if (pool_.size() > 20) pool_.pop_back();
}

void NestSearch::press(const Goal& goal) {
  goal_ = goal;
  if (!pressed_from_) pressed_from_ = looks();
  const double all = static_cast<double>(std::max(goal.end, *pressed_from_ + 1) - *pressed_from_);
  while (may_begin()) {
    const double passed = static_cast<double>(looks() - *pressed_from_) / all;
    shorten(shorter(0.0005 + (0.00001 - 0.0005) * passed));
    if (separated({5, 50}).severity == 0) keep();
  }
}

}  // namespace berthwright
