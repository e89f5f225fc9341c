#include <berthwright/solve/load/loads.h>

#include <berthwright/solve/load/load_figures.h>

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

// Everything stood on the scales but the water: 30 l of one kilogram each, their middle 30 in behind the
// front wall and 50 in from the left one, whether the leg of 12 lb, 5.44 kg, was moved by 20 in since or not.
// With its way the mean would be (30 × 30 - 5.44 × 20) / 30 = 26.4 in by day.
TEST(LoadsOf, TheMiddleOfWhatWasAddedDoesNotCareWhatWasMoved) {
  const Plan plan = moved_leg(on_scales("100 lb", "800 lb") + R"(}, "fixtures": [{"id": "T", "kind": "tank",
      "length": 20, "width": 20, "top": 10, "volume": "30 l", "fill": 100, "at": {"front": 20, "left": 40}}])",
                              "");
  for (const Loads& loads : loads_of(plan)) {
    EXPECT_EQ(loads.balance().added, MassSpan::of(Mass::grams(30'000)));
    EXPECT_EQ(*loads.balance().along, (LengthSpan{30_in, 30_in}));
    EXPECT_EQ(*loads.balance().across, (LengthSpan{50_in, 50_in}));
  }
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
    const Plan plan =
        moved_leg(on_scales("90 lb", "810 lb") + R"(, "limits": {"axle": "1000 lb", )" + limits + R"(}},
      "fixtures": [{"id": "T", "kind": "tank", "length": 20, "width": 20, "top": 10, "volume": "45 l", "fill": 0,
                    "at": {"front": 10, "left": 28}}])",
                  "");
    const std::vector<Loads> all = loads_of(plan);
    EXPECT_EQ(different_balances(all[1]).size(), 2U) << "as told and full; empty is as told";
    return exit_code(plan, all);
  };
  EXPECT_EQ(code(R"("whole": "1000 lb", "coupling": "150 lb")"), 0);
  EXPECT_EQ(code(R"("whole": "999 lb", "coupling": "150 lb")"), 1);
  EXPECT_EQ(code(R"("coupling": "142 lb", "whole": "1000 lb")"), 0);
  EXPECT_EQ(code(R"("coupling": "141 lb", "whole": "1000 lb")"), 1);
}

// The scales found 3 of 883 lb on the coupling. A cabinet of unknown weight stands behind the axle, so with
// an empty tank the share is 3/883 at most: not met, whatever the cabinet weighs. As told the tank ahead may
// be full, and the share may be within.
TEST(VerdictsOn, EmptyTanksCountBesideAWeightThatNobodyKnows) {
  const Plan plan = small_plan(
      R"("configurations": {"day": []},
         "chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": "3 lb", "axle": "880 lb"}},
         "fixtures": [{"id": "K", "kind": "cabinet", "length": 20, "width": 20, "top": 30,
                       "at": {"front": 98, "left": 0}},
                      {"id": "T", "kind": "tank", "length": 20, "width": 20, "top": 30, "weight": 0,
                       "volume": "40 gal", "at": {"front": 0, "left": 0}}])");
  const std::vector<Loads> all = loads_of(plan);
  ASSERT_EQ(different_balances(all[0]).size(), 3U);
  const std::vector<LoadVerdict> verdicts = verdicts_on(plan, all[0]);
  EXPECT_EQ(verdicts.at(0).status, Status::unknown);
  EXPECT_EQ(verdicts.at(1).tanks, TankState::empty);
  EXPECT_EQ(verdicts.at(1).status, Status::not_met);
  EXPECT_EQ(exit_code(plan, all), 1);
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

TEST(VerdictsOn, AVanThatIsNotTowedIsAskedForNoShare) {
  const Plan van = small_plan(R"("configurations": {"day": []}, "chassis": {"towed": false})");
  for (const LoadVerdict& verdict : verdicts_on(van, loads_of(van).front()))
    EXPECT_TRUE(verdict.kind == Kind::whole_limit || verdict.kind == Kind::axle_limit);
  for (const LoadFigure& figure : load_figures(van, loads_of(van).front()))
    EXPECT_EQ(figure.kind, LoadFigure::Kind::added);
}

// Without a track and without the wheels weighed nobody asks how even they are.
TEST(LoadFigures, HaveSidesWhereThereIsATrackOrBothWereWeighed) {
  const auto has = [](LoadFigure::Kind kind, const std::string& sides, const std::string& track) {
    const Plan plan = moved_leg(on_scales("100 lb", "800 lb", sides) + track);
    return std::ranges::any_of(load_figures(plan, loads_of(plan).front()),
                               [&](const LoadFigure& one) { return one.kind == kind; });
  };
  const std::string weighed = R"(, "left": "400 lb", "right": "400 lb")";
  const std::string track = R"(, "track": 60)";
  using FigureKind = LoadFigure::Kind;
  EXPECT_TRUE(has(FigureKind::sides, weighed, track) && has(FigureKind::whole_across, weighed, track));
  EXPECT_TRUE(has(FigureKind::sides, "", track));
  EXPECT_TRUE(has(FigureKind::sides, weighed, ""));
  EXPECT_FALSE(has(FigureKind::whole_across, weighed, ""));
  EXPECT_FALSE(has(FigureKind::sides, "", "") || has(FigureKind::whole_across, "", ""));
}

