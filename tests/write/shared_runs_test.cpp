#include "write/shared_runs.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

using Rows = std::vector<std::vector<std::size_t>>;

TEST(SharedRuns, JoinWhatIsAlwaysDrawnTogether) {
  // 0 1 2 always follow each other; 3 does in one row and not in the other.
  EXPECT_EQ(shared_runs({{0, 1, 2, 3}, {4, 0, 1, 2}}, 5), (Rows{{0, 1, 2}, {3}, {4}}));
}

TEST(SharedRuns, PartWhereOneIsDrawnWithoutTheOther) {
  EXPECT_EQ(shared_runs({{0, 1}, {0}}, 2), (Rows{{0}, {1}}));
  EXPECT_EQ(shared_runs({{0, 1}, {1}}, 2), (Rows{{0}, {1}}));
  EXPECT_EQ(shared_runs({{0, 1}, {1, 0}}, 2), (Rows{{0}, {1}}));
}

// Twice in one row: 0 1 0 1 is one run twice, 0 0 is none.
TEST(SharedRuns, RepeatInARow) {
  EXPECT_EQ(shared_runs({{0, 1, 2, 0, 1}}, 3), (Rows{{0, 1}, {2}}));
  EXPECT_EQ(shared_runs({{0, 1, 0, 1}}, 2), (Rows{{0, 1}}));
  EXPECT_EQ(shared_runs({{0, 0}}, 1), (Rows{{0}}));
}

TEST(SharedRuns, HoldEveryNumberOnce) {
  EXPECT_EQ(shared_runs({}, 2), (Rows{{0}, {1}}));
  EXPECT_EQ(shared_runs({{2, 1, 0}, {2, 1, 0}}, 3), (Rows{{2, 1, 0}}));
}

}  // namespace
}  // namespace berthwright
