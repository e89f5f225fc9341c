#include <gtest/gtest.h>

#include <berthwright/solve/room/collisions.h>

#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;

std::vector<Overreach> overreach_in(const Plan& plan) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return find_overreach(plan, *arrangement);
}

double inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

TEST(Overreach, WhatFillsTheRoomExactlyIsInside) {
  EXPECT_TRUE(
      overreach_in(Furniture().fixture("all", "cabinet", {"0", "0", "120", "76"}, "0", "76").plan()).empty());
}

TEST(Overreach, TellsHowFarAndWhere) {
  const std::vector<Overreach> found =
      overreach_in(Furniture().fixture("box", "cabinet", {"100", "10", "20 1/16", "20"}, "2", "30").plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].thing, "box");
  EXPECT_EQ(found[0].by, Length::inches(1, 16));
  EXPECT_EQ(found[0].where.plan.x, 120_in + Length::inches(1, 16));
  EXPECT_FALSE(found[0].tolerated);
}

TEST(Overreach, ACushionIsSqueezedByAQuarterOfAnInch) {
  const auto of_length = [](const std::string& length) {
    return overreach_in(Furniture().lay("mat", "cushion", {"0", "0", length, "24"}, "4").plan());
  };
  EXPECT_TRUE(of_length("120").empty());
  ASSERT_EQ(of_length("120 1/4").size(), 1U);
  EXPECT_TRUE(of_length("120 1/4")[0].tolerated);
  EXPECT_FALSE(of_length("120 17/64")[0].tolerated);
  const std::vector<Overreach> board =
      overreach_in(Furniture().lay("board", "board", {"0", "0", "120 1/64", "24"}, "1").plan());
  ASSERT_EQ(board.size(), 1U);
  EXPECT_FALSE(board[0].tolerated);
}

// Two joints of 1/4 in and a wall that takes another 1/4: 3/4 in a row, more than the 1/2 that foam gives.
TEST(Overreach, TheWallCountsInTheRow) {
  const auto row = [](const std::string& first_joint) {
    return overreach_in(Furniture()
                            .lay("a", "cushion", {"0", "0", first_joint, "24"}, "4")
                            .lay("b", "cushion", {"40", "0", "40", "24"}, "4")
                            .lay("c", "cushion", {"79 3/4", "0", "40 1/2", "24"}, "4")
                            .plan());
  };
  ASSERT_EQ(row("40").size(), 1U);
  EXPECT_TRUE(row("40")[0].tolerated);
  ASSERT_EQ(row("40 1/4").size(), 1U);
  EXPECT_FALSE(row("40 1/4")[0].tolerated);
}

