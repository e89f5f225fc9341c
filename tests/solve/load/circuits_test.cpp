#include <berthwright/solve/load/circuits.h>

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "oracle/weighings.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::string heater(const std::string& more) {
  return R"("pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right")" +
         more + "}]";
}
std::string outlet_and(const std::string& breaker, const std::string& more = "",
                       const std::string& amps = "") {
  return R"("fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "at": {"front": 40, "left": 0},
            "base": 12, "top": 16}], "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30},
            "plugged_into": "outlet"}], "night": [{"piece": "H", "stowed": "outside"}]},
            "supply": {"volts": 120)" +
         amps + R"(, "circuits": [{"id": "c", "breaker": )" + breaker + R"(, "feeds": ["outlet"])" + more +
         "}]}";
}
SupplyFigures by_day(const Plan& plan) { return supply_in(plan, *plan.configuration("day")).value(); }

// 1500 W at 120 V draw 12.5 A: over the 12 A of a 15 A breaker by 0.5 A, within the 16 A of a 20 A one (NEC
// 210.23(A)(1), forums.mikeholt.com thread 168088). Counted by 125 % it is 15.625 A.
TEST(SupplyIn, AHeaterAboveItsCircuitIsToldAndOneBelowIsNot) {
  EXPECT_EQ(tenths_of_ampere(1500, 120), 125);
  EXPECT_FALSE(keeps_to_80_percent(1500, 15, 120));
  EXPECT_TRUE(keeps_to_80_percent(1440, 15, 120));
  EXPECT_FALSE(keeps_to_80_percent(1441, 15, 120));
  const SupplyFigures small = by_day(small_plan(heater(R"(, "watts": 1500)") + "," + outlet_and("15")));
  EXPECT_EQ(small.status, Status::not_met);
  EXPECT_EQ(small.circuits.front().counted, 187'500);
  EXPECT_EQ(small.circuits.front().allowed, 180'000);
  EXPECT_EQ(small.circuits.front().too_large, std::vector<std::size_t>{0});
  EXPECT_TRUE(small.together.empty());
  const SupplyFigures large = by_day(small_plan(heater(R"(, "watts": 1500)") + "," + outlet_and("20")));
  EXPECT_EQ(large.status, Status::met);
  EXPECT_EQ(large.together, std::vector<std::size_t>{0});
}

TEST(SupplyIn, ANewLoadIsNoHeaterAndAStowedHeaterIsNoLoad) {
  const Plan plan = small_plan(heater(R"(, "watts": 1500)") + "," + outlet_and("15"));
  const SupplyFigures night = supply_in(plan, *plan.configuration("night")).value();
  EXPECT_TRUE(night.loads.empty());
  EXPECT_EQ(night.status, Status::met);
}

// A heater that is off draws nothing though it stands there plugged in; where nothing is said it runs.
TEST(SupplyIn, AHeaterThatIsOffIsNoLoad) {
  const auto watts = [](const std::string& state) {
    const Plan plan = small_plan(
        heater(R"(, "watts": 1500)") +
        R"(, "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "at": {"front": 40, "left": 0},
            "base": 12, "top": 16}],
            "configurations": {"night": [{"piece": "H", "at": {"front": 50, "left": 30}, "plugged_into": "outlet")" +
        state +
        R"(}]}, "supply": {"volts": 120, "circuits": [{"id": "c", "breaker": 15, "feeds": ["outlet"]}]})");
    const SupplyFigures night = supply_in(plan, *plan.configuration("night")).value();
    return night.circuits.front().watts();
  };
  EXPECT_EQ(watts(""), 1500);
  EXPECT_EQ(watts(R"(, "state": "running")"), 1500);
  EXPECT_EQ(watts(R"(, "state": "off")"), 0);
}

TEST(SupplyIn, WhatIsNotSaidIsUnknown) {
  const SupplyFigures dark = by_day(small_plan(heater("") + "," + outlet_and("15")));
  EXPECT_EQ(dark.no_figure, std::vector<std::string>{"H"});
  EXPECT_EQ(dark.status, Status::unknown);
  const SupplyFigures fixed = by_day(small_plan(
      R"("fixtures": [{"id": "F", "kind": "heater", "length": 10, "width": 10, "top": 20, "faces": "right",
                       "at": {"front": 40, "left": 0}}],
         "configurations": {"day": []}, "supply": {"circuits": [{"id": "c", "breaker": 15}]})"));
  EXPECT_EQ(fixed.no_figure, std::vector<std::string>{"F"});
  EXPECT_EQ(fixed.status, Status::unknown);
  const SupplyFigures nowhere = by_day(small_plan(
      heater(R"(, "watts": 600)") +
      R"(, "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}}]}, "supply": {"circuits": [{"id": "c", "breaker": 15}]})"));
  EXPECT_EQ(nowhere.unconnected, std::vector<std::string>{"H"});
  EXPECT_EQ(nowhere.status, Status::unknown);
}

Status circuit_status(const std::string& more_of_heater, const std::string& loads, std::size_t circuit = 0) {
  const Plan plan =
      small_plan(heater(more_of_heater) + "," +
                 outlet_and("15", loads + R"(}, {"id": "other", "breaker": 15)", R"(, "amps": 30)"));
  return by_day(plan).circuits.at(circuit).status;
}

