#include "solve/place/nest_build.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <stdexcept>

namespace berthwright {
namespace {

struct Builder {
  const NestTask& task;
  NestPairs& pairs;
  NestGround ground;
  NestSpots laid{};
  std::vector<NestPoint> reached = std::vector<NestPoint>(task.shapes.size());  // by shape
  std::size_t in_the_way = 0;

  static bool is_before(NestPoint a, NestPoint b) { return a.x != b.x ? a.x < b.x : a.y < b.y; }

  bool is_lawful(std::size_t shape, NestPoint at) const {
    const NestShape& s = task.shapes[shape];
    if (at.x < 0 || at.y < 0 || at.y + s.height > ground.width) return false;
    const std::int64_t in_bay = at.x % ground.bay;
    return in_bay + s.width <= ground.bay;
  }

  // Corners of the bays, of what laid parts leave free, and of that with the sides of the ground.
  std::vector<NestPoint> corners_for(std::size_t shape) const {
    std::vector<NestPoint> places;
    const std::int64_t top = ground.width - task.shapes[shape].height;
    const auto add = [&](NestPoint p) {
      // Left of where the shape lay free last nothing has been since.
      if (!is_before(p, reached[shape]) && is_lawful(shape, p)) places.push_back(p);
    };
    for (std::int64_t bay = 0; bay < ground.count; ++bay) add({bay * ground.bay, 0});
    for (const NestSpot& other : laid) {
      if (other.at.x + task.shapes[other.shape].width < reached[shape].x) continue;
      const NestPairs::Seen seen = pairs.of(other.shape, shape);
      const double sign = seen.turned ? -1 : 1;
      for (const NestBorder& b : seen.pair->border())
        for (const double along : {b.low, b.high}) {
          const double x = sign * (static_cast<double>(b.at.x) + along * static_cast<double>(b.way.x));
          const double y = sign * (static_cast<double>(b.at.y) + along * static_cast<double>(b.way.y));
          const NestPoint p = other.at + NestPoint{static_cast<std::int64_t>(std::floor(x + 0.5)),
                                                   static_cast<std::int64_t>(std::floor(y + 0.5))};
          add(p);
          add({p.x, 0});
          add({p.x, top});
          add({other.at.x - other.at.x % ground.bay, p.y});
        }
    }
    std::ranges::sort(places, is_before);
    const auto same = std::ranges::unique(places);
    places.erase(same.begin(), same.end());
    return places;
  }

  // What was in the way last is likely to be so next.
  bool is_free(const NestSpot& spot) {
    if (in_the_way < laid.size() && pairs.clash(laid[in_the_way], spot)) return false;
    const auto other = std::ranges::find_if(laid, [&](const NestSpot& o) { return pairs.clash(o, spot); });
    if (other == laid.end()) return true;
    in_the_way = static_cast<std::size_t>(other - laid.begin());
    return false;
  }

  NestSpot best_for(const NestTask::Part& part) {
    std::optional<NestSpot> best;
    std::int64_t end = 0;
    for (std::size_t shape = part.first; shape < part.first + part.count; ++shape)
      for (const NestPoint place : corners_for(shape)) {
        if (best && place.x + task.shapes[shape].width >= end) break;
        if (!is_free({shape, place})) continue;
        reached[shape] = place;
        best = {shape, place};
        end = place.x + task.shapes[shape].width;
        break;
      }
    if (!best) throw std::logic_error("a part to be nested has no place on an empty bay");
    return *best;
  }
};

struct Pusher {
  const NestTask& task;
  NestPairs& pairs;
  const NestGround& ground;
  NestSpots spots;

  bool is_free(std::size_t part, NestPoint at) const {
    for (std::size_t other = 0; other < spots.size(); ++other)
      if (other != part && pairs.clash(spots[other], {spots[part].shape, at})) return false;
    return true;
  }

  // To the left of where the part lies, on the line along x: where borders cross it, from the left.
  std::vector<std::int64_t> stops_of(std::size_t part) const {
    const NestSpot& spot = spots[part];
    const std::int64_t start = spot.at.x - spot.at.x % ground.bay;
    std::vector<std::int64_t> stops{start};
    for (std::size_t other = 0; other < spots.size(); ++other) {
      if (other == part) continue;
      const NestPairs::Seen seen = pairs.of(spots[other].shape, spot.shape);
      const double sign = seen.turned ? -1 : 1;
      const double y = sign * static_cast<double>(spot.at.y - spots[other].at.y);
      for (const NestBorder& b : seen.pair->border()) {
        if (b.way.y == 0) continue;
        const double along = (y - static_cast<double>(b.at.y)) / static_cast<double>(b.way.y);
        if (along < b.low - 1e-9 || along > b.high + 1e-9) continue;
        const double x = sign * (static_cast<double>(b.at.x) + along * static_cast<double>(b.way.x));
        const std::int64_t stop = spots[other].at.x + static_cast<std::int64_t>(std::floor(x));
        for (const std::int64_t at : {stop, stop + 1})
          if (at > start && at < spot.at.x) stops.push_back(at);
      }
    }
    std::ranges::sort(stops);
    return stops;
  }

  bool push(std::size_t part) {
    for (const std::int64_t x : stops_of(part)) {
      if (x >= spots[part].at.x) return false;
      if (!is_free(part, {x, spots[part].at.y})) continue;
      spots[part].at.x = x;
      return true;
    }
    return false;
  }
};

}  // namespace

NestSpots pushed_left(NestPairs& pairs, const NestGround& ground, NestSpots spots) {
  const NestTask& task = pairs.task();
  Pusher pusher{task, pairs, ground, std::move(spots)};
  std::vector<std::size_t> order(task.parts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  // Slanted sides let two parts push each other on by a tick at a time.
  bool moved = true;
  for (int pass = 0; pass < 5 && moved; ++pass) {
    moved = false;
    std::ranges::stable_sort(order, {}, [&](std::size_t part) { return pusher.spots[part].at.x; });
    for (const std::size_t part : order) moved = pusher.push(part) || moved;
  }
  return pusher.spots;
}

std::vector<std::size_t> largest_first(const NestTask& task) {
  std::vector<std::size_t> order(task.parts.size());
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
    return task.shapes[task.parts[a].first].area > task.shapes[task.parts[b].first].area;
  });
  return order;
}

NestGround closed_up(const NestTask& task, NestGround ground, const NestSpots& spots) {
  std::int64_t end = 0;
  for (const NestSpot& spot : spots) end = std::max(end, spot.at.x + task.shapes[spot.shape].width);
  ground.count = std::max<std::int64_t>(1, (end + ground.bay - 1) / ground.bay);
  ground.last = end - (ground.count - 1) * ground.bay;
  return ground;
}

NestBuilt nest_built(NestPairs& pairs, const NestGround& bays) {
  const NestTask& task = pairs.task();
  Builder builder{task, pairs, bays};
  NestSpots spots(task.parts.size());
  for (const std::size_t part : largest_first(task)) {
    spots[part] = builder.best_for(task.parts[part]);
    builder.laid.push_back(spots[part]);
  }
  return {closed_up(task, bays, spots), spots};
}

}  // namespace berthwright