// A quarter of an inch too far to the rear, which foam gives, and half an inch to the right, which it does
// not.
TEST(Overreach, OneWallTooFarIsEnough) {
  const std::vector<Overreach> found =
      overreach_in(Furniture().lay("mat", "cushion", {"84", "52 1/2", "36 1/4", "24"}, "4").plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_GE(found[0].by, Length::inches(1, 2));
  EXPECT_FALSE(found[0].tolerated);
}

// The roof comes down to the front in a quarter circle of 16 in about (16, 60). The locker's upper corner at
// (2, 74) is root(14 x 14 + 14 x 14) = 19.799 in from there, so 3.799 in outside.
TEST(Overreach, ALockerMeetsTheRoundRoof) {
  Furniture furniture;
  furniture.interior(
      R"("length": 120, "width": 76, "height": 76, "side_profile": {"corners": {"roof front": {"round": "16"}}})");
  furniture.fixture("locker", "locker", {"2", "0", "12", "76"}, "60", "74");
  const std::vector<Overreach> found = overreach_in(furniture.plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(inches(found[0].by), 3.79899, 0.002);
  EXPECT_EQ(found[0].where.plan.x, 2_in);
  EXPECT_EQ(found[0].where.z, 74_in);
}

TEST(Overreach, TheSideWallsMayCurveToo) {
  Furniture furniture;
  furniture.interior(R"("length": 120, "width": 76, "height": 76,
                        "cross_profile": {"corners": {"roof left": {"clip": ["10", "10"]}}})");
  // The slope runs from (0, 66) to (10, 76): y - z + 66 = 0. (0, 70) lies 4 / root 2 = 2.828 in outside.
  furniture.fixture("locker", "locker", {"20", "0", "30", "12"}, "60", "70");
  const std::vector<Overreach> found = overreach_in(furniture.plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(inches(found[0].by), 2.828427, 1e-5);
  EXPECT_EQ(found[0].where.plan.y, 0_in);
  EXPECT_EQ(found[0].where.z, 70_in);
}

// Round on round of the same radius: what chords leave between them is no overreach. A square corner in a
// round of 8 in reaches 8 (root 2 - 1) = 3.314 in outside.
TEST(Overreach, RoundCornersFitInRoundCorners) {
  const auto in_round_room = [](const std::string& corners) {
    Furniture furniture;
    furniture.interior(
        R"("length": 120, "width": 76, "height": 76, "corners": {"front left": {"round": "8"}})");
    furniture.lay("mat", "cushion", {"0", "0", "40", "40"}, "4", "", corners);
    return overreach_in(furniture.plan());
  };
  EXPECT_TRUE(in_round_room(R"("corners": {"front left": {"round": "8"}})").empty());
  // Drawn with other chords, a round of 8 1/1000 in still lies within a tenth of a millimetre.
  EXPECT_TRUE(in_round_room(R"("corners": {"front left": {"round": "7.999"}})").empty());
  const std::vector<Overreach> square = in_round_room(R"("corners": {})");
  ASSERT_EQ(square.size(), 1U);
  EXPECT_NEAR(inches(square[0].by), 3.3137, 0.002);
  const std::vector<Overreach> tighter = in_round_room(R"("corners": {"front left": {"round": "7"}})");
  ASSERT_EQ(tighter.size(), 1U);
  EXPECT_NEAR(inches(tighter[0].by), 0.41421, 0.004);
}

// The room is 120 x 76 less a recess of 20 x 40 at the right. A board laid across the recess from wall to
// wall lies outside by half of its width at most: 10 in, in its middle.
TEST(Overreach, WhatSpansARecessIsOutside) {
  Furniture furniture;
  furniture.interior(
      R"("outline": [[0, 0], [120, 0], [120, 76], [70, 76], [70, 36], [50, 36], [50, 76], [0, 76]], "height": 76)");
  furniture.lay("board", "board", {"40", "60", "40", "4"}, "1");
  const std::vector<Overreach> found = overreach_in(furniture.plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_GE(found[0].by, 10_in);
  EXPECT_LE(found[0].by, 10_in + Length::inches(1, 64));
}

TEST(Overreach, TanksAndBatteriesMayBeOutside) {
  EXPECT_TRUE(overreach_in(Furniture()
                               .fixture("battery", "battery", {"110", "0", "12", "8"}, "0", "10")
                               .fixture("tank", "tank", {"50", "70", "30", "12"}, "0", "12")
                               .plan())
                  .empty());
}

TEST(Overreach, AMirroredRoomGivesTheSame) {
  for (const bool mirror : {false, true}) {
    Furniture furniture;
    furniture.interior(std::string(R"("length": 120, "width": 76, "height": 76, "corners": {")") +
                       (mirror ? "front right" : "front left") + R"(": {"round": "8"}})");
    furniture.lay("mat", "cushion", {"0", mirror ? "36" : "0", "40", "40"}, "4");
    const std::vector<Overreach> found = overreach_in(furniture.plan());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_NEAR(inches(found[0].by), 3.3137, 0.002);
    EXPECT_EQ(found[0].where.plan, (Point{0_in, mirror ? 76_in : 0_in}));
  }
}

}  // namespace
}  // namespace berthwright
