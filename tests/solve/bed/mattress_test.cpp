#include <berthwright/solve/bed/mattress.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "support/furniture.h"
#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::rect;

Mattress mattress_in(const Plan& plan) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return mattress_of(plan, *arrangement, plan->beds.front());
}

std::vector<PieceId> ids(const std::vector<std::string>& names) {
  std::vector<PieceId> found;
  for (const std::string& name : names) found.emplace_back(name);
  return found;
}

// Benches of 24 in at both sides, 14 in high; cleats carry the table, 28 in between the benches; two backs of
// 14 in lie on it.
Furniture dinette(const std::string& cleat_base, const std::string& cleat_top,
                  const std::string& back_width = "14") {
  Furniture dinette;
  dinette.fixture("left bench", "bench", {"80", "0", "40", "24"}, "0", "14")
      .fixture("right bench", "bench", {"80", "52", "40", "24"}, "0", "14")
      .fixture("left cleat", "ledge", {"80", "24", "40", "1"}, cleat_base, cleat_top)
      .fixture("right cleat", "ledge", {"80", "51", "40", "1"}, cleat_base, cleat_top)
      .lay("table", "table", {"80", "24", "40", "28"}, "3/4", R"("on": ["left cleat", "right cleat"])")
      .lay("A", "cushion", {"80", "0", "40", "24"}, "4")
      .lay("B", "cushion", {"80", "52", "40", "24"}, "4")
      .lay("C", "cushion", {"80", "24", "40", back_width}, "4")
      .lay("D", "cushion", {"80", "38", "40", "14"}, "4")
      .bed("dinette bed", {"A", "C", "D", "B"});
  return dinette;
}

TEST(Mattress, ADinetteClosesIntoOneBed) {
  const Plan plan = dinette("12 1/4", "13 1/4").plan();
  const Mattress mattress = mattress_in(plan);
  EXPECT_EQ(mattress.level, 18_in);
  EXPECT_EQ(mattress.surface, rect(80_in, 0_in, 120_in, 76_in));
  EXPECT_EQ(mattress.closed, mattress.surface);
  EXPECT_EQ(mattress.levelled, mattress.surface);
  EXPECT_EQ(mattress.in_surface, ids({"A", "C", "D", "B"}));
  EXPECT_TRUE(mattress.dropped_out.empty());
  EXPECT_TRUE(mattress.gaps.empty());
  EXPECT_TRUE(mattress.ridges.empty());
}

// Cleats 1 1/4 in too low: the backs lie at 12 + 3/4 + 4 = 16 3/4, 1 1/4 under the seats.
TEST(Mattress, ALowTableDropsTheFillersOut) {
  const Plan plan = dinette("11", "12").plan();
  const Mattress mattress = mattress_in(plan);
  EXPECT_EQ(mattress.level, 18_in);
  EXPECT_EQ(mattress.in_surface, ids({"A", "B"}));
  EXPECT_EQ(mattress.dropped_out, ids({"C", "D"}));
  EXPECT_EQ(mattress.surface, united(rect(80_in, 0_in, 120_in, 24_in), rect(80_in, 52_in, 120_in, 76_in)));
  EXPECT_EQ(mattress.closed, mattress.surface);
  EXPECT_EQ(mattress.levelled, rect(80_in, 0_in, 120_in, 76_in));
  ASSERT_EQ(mattress.ridges.size(), 2U);
  EXPECT_EQ(mattress.ridges[0].lower, PieceId("C"));
  EXPECT_EQ(mattress.ridges[0].higher, PieceId("A"));
  EXPECT_EQ(mattress.ridges[0].step, Length::inches(5, 4));
  EXPECT_EQ(mattress.ridges[0].where, (Point{100_in, 24_in}));
  EXPECT_EQ(mattress.ridges[1].where, (Point{100_in, 52_in}));
}

TEST(Mattress, HalfAnInchOffTheLevelStaysInTheSurface) {
  const Plan half_an_inch = dinette("12", "12 3/4").plan();
  EXPECT_TRUE(mattress_in(half_an_inch).dropped_out.empty());
  EXPECT_EQ(mattress_in(half_an_inch).ridges.at(0).step, Length::inches(1, 2));
  const Plan more = dinette("12", "12 47/64").plan();
  EXPECT_EQ(mattress_in(more).dropped_out, ids({"C", "D"}));
}

