#include <berthwright/solve/way/clear_opening.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;
using Names = std::vector<std::string>;

Arrangement stood(const Plan& plan) {
  Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return std::move(arrangement).value();
}

ClearOpening clear_in(const Plan& plan) { return clear_opening(plan, stood(plan), plan->openings.front()); }

/// A window in the left wall, 30 in from the front, its sill 30 in above the floor.
Furniture window(const std::string& width, const std::string& height) {
  return Furniture().opening(
      R"("id": "window", "kind": "window", "wall": "left", "from_front": 30, "sill": 30, "opens": "out",
         "escape": true, "width": ")" +
      width + R"(", "height": ")" + height + '"');
}

// NFPA 1192: 24 in across and 17 in high (fiberglassrv.com thread 91027, second-hand). 24 CFR 3280.404: 22 in
// at the smallest side and 5 sq ft (howtolookatahouse.com, activerain.com 4522860). 24 x 17 = 408 sq in
// = 2.83 sq ft, and 17 < 22; 33 x 22 = 726 sq in = 5.04 sq ft.
TEST(ClearOpening, IsComparedWithTwoPublishedFigures) {
  const ClearOpening least = clear_in(window("24", "17").plan());
  EXPECT_TRUE(least.holds_vehicle_opening());
  EXPECT_FALSE(least.holds_dwelling_opening());
  const ClearOpening both = clear_in(window("33", "22").plan());
  EXPECT_TRUE(both.holds_vehicle_opening());
  EXPECT_TRUE(both.holds_dwelling_opening());
  EXPECT_EQ(both.for_dwelling, (Sides{33_in, 22_in}));
}

// 22 across and 33 high passes the figure for homes; a body that lies level is 24 in across.
TEST(ClearOpening, IsNotTurned) {
  const ClearOpening upright = clear_in(window("22", "33").plan());
  EXPECT_FALSE(upright.holds_vehicle_opening());
  EXPECT_TRUE(upright.holds_dwelling_opening());
  EXPECT_FALSE(clear_in(window("17", "24").plan()).holds_vehicle_opening());
}

// 22 x 32 8/11 in would be 720 sq in; 24 x 30 is exactly that, and 24 x 29 63/64 is less.
TEST(ClearOpening, PassesWhenExactlyEqualAndFailsByATick) {
  EXPECT_TRUE(clear_in(window("24", "30").plan()).holds_dwelling_opening());
  EXPECT_FALSE(clear_in(window("24", "29 63/64").plan()).holds_dwelling_opening());
  EXPECT_FALSE(clear_in(window("40", "21 63/64").plan()).holds_dwelling_opening());
  EXPECT_FALSE(clear_in(window("23 63/64", "17").plan()).holds_vehicle_opening());
  EXPECT_FALSE(clear_in(window("24", "16 63/64").plan()).holds_vehicle_opening());
}

// A cabinet that ends 34 in above the floor hides 4 of 21 in: 17 are left. 1/64 in more, and they are not.
TEST(ClearOpening, IsLessWhatStandsBeforeIt) {
  const auto behind = [](const char* y, const char* top) {
    return clear_in(window("24", "21").fixture("box", "cabinet", {"20", y, "60", "10"}, "0", top).plan());
  };
  EXPECT_TRUE(behind("0", "34").holds_vehicle_opening());
  EXPECT_EQ(behind("0", "34").for_vehicle, (Sides{24_in, 17_in}));
  EXPECT_EQ(behind("0", "34").blocked_by, Names{"box"});
  EXPECT_FALSE(behind("0", "34 1/64").holds_vehicle_opening());
  EXPECT_FALSE(behind("16 63/64", "60").holds_vehicle_opening());
  EXPECT_TRUE(behind("17", "60").holds_vehicle_opening());
  EXPECT_TRUE(behind("17", "60").blocked_by.empty());
  EXPECT_TRUE(behind("0", "30").blocked_by.empty());
}

TEST(ClearOpening, IsNothingBehindACabinetAndAllBehindACurtain) {
  const ClearOpening none =
      clear_in(window("24", "21").fixture("box", "cabinet", {"30", "0", "24", "10"}, "0", "60").plan());
  EXPECT_EQ(none.for_vehicle, Sides{});
  EXPECT_EQ(none.for_dwelling, Sides{});
  EXPECT_FALSE(none.holds_vehicle_opening() || none.holds_dwelling_opening());
  EXPECT_TRUE(clear_in(window("24", "21").fixture("c", "curtain", {"30", "0", "24", "1"}, "20", "60").plan())
                  .holds_vehicle_opening());
}

TEST(ClearOpening, WiderThanItsWallIsAFaultOfThePlan) {
  const Result<Plan> plan = read_plan(
      R"({"berthwright": 1, "title": "T", "unit": "in", "interior": {"length": 120, "width": 76, "height": 76},
          "openings": [{"id": "w", "kind": "window", "wall": "rear", "from_left": 0, "width": "76 1/64", "height": 20,
                        "sill": 30}], "configurations": {"day": []}})");
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problems().front().id, "opening.outside-wall");
}

