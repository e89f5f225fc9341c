#include <berthwright/solve/cover/foam_blank.h>

#include <gtest/gtest.h>

#include "support/cushions.h"

namespace berthwright {
namespace {

// Pounds to the hundredth, by a division of its own.
double pounds(Mass mass) { return static_cast<double>(mass.units()) / mass_units_per_pound; }

// 24 x 48 x 4 / 1728 = 2.6667 cu ft; x 1.8 = 4.80 lb, x 2.8 = 7.4667 lb (facts/cushions.md 1.6, derived).
TEST(FoamBlank, WeighsAreaTimesThicknessTimesDensity) {
  const Area sheet = Area::rectangle(48_in, 24_in);
  EXPECT_NEAR(pounds(foam_weight(sheet, 4_in, 18)), 4.80, 5e-7);
  EXPECT_NEAR(pounds(foam_weight(sheet, 4_in, 28)), 7.4666667, 5e-7);
  // The largest a plan can hold still fits: 25 m cubed are 551,800 cu ft.
  EXPECT_NEAR(pounds(foam_weight(Area::rectangle(farthest, farthest), farthest, 60)), 3.3108e6, 1e3);
}

// Good Old Boat, article 117937: 1/4 in over on each side; finished 23 x 42 gives 23 1/2 x 42 1/2, as thick
// as finished. The whole dinette of facts/cushions.md 8: (2 x 23 + 2 x 15) x 42 x 4 finished is 7.389 cu ft.
TEST(FoamBlank, IsHalfAnInchOverUnlessThePlanSaysElse) {
  const auto blank = foam_blank(cushion(42_in, 23_in, 4_in, "2535"), FoamCut::half_inch_over);
  ASSERT_TRUE(blank);
  EXPECT_EQ(blank->length, Length::inches(85, 2));
  EXPECT_EQ(blank->width, Length::inches(47, 2));
  EXPECT_EQ(blank->thickness, 4_in);
  EXPECT_EQ(blank->density, 25);
  // 42.5 x 23.5 x 4 / 1728 x 2.5
  EXPECT_NEAR(pounds(*blank->weight), 5.7798, 5e-5);
}

// yahoo.com/lifestyle, box-edge cushion of 18 x 24 x 6: foam 17 x 23 x 5.
TEST(FoamBlank, IsAnInchUnderWhereItIsWrapped) {
  const auto blank = foam_blank(cushion(24_in, 18_in, 6_in), FoamCut::wrapped);
  ASSERT_TRUE(blank);
  EXPECT_EQ(blank->length, 23_in);
  EXPECT_EQ(blank->width, 17_in);
  EXPECT_EQ(blank->thickness, 5_in);
  EXPECT_FALSE(blank->weight) << "no grade, no weight";
  EXPECT_FALSE(foam_blank(cushion(24_in, 18_in, 1_in), FoamCut::wrapped));
  EXPECT_FALSE(foam_blank(cushion(24_in, 1_in, 6_in), FoamCut::wrapped));
}

// coxontool.com: the foam as large as the panels with their 1/2 in seams. 1 percent of 76 in is more than
// 1/2.
TEST(FoamBlank, FollowsTheOtherRules) {
  const auto as_panel = foam_blank(cushion(40_in, 22_in, 4_in), FoamCut::as_panel);
  EXPECT_EQ(as_panel->length, 41_in);
  EXPECT_EQ(as_panel->width, 23_in);
  EXPECT_EQ(as_panel->thickness, 5_in);
  const auto percent = foam_blank(cushion(76_in, 22_in, 4_in), FoamCut::one_percent_over);
  EXPECT_EQ(percent->length, Length::inches(7676, 100));
  EXPECT_EQ(percent->width, Length::inches(2276, 100));
  const auto small = foam_blank(cushion(40_in, 22_in, 4_in), FoamCut::one_percent_over);
  EXPECT_EQ(small->length, Length::inches(81, 2));
}

TEST(FoamBlank, EveryRuleNamesItsSource) {
  for (const FoamCut cut :
       {FoamCut::half_inch_over, FoamCut::as_panel, FoamCut::one_percent_over, FoamCut::wrapped}) {
    EXPECT_EQ(foam_rule(cut).cut, cut);
    EXPECT_FALSE(foam_rule(cut).name.empty());
    const Source& source = foam_rule(cut).source;
    EXPECT_EQ(source.text.empty(), source.kind == Source::Kind::common_practice);
  }
}

TEST(FoamBlank, GrowsANotchedCushionOnAllItsSides) {
  const Piece notched = worked_cushion(
      {22_in, 40_in, {SquareCorner{}, Notch{18_in, 7_in}, SquareCorner{}, SquareCorner{}}}, 4_in);
  const auto blank = foam_blank(notched, FoamCut::half_inch_over);
  // 22.5 x 40.5 less the notch of 18 x 7.
  EXPECT_EQ(blank->outline.area(),
            Area::rectangle(Length::inches(45, 2), Length::inches(81, 2)) - Area::rectangle(18_in, 7_in));
}

}  // namespace
}  // namespace berthwright
