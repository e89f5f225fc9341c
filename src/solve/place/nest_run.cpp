#include "solve/place/nest_run.h"

#include <future>

#include "solve/place/nest_search.h"

namespace berthwright {
namespace {

// For which part of the effort layouts are changed at large, and how often the searches meet: our own choice.
constexpr double exploring = 0.8;
constexpr int slices = 24;

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

NestBuilt first_layout(const NestTask& task, const NestGround& bays) {
  NestPairs pairs(task);
  return nest_built(task, pairs, bays);
}

}  // namespace

NestFound nest_found(const NestTask& task, const NestGround& bays, const NestOrder& order) {
  const NestBuilt built = first_layout(task, bays);
  NestDice seeds(order.seed);
  NestSearch a(task, built, seeds.next());
  NestSearch b(task, built, seeds.next());
  const std::uint64_t end = order.effort / 2;
  const auto explored = static_cast<std::uint64_t>(static_cast<double>(end) * exploring);
  for (int slice = 1; slice <= slices; ++slice) {
    const std::uint64_t until = end * static_cast<std::uint64_t>(slice) / static_cast<std::uint64_t>(slices);
    in_both(order.two_threads, [&](int which) {
      NestSearch& search = which == 0 ? a : b;
      search.explore({std::min(until, explored), order.least});
      if (until > explored) search.press({until, order.least}, end);
    });
    level(a, b);
  }
  in_both(order.two_threads, [&](int which) { (which == 0 ? a : b).push(); });
  level(a, b);
  return {a.best(), a.looks() + b.looks()};
}

}  // namespace berthwright
