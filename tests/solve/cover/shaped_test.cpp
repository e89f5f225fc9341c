#include <berthwright/solve/cover/shaped.h>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include <berthwright/solve/cover/cover.h>

#include "support/cushions.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using Part = ShapedPart::What;

Sewing sewn(CoverShape shape) {
  Sewing sewing;
  sewing.shape = shape;
  return sewing;
}

double pounds_of(Mass mass) { return static_cast<double>(mass.units()) / mass_units_per_pound; }

// webcasty.com, 2013: over a slab the panels are the cushion plus half of its depth on all four sides; and
// the seam: 40 x 22 x 4 with seams of 1/2: 40 + 4 + 1 = 45, 22 + 4 + 1 = 27.
TEST(Shaped, AKnifeEdgeGoesHalfDownEverySide) {
  const ShapedCover cover =
      shaped_cover(cushion(40_in, 22_in, 4_in), sewn(CoverShape::knife_edge), Wall::rear, 40_in);
  ASSERT_TRUE(cover.panel);
  EXPECT_EQ(cover.panel->length, 45_in);
  EXPECT_EQ(cover.panel->width, 27_in);
  EXPECT_TRUE(cover.parts.empty());
  EXPECT_EQ(cover.zip, 40_in);
}

// Derived in facts/cushions.md 2.2: 2 (20 - 2) + 2 pi = 42.283, cut 43.283. The zip assembly at the back is 1
// in longer and wider than the foam's back (a marine do-it-yourself book, excerpt at store.upholster.com).
TEST(Shaped, AWaterfallIsWrappedRoundItsFront) {
  EXPECT_NEAR(in_inches(waterfall_path(20_in, 4_in)), 42.2832, 5e-5);
  EXPECT_NEAR(in_inches(waterfall_path(20_in, 4_in)), 36 + 2 * std::numbers::pi, 1e-6) << "a tick";
  for (const Wall up : {Wall::front, Wall::left}) {
    const bool along = up == Wall::front;
    const Piece piece = along ? cushion(20_in, 42_in, 4_in) : cushion(42_in, 20_in, 4_in);
    const ShapedCover cover = shaped_cover(piece, sewn(CoverShape::waterfall), up, 42_in);
    ASSERT_EQ(cover.parts.size(), 3U);
    EXPECT_EQ(cover.parts[0].what, Part::wrap);
    EXPECT_NEAR(in_inches(cover.parts[0].length), 43.283, 5e-4);
    EXPECT_EQ(cover.parts[0].width, 43_in);
    EXPECT_EQ(cover.parts[1].what, Part::side);
    EXPECT_EQ(cover.parts[1].count, 2);
    EXPECT_EQ(cover.parts[1].length, 21_in);
    EXPECT_EQ(cover.parts[1].width, 5_in);
    EXPECT_EQ(cover.parts[2].what, Part::zip_strip);
    EXPECT_EQ(cover.parts[2].length, 43_in);
    EXPECT_EQ(cover.parts[2].width, Length::inches(13, 4));
    EXPECT_EQ(cover.zip, 42_in);
  }
}

// Derived in facts/cushions.md 2.2: 8 in across, 24 long, seams of 1/2: wrap 26.133 x 25, discs 9.
TEST(Shaped, ABolsterIsAWrapAndTwoDiscs) {
  for (const Piece& piece : {cushion(24_in, 8_in, 8_in), cushion(8_in, 24_in, 8_in)}) {
    const ShapedCover cover = shaped_cover(piece, sewn(CoverShape::bolster), Wall::rear, 8_in);
    ASSERT_EQ(cover.parts.size(), 2U);
    EXPECT_NEAR(in_inches(cover.parts[0].length), 26.1327, 5e-5);
    EXPECT_EQ(cover.parts[0].width, 25_in);
    EXPECT_EQ(cover.parts[1].count, 2);
    EXPECT_EQ(cover.parts[1].length, 9_in);
    EXPECT_EQ(cover.zip, 24_in);
  }
  // pi / 4 x 64 x 24 / 1728 = 0.69813 cu ft; x 2.5 = 1.7453 lb.
  const auto foam = foam_of(cushion(24_in, 8_in, 8_in, "2535"), sewn(CoverShape::bolster));
  EXPECT_NEAR(pounds_of(*foam->weight), 1.74533, 1e-5);
  EXPECT_EQ(foam->length, 24_in);
}

// littlevintagetrailer.com, 2012/04, and upholsteryresource.com, node 173: board 1 to 2 in smaller, foam at
// full size, 2 to 3 in to staple: 24 x 18 x 3: board 23 x 17, panel 24 + 2 (3 + 3) = 36 by 30.
TEST(Shaped, ABoardIsCoveredFromTheFront) {
  const Piece piece = cushion(24_in, 18_in, 3_in, "1824");
  const ShapedCover cover = shaped_cover(piece, sewn(CoverShape::board_backed), Wall::rear, 24_in);
  EXPECT_EQ(cover.panel->length, 36_in);
  EXPECT_EQ(cover.panel->width, 30_in);
  ASSERT_EQ(cover.parts.size(), 1U);
  EXPECT_EQ(cover.parts[0].what, Part::board);
  EXPECT_EQ(cover.parts[0].length, 23_in);
  EXPECT_EQ(cover.parts[0].width, 17_in);
  EXPECT_EQ(cover.zip, Length{});
  const auto foam = foam_of(piece, sewn(CoverShape::board_backed));
  EXPECT_EQ(foam->length, 24_in);
  EXPECT_EQ(foam->thickness, 3_in);
}

