#include <berthwright/solve/load/warm_up.h>

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "oracle/weighings.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

Plan box_with(const std::string& watts, const std::string& warming) {
  return small_plan(R"("interior": {"length": "10 ft", "width": "6 ft", "height": "6 ft"},
      "pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right", "watts": )" +
                    watts + R"(}],
      "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}}],
                         "night": [{"piece": "H", "stowed": "outside"}]},
      "warming": {"from": "40 F", "to": "75 F")" +
                    warming + "}");
}
WarmUp warm_up(const Plan& plan, const char* configuration = "day") {
  return warm_up_in(plan, *plan.configuration(configuration)).value();
}

// 10 × 6 × 6 ft are 360 cu ft, 10.194 m³; at 1206 J/m³K and 35 °F (19.444 K) 239 kJ: 350 W take 683 s, 11.4
// min. That they take 15 to 20 minutes in a small insulated trailer of about this size is common practice, no
// source.
TEST(WarmUpIn, ContainsWhatIsCommonPractice) {
  const WarmUp found = warm_up(box_with("350", ""));
  EXPECT_EQ(*found.air_alone, 683);
  EXPECT_EQ(found.seconds->low, 683);
  EXPECT_LE(found.seconds->low, 15 * 60);
  EXPECT_GE(found.seconds->high, 20 * 60);
  EXPECT_LE(found.seconds->high, 3 * 684);
}

// The shell of the box: 2 × (60 + 60 + 36) = 312 sq ft, 28.9857 m². At U 1 it passes 28.99 W/K. With 30 °F
// outside: at 40 °F 161.0 W, at 75 °F 724.6 W. 1000 W leave 839.0 and 275.4: ln 3.0468 = 1.11409. The air's
// 12,294 J/K by 28.99 W/K are 424.14 s, times that 472.5 s; the high end three times as much.
TEST(WarmUpIn, WorkedByHandWithLosses) {
  const WarmUp found = warm_up(box_with("1000", R"(, "outside": "30 F", "insulation": "U 1")"));
  EXPECT_NEAR(static_cast<double>(found.seconds->low), 472.5, 1);
  EXPECT_NEAR(static_cast<double>(found.seconds->high), 1417.5, 1.5);
  EXPECT_LT(*found.air_alone, found.seconds->low);
  // To hold 75 °F (25 K): 724.6 W and half a change of air, 12,294 × 25 / 7200 = 42.7 W; twice 724.6 and 85.4
  // W.
  EXPECT_EQ(found.hold.low, 767);
  EXPECT_EQ(found.hold.high, 1535);
}

TEST(WarmUpIn, AHeaterThatIsTooSmallNeverGetsThere) {
  const WarmUp found = warm_up(box_with("700", R"(, "outside": "30 F", "insulation": "U 1")"));
  EXPECT_TRUE(found.is_never_reached);
  EXPECT_FALSE(found.seconds);
  EXPECT_EQ(*found.air_alone, 341);
}

TEST(WarmUpIn, AStowedHeaterWarmsNothing) {
  const WarmUp found = warm_up(box_with("350", ""), "night");
  EXPECT_EQ(found.watts, 0);
  EXPECT_FALSE(found.air_alone || found.seconds);
  EXPECT_FALSE(found.is_never_reached);
}

TEST(WarmUpIn, EveryBandIsAtMostThreeToOne) {
  for (const char* insulation :
       {"", R"(, "insulation": "R-1")", R"(, "insulation": "R-4")", R"(, "insulation": "U 0.3")"})
    for (const char* outside : {"", R"(, "outside": "0 F")", R"(, "outside": "70 F")"}) {
      const WarmUp found = warm_up(box_with("9000", std::string(insulation) + outside));
      ASSERT_TRUE(found.seconds) << insulation;
      EXPECT_LE(found.seconds->high, 3 * (found.seconds->low + 1)) << insulation;
      // Where it is warmer outside than in the room at first, the shell helps.
      if (std::string(outside).find("70") == std::string::npos) {
        EXPECT_GE(found.seconds->low, *found.air_alone - 1) << insulation;
      }
      EXPECT_LE(found.hold.high, 3 * (found.hold.low + 1)) << insulation;
    }
}

TEST(SecondsToWarm, AgreesWithSmallStepsInTime) {
  std::mt19937 random(1203);
  const auto any = [&](int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random);
  };
  for (int round = 0; round < 25; ++round) {
    SCOPED_TRACE(round);
    const int air = any(8, 30) * 1000;
    const int losses = any(5, 60);
    const int watts = any(3, 20) * 100;
    const Warming warming{Temperature::celsius(any(-5, 10)),
                          Temperature::celsius(any(15, 25)),
                          Temperature::celsius(any(-20, 5)),
                          std::nullopt,
                          {}};
    const auto above = [&](Temperature at) {
      return static_cast<double>(at.units() - warming.outside.units()) / temperature_units_per_kelvin;
    };
    const double twin = oracle::seconds_in_steps(air, losses, watts, above(warming.from), above(warming.to));
    const auto found =
        seconds_to_warm(std::int64_t{air} * 1000, std::int64_t{losses} * 1'000'000, watts, warming);
    ASSERT_EQ(found.has_value(), twin >= 0);
    if (found) {
      EXPECT_NEAR(static_cast<double>(found->low), twin, 1.2);
    }
  }
}

// A cylinder of roof: a room whose side is a rectangle with two corners of radius 24 in is 2 × (1 - π/4) ×
// 24² sq in smaller there, by 76 in wide: (120 × 74 - 247.22) × 76 = 656,091 cu in, 10,751 litres. Chords lie
// inside, by 0.05 mm at most.
TEST(AirOf, ARoundedRoomIsItsSideByItsWidth) {
  const Plan plan = small_plan(R"("interior": {"length": 120, "width": 76, "height": 74,
      "side_profile": {"corners": {"roof front": {"round": 24}, "roof rear": {"round": 24}}}}, "configurations": {"day": []})");
  EXPECT_NEAR(static_cast<double>(air_of(plan->interior).units()) / 1e9, 656'091 * 0.016387064, 2);
  const Volume whole = Volume::box(plan->interior.side_profile.polygon().area(), plan->interior.width);
  EXPECT_NEAR(static_cast<double>(air_of(plan->interior).units()), static_cast<double>(whole.units()), 1e6);
}

// A pyramid's frustum: corners of the profiles clipped both ways make each level smaller linearly along and
// across: from 100 × 60 in at 40 in up to 80 × 40 in at 60 in: 40 × 6000 + 20/6 × (6000 + 4 × 90 × 50 +
// 3200).
TEST(AirOf, ARoomSlantedBothWaysIsExact) {
  const Plan plan = small_plan(R"("interior": {"length": 100, "width": 60, "height": 60,
      "side_profile": {"corners": {"roof front": {"clip": [10, 20]}, "roof rear": {"clip": [10, 20]}}},
      "cross_profile": {"corners": {"roof left": {"clip": [10, 20]}, "roof right": {"clip": [10, 20]}}}},
      "configurations": {"day": []})");
  const double cubic_inches = 240'000 + 20.0 / 6 * (6000 + 18'000 + 3200);
  EXPECT_NEAR(static_cast<double>(air_of(plan->interior).units()) / 1e9, cubic_inches * 0.016387064, 0.001);
}

}  // namespace
}  // namespace berthwright