// Of a heater plugged into the first of two circuits of 15 A, 1800 W, nobody says what it draws: it may be
// too much there, and nothing on the other one. A kettle of 1900 W is too much whatever it draws.
TEST(SupplyIn, ACircuitIsUnknownWhileItsHeaterIs) {
  EXPECT_EQ(circuit_status("", ""), Status::unknown);
  EXPECT_EQ(circuit_status("", "", 1), Status::met);
  EXPECT_EQ(circuit_status(R"(, "watts": 100)", ""), Status::met);
  EXPECT_EQ(circuit_status("", R"(, "loads": [{"name": "Kettle", "watts": 1900}])"), Status::not_met);
  const Plan plan = small_plan(heater("") + "," + outlet_and("15", "", R"(, "amps": 30)"));
  EXPECT_EQ(by_day(plan).whole->status, Status::unknown);
  EXPECT_TRUE(by_day(plan).unconnected.empty());
}

// What hangs nobody knows where may hang on any of the circuits, and hangs on the whole supply in any case.
// 100 W fit on the empty circuit of 15 A, and so do 1440 by a cord, but no more.
TEST(SupplyIn, ALoadThatHangsNobodyKnowsWhereLeavesKnownWhereItFitsInAnyCase) {
  const auto supply = [](const std::string& more) {
    return by_day(
        small_plan(heater(more) +
                   R"(, "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}}]},
            "supply": {"volts": 120, "amps": 15, "circuits": [{"id": "a", "breaker": 15},
                       {"id": "b", "breaker": 15, "loads": [{"name": "Kettle", "watts": 1600}]}]})"));
  };
  const SupplyFigures known = supply(R"(, "watts": 100)");
  EXPECT_EQ(known.circuits.at(0).status, Status::met);
  EXPECT_EQ(known.circuits.at(0).watts(), 0);
  EXPECT_EQ(known.circuits.at(0).most_watts, 100);
  EXPECT_FALSE(known.circuits.at(0).is_known());
  EXPECT_EQ(known.circuits.at(1).status, Status::not_met) << "1600 W by a cord are above 80 % of 15 A";
  EXPECT_EQ(supply(R"(, "watts": 1440)").circuits.at(0).status, Status::met) << "80 % of 15 A, by a cord";
  EXPECT_EQ(supply(R"(, "watts": 1441)").circuits.at(0).status, Status::unknown);
  EXPECT_EQ(supply(R"(, "watts": 1441, "continuous": false)").circuits.at(0).status, Status::unknown)
      << "too much for a plug there";
  EXPECT_EQ(known.whole->status, Status::met) << "1600 and 125 W of 1800";
  const SupplyFigures dark = supply("");
  EXPECT_EQ(dark.circuits.at(0).status, Status::unknown);
  EXPECT_FALSE(dark.circuits.at(0).most_watts);
  EXPECT_EQ(dark.whole->status, Status::unknown);
  EXPECT_EQ(dark.unconnected, std::vector<std::string>{"H"});
}

// On 15 A at 120 V, 1800 W: 600 W continuous count 750; 900 beside them make 1650, 1100 make 1850. So heater
// and toaster may run together, heater and kettle not; kettle and toaster, 2000, not. 1500 W beat 1100.
TEST(SupplyIn, TheLargestSetWorkedByHand) {
  const SupplyFigures figures = by_day(small_plan(
      heater(R"(, "watts": 600)") + "," +
      outlet_and("15",
                 R"(, "loads": [{"name": "Kettle", "watts": 1100}, {"name": "Toaster", "watts": 900}])")));
  EXPECT_EQ(figures.status, Status::not_met);
  EXPECT_EQ(figures.together, (std::vector<std::size_t>{0, 2}));
}

TEST(SupplyIn, TheWholeSupplyBoundsTheSetToo) {
  const SupplyFigures figures = by_day(small_plan(
      heater(R"(, "watts": 600)") + "," +
      outlet_and("15", R"(}, {"id": "d", "breaker": 15, "loads": [{"name": "Kettle", "watts": 1300}])",
                 R"(, "amps": 15)")));
  EXPECT_EQ(figures.whole->status, Status::not_met);
  EXPECT_EQ(figures.together, std::vector<std::size_t>{1});
}

TEST(SupplyIn, TheLargestSetIsThatOfOneLoadAfterTheOther) {
  std::mt19937 random(1202);
  const auto any = [&](int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random);
  };
  for (int round = 0; round < 40; ++round) {
    SCOPED_TRACE(round);
    std::vector<oracle::OracleLoad> twin;
    std::vector<long> left;
    std::string circuits;
    const int count = any(1, 3);
    for (int i = 0; i < count; ++i) {
      const int breaker = any(1, 3) * 5;
      left.push_back(100L * 120 * breaker);
      std::string loads;
      for (int k = any(0, 3); k > 0; --k) {
        const int watts = any(1, 8) * 50;
        const bool continuous = any(0, 1) == 1;
        loads += std::string(loads.empty() ? "" : ",") + R"({"name": "L", "watts": )" +
                 std::to_string(watts) + R"(, "continuous": )" + (continuous ? "true" : "false") + "}";
        if (keeps_to_80_percent(watts, breaker, 120))
          twin.push_back({watts, continuous ? 125 : 100, static_cast<std::size_t>(i)});
      }
      circuits += std::string(i == 0 ? "" : ",") + R"({"id": "c)" + std::to_string(i) + R"(", "breaker": )" +
                  std::to_string(breaker) + R"(, "loads": [)" + loads + "]}";
    }
    const int amps = any(2, 6) * 5;
    const Plan plan = small_plan(R"("configurations": {"day": []}, "supply": {"volts": 120, "amps": )" +
                                 std::to_string(amps) + R"(, "circuits": [)" + circuits + "]}");
    const SupplyFigures figures = by_day(plan);
    long watts = 0;
    for (const std::size_t i : figures.together) watts += figures.loads[i].draw.watts;
    EXPECT_EQ(watts, oracle::most_watts(twin, left, 100L * 120 * amps));
  }
}

}  // namespace
}  // namespace berthwright
