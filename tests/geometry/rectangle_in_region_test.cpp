#include <berthwright/geometry/rectangle_in_region.h>

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "oracle/geos.h"
#include "oracle/rectangle_scan.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::polygon;

Region inches(std::vector<std::pair<int, int>> corners) {
  std::vector<Point> points;
  for (const auto& [x, y] : corners) points.push_back({Length::inches(x), Length::inches(y)});
  return polygon(points);
}

double area(const TurnedRectangle& r) {
  return static_cast<double>(r.length.ticks()) * static_cast<double>(r.width.ticks());
}
Int128 exact_area(const TurnedRectangle& r) { return Int128{r.length.ticks()} * r.width.ticks(); }
double degrees(const TurnedRectangle& r) { return static_cast<double>(r.turn.microdegrees()) / 1e6; }

double distance(Point a, Point b) {
  return std::hypot(static_cast<double>((b.x - a.x).ticks()), static_cast<double>((b.y - a.y).ticks()));
}

// None of this is the solver's own code: exact containment by the Booleans, area outside by GEOS, lengths of
// the sides by doubles.
void expect_inside(const TurnedRectangle& r, const Region& region) {
  const Region outline = polygon({r.corners.begin(), r.corners.end()});
  EXPECT_TRUE(contains(region, outline));
  const double along = distance(r.corners[0], r.corners[1]);
  const double across = distance(r.corners[1], r.corners[2]);
  EXPECT_LE(oracle::geos_area(oracle::Operation::subtract, outline, region), 1e-3 * (along + across) + 1);
  EXPECT_GE(r.length, r.width);
  EXPECT_GT(r.width, Length());
  EXPECT_LE(static_cast<double>(r.length.ticks()), along + 1e-3);
  EXPECT_LE(static_cast<double>(r.width.ticks()), across + 1e-3);
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_GT(cross(r.corners[i], r.corners[(i + 1) % 4], r.corners[(i + 2) % 4]), 0);
  const Vector first = r.corners[1] - r.corners[0];
  EXPECT_TRUE(first.y > Length() || (first.y == Length() && first.x > Length()));
  const Vector second = r.corners[2] - r.corners[1];
  const double skew = static_cast<double>(first.x.ticks()) * static_cast<double>(second.x.ticks()) +
                      static_cast<double>(first.y.ticks()) * static_cast<double>(second.y.ticks());
  EXPECT_LE(std::abs(skew), 3 * (along + across));  // square to the rounding of its corners
  const double sine = static_cast<double>(r.turn.sine()) / static_cast<double>(r.turn.unit());
  EXPECT_NEAR(sine, static_cast<double>(first.y.ticks()) / along, 1e-9);
}

// The side beside the one of the width asked for.
Length reach(const TurnedRectangle& r, Length width) { return r.length > width ? r.length : r.width; }

TEST(LargestRectangle, AnEmptyRegionHasNone) {
  EXPECT_FALSE(largest_rectangle(Region()));
  EXPECT_FALSE(longest_rectangle(Region(), 1_in));
  EXPECT_THROW(longest_rectangle(inches({{0, 0}, {9, 0}, {9, 9}}), Length()), std::invalid_argument);
}

TEST(LargestRectangle, OfABedIsTheBed) {
  const Region bed = Rect{{3_in, 5_in}, {78_in, 43_in}};
  const TurnedRectangle r = largest_rectangle(bed).value();
  EXPECT_EQ(r.length, 75_in);
  EXPECT_EQ(r.width, 38_in);
  EXPECT_EQ(r.turn, Turn());
  EXPECT_EQ(r.corners,
            (std::array<Point, 4>{Point{3_in, 5_in}, {78_in, 5_in}, {78_in, 43_in}, {3_in, 43_in}}));
  const TurnedRectangle across = largest_rectangle(Rect{{0_in, 0_in}, {38_in, 75_in}}).value();
  EXPECT_EQ(across.length, 75_in);
  EXPECT_EQ(across.turn, Turn::quarters(1));
  EXPECT_EQ(across.corners[0], (Point{38_in, 0_in}));
}

