#include <berthwright/solve/open/leaves.h>

#include <gtest/gtest.h>

#include "support/furniture.h"
#include "support/opened_leaves.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::inches;
using support::Opened;
using support::opens;
using Ids = std::vector<std::string>;

// An oven 20 in deep at the left wall whose flap, 14 in high, is hinged 10 in above the floor.
Furniture oven(const std::string& angle = "90") {
  return Furniture().fixture(
      "oven", "cabinet", {"40", "0", "20", "20"}, "0", "36",
      opens(R"("kind": "flap", "face": "right", "base": 10, "top": 24, "angle": )" + angle));
}

// Its free edge stands 14 sin a before the face: 14 sin a = 12 at 58.997 degrees.
TEST(Leaves, AFlapOf14InOpens58DegreesBeforeACabinet12InAway) {
  const Opened made(oven().fixture("bench", "cabinet", {"30", "32", "40", "20"}, "0", "36").plan());
  ASSERT_EQ(made.first().stops.size(), 1U);
  EXPECT_EQ(made.first().free.degrees, 58);
  EXPECT_EQ(made.first().whole.degrees, 90);
  EXPECT_EQ(made.first().stops[0].thing, "bench");
  EXPECT_NEAR(inches(made.first().stops[0].where.plan.y), 32, 0.1);
  EXPECT_EQ(made.first().stops[0].where.plan.x, 50_in);                // the middle of the flap
  EXPECT_NEAR(inches(made.first().stops[0].where.z), 10 + 7.21, 0.2);  // 14 cos 59
}

// A bench 14 in high reaches 4 in above the hinge: its corner, (4, 12) from the hinge, is 12.65 in away and
// met at 71.565 degrees.
TEST(Leaves, AFlapPassesOverABenchUntilItMeetsItsCorner) {
  EXPECT_EQ(Opened(oven().fixture("bench", "bench", {"30", "32", "40", "20"}, "0", "14").plan())
                .first()
                .free.degrees,
            71);
  EXPECT_TRUE(
      Opened(oven().fixture("bench", "bench", {"30", "32", "40", "20"}, "0", "10").plan()).first().is_full());
  EXPECT_TRUE(
      Opened(oven().fixture("bench", "bench", {"30", "34", "40", "20"}, "0", "36").plan()).first().is_full());
  EXPECT_TRUE(
      Opened(oven().fixture("bench", "bench", {"60", "22", "40", "20"}, "0", "36").plan()).first().is_full());
}

// Beyond level it comes down: 10 in below the hinge is the floor, 14 sin (a - 90) = 10 at 135.58 degrees.
TEST(Leaves, AFlapThatHangsDownMeetsTheFloor) {
  const Opened made(oven("180").plan());
  EXPECT_EQ(made.first().free.degrees, 135);
  ASSERT_EQ(made.first().stops.size(), 1U);
  EXPECT_EQ(made.first().stops[0].thing, "");
}

// Hinged at its top it opens upward: its edge stands 14 sin a out and 14 cos a below the hinge.
TEST(Leaves, AFlapHingedAtItsTopMeetsAShelfAbove) {
  const std::string flap =
      R"("kind": "flap", "face": "right", "hinge": "top", "base": 50, "top": 64, "angle": 120)";
  Furniture text;
  text.fixture("locker", "locker", {"40", "0", "20", "12"}, "50", "64", opens(flap));
  EXPECT_TRUE(Opened(text.plan()).first().is_full());
  // 66 in up, 2 in above the hinge: 14 sin (a - 90) = 2 at 98.213 degrees.
  EXPECT_EQ(Opened(text.fixture("shelf", "shelf", {"40", "12", "20", "30"}, "66", "67").plan())
                .first()
                .free.degrees,
            98);
}

// A door of 13 in and something 6 in before it: 13 sin a = 6 at 27.486 degrees. It comes from the hinge side
// only, so a thing beside its free edge, 1 in beyond it, is never met.
TEST(Leaves, ADoorMeetsWhatStandsBeforeIt) {
  const auto door = [](const std::string& hinge, const std::string& angle) {
    return Furniture().fixture(
        "galley", "counter", {"38", "0", "34", "20"}, "0", "36",
        opens(
            R"("kind": "door", "face": "right", "from": 14, "width": 13, "base": 3, "top": 28, "hinge": ")" +
            hinge + R"(", "angle": )" + angle));
  };
  EXPECT_EQ(Opened(door("rear", "90").fixture("heater", "cabinet", {"52", "26", "10", "7"}, "0", "14").plan())
                .first()
                .free.degrees,
            27);
  EXPECT_TRUE(Opened(door("rear", "90").fixture("low", "cabinet", {"52", "26", "10", "7"}, "0", "3").plan())
                  .first()
                  .is_full());
  EXPECT_TRUE(
      Opened(door("rear", "90").fixture("beside", "cabinet", {"38", "26", "14", "7"}, "0", "30").plan())
          .first()
          .is_full());
  // Hinged at its rear end it swings beyond it: at 180 degrees it lies along the galley's own face.
  EXPECT_TRUE(Opened(door("rear", "180").plan()).first().is_full());
  // A post 4 to 6 in beyond the hinge and 3 to 5 in out of the face: its corner at (-4, 5) is met first, at
  // 128.66 degrees.
  EXPECT_EQ(Opened(door("rear", "180").fixture("post", "wall", {"69", "23", "2", "2"}, "0", "70").plan())
                .first()
                .free.degrees,
            128);
}

