#include <berthwright/solve/body.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace berthwright {
namespace {

// Everything below is counted in the public raw files of ANSUR II (C. C. Gordon et al., 2012 Anthropometric
// Survey of U.S. Army Personnel, NATICK/TR-15/007, December 2014; 4,082 men, 1,986 women).
struct RawShare {
  BodyMeasure measure;
  Length size;
  bool above;
  double men;
  double women;
};
constexpr auto sitting = BodyMeasure::sitting_height;
constexpr auto shoulders = BodyMeasure::shoulder_breadth;
constexpr auto thigh = BodyMeasure::thigh_clearance;
constexpr auto popliteal = BodyMeasure::popliteal_height;
constexpr auto seat_depth = BodyMeasure::buttock_popliteal;
const RawShare raw_shares[] = {
    // clear height over the seat: who sits upright
    {sitting, 33_in, false, 1.3, 29.8},
    {sitting, 34_in, false, 6.1, 58.2},
    {sitting, 36_in, false, 46.5, 95.6},
    {sitting, 38_in, false, 90.8, 100},
    {sitting, 40_in, false, 99.7, 100},
    // width of a berth
    {shoulders, 20_in, false, 49.1, 97.4},
    {shoulders, 22_in, false, 92.7, 100},
    {shoulders, 24_in, false, 99.8, 100},
    // seat to the underside of the table
    {thigh, 7_in, false, 44.3, 76.7},
    {thigh, 8_in, false, 92.6, 99.3},
    {thigh, 9_in, false, 99.6, 99.9},
    // feet flat on the floor: the hollow of the knee and a shoe of 25 mm lie above the seat
    {popliteal, 16_in - 25_mm, true, 97.9, 61.6},
    {popliteal, 17_in - 25_mm, true, 82.4, 21.6},
    {popliteal, 18_in - 25_mm, true, 45.5, 3.6},
    // a seat that is not too deep
    {seat_depth, 16_in, true, 100, 99.7},
    {seat_depth, 17_in, true, 99.8, 97.6},
    {seat_depth, 18_in, true, 95.5, 84.9},
    {seat_depth, 20_in, true, 40.6, 19.7},
};

Shares modelled(const RawShare& raw) {
  return raw.above ? shares_above(raw.measure, raw.size) : shares_up_to(raw.measure, raw.size);
}

// Five of the 36 figures are off by more than a point: shoulders of men up to 20 in 47.1 (counted 49.1),
// thighs of men up to 7 in 43.1 (44.3), and the lengths behind the knee: women beyond 18 in 83.5 (84.9), men
// beyond 20 in 42.6 (40.6), women beyond it 21.3 (19.7).
TEST(Body, TheNormalModelAgreesWithTheSurveyWithinOnePointSaveInFiveFigures) {
  int beyond_a_point = 0;
  for (const RawShare& raw : raw_shares) {
    SCOPED_TRACE(testing::Message() << static_cast<int>(raw.measure) << " at "
                                    << raw.size.ticks() / ticks_per_mm << " mm");
    const Shares shares = modelled(raw);
    for (const auto& [model, counted] : {std::pair{shares.men, raw.men}, {shares.women, raw.women}}) {
      EXPECT_NEAR(model / 10.0, counted, 2.1);
      if (std::abs(model / 10.0 - counted) > 1.0) ++beyond_a_point;
    }
  }
  EXPECT_EQ(beyond_a_point, 5);
}

TEST(Body, SittingUprightUnderThirtySixInchesIsTheSharesOfTheSurvey) {
  const Shares shares = shares_up_to(BodyMeasure::sitting_height, 36_in);
  EXPECT_NEAR(shares.men, 465, 10);
  EXPECT_NEAR(shares.women, 956, 10);
}

// A mistyped mean, deviation or percentile shows: the three percentiles lie where the model puts them.
TEST(Body, EveryPercentileLiesNearItsShare) {
  for (int i = 0; i <= static_cast<int>(BodyMeasure::abdominal_depth); ++i) {
    const auto measure = static_cast<BodyMeasure>(i);
    for (const Sex sex : {Sex::men, Sex::women}) {
      SCOPED_TRACE(testing::Message() << "measure " << i << (sex == Sex::men ? " men" : " women"));
      const BodyFigures& figures = body_figures(measure, sex);
      const auto share = [&](Length size) {
        const Shares both = shares_up_to(measure, size);
        return sex == Sex::men ? both.men : both.women;
      };
      EXPECT_NEAR(share(figures.p5), 50, 26);
      EXPECT_NEAR(share(figures.p50), 500, 45);
      EXPECT_NEAR(share(figures.p95), 950, 22);
      EXPECT_EQ(share(figures.mean), 500);
      EXPECT_EQ(share(figures.mean + figures.deviation), 841);  // one deviation: 84.13 %
    }
  }
}

TEST(Body, SharesUpToAndAboveMakeTheWhole) {
  for (Length size; size < 2000_mm; size += 37_mm) {
    const Shares up_to = shares_up_to(BodyMeasure::knee_height, size);
    const Shares above = shares_above(BodyMeasure::knee_height, size);
    EXPECT_EQ(up_to.men + above.men, 1000);
    EXPECT_EQ(up_to.women + above.women, 1000);
  }
  EXPECT_EQ(shares_up_to(BodyMeasure::knee_height, -1_mm), (Shares{0, 0}));
  EXPECT_EQ(shares_up_to(BodyMeasure::knee_height, farthest), (Shares{1000, 1000}));
}

TEST(Body, NoSuchMeasureIsOurOwnFault) {
  EXPECT_THROW(body_figures(static_cast<BodyMeasure>(99), Sex::men), std::logic_error);
}

}  // namespace
}  // namespace berthwright