// Arms of 80 x 30 and 30 x 70: 2400 beats 2100.
TEST(LargestRectangle, OfAnLIsItsLargerArm) {
  const Region region = inches({{0, 0}, {80, 0}, {80, 30}, {30, 30}, {30, 70}, {0, 70}});
  const TurnedRectangle r = largest_rectangle(region).value();
  expect_inside(r, region);
  EXPECT_EQ(r.length, 80_in);
  EXPECT_EQ(r.width, 30_in);
}

// A U lounge: two arms of 25 x 75 joined by a seat 70 x 30. The seat holds 70 x 30 = 2100, an arm 75 x 25 =
// 1875.
TEST(LargestRectangle, OfAUIsTheSeatAcross) {
  const Region region = inches({{0, 0}, {70, 0}, {70, 75}, {45, 75}, {45, 30}, {25, 30}, {25, 75}, {0, 75}});
  const TurnedRectangle r = largest_rectangle(region).value();
  expect_inside(r, region);
  EXPECT_EQ(exact_area(r), Int128{(70_in).ticks()} * (30_in).ticks());
}

// A plus of two bars 90 x 20: each bar holds 1800. A square turned 45 degrees through the four inner corners
// has only the diagonal of the 20 x 20 middle, and reaches out to no more. Equal bars: the one less turned.
TEST(LargestRectangle, OfAPlusIsTheBarLessTurned) {
  const Region region = united(Rect{{0_in, 35_in}, {90_in, 55_in}}, Rect{{35_in, 0_in}, {55_in, 90_in}});
  const TurnedRectangle r = largest_rectangle(region).value();
  EXPECT_EQ(r.length, 90_in);
  EXPECT_EQ(r.width, 20_in);
  EXPECT_EQ(r.turn, Turn());
}

// Equal areas, 60 x 20 and 40 x 30: the longer.
TEST(LargestRectangle, OfEqualAreasIsTheLonger) {
  const Region region = united(Rect{{0_in, 0_in}, {40_in, 30_in}}, Rect{{0_in, 40_in}, {20_in, 100_in}});
  EXPECT_EQ(largest_rectangle(region).value().length, 60_in);
}

// A rectangle in a triangle holds at most half its area (known theorem); any side may carry it.
TEST(LargestRectangle, OfATriangleIsHalfItsArea) {
  const std::vector<std::vector<std::pair<int, int>>> triangles = {
      {{0, 0}, {60, 0}, {20, 40}}, {{0, 0}, {71, 13}, {20, 48}}, {{5, 80}, {30, 3}, {61, 44}}};
  for (const auto& corners : triangles) {
    const Region region = inches(corners);
    const TurnedRectangle r = largest_rectangle(region).value();
    expect_inside(r, region);
    const double half = support::number(region.area()) / 2;
    EXPECT_LE(area(r), half);
    EXPECT_GE(area(r), half * (1 - 1e-6));
  }
}

// In an ellipse of half axes a and b the largest rectangle has the area 2ab; a polygon of n corners on the
// ellipse is inside it and holds an ellipse smaller by cos(pi / n).
TEST(LargestRectangle, OfAnEllipseIsTwiceTheProductOfItsHalfAxes) {
  for (const int n : {40, 150}) {
    std::vector<Point> corners;
    for (int i = 0; i < n; ++i) {
      const double angle = 2 * std::numbers::pi * (i + 0.3) / n;
      corners.push_back(
          at(std::llround(50'800'000 * std::cos(angle)), std::llround(30'480'000 * std::sin(angle))));
    }
    const Region region = polygon(corners);
    const TurnedRectangle r = largest_rectangle(region).value();
    expect_inside(r, region);
    const double ideal = 2.0 * 50'800'000 * 30'480'000;
    EXPECT_LE(area(r), ideal);
    EXPECT_GE(area(r), ideal * std::pow(std::cos(std::numbers::pi / n), 2));
  }
}

