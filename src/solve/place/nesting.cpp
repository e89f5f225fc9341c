#include <berthwright/solve/place/nesting.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <stdexcept>
#include <tuple>

#include "solve/place/nest_run.h"

namespace berthwright {
namespace {

// Of sixteen sides about the circle; reaches exactly `radius` along the axes.
Polygon sixteen_around(Length radius) {
  // 1 and tan of pi / 16, cos and sin of 3 pi / 16 over cos of pi / 16, times 2^30, rounded up.
  constexpr std::int64_t unit = std::int64_t{1} << 30;
  constexpr std::array<std::array<std::int64_t, 2>, 4> corners{
      {{unit, 213580529}, {910274366, 608225887}, {608225887, 910274366}, {213580529, unit}}};
  const auto scaled = [&](std::int64_t factor) {
    return Length::from_ticks(static_cast<std::int64_t>((Int128{radius.ticks()} * factor + unit - 1) / unit));
  };
  std::vector<Point> ring;
  for (int quarter = 0; quarter < 4; ++quarter)
    for (const auto& [along, across] : corners) {
      Point p{scaled(along), scaled(across)};
      for (int turns = 0; turns < quarter; ++turns) p = {-p.y, p.x};
      ring.push_back(p);
    }
  return Polygon::promised(std::move(ring));
}

NestRing ring_of(const Polygon& polygon) {
  NestRing ring;
  for (const Point& p : polygon.vertices()) ring.push_back({p.x.ticks(), p.y.ticks()});
  return ring;
}

// What is handed to the search, and the way back.
struct NestBench {
  struct Lie {
    Placement turned;
    Point low{};  // of the box of the shape, half the gap around it
  };
  const std::vector<NestPart>& parts;
  const NestStock& stock;
  Length reach;  // half the gap, and what rounding may take of it
  NestTask task{};
  std::vector<Lie> lies{};             // of the task's shapes
  std::vector<std::size_t> numbers{};  // of the task's parts, among those given
  std::vector<NestMisfit> misfits{};
  Length longest{};  // of all parts, each in its shortest turn

  void add_all() {
    for (const std::size_t i : largest_first()) {
      const NestPart& part = parts[i];
      const auto alike = std::ranges::find_if(numbers, [&](std::size_t other) {
        const NestPart& o = parts[other];
        return o.outline == part.outline && o.turns == part.turns && o.mirrored == part.mirrored;
      });
      const NestTask::Part shapes = alike == numbers.end()
                                        ? add_shapes(i)
                                        : task.parts[static_cast<std::size_t>(alike - numbers.begin())];
      if (shapes.count == 0) continue;
      task.parts.insert(task.parts.end(), part.count, shapes);
      numbers.insert(numbers.end(), part.count, i);
    }
  }

  // Parts of one area in the order of their corners: nothing depends on the order in which they are given.
  std::vector<std::size_t> largest_first() const {
    std::vector<std::pair<Int128, std::vector<Point>>> keys;
    for (const NestPart& part : parts) {
      if (part.outline.faces().size() != 1) throw std::invalid_argument("a part to be nested has one face");
      const Region at_origin = moved(part.outline, Point{} - part.outline.bounds().low);
      std::vector<Point> corners;
      for (const Edge& edge : edges(at_origin)) corners.push_back(edge.from);
      keys.emplace_back(-at_origin.area().doubled(), std::move(corners));
    }
    std::vector<std::size_t> order(parts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return std::tie(keys[i], parts[i].mirrored); });
    return order;
  }

  // Of the turns in which it fits.
  NestTask::Part add_shapes(std::size_t number) {
    const NestPart& part = parts[number];
    const std::size_t first = lies.size();
    std::vector<Region> seen;
    std::optional<Length> least_width;
    std::optional<Length> shortest;
    for (const bool flipped : {false, true}) {
      if (flipped && !part.mirrored) continue;
      for (const Turn& turn : part.turns.empty() ? std::vector<Turn>{Turn{}} : part.turns) {
        const Placement turned{flipped, turn, {}};
        const Region region = turned(part.outline);
        const Rect box = region.bounds();
        least_width = std::min(least_width.value_or(box.height()), box.height());
        if (box.height() > stock.width || (stock.length && box.width() > *stock.length)) continue;
        shortest = std::min(shortest.value_or(box.width()), box.width());
        const Region at_origin = moved(region, Point{} - box.low);
        if (std::ranges::find(seen, at_origin) != seen.end()) continue;
        seen.push_back(at_origin);
        add_shape(turned, region);
      }
    }
    if (shortest)
      longest = std::max(longest, *shortest);
    else if (part.count > 0)
      misfits.push_back({number, *least_width});
    return {first, lies.size() - first};
  }

