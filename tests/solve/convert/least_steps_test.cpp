#include "solve/convert/least_steps.h"

#include <gtest/gtest.h>

#include <random>

#include "oracle/every_order.h"

namespace berthwright {
namespace {

using Verdict = LeastSteps::Verdict;

SpotSet set_of(const std::vector<std::size_t>& spots) {
  SpotSet set;
  for (const std::size_t spot : spots) set.set(spot);
  return set;
}

MoveTable table_of(const std::vector<oracle::PlainSpot>& spots, const std::vector<std::size_t>& start,
                   const std::vector<std::size_t>& goal) {
  MoveTable table{start.size(), {}, start, goal};
  for (const oracle::PlainSpot& spot : spots) {
    SpotRow row{spot.piece, set_of(spot.needs), {}, 0};
    for (const auto& [joins, bars] : spot.ways) row.ways.push_back({joins, set_of(bars), false});
    table.spots.push_back(row);
  }
  return table;
}

// Two pieces that want each other's place, and one place aside for the first: aside, over, back: three.
TEST(LeastSteps, TwoThatChangePlacesTakeThree) {
  const std::vector<oracle::PlainSpot> spots{
      {0, {}, {{0, {3}}}}, {0, {}, {{0, {2}}}}, {1, {}, {{0, {1}}}}, {1, {}, {{0, {0}}}}, {0, {}, {{0, {}}}}};
  const LeastSteps found = least_steps(table_of(spots, {0, 2}, {1, 3}));
  ASSERT_EQ(found.verdict, Verdict::order);
  EXPECT_EQ(found.moves, (std::vector<TableMove>{{0, 0, 4}, {1, 2, 3}, {0, 4, 1}}));
  EXPECT_EQ(found.at_least, 3U);
  const std::vector<oracle::PlainSpot> nowhere(spots.begin(), spots.end() - 1);
  EXPECT_EQ(least_steps(table_of(nowhere, {0, 2}, {1, 3})).verdict, Verdict::none);
}

// Nothing to do takes no step; what stands under another thing waits for it; what is barred for good is told.
TEST(LeastSteps, KnowsWhenThereIsNothingToDoAndWhenNothingHelps) {
  const std::vector<oracle::PlainSpot> spots{{0, {}, {{0, {}}}}, {0, {}, {{0, {}}}}, {1, {0}, {{0, {}}}}};
  EXPECT_EQ(least_steps(table_of(spots, {0, 2}, {0, 2})).moves.size(), 0U);
  EXPECT_EQ(least_steps(table_of(spots, {0, 2}, {0, 2})).verdict, Verdict::order);
  const LeastSteps carried = least_steps(table_of(spots, {0, 2}, {1, 2}));
  EXPECT_EQ(carried.verdict, Verdict::none);
  EXPECT_EQ(carried.stuck, (std::vector<std::size_t>{0, 1}));
}

// Every stage looked at says the same, for what can be done and what cannot.
TEST(LeastSteps, AgreesWithLookingAtEveryStage) {
  std::size_t orders = 0, none = 0, longest = 0;
  for (unsigned seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
    const std::size_t pieces = 2 + below(4), each = 3;
    std::vector<oracle::PlainSpot> spots;
    std::vector<std::size_t> start, goal;
    for (std::size_t piece = 0; piece < pieces; ++piece) {
      start.push_back(spots.size());
      goal.push_back(spots.size() + below(4) % 2);
      for (std::size_t k = 0; k < each; ++k) spots.push_back({piece, {}, {}});
    }
    for (oracle::PlainSpot& spot : spots)
      for (std::size_t way = 0; way < 1 + below(2); ++way) {
        std::vector<std::size_t> bars;
        for (std::size_t other = 0; other < spots.size(); ++other)
          if (spots[other].piece != spot.piece && below(6) == 0) bars.push_back(other);
        spot.ways.emplace_back(below(2), bars);
      }
    for (std::size_t piece = 1; piece < pieces; ++piece) {
      if (below(3) == 0) spots[start[piece]].needs.push_back(start[piece - 1]);
      if (below(3) == 0 && goal[piece] != start[piece]) spots[goal[piece]].needs.push_back(goal[piece - 1]);
    }
    const auto expected = oracle::fewest_moves(spots, start, goal);
    const LeastSteps found = least_steps(table_of(spots, start, goal));
    if (!expected) {
      ++none;
      EXPECT_EQ(found.verdict, Verdict::none);
      continue;
    }
    ++orders;
    longest = std::max(longest, *expected);
    ASSERT_EQ(found.verdict, Verdict::order);
    EXPECT_EQ(found.moves.size(), *expected);
    ASSERT_TRUE(found.at_least.has_value());
    EXPECT_LE(*found.at_least, *expected);
  }
  EXPECT_GT(orders, 50U);
  EXPECT_GT(none, 50U);
  EXPECT_GT(longest, 5U);
}

// Eight tiles and a hole: a tile slides into the hole beside it. Cells and tiles counted from 0.
MoveTable eight_tiles(const std::array<int, 9>& tiles) {
  MoveTable table;
  table.pieces = 8;
  const auto number = [](std::size_t tile, std::size_t cell) { return tile * 9 + cell; };
  for (std::size_t tile = 0; tile < 8; ++tile)
    for (std::size_t cell = 0; cell < 9; ++cell) {
      SpotRow row{tile, {}, {}, 0};
      SpotSet others;
      for (std::size_t other = 0; other < 8; ++other)
        if (other != tile) others.set(number(other, cell));
      for (std::size_t next = 0; next < 9; ++next) {
        const auto apart = [](std::size_t a, std::size_t b) { return a > b ? a - b : b - a; };
        if (apart(cell / 3, next / 3) + apart(cell % 3, next % 3) != 1) continue;
        row.ways.push_back({std::min(cell, next) * 9 + std::max(cell, next), others, false});
      }
      table.spots.push_back(row);
    }
  for (std::size_t tile = 0; tile < 8; ++tile) {
    const auto at = std::find(tiles.begin(), tiles.end(), static_cast<int>(tile) + 1) - tiles.begin();
    table.start.push_back(number(tile, static_cast<std::size_t>(at)));
    table.goal.push_back(number(tile, tile));
  }
  return table;
}

// The eight-puzzle: no position needs more than 31 moves, and this one does (A. Reinefeld, "Complete Solution
// of the Eight-Puzzle and the Benefit of Node Ordering in IDA*", IJCAI 1993; number and position from memory,
// not re-read). Half of all positions cannot be solved: an odd number of exchanges does not undo itself
// (W. W. Johnson and W. E. Story, 1879).
TEST(LeastSteps, SolvesTheHardestSlidingTilesInTheirPublishedNumberOfMoves) {
  const LeastSteps hardest = least_steps(eight_tiles({8, 6, 7, 2, 5, 4, 3, 0, 1}));
  ASSERT_EQ(hardest.verdict, Verdict::order);
  EXPECT_EQ(hardest.moves.size(), 31U);
  EXPECT_EQ(least_steps(eight_tiles({1, 2, 3, 4, 5, 6, 0, 7, 8})).moves.size(), 2U);
}

TEST(LeastSteps, ProvesThatTwoExchangedTilesStayExchanged) {
  const LeastSteps odd = least_steps(eight_tiles({2, 1, 3, 4, 5, 6, 7, 8, 0}));
  EXPECT_EQ(odd.verdict, Verdict::none);
  EXPECT_GE(odd.stages, 181'440U);  // half of 9! positions, every one looked at
}

TEST(LeastSteps, SaysThatItDidNotDecideWithinItsBound) {
  const LeastSteps found = least_steps(eight_tiles({2, 1, 3, 4, 5, 6, 7, 8, 0}), {100, 1000, 10'000});
  EXPECT_EQ(found.verdict, Verdict::undecided);
  EXPECT_TRUE(found.moves.empty());
}

}  // namespace
}  // namespace berthwright