// Long sides that rise 3 ticks over 75 in (rounded corners) hold 38 in at that slope and 3 ticks less along
// the axis: no reason to turn a bed.
TEST(LargestRectangle, IsNotTurnedForAFewTicks) {
  const Length rise = 100 * one_tick;
  const Region bed = polygon({{0_in, 0_in}, {75_in, rise}, {75_in, 38_in + rise}, {0_in, 38_in}});
  const TurnedRectangle r = largest_rectangle(bed).value();
  expect_inside(r, bed);
  EXPECT_EQ(r.turn, Turn());
  EXPECT_EQ(r.length, 75_in);
  EXPECT_EQ(r.width, 38_in - rise);
}

// 75 x 38 in along (4, 3): all corners are whole ticks, and the 3-4-5 turn is exact.
TEST(LargestRectangle, FindsABedTurnedByThreeFourFive) {
  const auto fifth = [](int count) { return Length::inches(count, 5); };
  const Region bed = polygon(
      {{0_in, 0_in}, {60_in, 45_in}, {60_in - fifth(114), 45_in + fifth(152)}, {-fifth(114), fifth(152)}});
  for (const auto& r : {largest_rectangle(bed).value(), longest_rectangle(bed, 38_in).value()}) {
    expect_inside(r, bed);
    EXPECT_EQ(r.length, 75_in);
    EXPECT_EQ(r.width, 38_in);
    EXPECT_EQ(r.turn, Turn::toward(4, 3));
  }
}

// Corners rounded to the lattice cost at most `turning_slack`, in either size.
TEST(LongestRectangle, ABedTurnedToAnyDegreeHoldsItsSizeToTheSlack) {
  for (int degree = 1; degree < 180; degree += 7) {
    SCOPED_TRACE(degree);
    const double c = std::cos(degree * std::numbers::pi / 180), s = std::sin(degree * std::numbers::pi / 180);
    std::vector<Point> corners;
    for (const auto& [x, y] : {std::pair{0, 0}, {75, 0}, {75, 38}, {0, 38}})
      corners.push_back(
          at(std::llround(1'016'000 * (c * x - s * y)), std::llround(1'016'000 * (s * x + c * y))));
    const Region bed = polygon(corners);
    const auto r = longest_rectangle(bed, 38_in);
    ASSERT_TRUE(r);
    expect_inside(*r, bed);
    EXPECT_GE(r->length, 75_in - turning_slack);
    EXPECT_GE(r->width, 38_in - turning_slack);
    EXPECT_LE(r->width, 38_in);
    EXPECT_NEAR(degrees(*r), degree, 1e-5);
  }
}

TEST(LongestRectangle, FitsToTheTick) {
  const Rect bed{{0_in, 0_in}, {75_in, 38_in}};
  EXPECT_EQ(longest_rectangle(bed, 38_in).value().length, 75_in);
  const auto narrow = longest_rectangle(Rect{bed.low, {75_in, 38_in - one_tick}}, 38_in);
  ASSERT_TRUE(narrow);  // only across, where 38 in is the length
  EXPECT_LT(reach(*narrow, 38_in), 38_in);
  EXPECT_EQ(longest_rectangle(Rect{bed.low, {75_in - one_tick, 38_in}}, 38_in).value().length,
            75_in - one_tick);
  EXPECT_FALSE(longest_rectangle(Rect{bed.low, {30_in, 20_in}}, 38_in));
}

// With slanted ends the sides still run along the axes: one tick too narrow is too narrow at any small turn.
TEST(LongestRectangle, NoTurnMakesUpForAMissingTick) {
  for (const Length missing : {one_tick, 3 * one_tick}) {
    const Length high = 38_in - missing;
    const Region bed = polygon({{0_in, 0_in}, {90_in, 0_in}, {95_in, high}, {9_in, high}});
    const auto r = longest_rectangle(bed, 38_in);
    EXPECT_TRUE(!r || reach(*r, 38_in) <= 38_in);
  }
  const Length rise = 6 * one_tick;  // slanted to hold 38 in between its long sides, but not quite across
  const Region bed = polygon({{0_in, 0_in}, {75_in, rise}, {75_in, 38_in + rise}, {0_in, 38_in}});
  const auto r = longest_rectangle(bed, 38_in);
  EXPECT_TRUE(!r || reach(*r, 38_in) <= 38_in);
}

