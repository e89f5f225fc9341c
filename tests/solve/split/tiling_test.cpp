#include <berthwright/solve/split/tiling.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/tilings.h"

namespace berthwright {
namespace {

Rect inches(int x, int y, int to_x, int to_y) {
  return {{Length::inches(x), Length::inches(y)}, {Length::inches(to_x), Length::inches(to_y)}};
}
Tile tile(int length, int width, std::size_t count) {
  return {Length::inches(length), Length::inches(width), count};
}

// A rear dinette of 76 x 38 in, seats of 23 and backs of 15: 23 + 23 + 15 + 15 = 76 (the closing rule h = S/2
// for backs that stand on the seats, here S = 30; derived). Strips across the bed: 4!/(2! 2!) = 6 orders. But
// 23 + 15 = 38 as well: a seat and a back, turned, fill a block of 38 x 38 in two ways. One block among a
// seat and a back as strips: 3! x 2 = 12; two blocks: 2 x 2 = 4. Together 22.
TEST(Tilings, OfTheClosingRuleAreThoseCountedByHand) {
  const Tilings result = tilings({{inches(0, 0, 76, 38)}, {}, {tile(23, 38, 2), tile(15, 38, 2)}});
  EXPECT_EQ(result.found.size(), 22U);
  EXPECT_TRUE(result.complete);
  for (const std::vector<LaidTile>& way : result.found) EXPECT_EQ(way.size(), 4U);
}

// Backs of 12 in leave 76 - 46 - 24 = 6 in: one filler of 6 x 38, or none at all if fillers are at least 8
// in.
TEST(Tilings, TakeAsFewFillersAsCanBeAndKeepTheirLimits) {
  TilingTask task{{inches(0, 0, 76, 38)}, {}, {tile(23, 38, 2), tile(12, 38, 2)}, 2, Length::inches(6)};
  const Tilings one = tilings(task);
  ASSERT_FALSE(one.found.empty());
  for (const std::vector<LaidTile>& way : one.found) {
    const auto filler = std::ranges::find(way, std::size_t{2}, &LaidTile::kind);
    ASSERT_NE(filler, way.end());
    EXPECT_EQ(filler->at.width(), Length::inches(6));
  }
  task.least_side = Length::inches(8);
  EXPECT_TRUE(tilings(task).found.empty());
}

// What is taken is not covered again: with both seats down, two backs of 15 close the 30 in between in one
// way.
TEST(Tilings, LeaveAloneWhatIsTaken) {
  const Tilings result =
      tilings({{inches(0, 0, 76, 38)}, {inches(0, 0, 23, 38), inches(53, 0, 76, 38)}, {tile(38, 15, 2)}});
  ASSERT_EQ(result.found.size(), 1U);
  EXPECT_EQ(result.found[0][0].at, inches(23, 0, 38, 38));
  EXPECT_EQ(result.found[0][1].at, inches(38, 0, 53, 38));
}

TEST(Tilings, SayWhenTheBoundCameFirst) {
  const TilingTask task{{inches(0, 0, 12, 12)}, {}, {tile(1, 2, 72)}};
  const Tilings result = tilings(task, {500, 3});
  EXPECT_FALSE(result.complete);
  EXPECT_LE(result.found.size(), 3U);
}

TEST(Tilings, RefuseNothingToCoverAndTilesWithoutSize) {
  EXPECT_THROW(tilings({}), std::invalid_argument);
  EXPECT_THROW(tilings({{inches(0, 0, 1, 1)}, {}, {tile(0, 1, 1)}}), std::invalid_argument);
}

struct Case {
  TilingTask task;
  oracle::TilingCase cells;
};

// A bay of up to 7 x 6 cells, one or two cut out of it, and up to four tiles.
Case random_case(std::mt19937_64& random) {
  const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  Case result;
  const int length = 3 + below(5);
  const int width = 2 + below(5);
  result.cells.free.assign(static_cast<std::size_t>(width),
                           std::vector<bool>(static_cast<std::size_t>(length), true));
  for (int holes = below(3); holes > 0; --holes)
    result.cells.free[static_cast<std::size_t>(below(width))][static_cast<std::size_t>(below(length))] =
        false;
  for (int y = 0; y < width; ++y)
    for (int x = 0; x < length; ++x)
      if (result.cells.free[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)])
        result.task.parts.push_back(inches(x, y, x + 1, y + 1));
  for (int kinds = 1 + below(3); kinds > 0; --kinds) {
    const int a = 1 + below(3);
    const int b = 1 + below(4);
    const int count = 1 + below(2);
    const bool known = std::ranges::any_of(result.cells.tiles, [&](const oracle::CellTile& other) {
      return std::minmax(other.length, other.width) == std::minmax(a, b);
    });
    if (known) continue;
    result.cells.tiles.push_back({a, b, count});
    result.task.tiles.push_back(tile(a, b, static_cast<std::size_t>(count)));
  }
  return result;
}

TEST(Tilings, AreAsManyAsAnExhaustiveSearchOverCellsFinds) {
  int closed = 0;
  for (unsigned seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    Case a_case = random_case(random);
    if (a_case.task.parts.empty()) continue;
    for (int fillers = 0; fillers <= 2; ++fillers) {
      a_case.task.fillers = static_cast<std::size_t>(fillers);
      a_case.cells.fillers = fillers;
      const Tilings ours = tilings(a_case.task, {1'000'000, 100'000});
      const oracle::TilingCount cells = oracle::count_tilings(a_case.cells);
      ASSERT_EQ(!ours.found.empty(), cells.fewest_fillers.has_value());
      if (ours.found.empty()) continue;
      ++closed;
      const auto used = static_cast<std::size_t>(
          std::ranges::count(ours.found[0], a_case.task.tiles.size(), &LaidTile::kind));
      ASSERT_EQ(used, static_cast<std::size_t>(*cells.fewest_fillers));
      // On these small bays every line of cells is a normal position only while a filler is alone.
      if (*cells.fewest_fillers <= 1) {
        ASSERT_EQ(ours.found.size(), cells.ways);
      }
    }
  }
  EXPECT_GT(closed, 100);
}

TEST(Tilings, DoNotDependOnMirrorShiftOrOrder) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    Case a_case = random_case(random);
    if (a_case.task.parts.empty()) continue;
    a_case.task.fillers = 1;
    const Tilings plain = tilings(a_case.task);
    TilingTask other = a_case.task;
    for (Rect& part : other.parts)
      part = {{-part.high.x, part.low.y + 3_in}, {-part.low.x, part.high.y + 3_in}};
    std::ranges::reverse(other.parts);
    std::ranges::reverse(other.tiles);
    const Tilings mirrored = tilings(other);
    ASSERT_EQ(plain.found.size(), mirrored.found.size());
  }
}

}  // namespace
}  // namespace berthwright