TEST(Shaped, WhatHasNoFormIsNotReckoned) {
  const Piece notched = worked_cushion(
      {22_in, 40_in, {SquareCorner{}, Notch{18_in, 7_in}, SquareCorner{}, SquareCorner{}}}, 4_in);
  EXPECT_FALSE(shaped_cover(notched, sewn(CoverShape::waterfall), Wall::rear, 40_in).reckoned());
  EXPECT_FALSE(
      shaped_cover(cushion(24_in, 8_in, 7_in), sewn(CoverShape::bolster), Wall::rear, 24_in).reckoned());
  // Half of the thickness is all of the depth: no half circle and no top.
  EXPECT_FALSE(
      shaped_cover(cushion(2_in, 40_in, 4_in), sewn(CoverShape::waterfall), Wall::rear, 40_in).reckoned());
  EXPECT_TRUE(shaped_cover(notched, sewn(CoverShape::knife_edge), Wall::rear, 40_in).reckoned());
}

// A path that is measured along 20,000 chords, in floating point.
double walked(double depth, double thickness) {
  const auto at = [&](double t) {
    const double r = thickness / 2;
    const double a = std::numbers::pi * t;
    return std::pair{r * std::sin(a), r * std::cos(a)};
  };
  constexpr int chords = 20'000;
  double length = 2 * (depth - thickness / 2);
  for (int i = 0; i < chords; ++i) {
    const auto [x0, y0] = at(static_cast<double>(i) / chords);
    const auto [x1, y1] = at(static_cast<double>(i + 1) / chords);
    length += std::hypot(x1 - x0, y1 - y0);
  }
  return length;
}

TEST(Shaped, WrapsAreAsLongAsTheirWay) {
  std::mt19937_64 random(20261129);
  for (int i = 0; i < 50; ++i) {
    const Length depth = Length::inches(12 + static_cast<std::int64_t>(random() % 400), 4);
    const Length thickness = Length::inches(4 + static_cast<std::int64_t>(random() % 20), 4);
    if (depth < thickness) continue;
    EXPECT_NEAR(in_inches(waterfall_path(depth, thickness)), walked(in_inches(depth), in_inches(thickness)),
                1.1e-6);
    // Two half circles.
    EXPECT_NEAR(in_inches(circumference(thickness)),
                2 * walked(in_inches(thickness) / 2, in_inches(thickness)), 1.1e-6);
  }
}

// Turned by a quarter, length and width exchanged, the same is cut: nothing depends on the axes.
TEST(Shaped, IsTheSameTurned) {
  for (const CoverShape shape : {CoverShape::knife_edge, CoverShape::waterfall, CoverShape::board_backed}) {
    const ShapedCover one = shaped_cover(cushion(40_in, 22_in, 4_in), sewn(shape), Wall::right, 40_in);
    const ShapedCover turned = shaped_cover(cushion(22_in, 40_in, 4_in), sewn(shape), Wall::front, 40_in);
    ASSERT_EQ(one.parts.size(), turned.parts.size());
    EXPECT_EQ(one.zip, turned.zip);
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
      if (one.parts[i].what == Part::board) continue;
      EXPECT_EQ(one.parts[i].length, turned.parts[i].length);
      EXPECT_EQ(one.parts[i].width, turned.parts[i].width);
    }
    if (one.panel) {
      EXPECT_EQ(one.panel->length, turned.panel->width);
      EXPECT_EQ(one.panel->width, turned.panel->length);
    }
  }
}

// The welt of a knife edge of 40 x 22 x 4 goes once round its seam, 44 x 26: 140 and the ends; that of a
// bolster round both discs.
TEST(Shaped, WeltsGoAlongTheirSeams) {
  static const Plan plan = TrailerText{}.plan();
  Sewing sewing = sewn(CoverShape::knife_edge);
  sewing.welt = Length::inches(5, 32);
  const Piece slab = cushion(40_in, 22_in, 4_in);
  EXPECT_EQ(cover_of(plan, sewing, {}, slab).welt->length, 140_in + welt_ends);
  sewing.shape = CoverShape::board_backed;
  EXPECT_FALSE(cover_of(plan, sewing, {}, slab).welt);
  sewing.shape = CoverShape::bolster;
  const Cover round = cover_of(plan, sewing, {}, cushion(24_in, 8_in, 8_in));
  EXPECT_EQ(round.welt->length, circumference(8_in) * 2 + welt_ends);
}

// pi x 5/32 + 2 x 1/2 = 1.491: strips of 1 1/2 (upholsteryresource.com, node 56; derived in
// facts/cushions.md 2.3).
TEST(Shaped, WeltStripsGoRoundTheCord) {
  EXPECT_EQ(welt_strip_width(Length::inches(5, 32), Length::inches(1, 2)), Length::inches(3, 2));
  EXPECT_EQ(welt_strip_width(Length::inches(5, 32), Length::inches(5, 8)), Length::inches(7, 4));
}

}  // namespace
}  // namespace berthwright