// The width may exceed the length: 24 in wide in a strip 10 in high is 24 x 10.
TEST(LongestRectangle, MayBeWiderThanLong) {
  const TurnedRectangle r = longest_rectangle(Rect{{0_in, 0_in}, {30_in, 10_in}}, 24_in).value();
  EXPECT_EQ(r.length, 24_in);
  EXPECT_EQ(r.width, 10_in);
}

// Two beds of 38 x 75 in do not fit in 120 x 72 in side by side: 76 in of width does it.
TEST(LongestRectangle, TwoNominalBedsNeedSeventySixInches) {
  EXPECT_LT(longest_rectangle(Rect{{0_in, 0_in}, {120_in, 72_in}}, 76_in)->width, 75_in);
  EXPECT_EQ(longest_rectangle(Rect{{0_in, 0_in}, {120_in, 76_in}}, 76_in)->length, 120_in);
}

// Diagonal of a box: a strip 10 wide in 40 x 40 at 45 degrees: its length is 40 sqrt 2 - 10 = 46.5685 in.
TEST(LongestRectangle, LiesAcrossTheDiagonalWhereThatIsLonger) {
  const Region box = Rect{{0_in, 0_in}, {40_in, 40_in}};
  const TurnedRectangle r = longest_rectangle(box, 10_in).value();
  expect_inside(r, box);
  EXPECT_EQ(r.width, 10_in);
  const double ideal = (40 * std::numbers::sqrt2 - 10) * 1'016'000;
  EXPECT_LE(static_cast<double>(r.length.ticks()), ideal);
  EXPECT_GE(static_cast<double>(r.length.ticks()), ideal - 40);  // 0.001 mm
  EXPECT_NEAR(degrees(r), 45, 1e-3);
}

// A strip of width w and length l turned by a in a box W x H touches all four sides when
// l cos a + w sin a = W and l sin a + w cos a = H; the twin finds a by halving.
TEST(LongestRectangle, FollowsThePeakBetweenTwoDegrees) {
  for (const auto& [wide, high, width] : {std::array{90, 60, 8}, {77, 70, 11}, {61, 33, 5}}) {
    SCOPED_TRACE(wide);
    double low = 0, above = std::numbers::pi / 4;
    const auto along = [&](double a) { return (wide - width * std::sin(a)) / std::cos(a); };
    for (int i = 0; i < 60; ++i) {
      const double a = (low + above) / 2;
      (along(a) * std::sin(a) + width * std::cos(a) < high ? low : above) = a;
    }
    const Region box = Rect{{0_in, 0_in}, {Length::inches(wide), Length::inches(high)}};
    const TurnedRectangle r = longest_rectangle(box, Length::inches(width)).value();
    expect_inside(r, box);
    const double ideal = along(low) * 1'016'000;
    EXPECT_GT(ideal, wide * 1'016'000);
    EXPECT_LE(static_cast<double>(r.length.ticks()), ideal + 1);
    EXPECT_GE(static_cast<double>(r.length.ticks()), ideal - 400);  // 0.01 mm
    EXPECT_NEAR(std::min(degrees(r), 180 - degrees(r)), low * 180 / std::numbers::pi, 1e-4);
  }
}

TEST(LongestRectangle, SeveralWidthsAtOnceGiveTheSame) {
  std::mt19937_64 random(5);
  const Region region = support::random_region(random, 12, 5'000'000);
  const std::vector<Length> widths = {16_in, 24_in, 3_in, 100_in};
  const auto all = longest_rectangles(region, widths);
  ASSERT_EQ(all.size(), widths.size());
  for (std::size_t i = 0; i < widths.size(); ++i) {
    const auto one = longest_rectangle(region, widths[i]);
    ASSERT_EQ(all[i].has_value(), one.has_value());
    if (one) {
      EXPECT_EQ(all[i]->corners, one->corners);
    }
  }
}

