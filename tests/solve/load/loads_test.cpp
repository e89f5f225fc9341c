#include <berthwright/solve/load/loads.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

using Kind = LoadVerdict::Kind;

/// A leg of 12 lb that stood with its middle at 61 in on the scales and by day stands at 41 in; coupling and
/// axle are 120 in apart.
Plan moved_leg(const std::string& more, const std::string& end = "}") {
  return small_plan(
      R"("pieces": [{"id": "A", "kind": "leg", "length": 2, "width": 2, "thickness": 20, "weight": "12 lb"}],
         "configurations": {"day": [{"piece": "A", "at": {"front": 40, "left": 37}}],
                            "road": [{"piece": "A", "at": {"front": 60, "left": 37}}]},
         "chassis": {"coupling": 40, "axle": 80)" +
      more + end);
}
std::string on_scales(const std::string& coupling, const std::string& axle, const std::string& sides = "") {
  return R"(, "weighed": {"coupling": ")" + coupling + R"(", "axle": ")" + axle + '"' + sides +
         R"(, "with": "everything", "configuration": "road"})";
}
Status verdict_of(const Plan& plan, Kind kind, std::size_t configuration = 0) {
  const std::vector<LoadVerdict> all = verdicts_on(plan, loads_of(plan).at(configuration));
  const auto found = std::ranges::find(all, kind, &LoadVerdict::kind);
  if (found == all.end()) throw std::invalid_argument("not asked");
  return found->status;
}

// 12 lb moved 20 in ahead: 12 × 20 / 120 = 2 lb more on the coupling, 2 less on the axle, the whole as it
// was.
TEST(LoadsOf, WhatStoodOnTheScalesCountsByItsWayAlone) {
  const Plan plan = moved_leg(on_scales("100 lb", "800 lb"));
  const std::vector<Loads> all = loads_of(plan);
  const Balance& day = all[0].balance();
  EXPECT_EQ(*day.whole, MassSpan::of(Mass::pounds(900)));
  EXPECT_EQ(*day.coupling->low, Mass::pounds(102));
  EXPECT_EQ(*day.coupling->high, Mass::pounds(102));
  EXPECT_EQ(*day.axle->low, Mass::pounds(798));
  EXPECT_EQ(*day.axle->high, Mass::pounds(798));
  // 102/900 = 11.333 %.
  EXPECT_EQ(day.share->low, 1133);
  EXPECT_EQ(day.share->high, 1134);
  EXPECT_TRUE(all[1].balance().things.empty());
  EXPECT_EQ(*all[1].balance().coupling->high, Mass::pounds(100));
}

// A leg of 12 lb that stood at 61 in on the scales, for the road: by day at 41 in it is 20 in ahead, by night
// at 21 in 40: 2 and 4 lb more on the coupling of 100, 120 in from the axle.
TEST(LoadsOf, DayNightAndRoadEachCarryTheirOwn) {
  const Plan plan = small_plan(
      R"("pieces": [{"id": "A", "kind": "leg", "length": 2, "width": 2, "thickness": 20, "weight": "12 lb"}],
         "configurations": {"day": [{"piece": "A", "at": {"front": 40, "left": 37}}],
                            "night": [{"piece": "A", "at": {"front": 20, "left": 37}}],
                            "road": [{"piece": "A", "at": {"front": 60, "left": 37}}]},
         "chassis": {"coupling": 40, "axle": 80)" +
      on_scales("100 lb", "800 lb") + "}");
  const std::vector<Loads> all = loads_of(plan);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_EQ(*all.at(i).balance().coupling->high, Mass::pounds(std::array{102, 104, 100}.at(i))) << i;
}

TEST(VerdictsOn, APlateIsMetUpToItsFigure) {
  const auto limits = [](const char* of, const char* mass) {
    return moved_leg(on_scales("100 lb", "800 lb") + R"(, "limits": {")" + of + R"(": ")" + mass + R"("})");
  };
  EXPECT_EQ(verdict_of(limits("coupling", "102 lb"), Kind::coupling_limit), Status::met);
  EXPECT_EQ(verdict_of(limits("coupling", "101.9 lb"), Kind::coupling_limit), Status::not_met);
  EXPECT_EQ(verdict_of(limits("axle", "798 lb"), Kind::axle_limit), Status::met);
  EXPECT_EQ(verdict_of(limits("axle", "797 lb"), Kind::axle_limit), Status::not_met);
  EXPECT_EQ(verdict_of(limits("whole", "900 lb"), Kind::whole_limit), Status::met);
  EXPECT_EQ(verdict_of(limits("whole", "899 lb"), Kind::whole_limit), Status::not_met);
  EXPECT_EQ(verdict_of(moved_leg(R"(, "limits": {"whole": "900 lb"})"), Kind::whole_limit), Status::unknown);
}

// A tank of 45 l over the middle between coupling and axle: told empty it leaves the 900 lb of the scales,
// and full it adds 45 kg, 99.2 lb, half of it to the coupling: 149.6 lb.
TEST(VerdictsOn, APlateThatFullTanksBreakIsBroken) {
  const auto code = [](const std::string& limits) {
    const Plan plan = moved_leg(on_scales("90 lb", "810 lb") + R"(, "limits": {)" + limits + R"(}},
      "fixtures": [{"id": "T", "kind": "tank", "length": 20, "width": 20, "top": 10, "volume": "45 l", "fill": 0,
                    "at": {"front": 10, "left": 28}}])",
                                "");
    const std::vector<Loads> all = loads_of(plan);
    EXPECT_EQ(different_balances(all[1]).size(), 2U) << "as told and full; empty is as told";
    return exit_code(plan, all);
  };
  EXPECT_EQ(code(R"("whole": "1000 lb")"), 0);
  EXPECT_EQ(code(R"("whole": "999 lb")"), 1);
  EXPECT_EQ(code(R"("coupling": "142 lb")"), 0);
  EXPECT_EQ(code(R"("coupling": "141 lb")"), 1);
}

// The leg stands in the middle, 76/2 = 38 in. 5 % of 798 lb are 39.9 lb.
TEST(VerdictsOn, TheSidesAreEvenWithinATwentiethOfTheAxle) {
  const auto sides = [](const char* left, const char* right) {
    return moved_leg(on_scales("100 lb", "800 lb",
                               std::string(R"(, "left": ")") + left + R"(", "right": ")" + right + '"') +
                     R"(, "track": 60)");
  };
  EXPECT_EQ(verdict_of(sides("381 lb", "419 lb"), Kind::sides), Status::met);
  EXPECT_EQ(verdict_of(sides("419 lb", "381 lb"), Kind::sides), Status::met);
  EXPECT_EQ(verdict_of(sides("379 lb", "421 lb"), Kind::sides), Status::not_met);
  EXPECT_EQ(verdict_of(sides("421 lb", "379 lb"), Kind::sides), Status::not_met);
  EXPECT_EQ(verdict_of(moved_leg(R"(, "track": 60)"), Kind::sides), Status::unknown);
}

TEST(ExitCode, OfLoadsIsThatOfTheWorst) {
  const auto code = [](const Plan& plan) { return exit_code(plan, loads_of(plan)); };
  EXPECT_EQ(code(moved_leg(on_scales("100 lb", "800 lb"))), 0);
  EXPECT_EQ(code(moved_leg(on_scales("60 lb", "840 lb"))), 1);
  EXPECT_EQ(code(moved_leg("")), 2) << "no share without scales";
  EXPECT_EQ(code(small_plan(R"("configurations": {"day": []})")), 2) << "nothing is compared";
}

}  // namespace
}  // namespace berthwright
