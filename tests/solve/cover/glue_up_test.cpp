#include <berthwright/solve/cover/glue_up.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "support/cushions.h"

namespace berthwright {
namespace {

const FoamSheet sheet_of_2{72_in, 24_in, 2_in};
const FoamSheet sheet_of_3{72_in, 24_in, 3_in};

Length sum_of_strips(const std::vector<Length>& strips) {
  Length sum;
  for (const Length piece : strips) sum += piece;
  return sum;
}

// 76 1/2 x 23 1/2 x 4 out of sheets of 72 x 24 x 2 in: two layers of two pieces, 70 1/2 and 6 in long: the
// joint 32 1/4 in off the middle, for no strip is narrower than 6 in.
TEST(GlueUp, LayersAndPiecesMakeUpABlock) {
  const auto glued = glue_up(Length::inches(153, 2), Length::inches(47, 2), 4_in, std::array{sheet_of_2});
  ASSERT_TRUE(glued);
  ASSERT_EQ(glued->layers.size(), 2U);
  for (const FoamLayer& layer : glued->layers) {
    EXPECT_EQ(layer.along, (std::vector<Length>{Length::inches(141, 2), 6_in}));
    EXPECT_EQ(layer.across, (std::vector<Length>{Length::inches(47, 2)}));
    EXPECT_FALSE(layer.turned);
  }
  EXPECT_FALSE(glued->is_one_piece());
}

// 5 in is 3 and 2; 7 is 3, 2 and 2; 1 and 13 in are out of reach.
TEST(GlueUp, ThicknessesAreMadeOfTheFewestLayers) {
  const std::array both{sheet_of_2, sheet_of_3};
  const auto layers = [&](Length thickness) {
    std::vector<Length> found;
    if (const auto glued = glue_up(20_in, 20_in, thickness, both))
      for (const FoamLayer& layer : glued->layers) found.push_back(layer.sheet.thickness);
    return found;
  };
  EXPECT_EQ(layers(3_in), (std::vector<Length>{3_in}));
  EXPECT_EQ(layers(5_in), (std::vector<Length>{3_in, 2_in}));
  EXPECT_EQ(layers(6_in), (std::vector<Length>{3_in, 3_in}));
  EXPECT_EQ(layers(7_in), (std::vector<Length>{3_in, 2_in, 2_in}));
  EXPECT_TRUE(layers(1_in).empty());
  EXPECT_TRUE(layers(13_in).empty());
  EXPECT_EQ(near_thickness(1_in, both).below, std::nullopt);
  EXPECT_EQ(near_thickness(1_in, both).above, 2_in);
  EXPECT_EQ(near_thickness(Length::inches(9, 2), both).below, 4_in);
  EXPECT_EQ(near_thickness(Length::inches(9, 2), both).above, 5_in);
  EXPECT_EQ(near_thickness(13_in, both).below, 12_in);
  EXPECT_EQ(near_thickness(13_in, both).above, std::nullopt);
}

// Foam has no grain: a sheet of 72 x 24 gives a block of 20 x 70 in one piece, turned.
TEST(GlueUp, SheetsMayBeTurned) {
  const auto glued = glue_up(20_in, 70_in, 2_in, std::array{sheet_of_2});
  ASSERT_TRUE(glued);
  EXPECT_TRUE(glued->is_one_piece());
  EXPECT_TRUE(glued->layers[0].turned);
}

// The fewest pieces, counted over all sheets and both ways by a division of its own.
TEST(GlueUp, PiecesAreTheFewestAndFitTheirSheets) {
  std::mt19937_64 random(20261130);
  const auto inches = [&](std::int64_t low, std::int64_t high) {
    return Length::inches(
        2 * low + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(2 * (high - low))), 2);
  };
  int joints = 0;
  for (int i = 0; i < 300; ++i) {
    SCOPED_TRACE(i);
    std::vector<FoamSheet> sheets;
    for (std::size_t n = 0; n < 1 + random() % 3; ++n)
      sheets.push_back(
          {inches(24, 84), inches(20, 72), Length::inches(1 + static_cast<std::int64_t>(random() % 3))});
    const Length length = inches(10, 160), width = inches(10, 90);
    const auto glued = glue_up(length, width, sheets[0].thickness, sheets);
    ASSERT_TRUE(glued);
    ASSERT_EQ(glued->layers.size(), 1U);
    const FoamLayer& layer = glued->layers[0];
    double fewest = 1e9;
    for (const FoamSheet& sheet : sheets) {
      if (sheet.thickness != sheets[0].thickness) continue;
      for (const auto& [along, across] :
           {std::pair{sheet.length, sheet.width}, std::pair{sheet.width, sheet.length}})
        fewest = std::min(fewest, std::ceil(in_inches(length) / in_inches(along)) *
                                      std::ceil(in_inches(width) / in_inches(across)));
    }
    EXPECT_EQ(static_cast<double>(layer.pieces()), fewest);
    EXPECT_EQ(sum_of_strips(layer.along), length);
    EXPECT_EQ(sum_of_strips(layer.across), width);
    const Length along = layer.turned ? layer.sheet.width : layer.sheet.length;
    const Length across = layer.turned ? layer.sheet.length : layer.sheet.width;
    for (const Length piece : layer.along) EXPECT_TRUE(Length{} < piece && piece <= along);
    for (const Length piece : layer.across) EXPECT_TRUE(Length{} < piece && piece <= across);
    // Of two pieces the joint is never nearer to the middle than it must be: the longer fills its sheet, or
    // the shorter is as narrow as may be.
    if (layer.along.size() == 2) {
      EXPECT_TRUE(layer.along[0] == along || layer.along[1] == least_foam_strip) << in_inches(layer.along[0]);
      ++joints;
    }
  }
  EXPECT_GT(joints, 20);
}

TEST(GlueUp, DoesNotDependOnTheOrderOfTheSheets) {
  std::vector<FoamSheet> sheets{sheet_of_2, sheet_of_3, {82_in, 54_in, 1_in}};
  const auto first = glue_up(90_in, 50_in, 6_in, sheets);
  std::ranges::reverse(sheets);
  const auto second = glue_up(90_in, 50_in, 6_in, sheets);
  ASSERT_EQ(first->layers.size(), second->layers.size());
  for (std::size_t i = 0; i < first->layers.size(); ++i) {
    EXPECT_EQ(first->layers[i].sheet, second->layers[i].sheet);
    EXPECT_EQ(first->layers[i].along, second->layers[i].along);
  }
}

// facts/cushions.md 8: a whole dinette fits a sheet of 54 x 82, so that no cushion of it needs a joint.
TEST(GlueUp, UsualSheetsHoldADinette) {
  for (const Length depth : {Length::inches(47, 2), Length::inches(31, 2)})
    EXPECT_TRUE(glue_up(depth, Length::inches(85, 2), 4_in, usual_foam_sheets())->is_one_piece());
}

}  // namespace
}  // namespace berthwright
