#include <berthwright/solve/load/balancing.h>

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "oracle/weighings.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

SpannedArm at_arm(std::int64_t pounds, Length arm) {
  return {MassSpan::of(Mass::pounds(pounds)), {arm, arm}};
}

double inches(const MeanArm& mean) {
  return static_cast<double>(mean.moment.units()) / static_cast<double>(mean.mass.units()) / ticks_per_inch;
}
double pound_inches(Moment moment) {
  return static_cast<double>(moment.units()) / mass_units_per_pound / ticks_per_inch;
}

// FAA AC 43.13-1B, figure 10-10, forward extreme (landseaskyspace.com/ac4313/10-17.html): 1169 lb at 10.6 in,
// 17 at -49, 170 at 16, 83 at 22. Printed: 1439 lb, 16104 lb-in, +11.2 in. 12391.4 - 833 + 2720 + 1826 =
// 16104.4; over 1439 that is 11.191 in.
std::vector<SpannedArm> forward_extreme(Length datum) {
  return {at_arm(1169, Length::inches(106, 10) + datum), at_arm(17, -49 * 1_in + datum),
          at_arm(170, 16_in + datum), at_arm(83, 22_in + datum)};
}

TEST(GreatestMean, IsTheCentreOfGravityOfAPublishedBalance) {
  const MeanArm mean = greatest_mean(forward_extreme({}), {}, {}).value();
  EXPECT_EQ(mean.mass, Mass::pounds(1439));
  EXPECT_NEAR(pound_inches(mean.moment), 16104, 0.5);
  EXPECT_NEAR(inches(mean), 11.191, 0.0005);
}

// Figure 10-11, rear extreme (…/10-18.html): without the fuel, with 340 lb at 48 in, 240 at 22, 100 at 75.5.
// Printed: 2036 lb, 43428 lb-in. 12391.4 - 833 + 2720 + 16320 + 5280 + 7550 = 43428.4; over 2036, 21.330 in.
TEST(GreatestMean, IsThatOfAnotherOne) {
  const MeanArm mean =
      greatest_mean({at_arm(1169, Length::inches(106, 10)), at_arm(17, -49 * 1_in), at_arm(170, 16_in),
                     at_arm(340, 48_in), at_arm(240, 22_in), at_arm(100, Length::inches(151, 2))},
                    {}, {})
          .value();
  EXPECT_EQ(mean.mass, Mass::pounds(2036));
  EXPECT_NEAR(pound_inches(mean.moment), 43428, 0.5);
  EXPECT_NEAR(inches(mean), 21.330, 0.0005);
}

TEST(GreatestMean, DoesNotCareWhereTheDatumLies) {
  const Length shift = 77_in + one_tick;
  const MeanArm here = greatest_mean(forward_extreme({}), {}, {}).value();
  const MeanArm there = greatest_mean(forward_extreme(shift), {}, {}).value();
  EXPECT_EQ(there.moment, here.moment + Moment::of(here.mass, shift));
}

// 10 lb at 0 and 0 to 10 lb at 12 in: the mean is 0 to 6 in. Of unknown weight: up to 12 in, and no more.
TEST(GreatestMean, GoesWithWeightsThatAreNotKnown) {
  const std::vector<SpannedArm> some{at_arm(10, {}), {{Mass{}, Mass::pounds(10)}, {12_in, 12_in}}};
  EXPECT_EQ(inches(greatest_mean(some, {}, {}).value()), 6);
  EXPECT_EQ(inches(least_mean(some, {}, {}).value()), 0);
  const std::vector<SpannedArm> any{at_arm(10, {}), {{Mass{}, std::nullopt}, {12_in, 12_in}}};
  EXPECT_EQ(inches(greatest_mean(any, {}, {}).value()), 12);
  EXPECT_EQ(inches(least_mean(any, {}, {}).value()), 0);
}

TEST(GreatestMean, IsNoneWhereNothingWeighsAnything) {
  EXPECT_FALSE(greatest_mean({at_arm(0, 12_in)}, {}, {}));
  EXPECT_FALSE(greatest_mean({}, {}, {}));
}

