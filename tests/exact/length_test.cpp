#include <berthwright/exact/length.h>

#include <gtest/gtest.h>

namespace berthwright {
namespace {

// 25.4 mm to the inch, exactly (international yard and pound agreement of 1959).
TEST(Length, HoldsBothRulersExactly) {
  EXPECT_EQ(1_in, Length::millimetres(254, 10));
  EXPECT_EQ(1_ft, 12_in);
  EXPECT_EQ(Length::inches(1, 64).ticks(), 15'875);
  EXPECT_EQ(Length::inches(1, 1000).ticks(), 1'016);
  EXPECT_EQ(Length::millimetres(1, 1000).ticks(), 40);
  EXPECT_EQ(3_ft, Length::millimetres(9144, 10));
  EXPECT_EQ(farthest, 25'000_mm);
}

TEST(Length, RefusesWhatIsNotOnTheLattice) {
  EXPECT_THROW((void)Length::inches(1, 3), std::invalid_argument);
  EXPECT_THROW((void)Length::inches(1, 128), std::invalid_argument);
  EXPECT_THROW((void)Length::inches(1, 0), std::invalid_argument);
  EXPECT_THROW((void)Length::millimetres(1, -1), std::invalid_argument);
  EXPECT_THROW((void)Length::millimetres(1, 1'000'000), std::invalid_argument);
  EXPECT_EQ(Length::millimetres(1, 40'000), one_tick);
}

TEST(Length, AddsAndComparesLikeANumber) {
  EXPECT_EQ(6_ft + 2_in - 1_in, 73_in);
  EXPECT_EQ(-(1_in) + 1_in, Length{});
  EXPECT_EQ(3 * 4_in, 1_ft);
  EXPECT_EQ(4_in * 3, 1_ft);
  Length sum = 1_in;
  sum += 2_in;
  sum -= 1_ft;
  EXPECT_EQ(sum, -9_in);
  EXPECT_EQ(abs(sum), 9_in);
  EXPECT_LT(sum, Length{});
}

TEST(Length, HalfOfAnOddTickGoesTowardMinusInfinity) {
  EXPECT_EQ(half(3_in), Length::inches(3, 2));
  EXPECT_EQ(half(Length::from_ticks(7)).ticks(), 3);
  EXPECT_EQ(half(Length::from_ticks(-7)).ticks(), -4);
}

TEST(Area, IsExactForTheLargestRectangle) {
  const Area all = Area::rectangle(2 * farthest, 2 * farthest);
  EXPECT_EQ(all.doubled(), Int128{2} * 2'000'000'000 * 2'000'000'000);
  EXPECT_EQ(all - Area::rectangle(farthest, 2 * farthest), Area::rectangle(2 * farthest, farthest));
}

TEST(Area, TwoSquareInchesAreMoreThanOne) {
  Area area = Area::rectangle(1_in, 1_in);
  EXPECT_LT(area, area + area);
  area += area;
  EXPECT_EQ(area, Area::rectangle(1_in, 2_in));
  EXPECT_GT(area, Area{});
}

}  // namespace
}  // namespace berthwright
