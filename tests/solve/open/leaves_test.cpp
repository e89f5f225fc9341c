#include <berthwright/solve/open/leaves.h>

#include <gtest/gtest.h>

#include <random>
#include <stdexcept>

#include "oracle/leaf_samples.h"
#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;
using Ids = std::vector<std::string>;

/// The plan with its arrangement and its leaves.
struct Opened {
  explicit Opened(Plan made)
      : plan(std::move(made)), arrangement(stood(plan)), leaves(leaves_in(plan, arrangement)) {}
  Opened(const Opened&) = delete;
  Opened& operator=(const Opened&) = delete;

  static Arrangement stood(const Plan& plan) {
    Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
    if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
    return std::move(arrangement).value();
  }
  const LeafReach& first() const { return leaves.at(0); }

  Plan plan;
  Arrangement arrangement;
  std::vector<LeafReach> leaves;
};

std::string opens(const std::string& members) { return R"("opens": [{"id": "L", )" + members + "}]"; }
double inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

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

// Things at random whole inches around a fixture that opens; every leaf against the samples.
struct RandomRoom {
  Furniture text;
  std::vector<std::string> names;
};

std::string leaf_of(std::mt19937_64& random) {
  const auto any = [&](auto... from) {
    const std::string all[] = {from...};
    return all[random() % sizeof...(from)];
  };
  const std::string angle = any("90", "75", "110", "180", "33.5");
  switch (random() % 5) {
    case 0: {
      const std::string face = any("left", "right");
      return R"("kind": "door", "face": ")" + face +
             R"(", "from": 2, "width": 12, "base": 4, "top": 20, "hinge": ")" + any("front", "rear") +
             R"(", "angle": )" + angle;
    }
    case 1: {
      const std::string face = any("front", "rear");
      return R"("kind": "door", "face": ")" + face + R"(", "from": 1, "width": 11, "hinge": ")" +
             any("left", "right") + R"(", "angle": )" + angle;
    }
    case 2:
      return R"("kind": "flap", "face": ")" + any("front", "rear", "left", "right") +
             R"(", "base": 6, "top": 18, "hinge": ")" + any("bottom", "top") + R"(", "angle": )" + angle;
    case 3:
      return R"("kind": "drawer", "face": ")" + any("front", "rear", "left", "right") +
             R"(", "base": 6, "top": 12, "pull": 13)";
    default:
      break;
  }
  const std::string hinge = any("front", "rear", "left", "right", "lifts out");
  return R"("kind": "lid", "length": 12, "width": 12, "at": {"front": 41, "left": 31}, "hinge": ")" + hinge +
         '"' + (hinge == "lifts out" ? "" : R"(, "angle": )" + angle);
}

Furniture random_room(std::mt19937_64& random) {
  const auto whole = [&](int low, int high) {
    return std::to_string(low + static_cast<int>(random() % static_cast<unsigned>(high - low)));
  };
  Furniture text;
  text.interior(R"("length": 70, "width": 60, "height": 40, "corners": {"rear left": {"round": 12}},
                   "side_profile": {"corners": {"roof rear": {"clip": [24, 20]}}},
                   "cross_profile": {"corners": {"roof right": {"clip": [20, 22]}}})");
  text.fixture("own", "cabinet", {"40", "30", "16", "14"}, "0", "22", opens(leaf_of(random)));
  for (int i = 0; i < 3; ++i) {
    const std::string name = "thing " + std::to_string(i);
    // Clear of the fixture: before or behind it, left or right of it, or above it.
    switch (random() % 5) {
      case 0:
        text.fixture(name, "cabinet", {whole(8, 30), whole(10, 40), "10", "9"}, whole(0, 12), whole(13, 38));
        break;
      case 1:
        text.fixture(name, "cabinet", {whole(56, 62), whole(20, 45), "7", "9"}, whole(0, 12), whole(13, 30));
        break;
      case 2:
        text.fixture(name, "cabinet", {whole(28, 55), whole(6, 22), "10", "8"}, whole(0, 12), whole(13, 30));
        break;
      case 3:
        text.fixture(name, "cabinet", {whole(28, 55), whole(44, 52), "10", "8"}, whole(0, 12), whole(13, 30));
        break;
      default:
        text.fixture(name, "shelf", {whole(32, 55), whole(20, 40), "10", "8"}, whole(22, 30), whole(31, 38));
        break;
    }
  }
  text.lay("turned", "board", {whole(10, 20), whole(12, 40), "14", "8"}, "3",
           R"("turn": )" + whole(1, 89) + R"(, "base": )" + whole(3, 18));
  return text;
}