TEST(GreatestMean, AgreesWithEveryWayToTakeTheWeights) {
  std::mt19937 random(1201);
  const auto any = [&](std::int64_t least, std::int64_t most) {
    return std::uniform_int_distribution<std::int64_t>(least, most)(random);
  };
  for (int round = 0; round < 200; ++round) {
    SCOPED_TRACE(round);
    std::vector<SpannedArm> arms;
    std::vector<oracle::LooseWeight> loose;
    for (std::int64_t i = any(1, 5); i > 0; --i) {
      const Mass least = Mass::grams(any(0, 3) * 1000);
      const Mass most = least + Mass::grams(any(0, 3) * 1500);
      const Length near = Length::millimetres(any(-900, 900));
      const Length far = near + Length::millimetres(any(0, 300));
      arms.push_back({{least, most}, {near, far}});
      loose.push_back({least, most, near, far});
    }
    const Mass fixed = Mass::grams(any(0, 2) * 2000);
    const Length fixed_arm = Length::millimetres(any(-500, 500));
    const auto twin = oracle::mean_arms(loose, fixed, fixed_arm);
    const auto greatest = greatest_mean(arms, Moment::of(fixed, fixed_arm), fixed);
    const auto least = least_mean(arms, Moment::of(fixed, fixed_arm), fixed);
    ASSERT_EQ(greatest.has_value(), twin.has_value());
    if (!twin) continue;
    EXPECT_NEAR(inches(*greatest) * ticks_per_inch, twin->greatest, 1);
    EXPECT_NEAR(inches(*least) * ticks_per_inch, twin->least, 1);
  }
}

/// A trailer 200 in long, coupling 40 in ahead and axle 80 in behind the front wall, all moved rearward by
/// `shift`; 120 in between them.
std::string chassis(std::int64_t shift, const std::string& more) {
  return R"("chassis": {"coupling": )" + std::to_string(40 - shift) + R"(, "axle": )" +
         std::to_string(80 + shift) + R"(, "track": "60", "range": "us")" + more + "}";
}
std::string wide_room() { return R"("interior": {"length": 200, "width": 72, "height": 76})"; }
std::string box(const std::string& id, std::int64_t from_front, std::int64_t from_left,
                const std::string& weight) {
  return R"({"id": ")" + id + R"(", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": )" +
         std::to_string(from_front) + R"(, "left": )" + std::to_string(from_left) + R"(}, "top": 30)" +
         (weight.empty() ? "" : R"(, "weight": )" + weight) + "}";
}
Plan trailer(const std::string& boxes, const std::string& more, std::int64_t shift = 0) {
  return small_plan(wide_room() + R"(, "fixtures": [)" + boxes + R"(], "configurations": {"day": []}, )" +
                    chassis(shift, more));
}
Balance balance_of(const Plan& plan) {
  return balanced(plan, plan->configurations.front(), TankState::as_told);
}

void expect_load(const std::optional<LoadSpan>& load, Mass low, Mass high) {
  ASSERT_TRUE(load && load->low && load->high);
  EXPECT_EQ(*load->low, low);
  EXPECT_EQ(*load->high, high);
}

constexpr auto scales =
    R"(, "weighed": {"coupling": "100 lb", "axle": "700 lb", "left": "340 lb", "right": "360 lb"})";