TEST(Leaves, ADoorHingedAtTheWallOpensSquare) {
  const auto door = [](const std::string& angle) {
    return Opened(
        Furniture()
            .fixture("box", "cabinet", {"0", "0", "20", "20"}, "0", "36",
                     opens(R"("kind": "door", "face": "right", "hinge": "front", "angle": )" + angle))
            .plan());
  };
  EXPECT_TRUE(door("90").first().is_full());
  EXPECT_EQ(door("90.5").first().free.degrees, 90);
  EXPECT_EQ(door("90.5").first().whole.degrees, 91);
  EXPECT_EQ(door("180").first().free.degrees, 90);
  EXPECT_EQ(door("180").first().stops.at(0).thing, "");
}

// A lid 16 in wide hinged 5 in off the wall leans back until 16 cos a = -5, 108.21 degrees.
TEST(Leaves, ALidLeansBackAsFarAsTheWall) {
  const auto lid = [](const std::string& left) {
    return Opened(
        Furniture()
            .fixture(
                "bench", "bench", {"80", "0", "38", "24"}, "0", "14",
                opens(
                    R"("kind": "lid", "length": 30, "width": 16, "hinge": "left", "angle": 120, "at": {"front": 84, "left": )" +
                    left + "}"))
            .plan());
  };
  EXPECT_EQ(lid("5").first().free.degrees, 108);
  EXPECT_EQ(lid("0").first().free.degrees, 90);
  EXPECT_TRUE(lid("8").first().is_full());
}

// The wall slopes from 20 in up to 40 in at 20 in from the front. The edge of a lid of 20 in, 14 in up, meets
// it where 14 + 20 sin a = 20 + 20 cos a: sin (a - 45) = 6 / (20 sqrt 2), 57.247 degrees.
TEST(Leaves, ALidMeetsASlopingWall) {
  const std::string lid =
      opens(R"("kind": "lid", "length": 20, "at": {"front": 0, "left": 10}, "width": 30, "hinge": "front")");
  Furniture along;
  along.interior(
      R"("length": 120, "width": 76, "height": 40, "side_profile": {"corners": {"roof front": {"clip": [20, 20]}}})");
  EXPECT_EQ(Opened(along.fixture("bench", "bench", {"0", "0", "30", "76"}, "0", "14", lid).plan())
                .first()
                .free.degrees,
            57);
  // The same across the trailer.
  Furniture across;
  across.interior(
      R"("length": 120, "width": 76, "height": 40, "cross_profile": {"corners": {"roof left": {"clip": [20, 20]}}})");
  const std::string turned =
      opens(R"("kind": "lid", "width": 20, "at": {"front": 10, "left": 0}, "length": 30, "hinge": "left")");
  EXPECT_EQ(Opened(across.fixture("bench", "bench", {"0", "0", "76", "30"}, "0", "14", turned).plan())
                .first()
                .free.degrees,
            57);
}

TEST(Leaves, ADrawerComesOutExactlyAsFarAsThereIsRoom) {
  const std::string drawer = opens(
      R"("kind": "drawer", "face": "right", "from": 1, "width": 12, "base": 10, "top": 20, "pull": 17)");
  const auto before = [&](const support::Spot& spot, const std::string& base) {
    return Opened(Furniture()
                      .fixture("galley", "counter", {"38", "0", "34", "20"}, "0", "36", drawer)
                      .fixture("thing", "cabinet", spot, base, "30")
                      .plan())
        .first();
  };
  EXPECT_EQ(before({"45", "26 1/64", "20", "10"}, "0").free.travel, 6_in + Length::inches(1, 64));
  EXPECT_EQ(before({"51", "20", "20", "10"}, "0").free.travel, 17_in);
  EXPECT_EQ(before({"45", "20", "20", "10"}, "20").free.travel, 17_in);
  EXPECT_EQ(before({"45", "20", "20", "10"}, "0").free.travel, 0_in);
  EXPECT_EQ(before({"45", "37", "20", "10"}, "0").stops.size(), 0U);
  // The wall across the aisle, 10 in away.
  const Opened narrow(Furniture()
                          .interior(R"("length": 120, "width": 36, "height": 76)")
                          .fixture("galley", "counter", {"38", "0", "34", "26"}, "0", "36", drawer)
                          .plan());
  EXPECT_EQ(narrow.first().free.travel, 10_in);
  EXPECT_EQ(narrow.first().stops.at(0).where.plan, (Point{45_in, 36_in}));
}