// Two seats of 24 in and two backs of 24 in, one pair higher: equal areas, the higher level is the bed's.
TEST(Mattress, OfEqualAreasTheHigherIsTheLevel) {
  const Plan plan = Furniture()
                        .lay("low", "cushion", {"0", "0", "40", "24"}, "4")
                        .lay("high", "cushion", {"0", "24", "40", "24"}, "5")
                        .bed("bed", {"low", "high"})
                        .plan();
  EXPECT_EQ(mattress_in(plan).level, 5_in);
  EXPECT_EQ(mattress_in(plan).dropped_out, ids({"low"}));
}

TEST(Mattress, AFillerAQuarterInchNarrowLeavesItsQuarterInch) {
  const Plan plan = dinette("12 1/4", "13 1/4", "13 3/4").plan();
  const Mattress mattress = mattress_in(plan);
  ASSERT_EQ(mattress.gaps.size(), 1U);
  EXPECT_EQ(mattress.gaps[0].width, Length::inches(1, 4));
  EXPECT_EQ(mattress.gaps[0].region, rect(80_in, 37_in + Length::inches(3, 4), 120_in, 38_in));
  EXPECT_FALSE(mattress.gaps[0].at_wall);
  EXPECT_EQ(mattress.closed, rect(80_in, 0_in, 120_in, 76_in));
}

TEST(Mattress, GapsOfASixteenthAreClosedWithoutAWord) {
  const Plan sixteenth = dinette("12 1/4", "13 1/4", "13 15/16").plan();
  EXPECT_TRUE(mattress_in(sixteenth).gaps.empty());
  EXPECT_EQ(mattress_in(sixteenth).closed, rect(80_in, 0_in, 120_in, 76_in));
  const Plan more = dinette("12 1/4", "13 1/4", "13 59/64").plan();
  EXPECT_EQ(mattress_in(more).gaps.size(), 1U);
}

TEST(Mattress, WhatRisesToTheSurfaceBoundsAGap) {
  const auto gaps_beside_cabinet = [](const std::string& cabinet_top) {
    const Plan plan = Furniture()
                          .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                          .fixture("cabinet", "cabinet", {"0", "24 1/4", "75", "12"}, "0", cabinet_top)
                          .lay("seat", "cushion", {"0", "0", "75", "24"}, "4")
                          .bed("bed", {"seat"})
                          .plan();
    return mattress_in(plan).gaps;
  };
  ASSERT_EQ(gaps_beside_cabinet("36").size(), 1U);
  EXPECT_EQ(gaps_beside_cabinet("36")[0].width, Length::inches(1, 4));
  EXPECT_TRUE(gaps_beside_cabinet("36")[0].at_wall);
  EXPECT_EQ(gaps_beside_cabinet("17 1/2").size(), 1U);
  EXPECT_TRUE(gaps_beside_cabinet("17 31/64").empty());
}

// The front wall leans back from (0, 16) to (20, 76): at the level of 18 in it stands at 2/60 x 20 = 2/3 in.
// The cushion begins at 1 in, so 1/3 in remains.
TEST(Mattress, ASlantedWallIsTakenAtTheSleepingHeight) {
  Furniture furniture;
  furniture.interior(
      R"("length": 120, "width": 76, "height": 76, "side_profile": {"corners": {"roof front": {"clip": ["20", "60"]}}})");
  furniture.fixture("bench", "bench", {"0", "0", "75", "30"}, "0", "14")
      .lay("seat", "cushion", {"1", "0", "74", "30"}, "4")
      .bed("bed", {"seat"});
  const Plan plan = furniture.plan();
  const Mattress mattress = mattress_in(plan);
  ASSERT_EQ(mattress.gaps.size(), 1U);
  EXPECT_TRUE(mattress.gaps[0].at_wall);
  EXPECT_NEAR(static_cast<double>(mattress.gaps[0].width.ticks()), ticks_per_inch / 3.0, 1.0);
}

TEST(Mattress, RoundedCornersAreToldButDoNotInterrupt) {
  const std::string round = R"("corners": {"front left": {"round": "2"}, "front right": {"round": "2"},
                                           "rear left": {"round": "2"}, "rear right": {"round": "2"}})";
  const Plan plan = Furniture()
                        .lay("a", "cushion", {"20", "20", "38", "30"}, "4", "", round)
                        .lay("b", "cushion", {"58", "20", "38", "30"}, "4", R"("turn": "180")", round)
                        .bed("bed", {"a", "b"})
                        .plan();
  const Mattress mattress = mattress_in(plan);
  ASSERT_EQ(mattress.gaps.size(), 2U);  // a notch at each end of the seam
  for (const Gap& gap : mattress.gaps) EXPECT_TRUE(gap.at_corner);
  EXPECT_EQ(mattress.closed.side_of({58_in, 20_in + Length::inches(1, 8)}), Side::inside);
  EXPECT_EQ(mattress.closed.side_of({20_in + Length::inches(1, 8), 20_in + Length::inches(1, 8)}),
            Side::outside);
}