// 60 lb whose middle is 20 in behind the front wall, 60 in ahead of the axle: 60 × 60 / 120 = 30 lb on the
// coupling, the other 30 on the axle. 40 lb at 110 in, 30 in behind the axle: -40 × 30 / 120 = -10 and 50.
// Whole: 800 + 100 = 900; coupling 100 + 20 = 120; axle 700 + 80 = 780; 120/900 = 13.33 %.
// Across: 60 lb at 10 in, 26 left of the middle, 40 lb at 46 in, 10 right of it: the wheels differ by
// 2 × (40 × 10 - 60 × 26) / 60 = -38.67 lb; +20 of the scales: -18.67.
TEST(Balanced, WorkedByHand) {
  const Plan plan = trailer(box("a", 10, 0, R"("60 lb")") + "," + box("b", 100, 36, R"("40 lb")"), scales);
  const Balance balance = balance_of(plan);
  EXPECT_EQ(balance.added, MassSpan::of(Mass::pounds(100)));
  expect_load(balance.coupling_change, Mass::pounds(20), Mass::pounds(20));
  EXPECT_EQ(*balance.whole, MassSpan::of(Mass::pounds(900)));
  expect_load(balance.coupling, Mass::pounds(120), Mass::pounds(120));
  expect_load(balance.axle, Mass::pounds(780), Mass::pounds(780));
  EXPECT_EQ(balance.share->low, 1333);
  EXPECT_EQ(balance.share->high, 1334);
  EXPECT_EQ(balance.share->status, Status::met);
  // (60 × 20 + 40 × 110) / 100 = 56 in; (60 × 10 + 40 × 46) / 100 = 24.4 in.
  EXPECT_EQ(*balance.along, (LengthSpan{56_in, 56_in}));
  EXPECT_EQ(balance.across->low, Length::inches(244, 10));
  // -38 2/3 lb is no whole unit: rounded outward.
  EXPECT_EQ(balance.side_change->low->units(), -1'753'890'498);
  EXPECT_EQ(balance.side_change->high->units(), -1'753'890'497);
  EXPECT_EQ(*balance.side->high, *balance.side_change->high + Mass::pounds(20));
  // The whole: (700 × 80 - 100 × 40 + 60 × 20 + 40 × 110) / 900 = 57600/900 = 64 in, 16 in ahead of the axle:
  // 900 × 16 / 120 = 120 lb, the coupling's load once more.
  EXPECT_EQ(*balance.whole_along, (LengthSpan{64_in, 64_in}));
  // Across: 20 lb more at the right wheels, 60 in apart: 600 lb-in to the right of the middle. And
  // 40 × 10 - 60 × 26 = -1160: together -560 over 900 lb, -0.6222 in: 35.3778 in from the left wall.
  EXPECT_EQ(balance.whole_across->low, Length::from_ticks(35'943'822));
  EXPECT_LE(balance.whole_across->high - balance.whole_across->low, Length::from_ticks(1));
}

// Without scales only the change is told.
TEST(Balanced, TellsNoShareWithoutScales) {
  const Balance balance = balance_of(trailer(box("a", 10, 0, R"("60 lb")"), ""));
  expect_load(balance.coupling_change, Mass::pounds(30), Mass::pounds(30));
  EXPECT_FALSE(balance.share || balance.whole || balance.coupling || balance.axle || balance.side);
  EXPECT_TRUE(balance.side_change);
}

// 40 to 60 lb 60 in ahead of the axle: 20 to 30 lb; with 100 of 800 lb weighed 120/840 to 130/860.
TEST(Balanced, SpansWhatIsNotKnownWell) {
  const Balance balance = balance_of(trailer(box("a", 10, 0, R"(["40 lb", "60 lb"])"), scales));
  expect_load(balance.coupling, Mass::pounds(120), Mass::pounds(130));
  EXPECT_EQ(balance.share->low, 1428);
  EXPECT_EQ(balance.share->high, 1512);
  EXPECT_EQ(balance.share->status, Status::unknown);
}

TEST(Balanced, AnUnknownWeightHasOneEnd) {
  const Balance ahead = balance_of(trailer(box("a", 10, 0, ""), scales));
  EXPECT_EQ(*ahead.coupling->low, Mass::pounds(100));
  EXPECT_FALSE(ahead.coupling->high);
  EXPECT_FALSE(ahead.whole->most);
  // The share goes toward 60/120 at most, however much it weighs.
  EXPECT_EQ(ahead.share->low, 1250);
  EXPECT_EQ(ahead.share->high, 5000);
  EXPECT_EQ(ahead.share->status, Status::unknown);
  const Balance behind = balance_of(trailer(box("a", 100, 0, ""), scales));
  EXPECT_FALSE(behind.coupling->low);
  EXPECT_EQ(*behind.coupling->high, Mass::pounds(100));
  // It goes toward -30/120, which is below nothing.
  EXPECT_EQ(behind.share->low, 0);
  EXPECT_EQ(behind.share->high, 1250);
  const Balance both = balance_of(
      small_plan(wide_room() + R"(, "fixtures": [)" + box("b", 100, 0, "") +
                 R"(], "configurations": {"day": []}, "cargo": [{"id": "c", "ahead_of_front": 60}], )" +
                 chassis(0, scales)));
  EXPECT_FALSE(both.share) << "anything from nothing to all";
}

// The bare trailer's own middle lies at 65 in, and the cabinet pulls it to anywhere up to its own, 20 in and
// 10 in from the left wall, where it would be alone: that is no figure.
TEST(Balanced, WhatMayWeighAnythingHasNoMiddle) {
  const Balance bounded = balance_of(trailer(box("a", 10, 0, R"(["0 lb", "900 lb"])"), scales));
  EXPECT_TRUE(bounded.along && bounded.across && bounded.whole_along && bounded.whole_across);
  const Balance open = balance_of(trailer(box("a", 10, 0, "") + "," + box("b", 100, 36, "10"), scales));
  EXPECT_FALSE(open.along || open.across || open.whole_along || open.whole_across);
}

TEST(Balanced, NothingThatWeighsHasNoMiddle) {
  const Balance balance = balance_of(trailer(box("a", 10, 0, "0"), ""));
  EXPECT_EQ(balance.added, MassSpan::of(Mass{}));
  EXPECT_FALSE(balance.along);
  expect_load(balance.coupling_change, Mass{}, Mass{});
}

TEST(Balanced, MirrorShiftAndOrderChangeWhatTheyMust) {
  const std::string a = R"("60 lb")";
  const std::string b = R"(["35 lb", "41 lb"])";
  const Balance here = balance_of(trailer(box("a", 10, 0, a) + "," + box("b", 100, 36, b), scales));
  const Balance shifted = balance_of(trailer(box("a", 17, 0, a) + "," + box("b", 107, 36, b), scales, 7));
  EXPECT_EQ(shifted.coupling, here.coupling);
  EXPECT_EQ(shifted.axle, here.axle);
  EXPECT_EQ(shifted.side, here.side);
  EXPECT_EQ(shifted.share->low, here.share->low);
  EXPECT_EQ(shifted.share->high, here.share->high);
  EXPECT_EQ(shifted.along->low, here.along->low + 7_in);
  const Balance turned = balance_of(trailer(box("b", 100, 36, b) + "," + box("a", 10, 0, a), scales));
  EXPECT_EQ(turned.coupling, here.coupling);
  EXPECT_EQ(turned.share->high, here.share->high);
  EXPECT_EQ(turned.side, here.side);
  // Left for right: 72 - 20 - 0 = 52, 72 - 20 - 36 = 16.
  const Balance mirrored = balance_of(trailer(box("a", 10, 52, a) + "," + box("b", 100, 16, b), scales));
  EXPECT_EQ(mirrored.coupling, here.coupling);
  EXPECT_EQ(*mirrored.side_change->low, Mass{} - *here.side_change->high);
  EXPECT_EQ(*mirrored.side_change->high, Mass{} - *here.side_change->low);
}

Status share_status(const std::string& range, const std::string& coupling, const std::string& axle,
                    const std::string& limits = "") {
  const Plan plan = small_plan(
      R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "range": ")" + range +
      R"(", "weighed": {"coupling": ")" + coupling + R"(", "axle": ")" + axle + R"("})" + limits + "}");
  const Balance balance = balance_of(plan);
  return balance.share ? balance.share->status : Status::unknown;
}

// US: 1000 lb loaded give 100 to 150 lb (owner's manual table, manualshive.com). UK: 5 to 7 % of 1200 kg are
// 60 to 84 kg (NCC Caravan Towing Guide p. 11). Australia: 8 to 10 % of the ATM, 350 kg at 3500
// (emag.gorv.com.au).
TEST(Balanced, ComparesWithTheRangeThatThePlanChooses) {
  EXPECT_EQ(share_status("us", "100 lb", "900 lb"), Status::met);
  EXPECT_EQ(share_status("us", "150 lb", "850 lb"), Status::met);
  EXPECT_EQ(share_status("us", "99.9 lb", "900.1 lb"), Status::not_met);
  EXPECT_EQ(share_status("us", "150.1 lb", "849.9 lb"), Status::not_met);
  EXPECT_EQ(share_status("uk", "60 kg", "1140 kg"), Status::met);
  EXPECT_EQ(share_status("uk", "84 kg", "1116 kg"), Status::met);
  EXPECT_EQ(share_status("uk", "85 kg", "1115 kg"), Status::not_met);
  const std::string atm = R"(, "limits": {"whole": "3500 kg"})";
  EXPECT_EQ(share_status("australia", "350 kg", "2450 kg", atm), Status::met);
  EXPECT_EQ(share_status("australia", "351 kg", "2449 kg", atm), Status::not_met);
  EXPECT_EQ(share_status("australia", "350 kg", "2450 kg"), Status::unknown);
}

// ATM 3500 kg less 2800 kg tare: 700 kg (emag.gorv.com.au).
TEST(Balanced, TellsWhatIsLeftUnderThePlate) {
  const Plan plan = small_plan(
      R"("configurations": {"day": []}, "chassis": {"limits": {"whole": "3500 kg"}, "weighed": {"coupling": "350 kg", "axle": "2450 kg"}})");
  expect_load(balance_of(plan).cargo_left, Mass::grams(700'000), Mass::grams(700'000));
}

/// Everything stood on the scales.
Plan weighed_whole(const std::string& sections, const std::string& places) {
  return small_plan(wide_room() + R"(, "configurations": {"day": []}, )" + sections + R"(, "chassis": {)" +
                    places +
                    R"("weighed": {"coupling": "100 lb", "axle": "700 lb", "left": "340 lb",
                       "right": "360 lb", "with": "everything", "configuration": "day"}})");
}
constexpr auto bottles =
    R"("cargo": [{"id": "gas", "weight": ["38 lb", "62 lb"], "ahead_of_front": 20, "from_left": 46}])";

