#include "write/shared_runs.h"

#include <algorithm>

namespace berthwright {
namespace {

/// The only neighbour of each number on one side, so far as it has only one.
class OnlyNeighbours {
 public:
  explicit OnlyNeighbours(std::size_t numbers) : of_(numbers, unseen) {}
  void see(std::size_t number, std::size_t neighbour) {
    if (of_[number] == unseen) of_[number] = neighbour;
    if (of_[number] != neighbour) of_[number] = none;
  }
  std::size_t of(std::size_t number) const { return of_[number]; }

  static constexpr std::size_t none = static_cast<std::size_t>(-1);

 private:
  static constexpr std::size_t unseen = none - 1;
  std::vector<std::size_t> of_;
};

}  // namespace

std::vector<std::vector<std::size_t>> shared_runs(const std::vector<std::vector<std::size_t>>& drawn,
                                                  std::size_t numbers) {
  OnlyNeighbours after(numbers);
  OnlyNeighbours before(numbers);
  for (const std::vector<std::size_t>& row : drawn)
    for (std::size_t i = 0; i < row.size(); ++i) {
      after.see(row[i], i + 1 < row.size() ? row[i + 1] : OnlyNeighbours::none);
      before.see(row[i], i > 0 ? row[i - 1] : OnlyNeighbours::none);
    }
  const auto next = [&](std::size_t number) {
    const std::size_t one = after.of(number);
    return one < numbers && before.of(one) == number ? one : OnlyNeighbours::none;
  };
  std::vector<bool> follows(numbers, false);
  for (std::size_t number = 0; number < numbers; ++number)
    if (const std::size_t one = next(number); one != OnlyNeighbours::none) follows[one] = true;
  std::vector<std::vector<std::size_t>> runs;
  for (std::size_t first = 0; first < numbers; ++first) {
    if (follows[first]) continue;
    runs.push_back({first});
    for (std::size_t one = next(first); one != OnlyNeighbours::none; one = next(one))
      runs.back().push_back(one);
  }
  return runs;
}

}  // namespace berthwright
