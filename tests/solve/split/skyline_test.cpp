#include "solve/split/skyline.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

Rect cells(int x, int y, int to_x, int to_y) {
  return {{Length::inches(x), Length::inches(y)}, {Length::inches(to_x), Length::inches(to_y)}};
}
Vector size_in(int x, int y) { return {Length::inches(x), Length::inches(y)}; }
Int128 square_ticks(int inches) { return Int128{inches} * ticks_per_inch * ticks_per_inch; }

// 6 x 4 in with 2 x 1 in taken at (2, 1): the columns from 2 to 4 are free from 0 to 1 and from 2 to 4.
const Skyline holed({cells(0, 0, 6, 4)}, {cells(2, 1, 4, 2)});

TEST(Skyline, KnowsWhatIsFree) {
  EXPECT_EQ(holed.free_area(), square_ticks(22));
  EXPECT_EQ(holed.stretches().size(), 3U);
  ASSERT_EQ(holed.valleys().size(), 1U);
  EXPECT_EQ(holed.lowest().width(), 6_in);
  EXPECT_EQ(holed.corner(), (Point{}));
}

TEST(Skyline, TakesWhatLiesFreeAndNothingElse) {
  EXPECT_FALSE(holed.with(size_in(7, 1)).has_value());  // wider than the bay
  EXPECT_FALSE(holed.with(size_in(1, 5)).has_value());  // higher
  EXPECT_FALSE(holed.with(size_in(3, 2)).has_value());  // over what is taken
  const std::optional<Skyline> one = holed.with(size_in(2, 4));
  ASSERT_TRUE(one.has_value());
  EXPECT_EQ(one->free_area(), square_ticks(14));
  EXPECT_EQ(one->corner(), (Point{2_in, Length{}}));
  // Over the part below what is taken, its columns go on above it: higher than the corner at their right.
  const std::optional<Skyline> two = one->with(size_in(2, 1));
  ASSERT_TRUE(two.has_value());
  EXPECT_EQ(two->corner(), (Point{4_in, Length{}}));
  ASSERT_EQ(two->valleys().size(), 1U);
  const std::optional<Skyline> three = two->with(size_in(2, 4));
  ASSERT_TRUE(three.has_value());
  EXPECT_EQ(three->corner(), (Point{2_in, 2_in}));
  const std::optional<Skyline> all = three->with(size_in(2, 2));
  ASSERT_TRUE(all.has_value());
  EXPECT_TRUE(all->covered());
  EXPECT_EQ(all->free_area(), 0);
  EXPECT_THROW(all->lowest(), std::logic_error);
}

// Steps down to both sides: what is highest is no valley, for its neighbours may be free at its height.
TEST(Skyline, WallsAValleyInOnBothSides) {
  const Skyline steps({cells(0, 0, 2, 4), cells(2, 1, 4, 4), cells(4, 0, 6, 4)}, {});
  ASSERT_EQ(steps.valleys().size(), 2U);
  EXPECT_EQ(steps.valleys()[0].high, 2_in);
  EXPECT_EQ(steps.valleys()[1].low, 4_in);
}

TEST(Skyline, IsTheSameHoweverItCameAbout) {
  std::vector<std::int64_t> whole;
  std::vector<std::int64_t> halves;
  const Skyline bay({cells(0, 0, 4, 4)}, {});
  bay.with(size_in(4, 2))->append_key(whole);
  bay.with(size_in(2, 2))->with(size_in(2, 2))->append_key(halves);
  EXPECT_EQ(whole, halves);
}

}  // namespace
}  // namespace berthwright
