#include <berthwright/geometry/region.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "geometry/minkowski.h"
#include "geometry/overlay.h"
#include "geometry/segment.h"
#include "oracle/geos.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::number;
using support::polygon;

constexpr Length ticks(std::int64_t count) { return Length::from_ticks(count); }

TEST(Offset, TheDiscCoversItsCircleAndLooksTheSameFromAllSides) {
  for (const std::int64_t radius : {1, 2, 3, 7, 100, 4000, 1'016'000, 10'160'000, 400'000'000}) {
    SCOPED_TRACE(radius);
    const Polygon disc = disc_around(ticks(radius));
    EXPECT_EQ(disc.bounds(), box(-radius, -radius, radius, radius));
    EXPECT_EQ(mirrored(disc), Region(disc));
    for (const Edge& edge : edges(disc)) {
      EXPECT_GE(squared_distance(Point{}, edge), ticks(radius));
      const double x = static_cast<double>(edge.from.x.ticks());
      const double y = static_cast<double>(edge.from.y.ticks());
      EXPECT_LE(x * x + y * y,
                (1.0013 * static_cast<double>(radius) + 2) * (1.0013 * static_cast<double>(radius) + 2));
      const auto corners = disc.vertices();
      EXPECT_NE(std::ranges::find(corners, Point{-edge.from.y, edge.from.x}), corners.end());
      EXPECT_NE(std::ranges::find(corners, Point{edge.from.y, edge.from.x}), corners.end());
    }
  }
  EXPECT_EQ(disc_around(10_in).size(), 64u);
  EXPECT_THROW(disc_around(Length{}), std::invalid_argument);
  EXPECT_THROW(grown(Region(box(0, 0, 1, 1)), ticks(-1)), std::invalid_argument);
}

// An L of 6 x 6 less 3 x 3 swept with the unit square: 7 x 7 less 2 x 2 (the notch loses one in each axis).
TEST(Offset, SweepsAnLWithASquare) {
  const Region ell = without(box(0, 0, 6, 6), Region(box(3, 3, 6, 6)));
  EXPECT_EQ(swept(ell, Polygon::rectangle(box(0, 0, 1, 1))),
            without(box(0, 0, 7, 7), Region(box(4, 4, 7, 7))));
  EXPECT_EQ(swept(ell, Polygon::rectangle(box(-1, -1, 0, 0))),
            without(box(-1, -1, 6, 6), Region(box(3, 3, 6, 6))));
}

TEST(Offset, AHoleClosesWhenThePolygonDoesNotFitAndShrinksElse) {
  const Region frame = without(box(0, 0, 20, 20), Region(box(5, 5, 9, 15)));
  EXPECT_EQ(swept(frame, Polygon::rectangle(box(0, 0, 5, 1))), Region(box(0, 0, 25, 21)));
  EXPECT_EQ(swept(frame, Polygon::rectangle(box(0, 0, 5, 11))), Region(box(0, 0, 25, 31)));
  EXPECT_TRUE(shrunk(Region(box(5, 5, 9, 15)), ticks(20)).empty());
  EXPECT_EQ(swept(frame, Polygon::rectangle(box(0, 0, 4, 1))), Region(box(0, 0, 24, 21)));
  EXPECT_EQ(swept(frame, Polygon::rectangle(box(0, 0, 3, 1))),
            without(box(0, 0, 23, 21), Region(box(8, 6, 9, 15))));
}

// Squares touching at corners round a void: each is swept, the void shrinks to 2 x 2 and then vanishes.
TEST(Offset, SweepsARingOfTouchingSquares) {
  const std::vector<Region> squares{box(0, 4, 4, 8), box(4, 0, 8, 4), box(8, 4, 12, 8), box(4, 8, 8, 12)};
  const Region ring = united(squares);
  EXPECT_EQ(ring.faces().size(), 4u);
  const Region more = swept(ring, Polygon::rectangle(box(-1, -1, 1, 1)));
  ASSERT_EQ(more.faces().size(), 1u);
  EXPECT_EQ(more.faces()[0].holes, std::vector<Polygon>{Polygon::rectangle(box(5, 5, 7, 7))});
  const Region filled = swept(ring, Polygon::rectangle(box(-9, -9, 9, 9)));
  EXPECT_TRUE(filled.faces()[0].holes.empty());
}

TEST(Offset, ARectangleGrownAndShrunkReachesExactlyTheRadius) {
  const Region bed{Rect{{Length{}, Length{}}, {75_in, 38_in}}};
  EXPECT_EQ(grown(bed, 2_in).bounds(), grown(bed.bounds(), 2_in));
  EXPECT_EQ(shrunk(bed, 2_in), Region(grown(bed.bounds(), -2_in)));
  EXPECT_TRUE(shrunk(bed, 19_in).empty());
  EXPECT_FALSE(shrunk(bed, 19_in - one_tick).empty());
  EXPECT_EQ(grown(bed, Length{}), bed);
}

