#include "solve/place/nest_search.h"

#include <algorithm>
#include <cmath>

#include "solve/place/nest_build.h"
#include "solve/place/nest_move.h"

namespace berthwright {
namespace {

// By how much the ground is shortened at first and at last, how long overlaps are fought, and for which part
// of the effort layouts are changed at large: our own choice, by the published instances.
constexpr double first_share = 0.02;
constexpr double least_share = 0.001;
constexpr std::size_t usual_strikes = 3;
constexpr std::size_t usual_rounds = 100;
constexpr double exploring = 0.8;

}  // namespace

NestSearch::NestSearch(const NestTask& task, const NestGround& bays, std::uint64_t seed)
    : task_(task), pairs_(task), layout_(task, pairs_), dice_(seed) {
  double all = 0;
  for (const NestTask::Part& part : task.parts) all += task.shapes[part.first].area;
  double sum = 0;
  for (const std::size_t part : largest_first(task)) {
    if (sum > 0.75 * all) break;
    sum += task.shapes[task.parts[part].first].area;
    large_.push_back(part);
  }
  const NestBuilt built = nest_built(task, pairs_, bays);
  layout_.place_all(built.ground, built.spots);
  keep();
}

void NestSearch::keep() {
  spots_ = pushed_left(task_, pairs_, layout_.ground(), layout_.spots());
  ground_ = closed_up(task_, layout_.ground(), spots_);
  if (tell != nullptr) tell(*this);
}

void NestSearch::run(std::uint64_t effort, std::int64_t least) {
  least_ = least;
  effort_ = static_cast<std::uint64_t>(static_cast<double>(effort) * exploring);
  explore();
  effort_ = effort;
  press();
}

NestGround NestSearch::shorter(double share) const {
  NestGround ground = ground_;
  const auto by = static_cast<std::int64_t>(std::llround(static_cast<double>(ground.length()) * share));
  ground.last -= std::clamp<std::int64_t>(by, 1, ground.length() - least_);
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
  NestSpots spots = spots_;
  const std::int64_t by = ground_.length() - ground.length();
  const std::int64_t start = (ground_.count - 1) * ground_.bay;
  const std::int64_t line = start + dice_.upto(ground_.last);
  for (NestSpot& spot : spots)
    if (ground.count < ground_.count && spot.at.x >= start)
      spot.at.x -= ground.bay * (1 + dice_.upto(ground.count - 1));
    else if (ground.count == ground_.count && spot.at.x + task_.shapes[spot.shape].width / 2 > line)
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

void NestSearch::explore() {
  double share = first_share;
  while (!is_over()) {
    shorten(shorter(share));
    Tried tried = separated({usual_strikes, usual_rounds});
    if (tried.severity == 0) {
      keep();
      continue;
    }
    if (share > least_share) {
      share = std::max(least_share, share / 2);
      continue;
    }
    const NestGround ground = layout_.ground();
    std::vector<Tried> pool;
    while (tried.severity > 0 && !is_over()) {
      pool.push_back(std::move(tried));
      std::ranges::stable_sort(pool, {}, &Tried::severity);
      if (pool.size() > 20) pool.pop_back();
      // The less overlap, the likelier.
      const double from = std::abs(dice_.share() + dice_.share() + dice_.share() - 1.5) / 1.5;
      const auto chosen = static_cast<std::size_t>(from * from * static_cast<double>(pool.size()));
      layout_.place_all(ground, pool[std::min(chosen, pool.size() - 1)].spots);
      exchange_two();
      tried = separated({usual_strikes, usual_rounds});
    }
    if (tried.severity == 0) keep();
  }
}

void NestSearch::press() {
  const std::uint64_t from = looks();
  while (!is_over()) {
    const double passed =
        static_cast<double>(looks() - from) / static_cast<double>(std::max<std::uint64_t>(1, effort_ - from));
    shorten(shorter(0.0005 + (0.00001 - 0.0005) * passed));
    if (separated({5, 50}).severity == 0) keep();
  }
}

}  // namespace berthwright
