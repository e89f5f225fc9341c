#include "solve/place/block_table.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace berthwright {
namespace {

KerfPart kerf_part(std::int64_t length, std::int64_t width, std::size_t count, bool turns = false) {
  return {{length, width}, count, turns};
}
std::int64_t shortest_strip(const std::vector<KerfPart>& parts, std::int64_t width) {
  const auto table = BlockTable::made(parts, {{1'000, width}}, 10'000'000);
  return table->sizes(table->choices() - 1).at(0).length;
}

// 2 x 3 and 4 x 1 lie side by side in 6 x 3, or one behind the other in 4 x 4.
TEST(BlockTable, OfTwoPartsHoldsBothWaysToJoinThem) {
  const auto table = BlockTable::made({kerf_part(2, 3, 1), kerf_part(4, 1, 1)}, {{9, 9}}, 100);
  ASSERT_TRUE(table);
  EXPECT_EQ(table->choices(), 4U);
  EXPECT_EQ(table->sizes(3), (std::vector<KerfSize>{{4, 4}, {6, 3}}));
}

// Beasley (1985), ngcut1 as a strip of width 10 that runs along the parts' lengths (for a strip drawn
// upright: sides swapped): the least length that through-cuts need is 23 (quoted in our issue; sizes:
// OR-Library).
TEST(BlockTable, OfNgcut1NeedsAStripOf23) {
  EXPECT_EQ(shortest_strip({kerf_part(3, 7, 2), kerf_part(8, 2, 2), kerf_part(10, 2, 1), kerf_part(5, 4, 3),
                            kerf_part(2, 9, 2)},
                           10),
            23);
}

TEST(BlockTable, LeavesOutBlocksLargerThanAllStock) {
  const auto table = BlockTable::made({kerf_part(6, 3, 2)}, {{11, 5}, {6, 5}}, 100);
  ASSERT_TRUE(table);
  EXPECT_TRUE(table->sizes(2).empty());
}

TEST(BlockTable, IsNotMadeWhereThatTakesTooLong) {
  EXPECT_FALSE(BlockTable::made({kerf_part(1, 1, 100), kerf_part(2, 1, 100)}, {{9, 9}}, 1'000'000));
  EXPECT_FALSE(BlockTable::made({kerf_part(1, 1, 4'000'000'000)}, {{9, 9}}, 1'000'000));
}

// One sheet of 10 x 10 costs 10, one of 5 x 10, of which there is one, costs 3. Three parts of 5 x 10: the
// small sheet and one large, 13; four: two large, 20, and the small one is no help.
TEST(LeastCut, TakesWhatIsScarceWhereItHelps) {
  const std::vector<KerfStock> stock{{{10, 10}, 10, {}}, {{5, 10}, 3, 1}};
  const std::vector<KerfSize> sizes{{10, 10}, {5, 10}};
  for (const auto& [count, cost] : {std::pair<std::size_t, std::int64_t>{1, 3}, {2, 10}, {3, 13}, {4, 20}}) {
    const auto table = BlockTable::made({kerf_part(5, 10, count)}, sizes, 1'000);
    const auto least = least_cut(*table, stock);
    ASSERT_TRUE(least);
    EXPECT_EQ(least->cost, cost);
  }
  const auto table = BlockTable::made({kerf_part(5, 10, 2)}, sizes, 1'000);
  EXPECT_FALSE(least_cut(*table, {{{5, 10}, 3, 1}}));
}

}  // namespace
}  // namespace berthwright