// Bottles of 38 to 62 lb: 24 lb more or less than on the scales, 100 in ahead of the axle, 120 in from the
// coupling: 24 × 100 / 120 = 20 lb of 100 on the coupling, 24 - 20 = 4 of 700 on the axle. The whole weighs
// 776 to 824 lb; 80/776 = 10.309 %, 120/824 = 14.563 %. They hang 10 in right of the middle, the track is
// 60 in: 2 × 24 × 10 / 60 = 8 lb from side to side about the 20 of the scales.
TEST(Balanced, WhatHasASpanMayDifferFromWhatTheScalesFound) {
  const Balance balance = balance_of(weighed_whole(bottles, R"("coupling": 40, "axle": 80, "track": 60, )"));
  ASSERT_EQ(balance.things.size(), 1U);
  EXPECT_TRUE(balance.things[0].may_differ);
  EXPECT_EQ(balance.added, MassSpan::of(Mass{}));
  EXPECT_EQ(*balance.whole, (MassSpan{Mass::pounds(776), Mass::pounds(824)}));
  expect_load(balance.coupling, Mass::pounds(80), Mass::pounds(120));
  expect_load(balance.axle, Mass::pounds(696), Mass::pounds(704));
  expect_load(balance.side, Mass::pounds(12), Mass::pounds(28));
  EXPECT_EQ(balance.share->low, 1030);
  EXPECT_EQ(balance.share->high, 1457);
  EXPECT_EQ(balance.share->status, Status::met);
  // The trailer as weighed: (700 × 80 - 100 × 40) / 800 = 65 in. With 24 lb more or less 20 in ahead:
  // (52000 - 480) / 824 = 62.524 in and (52000 + 480) / 776 = 67.629 in.
  EXPECT_NEAR(static_cast<double>(balance.whole_along->low.ticks()) / ticks_per_inch, 62.524, 0.001);
  EXPECT_NEAR(static_cast<double>(balance.whole_along->high.ticks()) / ticks_per_inch, 67.629, 0.001);
}

