#include <berthwright/solve/way/way_out.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "oracle/grid_way.h"
#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;

std::vector<WayOut> ways_in(const Plan& plan) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  const Bed& bed = plan->beds.front();
  return ways_out(plan, *arrangement, bed, mattress_of(plan, *arrangement, bed));
}

WayOut way_in(const Furniture& furniture) {
  const std::vector<WayOut> ways = ways_in(furniture.plan());
  if (ways.size() != 1U) throw std::invalid_argument("not one door");
  return ways.front();
}

std::vector<std::string> pinch(const WayOut& way) {
  std::vector<std::string> names{way.left, way.right};
  std::ranges::sort(names);
  return names;
}
using Names = std::vector<std::string>;

// A room of 120 x 76 in; a bed across its front, 38 in deep on a bench 14 in high; a door of 26 in in the
// right wall from 80 in.
Furniture trailer(const std::string& cushion_from = "0", const std::string& cushion_length = "38") {
  return Furniture()
      .opening(
          R"("id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68)")
      .fixture("bench", "bench", {"0", "0", "38", "76"}, "0", "14")
      .lay("mat", "cushion", {cushion_from, "0", cushion_length, "76"}, "4")
      .bed("bed", {"mat"});
}

TEST(WayOut, ThroughAnEmptyRoomIsPinchedByTheDoor) {
  const WayOut way = way_in(trailer());
  EXPECT_TRUE(way.reached());
  EXPECT_EQ(way.door, "door");
  EXPECT_EQ(way.width, 26_in);
  EXPECT_EQ(pinch(way), (Names{"door", "door"}));
}

// A galley of 20 in at the left wall and a wardrobe of 34 in at the right one: 76 - 20 - 34 = 22 in.
TEST(WayOut, NamesWhatPinchesIt) {
  const WayOut way = way_in(trailer()
                                .fixture("galley", "counter", {"44", "0", "34", "20"}, "0", "36")
                                .fixture("wardrobe", "cabinet", {"46", "42", "14", "34"}, "0", "60"));
  EXPECT_EQ(way.width, 22_in);
  EXPECT_EQ(pinch(way), (Names{"galley", "wardrobe"}));
  EXPECT_EQ(way.way.left.y + way.way.right.y, 62_in);
  ASSERT_GE(way.way.path.size(), 3U);
  EXPECT_EQ(way.way.path.front().x, 38_in);
  EXPECT_GT(way.way.path.back().y, 76_in);
}

// Without the galley: 76 - 34 = 42 in to the left wall, wider than the door; with 55 in of wardrobe 21 in.
TEST(WayOut, NamesTheWall) {
  const WayOut way = way_in(trailer().fixture("wardrobe", "cabinet", {"46", "21", "14", "55"}, "0", "60"));
  EXPECT_EQ(way.width, 21_in);
  EXPECT_EQ(pinch(way), (Names{"the left wall", "wardrobe"}));
}

// Both sides of the pinch are straight, yet the wardrobe has a rounded corner: 0.05 mm less.
TEST(WayOut, IsALittleLessBesideAnArc) {
  const WayOut way = way_in(trailer().fixture("wardrobe", "cabinet", {"46", "21", "14", "55"}, "0", "60",
                                              R"("corners": {"front left": {"round": 3}})"));
  EXPECT_EQ(way.width, 21_in - Length::millimetres(5, 100));
}

// A disc starts at the bench when it sticks out from under the cushion by up to 4 in, at the cushion alone
// beyond that: and the cushion's own edge is nowhere free.
TEST(WayOut, StartsAtABenchThatSticksOutALittle) {
  EXPECT_EQ(way_in(trailer("0", "37 1/2")).width, 26_in);
  EXPECT_EQ(way_in(trailer("0", "34")).width, 26_in);
  EXPECT_EQ(way_in(trailer("0", "33 15/16")).end, WayOut::End::no_free_edge);
}

