#include "solve/place/nest_run.h"

#include <future>

#include "solve/place/nest_search.h"

namespace berthwright {
namespace {

// For which part of the effort layouts are changed at large, how often the searches meet, and how long each
// fights overlaps: our own choice, by the published sets.
constexpr double exploring = 0.8;
constexpr int slices = 24;
constexpr NestSearch::Persistence hasty{1, 50};
constexpr NestSearch::Persistence patient{3, 100};

template <class Work>
void in_both(bool two_threads, const Work& work) {
  if (!two_threads) {
    work(0);
    work(1);
    return;
  }
  std::future<void> other = std::async(std::launch::async, [&] { work(1); });
  work(0);
  other.get();
}

void level(NestSearch& a, NestSearch& b) {
  if (a.ground().length() < b.ground().length())
    b.adopt(a.best());
  else if (b.ground().length() < a.ground().length())
    a.adopt(b.best());
}

}  // namespace

NestFound nest_found(const NestTask& task, const NestGround& bays, const NestOrder& order) {
  NestPairs pairs(task);
  const NestBuilt built = nest_built(pairs, bays);
  NestDice seeds(order.seed);
  NestSearch a(pairs, built, {seeds.next(), hasty});
  NestSearch b(pairs, built, {seeds.next(), patient});
  const std::uint64_t end = order.effort / 2;
  const auto explored = static_cast<std::uint64_t>(static_cast<double>(end) * exploring);
  for (int slice = 1; slice <= slices; ++slice) {
    const std::uint64_t until = end * static_cast<std::uint64_t>(slice) / static_cast<std::uint64_t>(slices);
    in_both(order.two_threads, [&](int which) {
      NestSearch& search = which == 0 ? a : b;
      search.explore({std::min(until, explored), explored, order.least});
      if (until > explored) search.press({until, end, order.least});
    });
    level(a, b);
  }
  in_both(order.two_threads, [&](int which) { (which == 0 ? a : b).push(); });
  level(a, b);
  return {a.best(), a.looks() + b.looks()};
}

}  // namespace berthwright