TEST(Mattress, ABedThatIsNotLaidOutHasNoSurface) {
  const Plan plan = dinette("12 1/4", "13 1/4").plan();
  Arrangement empty;
  empty.configuration = &plan->configurations.front();
  const Mattress mattress = mattress_of(plan, empty, plan->beds.front());
  EXPECT_TRUE(mattress.surface.empty());
  EXPECT_TRUE(mattress.closed.empty());
  EXPECT_TRUE(mattress.in_surface.empty());
}

/// A cushion on the floor, in half inches.
struct LaidBox {
  int x, y, length, width, height;
};
std::string halves(int count) { return std::to_string(count / 2) + (count % 2 == 0 ? "" : " 1/2"); }

std::vector<LaidBox> random_boxes(unsigned seed) {
  std::mt19937 random(seed);
  const auto draw = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); };
  // Columns of cushions with small gaps between them, none over another.
  std::vector<LaidBox> boxes;
  int x = 20;
  for (int column = 0; column < 3; ++column) {
    const int length = draw(20, 60);
    int y = 10;
    for (int row = 0; row < 3; ++row) {
      const int width = draw(12, 40);
      boxes.push_back({x, y, length, width, draw(7, 10)});
      y += width + draw(0, 3);
    }
    x += length + draw(0, 3);
  }
  return boxes;
}

Plan plan_of(const std::vector<LaidBox>& boxes, bool mirror = false) {
  Furniture furniture;
  std::vector<std::string> pieces;
  for (const LaidBox& box : boxes) {
    pieces.push_back("p" + std::to_string(pieces.size()));
    const int y = mirror ? 152 - box.y - box.width : box.y;
    furniture.lay(pieces.back(), "cushion", {halves(box.x), halves(y), halves(box.length), halves(box.width)},
                  halves(box.height));
  }
  return furniture.bed("bed", pieces).plan();
}

TEST(Mattress, AgreesWithCountingCells) {
  for (unsigned seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    const std::vector<LaidBox> boxes = random_boxes(seed);
    std::map<int, int> cells;
    for (const LaidBox& box : boxes) cells[box.height] += box.length * box.width;
    int level = 0;
    for (const auto& [height, count] : cells)
      if (count >= cells[level]) level = height;
    int in_surface = 0;
    for (const auto& [height, count] : cells)
      if (std::abs(height - level) <= 1) in_surface += count;
    const Plan plan = plan_of(boxes);
    const Mattress mattress = mattress_in(plan);
    EXPECT_EQ(mattress.level, Length::inches(level, 2));
    EXPECT_EQ(mattress.surface.area().doubled(),
              Area::rectangle(Length::inches(in_surface, 2), Length::inches(1, 2)).doubled());
    EXPECT_GE(mattress.closed.area(), mattress.surface.area());
    EXPECT_TRUE(contains(mattress.closed, mattress.surface));
    for (const Gap& gap : mattress.gaps) {
      EXPECT_FALSE(overlaps(gap.region, mattress.surface));
      EXPECT_GT(gap.width, Length::inches(1, 16));
    }
  }
}

TEST(Mattress, DoesNotCareForMirrorShiftOrOrder) {
  for (unsigned seed = 0; seed < 4; ++seed) {
    SCOPED_TRACE(seed);
    std::vector<LaidBox> boxes = random_boxes(seed);
    const Plan plan = plan_of(boxes);
    const Mattress mattress = mattress_in(plan);
    const auto same_figures = [&](const Plan& changed) {
      const Mattress other = mattress_in(changed);
      EXPECT_EQ(other.level, mattress.level);
      EXPECT_EQ(other.closed.area(), mattress.closed.area());
      EXPECT_EQ(other.levelled.area(), mattress.levelled.area());
      EXPECT_EQ(other.ridges.size(), mattress.ridges.size());
      ASSERT_EQ(other.gaps.size(), mattress.gaps.size());
      for (std::size_t i = 0; i < other.gaps.size(); ++i)
        EXPECT_NEAR(static_cast<double>((other.gaps[i].width - mattress.gaps[i].width).ticks()), 0, 5);
    };
    same_figures(plan_of(boxes, true));
    std::vector<LaidBox> shifted = boxes;
    for (LaidBox& box : shifted) box.x += 14;
    same_figures(plan_of(shifted));
    std::ranges::reverse(boxes);
    same_figures(plan_of(boxes));
  }
}

}  // namespace
}  // namespace berthwright
