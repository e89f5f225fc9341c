#include <berthwright/geometry/mitred.h>

#include <gtest/gtest.h>

#include <random>

#include <berthwright/geometry/outline.h>
#include <berthwright/geometry/region.h>

#include "support/rects.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::inch_point;
using support::inch_rect;

constexpr Length half_inch = Length::inches(1, 2);

TEST(Mitred, KeepsTheCornersOfARectangleSharp) {
  EXPECT_EQ(mitred(Polygon::rectangle(inch_rect(0, 0, 24, 18)), 1_in),
            Polygon::rectangle(inch_rect(-1, -1, 25, 19)));
  EXPECT_EQ(mitred(Polygon::rectangle(inch_rect(0, 0, 24, 18)), -1_in),
            Polygon::rectangle(inch_rect(1, 1, 23, 17)));
}

// The notch stays 18 x 7: its sides move as far as the outer ones do.
TEST(Mitred, MovesTheSidesOfANotchAlong) {
  const Polygon cushion = support::polygon({inch_point(0, 0), inch_point(4, 0), inch_point(4, 7),
                                            inch_point(22, 7), inch_point(22, 40), inch_point(0, 40)});
  EXPECT_EQ(mitred(cushion, 1_in),
            support::polygon({inch_point(-1, -1), inch_point(5, -1), inch_point(5, 6), inch_point(23, 6),
                              inch_point(23, 41), inch_point(-1, 41)}));
}

// A clip of 45 degrees moves out by d, so that each of its ends moves d x (root of 2 - 1) along the side.
TEST(Mitred, LeadsClippedEdgesOnToWhereTheyMeet) {
  const Polygon clipped = support::polygon(
      {inch_point(0, 0), inch_point(20, 0), inch_point(20, 16), inch_point(16, 20), inch_point(0, 20)});
  const auto cut = mitred(clipped, 1_in);
  ASSERT_TRUE(cut);
  ASSERT_EQ(cut->size(), 5U);
  // 16 + 0.414213562… in, to the tick: 16.414213562 x 1,016,000 = 16,676,840.98.
  EXPECT_EQ(cut->vertices()[2], (Point{21_in, Length::from_ticks(16'676'841)}));
}

TEST(Mitred, CutsASharpTipOffSquare) {
  // 2 in wide, 20 in long: a tip of 5.7 degrees.
  const Polygon sliver = support::polygon({inch_point(0, 0), inch_point(20, 1), inch_point(0, 2)});
  const auto cut = mitred(sliver, 1_in);
  ASSERT_TRUE(cut);
  EXPECT_EQ(cut->bounds().high.x, 21_in);
}

TEST(Mitred, RefusesWhereTheEdgesDoNotFit) {
  // A slit 1 in wide.
  const Polygon slit =
      support::polygon({inch_point(0, 0), inch_point(9, 0), inch_point(9, 8), inch_point(10, 8),
                        inch_point(10, 0), inch_point(20, 0), inch_point(20, 20), inch_point(0, 20)});
  EXPECT_TRUE(mitred(slit, Length::inches(7, 16)));
  EXPECT_FALSE(mitred(slit, half_inch));
  EXPECT_FALSE(mitred(slit, 1_in));
  EXPECT_FALSE(mitred(Polygon::rectangle(inch_rect(0, 0, 4, 4)), -2_in));
  EXPECT_FALSE(mitred(Polygon::rectangle(inch_rect(0, 0, 4, 4)), -5_in));
}

// Against the offset by Minkowski sums, whose rounded corners lie inside of sharp ones. Its disc reaches up
// to 0.13 % too far, so it is taken that much smaller.
TEST(Mitred, HoldsAllThatIsWithinTheAllowance) {
  std::mt19937_64 random(20261128);
  int made = 0;
  for (int i = 0; i < 60; ++i) {
    const Polygon polygon = support::random_polygon(random, 9, 24, ticks_per_inch);
    const auto cut = mitred(polygon, Length::inches(1, 4));
    if (!cut) continue;
    ++made;
    const Region beyond = without(grown(Region(polygon), Length::from_ticks(253'670)), Region(*cut));
    EXPECT_LT(support::number(beyond.area()) / ticks_per_inch / ticks_per_inch, 1e-5) << i;
    EXPECT_TRUE(contains(Region(*cut), Region(polygon))) << i;
  }
  EXPECT_GT(made, 30);
}

TEST(Mitred, IsTheSameInTheMirrorAndShifted) {
  std::mt19937_64 random(7);
  int made = 0;
  for (int i = 0; i < 60; ++i) {
    const Polygon polygon = support::random_polygon(random, 8, 20, ticks_per_inch);
    const auto cut = mitred(polygon, Length::inches(1, 4));
    std::vector<Point> shifted, mirrored;
    for (const Point& p : polygon.vertices()) {
      shifted.push_back({p.x + 100_in, p.y - 7_in});
      mirrored.push_back({p.x, -p.y});
    }
    const auto moved = mitred(support::polygon(shifted), Length::inches(1, 4));
    const auto turned = mitred(support::polygon(mirrored), Length::inches(1, 4));
    ASSERT_EQ(cut.has_value(), moved.has_value());
    ASSERT_EQ(cut.has_value(), turned.has_value());
    if (!cut) continue;
    ++made;
    EXPECT_EQ(berthwright::moved(Region(*cut), {100_in, -7_in}), Region(*moved));
    EXPECT_EQ(berthwright::mirrored(Region(*cut)), Region(*turned));
  }
  EXPECT_GT(made, 30);
}

}  // namespace
}  // namespace berthwright