TEST(Leaves, AgreeWithLeavesMovedInSmallSteps) {
  int stopped = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random(seed);
    const Opened made(random_room(random).plan());
    const LeafReach& reach = made.first();
    SCOPED_TRACE("first met: " + (reach.stops.empty() ? "nothing" : reach.stops[0].thing));
    const auto slow = oracle::first_met(made.plan, made.arrangement, *reach.leaf, reach.lifted);
    const bool turns = reach.leaf->hinge.has_value();
    const double free = turns ? reach.free.degrees : inches(reach.free.travel);
    if (!slow) {
      // What the samples miss lies between them: never more than the last degrees.
      EXPECT_GE(free, (turns ? reach.whole.degrees : inches(reach.whole.travel)) - (turns ? 2.0 : 0.07));
      continue;
    }
    ++stopped;
    EXPECT_LE(free, *slow);
    EXPECT_GE(free, *slow - (turns ? 3.0 : 0.13));
  }
  EXPECT_GT(stopped, 20);
  EXPECT_LT(stopped, 55);
}

// Mirrored, shifted, and with its things in another order, a room gives the same reaches.
TEST(Leaves, DoNotHangOnWhereTheRoomBeginsOrInWhichOrderItIsTold) {
  const auto made = [](bool mirror, int shift, bool last) {
    Furniture text;
    text.interior(R"("length": 120, "width": 60, "height": 60)");
    const auto x = [&](int at) { return std::to_string(at + shift); };
    const auto y = [&](int at, int width) { return std::to_string(mirror ? 60 - at - width : at); };
    const auto box = [&](const std::string& id, int at, int across, int length, int width, const char* top) {
      text.fixture(id, "cabinet", {x(at), y(across, width), std::to_string(length), std::to_string(width)},
                   "0", top);
    };
    if (!last) box("near", 22, 31, 9, 12, "40");
    text.fixture("own", "cabinet", {x(20), y(0, 20), "30", "20"}, "0", "36",
                 R"("opens": [
        {"id": "door", "kind": "door", "face": ")" +
                     std::string(mirror ? "left" : "right") +
                     R"(", "width": 14, "hinge": "front", "angle": 150},
        {"id": "flap", "kind": "flap", "face": ")" +
                     (mirror ? "left" : "right") + R"(", "from": 14, "base": 4, "top": 20},
        {"id": "drawer", "kind": "drawer", "face": ")" +
                     (mirror ? "left" : "right") + R"(", "base": 22, "pull": 18},
        {"id": "lid", "kind": "lid", "hinge": ")" +
                     (mirror ? "right" : "left") + R"(", "angle": 120}])");
    box("far", 36, 29, 10, 10, "18");
    if (last) box("near", 22, 31, 9, 12, "40");
    std::string told;
    const Opened opened(text.plan());
    for (const LeafReach& reach : opened.leaves) {
      told += reach.leaf->id.text() + ' ' + std::to_string(reach.free.degrees) + ' ' +
              std::to_string(reach.free.travel.ticks());
      for (const LeafStop& stop : reach.stops) told += ' ' + stop.thing;
      told += '\n';
    }
    return told;
  };
  // 11 in to the near thing, 9 to the far one; 36 in up, 60 high, so the lid of 20 in clears the roof and
  // stops at the wall behind its hinge.
  const std::string straight = made(false, 0, false);
  EXPECT_EQ(straight,
            "door 51 0 near\n"  // 14 sin a = 11 at 51.79
            "flap 34 0 far\n"   // 16 sin a = 9 at 34.2, where 16 cos a = 13.2 is below its top, 14 in above
                                // the hinge
            "drawer 0 " +
                std::to_string((11_in).ticks()) +
                " near\n"
                "lid 90 0 \n");
  for (const bool mirror : {false, true})
    for (const int shift : {0, 17})
      for (const bool last : {false, true})
        EXPECT_EQ(made(mirror, shift, last), straight) << mirror << shift << last;
}

}  // namespace
}  // namespace berthwright
