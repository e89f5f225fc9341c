#include <berthwright/exact/squared_length.h>

#include <gtest/gtest.h>

#include <random>

namespace berthwright {
namespace {

// CPSC and NFPA space-heater sheets: 3 ft. Corner offsets 30 and 20 in: sqrt(900 + 400) = 36.06 in, met;
// 30 and 19.8 in: sqrt(900 + 392.04) = 35.94 in, not met.
TEST(SquaredLength, DecidesTheCornerCaseOfTheThreeFootRule) {
  EXPECT_GT(SquaredLength::of(30_in).plus_square_of(20_in), 36_in);
  EXPECT_LT(SquaredLength::of(30_in).plus_square_of(Length::inches(198, 10)), 36_in);
  EXPECT_EQ(36_in, Length::millimetres(9144, 10));
}

TEST(SquaredLength, FloorAndCeilingEncloseTheRoot) {
  const SquaredLength two = SquaredLength(2, 1);
  EXPECT_EQ(two.floor(), Length::from_ticks(1));
  EXPECT_EQ(two.ceiling(), Length::from_ticks(2));
  const SquaredLength exact = SquaredLength::of(3_in).plus_square_of(4_in);
  EXPECT_EQ(exact.floor(), 5_in);
  EXPECT_EQ(exact.ceiling(), 5_in);
  EXPECT_EQ(SquaredLength(1, 2).ceiling(), one_tick);
}

TEST(SquaredLength, ComparesFractionsThatDifferInTheLastPlace) {
  const Int128 big = (Int128{1} << 126) - 1;
  EXPECT_LT(SquaredLength(big - 1, big), SquaredLength(big - 2, big - 1).plus_square_of(one_tick));
  EXPECT_GT(SquaredLength(big - 1, big), SquaredLength(big - 2, big - 1));
  EXPECT_EQ(SquaredLength(2, 4), SquaredLength(1, 2));
}

TEST(SquaredLength, AgreesWithCrossProductsWhereTheyFit) {
  std::mt19937_64 random(7);
  std::uniform_int_distribution<std::int64_t> pick(1, 50);
  for (int i = 0; i < 20000; ++i) {
    const std::int64_t a = pick(random), b = pick(random), c = pick(random), d = pick(random);
    SCOPED_TRACE(testing::Message() << a << "/" << b << " against " << c << "/" << d);
    ASSERT_EQ(SquaredLength(a, b) < SquaredLength(c, d), a * d < c * b);
    ASSERT_EQ(SquaredLength(a, b) == SquaredLength(c, d), a * d == c * b);
  }
}

}  // namespace
}  // namespace berthwright