// All on whole inches: every rectangle of inch cells is tried.
TEST(ClearOpening, AgreesWithATrialOfEveryRectangle) {
  std::mt19937 random(5);
  const auto pick = [&](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low));
  };
  int held = 0;
  for (int seed = 0; seed < 40; ++seed) {
    SCOPED_TRACE(seed);
    const int width = pick(20, 44), height = pick(14, 30);
    Furniture furniture = window(std::to_string(width), std::to_string(height));
    std::vector<std::vector<int>> taken(static_cast<std::size_t>(width),
                                        std::vector<int>(static_cast<std::size_t>(height)));
    for (int i = 0; i < pick(1, 4); ++i) {
      const int x = pick(20, 70), length = pick(1, 12), base = pick(20, 50), top = base + pick(1, 12);
      furniture.fixture("box " + std::to_string(i), "shelf",
                        {std::to_string(x), std::to_string(pick(0, 16)), std::to_string(length), "2"},
                        std::to_string(base), std::to_string(top));
      for (int u = std::max(x - 30, 0); u < std::min(x + length - 30, width); ++u)
        for (int v = std::max(base - 30, 0); v < std::min(top - 30, height); ++v)
          taken[static_cast<std::size_t>(u)][static_cast<std::size_t>(v)] = 1;
    }
    bool vehicle = false;
    bool dwelling = false;
    for (int u0 = 0; u0 < width; ++u0)
      for (int v0 = 0; v0 < height; ++v0) {
        int ceiling = height;
        for (int u1 = u0; u1 < width; ++u1) {
          int v1 = v0;
          while (v1 < ceiling && taken[static_cast<std::size_t>(u1)][static_cast<std::size_t>(v1)] == 0) ++v1;
          ceiling = v1;
          const int w = u1 - u0 + 1, h = ceiling - v0;
          vehicle = vehicle || (w >= 24 && h >= 17);
          dwelling = dwelling || (std::min(w, h) >= 22 && w * h >= 720);
        }
      }
    const ClearOpening clear = clear_in(furniture.plan());
    EXPECT_EQ(clear.holds_vehicle_opening(), vehicle);
    EXPECT_EQ(clear.holds_dwelling_opening(), dwelling);
    held += vehicle ? 1 : 0;
  }
  EXPECT_GT(held, 5);
  EXPECT_LT(held, 35);
}

// NFPA 1192, 6.2.1.3: within 24 in of the bed (an owners' forum, thread 3074801, clause quoted).
TEST(DistanceFromBed, IsMeasuredInPlanAndZeroBesideOrOverIt) {
  const auto away = [](const char* x, const char* y) {
    const Plan plan =
        window("24", "17").lay("mat", "cushion", {x, y, "20", "20"}, "4").bed("bed", {"mat"}).plan();
    return distance_from_bed(plan, stood(plan), plan->beds.front(), plan->openings.front());
  };
  EXPECT_EQ(away("30", "0"), Length{});
  EXPECT_EQ(away("54", "0"), Length{});  // ends where the window begins
  EXPECT_EQ(away("30", "24"), 24_in);
  EXPECT_EQ(away("72", "24"), 30_in);  // 18 along and 24 across: sqrt(324 + 576)
}

/// A door of 26 in in the right wall from 50 in that opens inward.
Names met_by_door(const std::string& hinge, support::Spot spot, const char* base = "0") {
  const Plan plan =
      Furniture()
          .opening(R"("id": "door", "kind": "door", "wall": "right", "from_front": 50, "width": 26,
                          "height": 66, "sill": 2, "opens": "in")" +
                   hinge)
          .fixture("box", "cabinet", spot, base, "70")
          .plan();
  return inward_swing(plan, stood(plan), plan->openings.front()).blocked_by;
}

// Hinged at the front, the leaf sweeps a quarter circle about (50, 76): it reaches (50, 50) and (76, 76), and
// 26 / sqrt 2 = 18.38 in along both on the way. A box whose corner is 18 in away along both is met, one of 19
// is not.
TEST(InwardSwing, SweepsAQuarterOfACircleAboutItsHinge) {
  const std::string front = R"(, "hinge": "front")";
  EXPECT_EQ(met_by_door(front, {"68", "38", "20", "20"}), Names{"box"});
  EXPECT_EQ(met_by_door(front, {"69", "38", "20", "19"}), Names{});
  EXPECT_EQ(met_by_door(front, {"40", "40", "20", "12"}), Names{"box"});
  EXPECT_EQ(met_by_door(front, {"30", "40", "20", "36"}), Names{});  // before the hinge, touching
  const std::string rear = R"(, "hinge": "rear")";
  EXPECT_EQ(met_by_door(rear, {"38", "38", "20", "20"}), Names{"box"});
  EXPECT_EQ(met_by_door(rear, {"37", "38", "20", "19"}), Names{});
  EXPECT_EQ(met_by_door(rear, {"76", "40", "20", "36"}), Names{});
  EXPECT_EQ(met_by_door(front, {"68", "38", "20", "20"}, "68"), Names{});
}

// The box lies in the sweep about the front end alone, so it depends on the hinge.
TEST(InwardSwing, WithoutAHingeIsKnownOnlyWhereNothingIsMetAboutEitherEnd) {
  const auto swing = [](support::Spot spot) {
    const Plan plan =
        Furniture()
            .opening(R"("id": "door", "kind": "door", "wall": "right", "from_front": 50, "width": 26,
                            "height": 66, "opens": "in")")
            .fixture("box", "cabinet", spot, "0", "70")
            .plan();
    return inward_swing(plan, stood(plan), plan->openings.front());
  };
  EXPECT_FALSE(swing({"50", "40", "4", "12"}).known);
  EXPECT_FALSE(swing({"50", "40", "4", "12"}).is_free());
  EXPECT_TRUE(swing({"0", "0", "4", "12"}).is_free());
}

}  // namespace
}  // namespace berthwright
