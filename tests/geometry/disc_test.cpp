#include <berthwright/geometry/disc.h>

#include <gtest/gtest.h>

#include <cmath>

#include "oracle/clearance.h"
#include "oracle/geos.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

double ticks(Length length) { return static_cast<double>(length.ticks()); }

double clearance_of(const Region& region, const Disc& disc) {
  return oracle::clearance(region, ticks(disc.centre.x), ticks(disc.centre.y));
}

TEST(Disc, AnEmptyRegionHasNone) { EXPECT_FALSE(largest_disc(Region())); }

// The longest middle line of a 75 x 38 in box runs from (19, 19) to (56, 19); the least centre is its start.
TEST(Disc, OfABoxTakesHalfItsWidthAtTheLeastCentre) {
  const Disc disc = largest_disc(Region(Rect{{0_in, 0_in}, {75_in, 38_in}})).value();
  EXPECT_EQ(disc.radius, 19_in);
  EXPECT_EQ(disc.centre, (Point{19_in, 19_in}));
}

// The incircle of a right triangle: r = (30 + 40 - 50) / 2 = 10, touching both legs.
TEST(Disc, OfTheThreeFourFiveTriangleIsItsIncircle) {
  const Disc disc = largest_disc(polygon({{0_in, 0_in}, {40_in, 0_in}, {0_in, 30_in}})).value();
  EXPECT_EQ(disc.radius, 10_in);
  EXPECT_EQ(disc.centre, (Point{10_in, 10_in}));
}

// In an L of 30 in arms the disc stands in the elbow: it touches the two outer walls and the inner corner at
// (30, 30), so (30 - r) sqrt 2 = r, that is 2 (30 - r)^2 = r^2.
TEST(Disc, OfAnLStandsInTheElbow) {
  const Region region =
      polygon({{0_in, 0_in}, {80_in, 0_in}, {80_in, 30_in}, {30_in, 30_in}, {30_in, 70_in}, {0_in, 70_in}});
  const std::int64_t radius = largest_disc(region).value().radius.ticks();
  const std::int64_t arm = (30_in).ticks();
  EXPECT_GE(2 * (arm - radius) * (arm - radius), radius * radius);
  EXPECT_LE(2 * (arm - radius - 2) * (arm - radius - 2), (radius + 2) * (radius + 2));
}

// Around a 20 in post in the middle of 80 x 40 the widest room is 30 wide and 40 high, left and right.
TEST(Disc, KeepsClearOfAHole) {
  const Region region = without(Rect{{0_in, 0_in}, {80_in, 40_in}}, Rect{{30_in, 10_in}, {50_in, 30_in}});
  const Disc disc = largest_disc(region).value();
  EXPECT_EQ(disc.radius, 15_in);
  EXPECT_EQ(disc.centre, (Point{15_in, 15_in}));
}