// 450 and 950 lb under the wheels are 500 apart, more than 5 % of 1400, with or without a track.
TEST(VerdictsOn, SidesThatWereWeighedAreComparedWithoutATrack) {
  const auto sides = [](const char* left, const char* right) {
    return small_plan(
        R"("configurations": {"day": []}, "chassis": {"weighed": {"coupling": "180 lb", "axle": "1400 lb", "left": ")" +
        std::string(left) + R"(", "right": ")" + right + R"("}})");
  };
  EXPECT_EQ(verdict_of(sides("450 lb", "950 lb"), Kind::sides), Status::not_met);
  EXPECT_EQ(verdict_of(sides("665 lb", "735 lb"), Kind::sides), Status::met);
}

// A cabinet of 10 lb right of the middle, 38 in, adds to the right wheels nobody knows how much without a
// track: 500 lb or more are too much, up to 500 may be even.
TEST(VerdictsOn, AtLeastTooMuchFromSideToSideIsTooMuch) {
  const auto with_cabinet_at = [](const char* left) {
    return small_plan(
        R"("configurations": {"day": []}, "fixtures": [{"id": "a", "kind": "cabinet", "length": 20, "width": 20,
             "top": 30, "weight": "10 lb", "at": {"front": 10, "left": )" +
        std::string(left) + R"(}}], "chassis": {"coupling": 40, "axle": 80,
           "weighed": {"coupling": "180 lb", "axle": "1400 lb", "left": "450 lb", "right": "950 lb"}})");
  };
  EXPECT_EQ(verdict_of(with_cabinet_at("50"), Kind::sides), Status::not_met);
  EXPECT_EQ(verdict_of(with_cabinet_at("2"), Kind::sides), Status::unknown);
}

// What plates and supply may carry is unknown where the plan does not say it, and nothing is met by that.
TEST(LimitsNotGiven, AreUnknown) {
  const auto plan_with = [](const std::string& limits, const std::string& amps) {
    return small_plan(
        R"("configurations": {"day": []}, "chassis": {"limits": {)" + limits +
        R"(}, "weighed": {"coupling": "120 lb", "axle": "880 lb"}}, "supply": {)" + amps +
        R"("circuits": [{"id": "a", "breaker": 15, "loads": [{"name": "Fan", "watts": 100}]}]})");
  };
  const std::string all = R"("whole": "1000 lb", "axle": "900 lb", "coupling": "150 lb")";
  const std::string amps = R"("amps": 30, )";
  EXPECT_TRUE(limits_not_given(plan_with(all, amps)).empty());
  EXPECT_EQ(exit_code(plan_with(all, amps), loads_of(plan_with(all, amps))), 0);
  EXPECT_EQ(limits_not_given(plan_with("", "")),
            (std::vector{Kind::supply, Kind::whole_limit, Kind::axle_limit, Kind::coupling_limit}));
  const Plan no_axle = plan_with(R"("whole": "1000 lb", "coupling": "150 lb")", amps);
  EXPECT_EQ(limits_not_given(no_axle), std::vector{Kind::axle_limit});
  EXPECT_EQ(verdict_of(no_axle, Kind::axle_limit), Status::unknown);
  EXPECT_EQ(exit_code(no_axle, loads_of(no_axle)), 2);
  const Plan no_amps = plan_with(all, "");
  EXPECT_EQ(verdict_of(no_amps, Kind::supply), Status::unknown);
  EXPECT_EQ(exit_code(no_amps, loads_of(no_amps)), 2);
}

TEST(ExitCode, OfLoadsIsThatOfTheWorst) {
  const auto code = [](const Plan& plan) { return exit_code(plan, loads_of(plan)); };
  const std::string plates = R"(, "limits": {"whole": "1000 lb", "axle": "900 lb", "coupling": "150 lb"})";
  EXPECT_EQ(code(moved_leg(on_scales("100 lb", "800 lb") + plates)), 0);
  EXPECT_EQ(code(moved_leg(on_scales("60 lb", "840 lb") + plates)), 1);
  EXPECT_EQ(code(moved_leg(on_scales("100 lb", "800 lb"))), 2) << "no plates";
  EXPECT_EQ(code(moved_leg("")), 2) << "no share without scales";
  EXPECT_EQ(code(small_plan(R"("configurations": {"day": []})")), 2) << "nothing is compared";
}

}  // namespace
}  // namespace berthwright