  void add_shape(const Placement& turned, const Region& region) {
    const Region around = reach == Length{} ? region : swept(region, sixteen_around(reach));
    const Face& face = around.faces().front();
    std::vector<NestRing> rings{ring_of(face.outer)};
    for (const Polygon& hole : face.holes) {
      rings.push_back(ring_of(hole));
      std::ranges::reverse(rings.back());
    }
    task.shapes.push_back(nest_shape(std::move(rings)));
    lies.push_back({turned, around.bounds().low});
  }

  NestGround bays() const {
    NestGround ground;
    ground.width = (stock.width + 2 * reach).ticks();
    // A strip is one bay that is long enough for any parts.
    ground.bay = stock.length ? (*stock.length + 2 * reach).ticks() : std::int64_t{1} << 50;
    ground.count = stock.length ? static_cast<std::int64_t>(task.parts.size()) : 1;
    return ground;
  }

  NestedPart laid(std::size_t index, const NestSpot& spot, std::int64_t bay) const {
    const Lie& lie = lies[spot.shape];
    const std::int64_t sheet = spot.at.x / bay;
    const Point at{Length::from_ticks(spot.at.x - sheet * bay) - reach,
                   Length::from_ticks(spot.at.y) - reach};
    Placement lies_so = lie.turned;
    lies_so.shift = at - lie.low;
    return {numbers[index], static_cast<std::size_t>(sheet), lies_so};
  }
};

Int128 least_whole(Int128 dividend, Int128 divisor) { return (dividend + divisor - 1) / divisor; }

void set_bounds(Nesting& nesting, const NestStock& stock, Length longest) {
  const Int128 along = least_whole(nesting.parts.doubled(), Int128{2} * stock.width.ticks());
  const Int128 sheets = stock.length ? least_whole(along, stock.length->ticks()) : 1;
  nesting.least_sheets = static_cast<std::size_t>(sheets);
  const Int128 before = stock.length ? (sheets - 1) * stock.length->ticks() : 0;
  nesting.least_length = Length::from_ticks(static_cast<std::int64_t>(along - before));
  if (sheets == 1) nesting.least_length = std::max(nesting.least_length, longest);
}

}  // namespace

double Nesting::density() const {
  return stock == Area{} ? 0 : static_cast<double>(parts.doubled()) / static_cast<double>(stock.doubled());
}

Nesting nested(const std::vector<NestPart>& parts, const NestStock& stock, const NestLimits& limits) {
  if (limits.gap < Length{}) throw std::invalid_argument("a gap is not negative");
  const Length reach = limits.gap == Length{} ? Length{} : half(limits.gap) + 3 * one_tick;
  NestBench bench{parts, stock, reach};
  bench.add_all();
  Nesting result;
  result.misfits = bench.misfits;
  if (bench.numbers.empty()) return result;
  for (const std::size_t number : bench.numbers) result.parts += parts[number].outline.area();
  set_bounds(result, stock, bench.longest);
  const NestGround bays = bench.bays();
  const std::int64_t before = static_cast<std::int64_t>(result.least_sheets - 1) * bays.bay;
  const NestOrder order{limits.effort, before + (result.least_length + 2 * reach).ticks(), limits.seed,
                        limits.two_threads};
  const NestFound found = nest_found(bench.task, bays, order);
  const NestGround& ground = found.best.ground;
  result.sheets = static_cast<std::size_t>(ground.count);
  result.length = Length::from_ticks(ground.last) - 2 * reach;
  result.stock = Area::rectangle(stock.width, result.length);
  for (std::size_t k = 1; k < result.sheets; ++k) result.stock += Area::rectangle(stock.width, *stock.length);
  for (std::size_t i = 0; i < bench.numbers.size(); ++i)
    result.laid.push_back(bench.laid(i, found.best.spots[i], bays.bay));
  std::ranges::stable_sort(result.laid, {}, &NestedPart::part);
  result.effort = found.looks;
  return result;
}

}  // namespace berthwright