// A gap of 1 in between two cushions closes with a disc of 1/2 in and stays open with one a tick smaller.
TEST(Offset, ClosingFillsGapsThatTheDiscCannotEnter) {
  const Region seats = united(Region(Rect{{Length{}, Length{}}, {20_in, 30_in}}),
                              Region(Rect{{21_in, Length{}}, {40_in, 30_in}}));
  const Region filled = closed(seats, Length::inches(1, 2));
  ASSERT_EQ(filled.faces().size(), 1u);
  EXPECT_TRUE(contains(filled, Region(Rect{{20_in, 1_in}, {21_in, 29_in}})));
  EXPECT_EQ(filled.bounds(), seats.bounds());
  EXPECT_EQ(closed(seats, Length::inches(1, 2) - one_tick), seats);
}

TEST(Offset, ClosingLeavesConvexShapesAlone) {
  const Region clipped = polygon(
      {at(0, 0), at(9'000'000, 0), at(9'000'000, 5'000'001), at(7'654'321, 6'000'000), at(0, 6'000'000)});
  EXPECT_EQ(closed(clipped, 3_in), clipped);
  EXPECT_EQ(closed(box(0, 0, 10, 4), 3_in), Region(box(0, 0, 10, 4)));
}

TEST(Offset, ShrinkingJoinsFacesThatShareAnEdgeFirst) {
  const Region two = Region::from_faces(
      {{Polygon::rectangle(box(0, 0, 10, 10)), {}}, {Polygon::rectangle(box(10, 0, 20, 10)), {}}});
  EXPECT_EQ(shrunk(two, ticks(2)), shrunk(box(0, 0, 20, 10), ticks(2)));
}

// Slow twin: x lies in the sum of P and Q where P overlaps the mirror image of Q through the origin, at x.
TEST(Offset, AgreesWithOverlapsOfTheReflectedPolygon) {
  int inside = 0;
  int in_holes = 0;
  for (unsigned seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 1000;
    const Region region =
        seed % 2 == 0 ? support::random_boxes(random, 9, 8, step) : support::random_region(random, 8, step);
    const Polygon tool = support::random_polygon(random, 3 + static_cast<int>(seed % 4), 3, step);
    if (region.empty()) continue;
    const Region sum = swept(region, tool);
    ASSERT_TRUE(oracle::geos_is_valid(sum));
    std::vector<Point> reflected;
    for (const Point& p : tool.vertices()) reflected.push_back({-p.x, -p.y});
    const Region mirror = polygon(reflected);
    const std::vector<Edge> border = edges(sum);
    for (std::int64_t x = -250; x < 12 * step; x += 500) {
      for (std::int64_t y = -250; y < 12 * step; y += 500) {
        const Point p = at(x, y);
        if (std::ranges::any_of(border, [&](const Edge& e) { return squared_distance(p, e) <= ticks(2); }))
          continue;
        const bool expected = overlaps(region, moved(mirror, p - Point{}));
        ASSERT_EQ(sum.side_of(p) == Side::inside, expected) << x << ' ' << y;
        inside += expected;
        in_holes += !expected && meets({p, p}, sum.bounds());
      }
    }
  }
  EXPECT_GT(inside, 10'000);
  EXPECT_GT(in_holes, 3'000);
}

// Oracle: on rectilinear shapes the sum with a square is the mitred offset of GEOS.
TEST(Offset, AgreesWithMitredOffsetsOfGeosOnBoxes) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region = support::random_boxes(random, 8, 12, 1000);
    const std::int64_t by = 100 + 211 * static_cast<std::int64_t>(seed % 13);
    const Region sum = swept(region, Polygon::rectangle(box(-by, -by, by, by)));
    // A mitre at two squares that touch at a corner is GEOS' own affair: it joins faces one by one.
    double expected = 0;
    std::vector<Region> parts;
    for (const Region& part : region.parts()) parts.push_back(part);
    if (parts.size() == 1 && parts[0].faces()[0].holes.empty()) {
      expected = oracle::geos_mitred_area(region, static_cast<double>(by));
      ASSERT_NEAR(number(sum.area()), expected, 1e-9 * expected);
    }
    ASSERT_EQ(sum, swept(united(region, Region()), Polygon::rectangle(box(-by, -by, by, by))));
  }
}

// Oracle: GEOS unites what a convex polygon covers along every edge. Each corner is off by a tick at most,
// and no border is longer than that of all these parts.
TEST(Offset, AgreesWithGeosOnSumsWithConvexPolygons) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 10'007;
    const Region region =
        seed % 3 == 0 ? support::random_boxes(random, 8, 8, step) : support::random_region(random, 8, step);
    const Polygon tool = support::random_polygon(random, 3, 3, step);
    const double border = 2 * static_cast<double>(edges(region).size() * (12 + 3 * 5) * step);
    ASSERT_NEAR(number(swept(region, tool).area()), oracle::geos_swept_area(region, tool), border);
  }
}

