#include <berthwright/solve/cover/rim.h>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "support/cushions.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::inch_point;

// What a corner takes from the perimeter of the rectangle: a notch nothing, a clip a + b less its slant, a
// radius 2 r less a quarter circle.
double taken(const Corner& corner) {
  if (const auto* clip = std::get_if<Clip>(&corner))
    return in_inches(clip->along + clip->across) -
           std::hypot(in_inches(clip->along), in_inches(clip->across));
  if (const auto* round = std::get_if<Round>(&corner))
    return in_inches(round->radius) * (2 - std::numbers::pi / 2);
  return 0;
}

double by_hand(const WorkedRectangle& r) {
  double perimeter = 2 * in_inches(r.length + r.width);
  for (const Corner& corner : r.corners) perimeter -= taken(corner);
  return perimeter;
}

TEST(Rim, OfARectangleHasItsFourSides) {
  const Rim rim = rim_of(cushion(24_in, 18_in, 6_in).outline);
  ASSERT_EQ(rim.edges.size(), 4U);
  EXPECT_EQ(rim.perimeter, 84_in);
  const Wall sides[] = {Wall::left, Wall::rear, Wall::right, Wall::front};
  const Length lengths[] = {24_in, 18_in, 24_in, 18_in};
  Length start;
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(rim.edges[i].looks, sides[i]);
    EXPECT_EQ(rim.edges[i].length, lengths[i]);
    EXPECT_EQ(rim.edges[i].start, start);
    EXPECT_TRUE(rim.edges[i].on_box);
    start = rim.edges[i].end();
  }
}

// 22 x 40 with a notch of 18 x 7 and a corner of 4 in radius, as plans/dunnock.json has one: 124 - 8 + 2 pi.
TEST(Rim, TellsNotchesAndRoundedCorners) {
  const Outline outline =
      worked_cushion({22_in, 40_in, {SquareCorner{}, Notch{18_in, 7_in}, Round{4_in}, {}}}, 4_in).outline;
  const Rim rim = rim_of(outline);
  ASSERT_EQ(rim.edges.size(), 7U);
  EXPECT_NEAR(in_inches(rim.perimeter), 116 + 2 * std::numbers::pi, 1e-6);
  EXPECT_EQ(rim.edges[2].looks, Wall::left);
  EXPECT_FALSE(rim.edges[2].on_box) << "the notch";
  EXPECT_EQ(rim.edges[3].length, 29_in);
  EXPECT_EQ(rim.edges[4].radius, 4_in);
  EXPECT_FALSE(rim.edges[4].looks);
  EXPECT_FALSE(rim.edges[4].is_straight());
}

// A half circle of 16 chords, 11.25 degrees each, on a rectangle: one curve.
TEST(Rim, SewsAFlatBendAsOneCurve) {
  std::vector<Point> corners{inch_point(0, 0), inch_point(20, 0)};
  for (int i = 1; i < 16; ++i) {
    const double angle = std::numbers::pi * i / 16;
    corners.push_back({20_in + Length::from_ticks(std::llround(10 * std::sin(angle) * ticks_per_inch)),
                       10_in - Length::from_ticks(std::llround(10 * std::cos(angle) * ticks_per_inch))});
  }
  corners.push_back(inch_point(20, 20));
  corners.push_back(inch_point(0, 20));
  const Rim rim = rim_of(Outline::free(corners).value());
  ASSERT_EQ(rim.edges.size(), 4U);
  EXPECT_EQ(rim.edges[1].path.size(), 17U);
  EXPECT_NEAR(in_inches(rim.perimeter), 60 + 2 * 160 * std::sin(std::numbers::pi / 32), 1e-5);
}

TEST(Rim, IsAsLongAsByHand) {
  std::mt19937_64 random(20261128);
  for (int i = 0; i < 200; ++i) {
    const WorkedRectangle rectangle = random_rectangle(random);
    const Rim rim = rim_of(Outline::worked(rectangle).value());
    // Each of four worked corners may be rounded up by a tick, a millionth of an inch.
    EXPECT_GE(in_inches(rim.perimeter), by_hand(rectangle) - 1e-9) << i;
    EXPECT_LE(in_inches(rim.perimeter), by_hand(rectangle) + 4e-6) << i;
    Length sum;
    for (const RimEdge& edge : rim.edges) {
      EXPECT_EQ(edge.start, sum);
      sum += edge.length;
    }
    EXPECT_EQ(sum, rim.perimeter);
    for (std::size_t e = 0; e < rim.edges.size(); ++e)
      EXPECT_EQ(rim.edges[e].path.back(), rim.edges[(e + 1) % rim.edges.size()].path.front());
  }
}

}  // namespace
}  // namespace berthwright
