#include <berthwright/exact/moment.h>

#include <gtest/gtest.h>

#include <stdexcept>

namespace berthwright {
namespace {

// 12 lb at 10 in make 120 lb-in: 40 lb at 3 in, and 3 in for 40 lb.
TEST(Moment, IsWeightTimesArm) {
  const Moment moment = Moment::of(Mass::pounds(12), 10_in);
  EXPECT_EQ(moment.over(3_in, Rounding::nearest), Mass::pounds(40));
  EXPECT_EQ(moment.over(Mass::pounds(40), Rounding::nearest), 3_in);
  EXPECT_EQ(moment, Moment::of(Mass::pounds(10), 12_in));
  EXPECT_EQ(moment - moment, Moment{});
  EXPECT_LT(-moment, Moment{});
}

TEST(Moment, IsRoundedOnceAndAsAsked) {
  const Moment moment = Moment::of(Mass::from_units(10), one_tick);
  EXPECT_EQ(moment.over(3 * one_tick, Rounding::down).units(), 3);
  EXPECT_EQ(moment.over(3 * one_tick, Rounding::up).units(), 4);
  EXPECT_EQ((-moment).over(3 * one_tick, Rounding::down).units(), -4);
  EXPECT_EQ((-moment).over(3 * one_tick, Rounding::nearest).units(), -3);
}

TEST(Moment, HoldsTheHeaviestAtTheFarthest) {
  const Moment most = Moment::of(heaviest, farthest);
  EXPECT_EQ((most + most).over(farthest, Rounding::nearest), heaviest + heaviest);
}

TEST(Moment, RefusesWhatHasNoArmOrNoWeight) {
  EXPECT_THROW(Moment{}.over(Length{}, Rounding::down), std::invalid_argument);
  EXPECT_THROW(Moment{}.over(Mass{}, Rounding::down), std::invalid_argument);
}

}  // namespace
}  // namespace berthwright