TEST(Leaves, ALooseLidNeeds2InToBeLiftedOut) {
  const std::string lid = opens(R"("kind": "lid", "hinge": "lifts out")");
  const auto under = [&](const std::string& base) {
    return Opened(Furniture()
                      .fixture("bench", "bench", {"0", "0", "40", "20"}, "0", "14", lid)
                      .fixture("locker", "locker", {"30", "10", "40", "20"}, base, "60")
                      .plan())
        .first();
  };
  EXPECT_TRUE(under("16").is_full());
  EXPECT_EQ(under("15 1/4").free.travel, 1_in + Length::inches(1, 4));
  EXPECT_EQ(under("14").free.travel, 0_in);
  const Opened low(Furniture()
                       .interior(R"("length": 120, "width": 76, "height": 36)")
                       .fixture("bench", "bench", {"0", "0", "40", "20"}, "0", "35", lid)
                       .plan());
  EXPECT_EQ(low.first().free.travel, 1_in);
}

Furniture bench_with_cushions() {
  return Furniture()
      .fixture("bench", "bench", {"80", "0", "38", "22"}, "0", "14",
               opens(R"("kind": "lid", "hinge": "left")"))
      .lay("seat", "cushion", {"80", "0", "38", "22"}, "4", R"("on": "bench")")
      .lay("bolster", "bolster", {"80", "0", "38", "4"}, "4", R"("on": "seat")")
      .lay("far", "cushion", {"0", "0", "40", "20"}, "4");
}

TEST(Leaves, WhatLiesOnALidIsLiftedOffFromTheTop) {
  const Opened made(bench_with_cushions().plan());
  EXPECT_EQ(made.first().lifted, (Ids{"bolster", "seat"}));
  EXPECT_TRUE(made.first().is_full());
  // A lid clear of them is not lifted for.
  EXPECT_TRUE(leaves_of_fixtures(made.plan).at(0).lifted.empty());
}

// A shelf over the bench is no piece: 22 in of lid under a shelf 10 in above it, 22 sin a = 10 at 27.04
// degrees.
TEST(Leaves, WhatHangsOverALidStopsItAfterThat) {
  const Opened made(
      bench_with_cushions().fixture("shelf", "shelf", {"80", "0", "38", "22"}, "24", "25").plan());
  EXPECT_EQ(made.first().lifted, (Ids{"bolster", "seat"}));
  EXPECT_EQ(made.first().free.degrees, 27);
  EXPECT_EQ(made.first().stops.at(0).thing, "shelf");
}

TEST(Leaves, ALidUnderAFixtureDoesNotOpen) {
  const Opened made(
      bench_with_cushions().fixture("box", "cabinet", {"80", "0", "10", "10"}, "14", "20").plan());
  EXPECT_EQ(made.first().free.degrees, 0);
  EXPECT_EQ(made.first().stops.at(0).thing, "box");
}

TEST(Leaves, WhatIsBuiltInOneAnotherAndCurtainsAreNotInTheWay) {
  const std::string lid = opens(R"("kind": "lid", "hinge": "left")");
  EXPECT_TRUE(Opened(Furniture()
                         .fixture("counter", "counter", {"0", "0", "40", "20"}, "0", "36", lid)
                         .fixture("sink", "sink", {"10", "3", "14", "14"}, "30", "36")
                         .fixture("curtain", "curtain", {"0", "10", "40", "1"}, "36", "70")
                         .plan())
                  .first()
                  .is_full());
  const std::string flap = opens(R"("kind": "flap", "face": "right")");
  EXPECT_TRUE(Opened(Furniture()
                         .fixture("counter", "counter", {"0", "0", "40", "20"}, "0", "36")
                         .fixture("oven", "cabinet", {"10", "2", "14", "18"}, "16", "30", flap)
                         .plan())
                  .first()
                  .is_full());
}

TEST(Leaves, ALidDrawnOverMoreThanTheTopHasIsNotMeasured) {
  const Opened made(Furniture()
                        .fixture("bench", "bench", {"0", "0", "40", "20"}, "0", "14",
                                 opens(R"("kind": "lid", "hinge": "left")") +
                                     R"(, "corners": {"front left": {"notch": [8, 8]}})")
                        .plan());
  EXPECT_FALSE(made.first().known);
  EXPECT_FALSE(made.first().is_full());
}

}  // namespace
}  // namespace berthwright
