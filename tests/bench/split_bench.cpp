#include <benchmark/benchmark.h>

#include <string>

#include <berthwright/solve/split/reuse.h>
#include <berthwright/solve/split/split.h>

#include "support/bays.h"

// What a shop waits for: proposals for one bay. CPU of this thread.
namespace {

using namespace berthwright;

void splits(benchmark::State& state, const NightBay& bay, const SplitLimits& limits) {
  BaySplits result;
  for ([[maybe_unused]] auto _ : state) benchmark::DoNotOptimize(result = splits_of(bay, limits));
  state.counters["cushions"] =
      result.best.empty() ? 0 : static_cast<double>(result.best.front().pieces.size());
  state.counters["candidates"] = static_cast<double>(result.candidates);
  state.counters["by area"] = static_cast<double>(result.by_area);
  state.counters["on trial"] = static_cast<double>(result.stages);
  state.counters["given up"] = static_cast<double>(result.pruned);
  state.counters["complete"] = result.complete ? 1 : 0;
}

void two_benches(benchmark::State& state) { splits(state, support::facing_benches(23_in, 30_in, 38_in), {}); }

// The wheel arch in the left seat; every seat and back in `state.range(0)` in at most.
void lounge(benchmark::State& state) {
  SplitLimits limits;
  limits.longest_side = Length::inches(state.range(0));
  splits(state, support::lounge_of_three(70_in, 90_in, 22_in, 20_in, 6_in), limits);
}

// A set for two benches, its backs 1/2 in too low, in halves: eight cushions.
void reuse_of_eight(benchmark::State& state) {
  std::vector<OwnCushion> cushions;
  for (int i = 0; i < 8; ++i)
    cushions.push_back({PieceId(std::string(1, static_cast<char>('A' + i))),
                        Region(Rect{{}, {i % 2 == 0 ? 23_in : Length::inches(29, 2), 19_in}}), 4_in});
  const NightBay bay = support::facing_benches(23_in, 30_in, 38_in);
  Reuse result;
  for ([[maybe_unused]] auto _ : state) benchmark::DoNotOptimize(result = reused(bay, cushions));
  state.counters["on trial"] = static_cast<double>(result.stages);
  state.counters["complete"] = result.complete ? 1 : 0;
}

BENCHMARK(two_benches)->Name("split/two benches")->Unit(benchmark::kMillisecond);
BENCHMARK(lounge)->Name("split/lounge with a wheel arch")->Arg(80)->Arg(40)->Unit(benchmark::kMillisecond);
BENCHMARK(reuse_of_eight)->Name("reuse/eight cushions")->Unit(benchmark::kMillisecond);

}  // namespace