TEST(Disc, MeasuresASliverOfAnOddNumberOfTicks) {
  for (const std::int64_t width : {63'499, 63'500, 63'501, 3, 2}) {
    SCOPED_TRACE(width);
    const Region gap = box(7, -5, 7 + (70_in).ticks(), -5 + width);
    const Disc disc = largest_disc(gap).value();
    EXPECT_EQ(disc.radius.ticks(), width / 2);
    EXPECT_EQ(disc.centre.y.ticks(), -5 + width / 2);
  }
  EXPECT_EQ(largest_disc(box(0, 0, 1000, 1)).value().radius, Length());
}

// A strip 70 in x 1/16 in along (4, 3): corners (0, 0), (56, 42), (56 - 3/80, 42 + 4/80), (-3/80, 4/80).
TEST(Disc, MeasuresATurnedSliver) {
  const Length three = Length::inches(3, 80), four = Length::inches(4, 80);
  const Region gap = polygon({{0_in, 0_in}, {56_in, 42_in}, {56_in - three, 42_in + four}, {-three, four}});
  const Disc disc = largest_disc(gap).value();
  EXPECT_LE(disc.radius, Length::inches(1, 32));
  EXPECT_GE(disc.radius, Length::inches(1, 32) - Length::from_ticks(2));
}

TEST(Disc, TakesTheWidestOfSeveralParts) {
  // The two squares share only the corner (10, 10) in; the third part is a little wider than both.
  const Region region =
      united(std::vector<Region>{Rect{{0_in, 0_in}, {10_in, 10_in}}, Rect{{10_in, 10_in}, {20_in, 20_in}},
                                 Rect{{40_in, 0_in}, {52_in, 11_in}}});
  const Disc disc = largest_disc(region).value();
  EXPECT_EQ(disc.radius, Length::inches(11, 2));
  EXPECT_EQ(disc.centre, (Point{40_in + Length::inches(11, 2), Length::inches(11, 2)}));
}

TEST(Disc, AgreesWithGeosAndWithAGrid) {
  std::mt19937_64 random(11);
  const std::int64_t step = 1'000'000;
  constexpr int grid = 120;
  for (int seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE(seed);
    const Region region =
        seed % 2 == 0 ? support::random_region(random, 12, step) : support::random_boxes(random, 9, 12, step);
    if (region.empty()) continue;
    const Disc disc = largest_disc(region).value();
    const double radius = ticks(disc.radius);
    EXPECT_GE(clearance_of(region, disc), radius - 1e-3);
    EXPECT_LE(clearance_of(region, disc), radius + 1 + 1e-3);
    const double tolerance = 2'000;
    const double geos = oracle::geos_inscribed_radius(region, tolerance);
    EXPECT_GE(radius, geos - 2);
    EXPECT_LE(radius, geos + tolerance + 2);
    double best = 0;
    for (int i = 0; i <= grid; ++i)
      for (int k = 0; k <= grid; ++k)
        best = std::max(best, oracle::clearance(region, 12.0 * step * i / grid, 12.0 * step * k / grid));
    EXPECT_GE(radius, best - 2);
    EXPECT_LE(radius, best + 12.0 * step / grid * std::sqrt(0.5) + 2);
  }
}

TEST(Disc, MovesWithItsRegionAndSurvivesAMirror) {
  std::mt19937_64 random(12);
  for (int seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    const Region region = support::random_region(random, 12, 1'000'000);
    const Disc disc = largest_disc(region).value();
    const Vector by{Length::from_ticks(-987'654'321), Length::from_ticks(876'543'210)};
    const Disc there = largest_disc(moved(region, by)).value();
    EXPECT_EQ(there.radius, disc.radius);
    EXPECT_EQ(there.centre, disc.centre + by);
    const Disc mirror = largest_disc(mirrored(region)).value();
    EXPECT_LE(abs(mirror.radius - disc.radius), one_tick);
  }
}

// Rounded corners can push a hole across the border by a tick: its point at (500000, -1) makes its two long
// sides cross the bottom edge. The disc beside it is that of the hole which only touches at (500000, 0).
TEST(Disc, StandsAHoleThatCrossesTheBorderByATick) {
  const auto radius_with_point_at = [](std::int64_t y) {
    const Polygon hole = polygon({at(500'000, y), at(700'000, 600'000), at(300'000, 600'000)});
    return ticks(
        largest_disc(
            Region::from_faces(
                {{polygon({at(0, 0), at(1'000'000, 0), at(1'000'000, 700'000), at(0, 700'000)}), {hole}}}))
            .value()
            .radius);
  };
  EXPECT_GT(radius_with_point_at(0), 150'000);  // between the hole, 300000 to 500000 away, and two walls
  EXPECT_NEAR(radius_with_point_at(-1), radius_with_point_at(0), 3);
}

TEST(Disc, OrderOfFacesDoesNotMatter) {
  std::vector<Face> faces;
  for (int i = 0; i < 6; ++i)
    faces.push_back({polygon({at(i * 100, 0), at(i * 100 + 50 + i, 0), at(i * 100, 80)}), {}});
  const Disc first = largest_disc(Region::from_faces(faces)).value();
  std::reverse(faces.begin(), faces.end());
  const Disc second = largest_disc(Region::from_faces(faces)).value();
  EXPECT_EQ(first.centre, second.centre);
  EXPECT_EQ(first.radius, second.radius);
}

}  // namespace
}  // namespace berthwright
