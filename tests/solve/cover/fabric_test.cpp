#include <berthwright/solve/cover/fabric.h>

#include <gtest/gtest.h>

#include <stdexcept>

#include "support/cushions.h"

namespace berthwright {
namespace {

constexpr Length strip = Length::inches(3, 2);

// forum.upholster.com, topic 10184: 950 in of welt, strips of 1 1/2 across 54 in: 17.6, so 18 strips, 27 in.
TEST(Fabric, StripsAcrossTheRollAreWhole) {
  const RollStrips welt = roll_strips(950_in, strip, 54_in, Length{});
  EXPECT_EQ(welt.count, 18);
  EXPECT_EQ(welt.of_roll, 27_in);
}

// 2 x 130 + 6 = 266 in: 5 x 54 less 4 joins of 1 in each is 266, just enough; an inch more takes a sixth.
TEST(Fabric, JoinsTakeTheirShare) {
  EXPECT_EQ(roll_strips(266_in, strip, 54_in, 1_in).count, 5);
  EXPECT_EQ(roll_strips(266_in, strip, 54_in, 1_in).of_roll, Length::inches(15, 2));
  EXPECT_EQ(roll_strips(267_in, strip, 54_in, 1_in).count, 6);
  EXPECT_EQ(roll_strips(54_in, strip, 54_in, 1_in).count, 1);
  EXPECT_EQ(roll_strips(Length::inches(1, 2), strip, 54_in, 1_in).count, 1);
  EXPECT_EQ(roll_strips(Length{}, strip, 54_in, 1_in).count, 0);
  EXPECT_THROW(roll_strips(54_in, strip, 1_in, 1_in), std::invalid_argument);
}

// mydecozo.co.uk: a square of 20 in, strips of 2 in: 200 in. sewaquilt.com: 12 in, 2 in: 72 in.
// sew-whats-new.com: 36 in, 2 in: 648 in, that is 18 yd.
TEST(Fabric, ASquareGivesItsAreaAsBias) {
  EXPECT_EQ(bias_from_square(20_in, 2_in), 200_in);
  EXPECT_EQ(bias_from_square(12_in, 2_in), 72_in);
  EXPECT_EQ(bias_from_square(36_in, 2_in), 18 * 36_in);
}

// mydecozo.co.uk: 250 in of 2 in: root of 500 = 22.36, so 23. quiltersquestiontime.com: 100 of 3
// 1/2: 18.71, 19.
TEST(Fabric, TheSquareIsRoundedUpToInches) {
  EXPECT_EQ(square_for_bias(250_in, 2_in), 23_in);
  EXPECT_EQ(square_for_bias(100_in, Length::inches(7, 2)), 19_in);
  EXPECT_EQ(square_for_bias(200_in, 2_in), 20_in);
}

// A sewing FAQ copied at corporatetaxratenow.com: 360 in of 4 1/2 in bias from 42 in goods: 38.57 in = 1.07
// yd; 220 in of 3 in: 15.714 (the page prints 15.72).
TEST(Fabric, BiasOffARollGoesByArea) {
  EXPECT_NEAR(in_inches(bias_of_roll(360_in, Length::inches(9, 2), 42_in)), 38.5714, 1e-4);
  EXPECT_NEAR(in_inches(bias_of_roll(360_in, Length::inches(9, 2), 42_in)) / 36, 1.07, 0.005);
  EXPECT_NEAR(in_inches(bias_of_roll(220_in, 3_in, 42_in)), 15.7143, 1e-4);
}

// Workroom Threads, 8/2011: a cut of 116 in, repeat 25: 125, so 9 in are wasted.
TEST(Fabric, CutsAreWholeRepeats) {
  EXPECT_EQ(whole_repeats(116_in, 25_in), 125_in);
  EXPECT_EQ(whole_repeats(125_in, 25_in), 125_in);
  EXPECT_EQ(whole_repeats(125_in + one_tick, 25_in), 150_in);
  EXPECT_THROW(whole_repeats(116_in, Length{}), std::invalid_argument);
}

// throwmeapillow.com: 7 yd, repeats 18 + 13 1/2: 25 percent, 8.75 yd (315 in). carrscorner.com: 8 yd, 17 +
// 10: 20, 9.6 (345.6 in).
TEST(Fabric, RepeatsAddTheirPercentage) {
  EXPECT_EQ(repeat_percent(18_in + Length::inches(27, 2)), 25);
  EXPECT_EQ(with_repeats(7 * 36_in, 18_in + Length::inches(27, 2)), 315_in);
  EXPECT_EQ(repeat_percent(17_in + 10_in), 20);
  EXPECT_EQ(with_repeats(8 * 36_in, 27_in), Length::inches(3456, 10));
  EXPECT_EQ(repeat_percent(Length{}), 0);
  EXPECT_EQ(repeat_percent(14_in + one_tick), 15) << "rounded up to 15 in";
  EXPECT_EQ(repeat_percent(44_in), 35) << "one copy says 30, the other 35";
  EXPECT_EQ(repeat_percent(54_in), 35);
  EXPECT_FALSE(repeat_percent(55_in));
}

}  // namespace
}  // namespace berthwright