// All crossings of upright, level and diagonal edges with even corners lie on the lattice, so no way of
// reckoning may differ by a tick. The octagon covers holes, goes into others, and into some just along one
// side.
TEST(Offset, IsWhatTheGuestMakesOfIt) {
  const Polygon octagon = polygon({at(-400, -1000), at(400, -1000), at(1000, -400), at(1000, 400),
                                   at(400, 1000), at(-400, 1000), at(-1000, 400), at(-1000, -400)});
  std::size_t holes = 0;
  std::size_t closed_holes = 0;
  for (unsigned seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region boxes = support::random_boxes(random, 9, 12, 1000);
    const Region region = seed % 2 == 0 ? boxes : without(box(-1000, -1000, 20'000, 20'000), boxes);
    const Region sum = swept(region, octagon);
    ASSERT_EQ(sum, wound_round(guest_border_of_swept(region, octagon)));
    for (const Face& face : region.faces()) closed_holes += face.holes.size();
    for (const Face& face : sum.faces()) holes += face.holes.size();
  }
  EXPECT_GT(holes, 20U);
  EXPECT_GT(closed_holes, holes + 50);
}

// One hole touches the middle of an outer edge and a corner of the second, the third an outer corner.
TEST(Offset, SweepsHolesThatTouch) {
  const std::int64_t s = 1000;
  const std::vector<Region> holes{polygon({at(2 * s, 2 * s), at(6 * s, 2 * s), at(4 * s, 8 * s)}),
                                  polygon({at(6 * s, 2 * s), at(7 * s, 3 * s), at(7 * s, 5 * s)}),
                                  polygon({at(0, 0), at(2 * s, s), at(s, 2 * s)})};
  const Region frame = without(box(0, 0, 8 * s, 8 * s), united(holes));
  ASSERT_EQ(frame.faces().size(), 1u);
  ASSERT_EQ(frame.faces()[0].holes.size(), 3u);
  for (const std::int64_t by : {1, 100, 300, 3000}) {
    SCOPED_TRACE(by);
    const Polygon tool = polygon({at(-by, 0), at(by, -by), at(0, by)});
    EXPECT_NEAR(number(swept(frame, tool).area()), oracle::geos_swept_area(frame, tool), 200.0 * s);
  }
}

// Of five holes the tool of 3 x 3 fits into the second, 4 x 4, and the last, 5 x 5: 1 x 1 and 2 x 2 are left.
TEST(Offset, ClosesEachHoleThatIsTooSmallAndNoOther) {
  const std::vector<Region> holes{box(2, 3, 3, 4), box(8, 3, 12, 7), box(16, 3, 17, 4), box(20, 3, 22, 5),
                                  box(30, 3, 35, 8)};
  const Region frame = without(box(0, 0, 40, 10), united(holes));
  const Region left = united(Region(box(11, 6, 12, 7)), Region(box(33, 6, 35, 8)));
  EXPECT_EQ(swept(frame, Polygon::rectangle(box(0, 0, 3, 3))), without(box(0, 0, 43, 13), left));
}

// Oracle: round offsets of GEOS, whose arcs lie inside the circle: ours cover them and exceed by 0.13 % of r.
TEST(Offset, LiesBetweenRoundOffsetsOfGeos) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region = support::random_region(random, 8, 100'000);
    const double radius = 20'000.0 + 17'000.0 * (seed % 9);
    const Length by = ticks(static_cast<std::int64_t>(radius));
    const double slack = 3e7;  // 2e6 ticks of border and more, each a tick or so off
    const double more = number(grown(region, by).area());
    ASSERT_GE(more, oracle::geos_round_area(region, radius) - slack);
    ASSERT_LE(more, oracle::geos_round_area(region, 1.0014 * radius) + slack);
    const double less = number(shrunk(region, by).area());
    ASSERT_LE(less, oracle::geos_round_area(region, -radius * 0.9999) + slack);
    ASSERT_GE(less, oracle::geos_round_area(region, -1.0014 * radius) - slack);
    // Slanted borders may be led through a rounded corner less than a tick away.
    ASSERT_TRUE(contains(grown(closed(region, by), ticks(2)), region));
    ASSERT_TRUE(contains(region, shrunk(region, by)));
  }
}

TEST(Offset, DoesNotCareAboutMirrorOrShift) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region boxes = support::random_boxes(random, 8, 12, 100'000);
    const Region any = support::random_region(random, 12, 100'000);
    const Vector by{ticks(-777), ticks(31)};
    ASSERT_EQ(moved(grown(any, ticks(55'555)), by), grown(moved(any, by), ticks(55'555)));
    ASSERT_EQ(moved(shrunk(any, ticks(55'555)), by), shrunk(moved(any, by), ticks(55'555)));
    // Corners where two arcs meet are rounded toward plus infinity, mirrored ones too: a tick apart.
    const Region one = grown(mirrored(boxes), ticks(55'555));
    const Region other = mirrored(grown(boxes, ticks(55'555)));
    ASSERT_TRUE(contains(grown(one, ticks(2)), other));
    ASSERT_TRUE(contains(grown(other, ticks(2)), one));
  }
}

}  // namespace
}  // namespace berthwright
