#include <berthwright/geometry/widest_way.h>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <random>

namespace berthwright {
namespace {

Rect inches(int x0, int y0, int x1, int y1) {
  return {{Length::inches(x0), Length::inches(y0)}, {Length::inches(x1), Length::inches(y1)}};
}

/// A room of 120 x 76 in for 20 boxes and of twice the area for twice as many, longer up to 100 boxes and
/// then wider, since nothing may be longer than 25 m; a bed along its front wall, a porch of 30 in before a
/// door in the right wall. Seeded, so that every run measures the same rooms.
struct Room {
  Region free;
  std::vector<Edge> bed;
  Region goal;
};

Room room_of(int boxes) {
  std::mt19937 random(7);
  const auto draw = [&](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low));
  };
  const int length = 6 * std::min(boxes, 100);
  const int width = 76 * std::max(1, boxes / 100);
  std::vector<Region> solids;
  for (int i = 0; i < boxes; ++i) {
    const int x = draw(42, length + 30);
    const int y = draw(0, width - 4);
    solids.emplace_back(inches(x, y, x + draw(1, 7), y + draw(1, 7)));
  }
  const Rect bed = inches(0, 0, 38, width);
  const Region room =
      united(inches(0, 0, length + 40, width), inches(length, width, length + 26, width + 30));
  solids.emplace_back(bed);
  return {without(room, united(solids)), edges(bed),
          Region(inches(length, width + 14, length + 26, width + 30))};
}

void widest_way_among_boxes(benchmark::State& state) {
  const Room room = room_of(static_cast<int>(state.range(0)));
  bool reaches = false;
  for ([[maybe_unused]] auto _ : state) {
    const auto way = widest_way(room.free, room.bed, room.goal);
    reaches = way.has_value();
    benchmark::DoNotOptimize(way);
  }
  state.counters["edges"] = static_cast<double>(edges(room.free).size());
  state.counters["reaches"] = reaches ? 1 : 0;
  state.SetComplexityN(state.range(0));
}
BENCHMARK(widest_way_among_boxes)
    ->Arg(10)
    ->Arg(20)
    ->Arg(50)
    ->Arg(100)
    ->Arg(200)
    ->Arg(500)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

}  // namespace
}  // namespace berthwright
