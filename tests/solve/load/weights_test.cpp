#include <berthwright/solve/load/weights.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

using Basis = WeighedThing::Basis;

Plan with_piece(const std::string& fields) {
  return small_plan(R"("pieces": [{"id": "P", )" + fields +
                    R"(}], "configurations": {"day": [{"piece": "P", "stowed": "elsewhere"}]})");
}
std::pair<MassSpan, Basis> weight(const std::string& fields) {
  const Plan plan = with_piece(fields);
  return weight_of(plan->pieces.front(), plan->sewing);
}
std::string sheet(const std::string& panel, const std::string& thickness) {
  return R"("kind": "board", "length": "1220 mm", "width": "2440 mm", "thickness": ")" + thickness +
         R"(", "panel": ")" + panel + '"';
}
std::int64_t tenths_of_kg(const MassSpan& span) {
  EXPECT_TRUE(span.is_known());
  return (span.least.units() + 5'000'000) / 10'000'000;
}

// Sheets of birch plywood 1220 × 2440 mm weigh 13.0, 19.0, 24.8, 30.8, 36.7, 42.5 and 48.6 kg (data sheet,
// vdocuments.site).
TEST(WeightOf, ASheetOfBirchIsThatOfItsDataSheet) {
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 6.5 mm", "6.4 mm")).first), 130);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 9 mm", "9 mm")).first), 190);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 12 mm", "12 mm")).first), 248);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 15 mm", "15 mm")).first), 308);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 18 mm", "17.6 mm")).first), 367);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 21 mm", "21 mm")).first), 425);
  EXPECT_EQ(tenths_of_kg(weight(sheet("birch 24 mm", "24 mm")).first), 486);
  EXPECT_EQ(weight(sheet("birch 12 mm", "12 mm")).second, Basis::panel);
}

// A sheet of 4 by 8 ft, half an inch thick: 32 × 1/2 × 3 = 48 lb by one page, 40.6 by another; densest birch
// is 710 kg/m³, 59.1 lb.
TEST(WeightOf, PlywoodOfAnyKindIsASpan) {
  const auto [rated, basis] =
      weight(R"("kind": "board", "length": 96, "width": 48, "thickness": "1/2", "panel": "32/16")");
  EXPECT_EQ(basis, Basis::plywood);
  EXPECT_NEAR(static_cast<double>(rated.least.units()) / mass_units_per_pound, 40.6, 1e-6);
  EXPECT_EQ(*rated.most, Mass::pounds(48) + Mass::from_units(1));
  const auto [any, of_any] =
      weight(R"("kind": "board", "length": 96, "width": 48, "thickness": "1/2", "material": "plywood")");
  EXPECT_EQ(of_any, Basis::plywood);
  EXPECT_EQ(any.least, rated.least);
  EXPECT_NEAR(static_cast<double>(any.most->units()) / mass_units_per_pound, 59.09, 0.01);
}

// 24 × 48 × 4 in of 1.8 lb foam: 4608/1728 × 1.8 = 4.80 lb, of 2.8 lb 7.47 lb (facts/cushions.md 1.6), cut as
// large as finished over a board.
TEST(WeightOf, ACushionIsItsFoam) {
  const auto foam = [](const std::string& grade) {
    const auto [span, basis] =
        weight(R"("kind": "cushion", "length": 24, "width": 48, "thickness": 4, "foam": ")" + grade +
               R"(", "cover": {"shape": "board backed"})");
    EXPECT_EQ(basis, Basis::foam);
    EXPECT_TRUE(span.is_known());
    return static_cast<double>(span.least.units()) / mass_units_per_pound;
  };
  EXPECT_NEAR(foam("1830"), 4.80, 0.005);
  EXPECT_NEAR(foam("2830"), 7.47, 0.005);
}

TEST(WeightOf, WhatThePlanStatesComesFirstAndWhatNobodySaysIsUnknown) {
  EXPECT_EQ(weight(sheet("birch 12 mm", "12 mm") + R"(, "weight": "9 lb")").first,
            MassSpan::of(Mass::pounds(9)));
  for (const char* fields :
       {R"("kind": "leg", "length": 2, "width": 2, "thickness": 28)",
        R"("kind": "cushion", "length": 24, "width": 48, "thickness": 4, "foam": "firm")",
        R"("kind": "board", "length": 24, "width": 48, "thickness": 1, "material": "oak")"}) {
    const auto [span, basis] = weight(fields);
    EXPECT_EQ(basis, Basis::unknown) << fields;
    EXPECT_EQ(span.least, Mass{});
    EXPECT_FALSE(span.most);
  }
}

const WeighedThing& found(const std::vector<WeighedThing>& things, const std::string& id, Basis basis) {
  const auto it = std::ranges::find_if(
      things, [&](const WeighedThing& thing) { return thing.id == id && thing.basis == basis; });
  if (it == things.end()) throw std::invalid_argument("no " + id);
  return *it;
}