// In a locker from 10 to 30 in they may have been anywhere: every way to have weighed and stood then and now
// lies within what is told, and the ends are reached by one of them.
TEST(Balanced, AMiddleHoldsEveryWayToDiffer) {
  const Balance balance = balance_of(weighed_whole(
      R"("fixtures": [{"id": "L", "kind": "locker", "length": 20, "width": 20, "at": {"front": 10, "left": 0},
                       "top": 30}],
         "cargo": [{"id": "gas", "weight": ["38 lb", "62 lb"], "kept_in": "L"},
                   {"id": "pots", "weight": ["10 lb", "40 lb"], "from_front": 100}])",
      R"("coupling": 40, "axle": 80, "track": 60, )"));
  double least = 1e9;
  double most = 0;
  for (const double gas_then : {38, 62})
    for (const double gas : {38, 62})
      for (const double at_then : {10, 30})
        for (const double at : {10, 30})
          for (const double pots : {-30, 0, 30}) {
            const double middle =
                (800 * 65 - gas_then * at_then + gas * at + pots * 100) / (800 - gas_then + gas + pots);
            if (at != at_then && gas != gas_then) continue;
            least = std::min(least, middle);
            most = std::max(most, middle);
          }
  const double low = static_cast<double>(balance.whole_along->low.ticks()) / ticks_per_inch;
  const double high = static_cast<double>(balance.whole_along->high.ticks()) / ticks_per_inch;
  EXPECT_LE(low, least + 1e-5);
  EXPECT_GE(high, most - 1e-5);
  EXPECT_NEAR(low, least, 0.7);
  EXPECT_NEAR(high, most, 0.7);
}