// What stands before the bed no higher than it, a ledge with nothing on it, is stepped over; a higher one is
// not.
TEST(WayOut, StartsOverALowLedgeButNotOverAHighOne) {
  const auto end = [](const char* top) {
    return way_in(trailer().fixture("ledge", "ledge", {"38", "0", "1", "76"}, "11", top)).end;
  };
  EXPECT_EQ(end("18"), WayOut::End::reached);
  EXPECT_EQ(end("18 1/16"), WayOut::End::no_free_edge);
}

// Solids that meet heights 4 to 72 in are in the way, and touching is not meeting.
TEST(WayOut, CountsWhatStandsOrHangsBetweenFourAndSeventyTwoInches) {
  const auto end = [](const char* base, const char* top) {
    return way_in(trailer().fixture("box", "cabinet", {"50", "0", "10", "76"}, base, top)).end;
  };
  EXPECT_EQ(end("0", "4"), WayOut::End::reached);
  EXPECT_EQ(end("0", "4 1/64"), WayOut::End::no_way);
  EXPECT_EQ(end("72", "76"), WayOut::End::reached);
  EXPECT_EQ(end("71 63/64", "76"), WayOut::End::no_way);
}

TEST(WayOut, LeadsThroughACurtain) {
  EXPECT_EQ(way_in(trailer().fixture("curtain", "curtain", {"50", "0", "1", "76"}, "2", "70")).width, 26_in);
}

// A leg 2 in square in the middle of a passage of 30 in leaves 14 on either side.
TEST(WayOut, GoesRoundALegThatStays) {
  const WayOut way = way_in(trailer()
                                .fixture("cabinet", "cabinet", {"44", "0", "10", "46"}, "0", "60")
                                .lay("leg", "leg", {"48", "60", "2", "2"}, "27"));
  EXPECT_EQ(way.width, 14_in);
  EXPECT_TRUE(std::ranges::count(pinch(way), "leg") == 1);
}

// The bed stands in the way of others even when it hangs above their heads.
TEST(WayOut, OfABunkAboveTheHeadStartsAtItsEdge) {
  Furniture high;
  high.interior(R"("length": 120, "width": 76, "height": 110)")
      .opening(
          R"("id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68)")
      .fixture("bunk", "shelf", {"0", "0", "38", "76"}, "72", "73")
      .lay("mat", "cushion", {"0", "0", "38", "76"}, "4", R"("on": ["bunk"])")
      .bed("bed", {"mat"});
  EXPECT_EQ(way_in(high).width, 26_in);
}

TEST(WayOut, IsNoneWithoutAFreeEdgeOrWithoutAWay) {
  EXPECT_EQ(way_in(trailer().fixture("wall", "wall", {"38", "0", "1", "76"}, "0", "70")).end,
            WayOut::End::no_free_edge);
  EXPECT_EQ(way_in(trailer().fixture("wall", "wall", {"60", "0", "1", "76"}, "0", "70")).end,
            WayOut::End::no_way);
  EXPECT_EQ(way_in(trailer().fixture("box", "cabinet", {"76", "70", "34", "6"}, "0", "30")).end,
            WayOut::End::no_way);
}

TEST(WayOut, IsOnePerDoorThatOpens) {
  Furniture none;
  none.lay("mat", "cushion", {"0", "0", "38", "76"}, "4").bed("bed", {"mat"});
  EXPECT_TRUE(ways_in(none.plan()).empty());
  EXPECT_EQ(widest({}), nullptr);
  const std::vector<WayOut> ways = ways_in(
      trailer()
          .opening(
              R"("id": "wide", "kind": "door", "wall": "left", "from_front": 60, "width": 30, "height": 68)")
          .opening(
              R"("id": "shut", "kind": "door", "wall": "rear", "from_left": 4, "width": 40, "height": 68, "opens": "fixed")")
          .plan());
  ASSERT_EQ(ways.size(), 2U);
  EXPECT_EQ(widest(ways)->door, "wide");
  EXPECT_EQ(widest(ways)->width, 30_in);
}