const Plan& loaded() {
  static const Plan plan = plan_from(repository_text("tests/plan/loads.json"));
  return plan;
}

// The tank of 20 gal is told to be half full: 37.854 kg of water. The gas stood on the scales.
TEST(WeightsIn, HoldEverythingOnceWithItsPlace) {
  const std::vector<WeighedThing> things =
      weights_in(loaded(), *loaded().configuration("day"), TankState::as_told);
  EXPECT_EQ(found(things, "tank", Basis::stated).weight, MassSpan::of(Mass::pounds(10)));
  EXPECT_EQ(found(things, "tank", Basis::water).weight, MassSpan::of(Mass::from_units(3'785'411'784)));
  EXPECT_EQ(found(things, "tank", Basis::water).place.along, (LengthSpan{70_in, 70_in}));
  EXPECT_EQ(found(things, "heater", Basis::stated).place.across, (LengthSpan{35_in, 35_in}));
  EXPECT_EQ(found(things, "bench", Basis::stated).weight, (MassSpan{Mass::pounds(40), Mass::pounds(60)}));
  // Stowed in the bench: anywhere within it.
  EXPECT_EQ(found(things, "board", Basis::panel).place.along, (LengthSpan{100_in, 120_in}));
  EXPECT_THROW(found(things, "gas", Basis::stated), std::invalid_argument);
}

TEST(WeightsIn, TanksAreAsToldEmptyOrFull) {
  const auto water_in = [](const Plan& plan, TankState tanks) {
    return found(weights_in(plan, plan->configurations.front(), tanks), "tank", Basis::water).weight;
  };
  EXPECT_EQ(water_in(loaded(), TankState::empty), MassSpan::of(Mass{}));
  EXPECT_EQ(water_in(loaded(), TankState::full), MassSpan::of(Mass::from_units(7'570'823'568)));
  const Plan any = small_plan(
      R"("fixtures": [{"id": "tank", "kind": "tank", "length": 20, "width": 20, "at": {"front": 0, "left": 0},
          "top": 12, "volume": "20 gal"}], "configurations": {"day": []})");
  EXPECT_EQ(water_in(any, TankState::as_told), (MassSpan{Mass{}, Mass::from_units(7'570'823'568)}));
}

// Without a volume a tank holds nobody knows how much, unless it is empty.
TEST(WeightsIn, ATankWithoutAVolumeHasNoEnd) {
  const Plan plan = small_plan(
      R"("fixtures": [{"id": "tank", "kind": "tank", "length": 20, "width": 20, "at": {"front": 0, "left": 0},
          "top": 12, "weight": "10 lb"}], "configurations": {"day": []})");
  const auto water_with = [&](TankState tanks) {
    return found(weights_in(plan, plan->configurations.front(), tanks), "tank", Basis::water).weight;
  };
  EXPECT_EQ(water_with(TankState::as_told), MassSpan{});
  EXPECT_EQ(water_with(TankState::full), MassSpan{});
  EXPECT_EQ(water_with(TankState::empty), MassSpan::of(Mass{}));
}

Plan weighed_with(const std::string& with) {
  return small_plan(
      R"("fixtures": [{"id": "F", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": 0, "left": 0}, "top": 30}],
         "pieces": [{"id": "A", "kind": "leg", "length": 2, "width": 2, "thickness": 20},
                    {"id": "B", "kind": "leg", "length": 2, "width": 2, "thickness": 20}],
         "configurations": {"day": [{"piece": "A", "at": {"front": 40, "left": 20}}, {"piece": "B", "stowed": "F"}],
                            "road": [{"piece": "A", "at": {"front": 60, "left": 20}}, {"piece": "B", "stowed": "F"}]},
         "chassis": {"weighed": {"coupling": "100 lb", "axle": "900 lb", "with": )" +
      with + R"(, "configuration": "road"}})");
}

// What stood on the scales and is there still needs no weight; what was moved since counts by its way alone.
TEST(WeightsIn, LeaveOutWhatTheScalesHaveCounted) {
  const auto ids = [](const Plan& plan, const char* configuration) {
    std::vector<std::string> all;
    for (const WeighedThing& thing : weights_in(plan, *plan.configuration(configuration), TankState::as_told))
      all.push_back(thing.id + (thing.on_scales ? " moved" : ""));
    return all;
  };
  using Ids = std::vector<std::string>;
  EXPECT_EQ(ids(weighed_with("[]"), "road"), (Ids{"F", "A", "B"}));
  EXPECT_EQ(ids(weighed_with(R"("fixtures")"), "road"), (Ids{"A", "B"}));
  EXPECT_EQ(ids(weighed_with(R"(["A"])"), "road"), (Ids{"F", "B"}));
  EXPECT_EQ(ids(weighed_with(R"("everything")"), "road"), Ids{});
  EXPECT_EQ(ids(weighed_with(R"("everything")"), "day"), (Ids{"A moved"}));
}

}  // namespace
}  // namespace berthwright