// One weight, or none, is what it was.
TEST(Balanced, WhatHasOneWeightOrNoneIsAsTheScalesFoundIt) {
  for (const char* weight : {R"(, "weight": "62 lb")", ""}) {
    const Balance balance = balance_of(
        weighed_whole(R"("cargo": [{"id": "gas", "ahead_of_front": 20)" + std::string(weight) + "}]",
                      R"("coupling": 40, "axle": 80, )"));
    EXPECT_TRUE(balance.things.empty());
    expect_load(balance.coupling, Mass::pounds(100), Mass::pounds(100));
  }
}

// The scales found 20 lb more under the right wheels, whatever the track.
TEST(Balanced, TheSidesOfTheScalesNeedNoTrack) {
  const std::string places = R"("coupling": 40, "axle": 80, )";
  const Balance as_weighed = balance_of(weighed_whole(R"("cargo": [])", places));
  expect_load(as_weighed.side, Mass::pounds(20), Mass::pounds(20));
  EXPECT_FALSE(as_weighed.whole_across);
  // What was added right of the middle adds to the right wheels nobody knows how much.
  const auto with_box = [](int left) {
    return balance_of(small_plan(wide_room() + R"(, "configurations": {"day": []}, "fixtures": [)" +
                                 box("a", 10, left, R"("40 lb")") +
                                 R"(], "chassis": {"coupling": 40, "axle": 80)" + scales + "}"));
  };
  EXPECT_EQ(*with_box(36).side, (LoadSpan{Mass::pounds(20), std::nullopt}));
  EXPECT_EQ(*with_box(0).side, (LoadSpan{std::nullopt, Mass::pounds(20)}));
  expect_load(with_box(26).side, Mass::pounds(20), Mass::pounds(20));
}

// Without their places coupling and axle carry what the scales found, as long as nothing was added to it.
TEST(Balanced, WhatWasWeighedNeedsNoPlaces) {
  const Balance as_weighed = balance_of(weighed_whole(R"("cargo": [])", R"("coupling": 40, )"));
  expect_load(as_weighed.coupling, Mass::pounds(100), Mass::pounds(100));
  expect_load(as_weighed.axle, Mass::pounds(700), Mass::pounds(700));
  ASSERT_TRUE(as_weighed.share);
  EXPECT_EQ(as_weighed.share->low, 1250);
  EXPECT_EQ(as_weighed.share->high, 1250);
  EXPECT_EQ(as_weighed.share->status, Status::met);
  const Balance differing = balance_of(weighed_whole(bottles, R"("coupling": 40, )"));
  EXPECT_FALSE(differing.coupling || differing.axle || differing.share);
}

TEST(Movers, BeginWithWhatMovesMost) {
  const Plan plan = trailer(box("a", 10, 0, R"("60 lb")") + "," + box("b", 100, 0, R"("200 lb")") + "," +
                                box("c", 140, 0, "") + "," + box("d", 40, 0, "0"),
                            "");
  const Balance balance = balance_of(plan);
  EXPECT_EQ(movers(balance), (std::vector<std::size_t>{2, 1, 0}));
}

}  // namespace
}  // namespace berthwright