// The rear right corner is rounded by 14 in, and the door of 26 in reaches 8 in past its start: there the
// room ends 14 - sqrt(14^2 - 8^2) = 2.51 in before the line of the wall, and the doorway goes on from there.
TEST(WayOut, PassesADoorInACurvedWall) {
  Furniture round;
  round.interior(R"("length": 130, "width": 76, "height": 76, "corners": {"rear right": {"round": 14}})")
      .opening(
          R"("id": "door", "kind": "door", "wall": "right", "from_front": 98, "width": 26, "height": 68)")
      .lay("mat", "cushion", {"0", "0", "38", "76"}, "4")
      .bed("bed", {"mat"});
  const WayOut way = way_in(round);
  EXPECT_EQ(way.width, 26_in);
  EXPECT_EQ(pinch(way), (Names{"door", "door"}));
}

// Side walls that stand upright for 2 in and lean in by 18 in over the next 72, so by 34/72 x 18 = 8 1/2 in
// at 36 in; what they take above is not asked. 76 - 45 - 8 1/2 = 22 1/2 in beside the galley.
TEST(WayOut, IsAsWideAsTheWallsStandApartUpToThirtySixInches) {
  Furniture leaning;
  leaning
      .interior(R"("length": 120, "width": 76, "height": 74, "cross_profile": {"corners": {
                "roof left": {"clip": [18, 72]}, "roof right": {"clip": [18, 72]}}})")
      .opening(R"("id": "door", "kind": "door", "wall": "rear", "from_left": 20, "width": 40, "height": 68)")
      .fixture("galley", "counter", {"50", "0", "20", "45"}, "0", "36")
      .lay("mat", "cushion", {"0", "9", "30", "58"}, "4")
      .bed("bed", {"mat"});
  const WayOut way = way_in(leaning);
  EXPECT_EQ(way.width, 22_in + Length::inches(1, 2));
  EXPECT_EQ(pinch(way), (Names{"galley", "the right wall"}));
}

TEST(WayOut, ThroughAHugeDoorDoesNotLeaveTheRange) {
  Furniture huge;
  huge.interior(R"("length": "15000 mm", "width": "15000 mm", "height": 76)")
      .opening(
          R"("id": "door", "kind": "door", "wall": "rear", "from_left": 0, "width": "15000 mm", "height": 68)")
      .lay("mat", "cushion", {"0", "0", "38", "76"}, "4")
      .bed("bed", {"mat"});
  EXPECT_TRUE(way_in(huge).reached());
}

// Seeded trailers of boxes, on whole inches.
struct FloorBox {
  int x0, y0, x1, y1;
};
struct Random {
  std::vector<FloorBox> solids;  // the first is the bed
  int door = 0;