TEST(LargestRectangle, OnTheLatticeNoAxisParallelOneIsLarger) {
  std::mt19937_64 random(21);
  constexpr int cells = 14;
  const std::int64_t step = 1'016'000;
  for (int seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    const Region region = support::random_boxes(random, 5 + seed % 9, cells, step);
    if (region.empty()) continue;
    // Every other width is a whole number of cells, which fits to the tick or not at all.
    const auto drawn = static_cast<std::int64_t>(random() % 5'000'000);
    const Length width = Length::from_ticks(seed % 2 == 0 ? (1 + drawn / step) * step : 1 + drawn);
    const oracle::LatticeBest twin = oracle::lattice_rectangles(region, cells, step, width);
    const TurnedRectangle r = largest_rectangle(region).value();
    expect_inside(r, region);
    EXPECT_GE(exact_area(r), twin.area);
    EXPECT_LE(2 * exact_area(r), region.area().doubled());
    if (r.turn.is_quarter()) {
      EXPECT_EQ(exact_area(r), twin.area);
    }
    const auto longest = longest_rectangle(region, width);
    if (twin.length > 0) {
      ASSERT_TRUE(longest);
    }
    if (!longest) continue;
    expect_inside(*longest, region);
    const Length found = reach(*longest, width);
    EXPECT_GE(found.ticks(), twin.length);
    if (longest->turn.is_quarter()) {
      EXPECT_EQ(found.ticks(), twin.length);
    }
  }
}

// The scan's rectangles are real, so ours may not be smaller than any of them.
TEST(LargestRectangle, NoRasterAtAnyAngleHoldsMore) {
  std::mt19937_64 random(22);
  for (int seed = 0; seed < 24; ++seed) {
    SCOPED_TRACE(seed);
    const Region region = support::random_region(random, 12, 5'000'000);
    const Length width = Length::from_ticks(5'000'000 + static_cast<std::int64_t>(random() % 15'000'000));
    oracle::ScanBest twin;
    for (int degree = 0; degree < 90; degree += 2) {
      const oracle::ScanBest scan =
          oracle::scanned_rectangles(region, (degree + 0.37) * std::numbers::pi / 180, 60, width);
      twin.area = std::max(twin.area, scan.area);
      twin.length = std::max(twin.length, scan.length);
    }
    const TurnedRectangle r = largest_rectangle(region).value();
    expect_inside(r, region);
    EXPECT_GE(area(r), twin.area);
    EXPECT_LE(2 * exact_area(r), region.area().doubled());
    const auto longest = longest_rectangle(region, width);
    if (!longest) {
      EXPECT_EQ(twin.length, 0);
      continue;
    }
    expect_inside(*longest, region);
    EXPECT_GE(static_cast<double>(reach(*longest, width).ticks()), twin.length);
    EXPECT_GE(std::max(longest->length, longest->width), width - turning_slack);
  }
}

TEST(LargestRectangle, MovesWithItsRegionAndSurvivesMirrorAndReorder) {
  std::mt19937_64 random(23);
  for (int seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    const Region region = seed % 2 == 0 ? support::random_region(random, 12, 5'000'000)
                                        : support::random_boxes(random, 9, 12, 5'000'000);
    if (region.empty()) continue;
    const TurnedRectangle r = largest_rectangle(region).value();
    const Vector by{Length::from_ticks(-876'543'211), Length::from_ticks(912'345'678)};
    const TurnedRectangle there = largest_rectangle(moved(region, by)).value();
    EXPECT_EQ(there.length, r.length);
    EXPECT_EQ(there.width, r.width);
    EXPECT_EQ(there.corners[0], r.corners[0] + by);
    const Region mirror = mirrored(region);
    const TurnedRectangle image = largest_rectangle(mirror).value();
    expect_inside(image, mirror);
    EXPECT_NEAR(area(image) / area(r), 1, 1e-5);
    std::vector<Face> faces(region.faces().begin(), region.faces().end());
    std::reverse(faces.begin(), faces.end());
    EXPECT_EQ(largest_rectangle(Region::from_faces(faces)).value().corners, r.corners);
  }
}

}  // namespace
}  // namespace berthwright