  static Random of(unsigned seed) {
    std::mt19937 random(seed);
    const auto pick = [&](int low, int high) {
      return low + static_cast<int>(random() % static_cast<unsigned>(high - low));
    };
    Random made;
    made.solids.push_back({0, pick(0, 30), pick(20, 40), 76});
    const int count = pick(2, 7);
    for (int i = 0; i < count; ++i) {
      const int x = pick(40, 104), y = pick(0, 60);
      made.solids.push_back({x, y, std::min(x + pick(3, 30), 120), std::min(y + pick(3, 30), 76)});
    }
    made.door = pick(44, 90);
    return made;
  }
  /// `shift` moves everything along x in a room that is longer by as much, a cabinet standing for the front wall.
  Plan plan(bool mirrored = false, bool reversed = false, int shift = 0) const {
    const auto number = [](int i) { return std::to_string(i); };
    Furniture furniture;
    furniture.interior(R"("length": )" + number(120 + shift) + R"(, "width": 76, "height": 76)");
    furniture.opening(std::string(R"("id": "door", "kind": "door", "wall": ")") +
                      (mirrored ? "left" : "right") + R"(", "width": 26, "height": 68, "from_front": )" +
                      number(door + shift));
    if (shift > 0) furniture.fixture("front", "cabinet", {"0", "0", number(shift), "76"}, "0", "76");
    const auto spot = [&](const FloorBox& b) {
      return support::Spot{number(b.x0 + shift), number(mirrored ? 76 - b.y1 : b.y0), number(b.x1 - b.x0),
                           number(b.y1 - b.y0)};
    };
    for (std::size_t n = 1; n < solids.size(); ++n) {
      const std::size_t i = reversed ? solids.size() - n : n;
      furniture.fixture("box " + std::to_string(i), "cabinet", spot(solids[i]), "0",
                        i % 3 == 0 ? "20" : "60");
    }
    furniture.lay("mat", "cushion", spot(solids[0]), "18", R"("base": 0)").bed("bed", {"mat"});
    return furniture.plan();
  }
  /// Inches from a place to the nearest box or wall, the door being a hole in the right one; negative inside.
  double clearance(double x, double y) const {
    const auto to = [&](const FloorBox& b) {
      const double dx = std::max({b.x0 - x, x - b.x1, 0.0}), dy = std::max({b.y0 - y, y - b.y1, 0.0});
      return dx == 0 && dy == 0 ? -1.0 : std::hypot(dx, dy);
    };
    double least = std::min(to({-200, 76, door, 76}), to({door + 26, 76, 300, 76}));
    if (y < 76) least = std::min({least, x, 120 - x, y});
    for (const FloorBox& b : solids)
      if (y < 76) least = std::min(least, to(b));
    return least;
  }
};

// The slow twin: half an inch of grid, distances to boxes and walls in plain doubles.
TEST(WayOut, AgreesWithAFloodedGridOfTheWholeTrailer) {
  constexpr double step = 0.5;
  int reached = 0;
  for (unsigned seed = 1; seed <= 24; ++seed) {
    SCOPED_TRACE(seed);
    const Random made = Random::of(seed);
    const std::size_t rows = 204;
    std::vector<oracle::FloodCell> cells;
    for (std::size_t i = 0; i < 240; ++i)
      for (std::size_t k = 0; k < rows; ++k) {
        const double x = (static_cast<double>(i) + 0.5) * step, y = (static_cast<double>(k) + 0.5) * step;
        const double clear = made.clearance(x, y);
        const FloorBox& bed = made.solids[0];
        const double dx = std::max({bed.x0 - x, x - bed.x1, 0.0}),
                     dy = std::max({bed.y0 - y, y - bed.y1, 0.0});
        cells.push_back({clear, std::hypot(dx, dy) - clear < 0.71 * step && y<76, y> 76});
      }
    const double twin = 2 * oracle::flooded(cells, rows);
    const WayOut way = ways_in(made.plan()).front();
    if (!way.reached()) {
      EXPECT_LT(twin, 2 * step);
      continue;
    }
    ++reached;
    EXPECT_NEAR(twin, static_cast<double>(way.width.ticks()) / ticks_per_inch, 1.0 * step);
  }
  EXPECT_GT(reached, 12);
}

TEST(WayOut, IsTheSameInTheMirrorElsewhereAndInAnotherOrder) {
  for (unsigned seed = 1; seed <= 24; ++seed) {
    SCOPED_TRACE(seed);
    const Random made = Random::of(seed);
    const WayOut way = ways_in(made.plan()).front();
    const WayOut reversed = ways_in(made.plan(false, true)).front();
    EXPECT_EQ(way.width, reversed.width);
    EXPECT_EQ(pinch(way), pinch(reversed));
    EXPECT_TRUE(way.way.path == reversed.way.path);
    const WayOut shifted = ways_in(made.plan(false, false, 17)).front();
    EXPECT_EQ(way.end, shifted.end);
    EXPECT_LE(abs(way.width - shifted.width), Length::from_ticks(2));
    const WayOut mirrored = ways_in(made.plan(true)).front();
    EXPECT_EQ(way.end, mirrored.end);
    EXPECT_LE(abs(way.width - mirrored.width), Length::from_ticks(2));
  }
}

}  // namespace
}  // namespace berthwright
