#include <berthwright/geometry/region.h>

#include <gtest/gtest.h>

#include <array>

#include "geometry/segment.h"
#include "oracle/geos.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::number;
using support::polygon;

Region square(std::int64_t left, std::int64_t bottom, std::int64_t side) {
  return box(left, bottom, left + side, bottom + side);
}

TEST(Region, UnitesNeighboursIntoOneFaceWithoutTheirCommonEdge) {
  const Region both = united(square(0, 0, 4), Region(box(4, 0, 9, 4)));
  EXPECT_EQ(both, Region(box(0, 0, 9, 4)));
}

TEST(Region, TouchingSquaresDoNotOverlap) {
  EXPECT_FALSE(overlaps(square(0, 0, 4), square(4, 1, 4)));
  EXPECT_FALSE(overlaps(square(0, 0, 4), square(4, 4, 4)));
  EXPECT_TRUE(overlaps(square(0, 0, 4), square(3, 3, 4)));
  EXPECT_TRUE(overlaps(square(0, 0, 4), square(1, 1, 2)));
  EXPECT_TRUE(overlaps(square(0, 0, 4), square(0, 0, 4)));
}

TEST(Region, SquaresJoinedAtACornerStayTwoFaces) {
  const Region both = united(square(0, 0, 4), square(4, 4, 4));
  ASSERT_EQ(both.faces().size(), 2u);
  EXPECT_EQ(both.side_of(at(4, 4)), Side::boundary);
  EXPECT_EQ(both.side_of(at(5, 3)), Side::outside);
  EXPECT_EQ(both.parts().size(), 2u);
  EXPECT_TRUE(oracle::geos_is_valid(both));
}

// The hole (4,4)-(6,6) less a triangle reaches the outer border at (8,8) only: one face, both rings simple.
TEST(Region, AHoleMayTouchTheOuterBorderAtOnePoint) {
  const Polygon hole = polygon({at(2, 2), at(6, 4), at(8, 8), at(4, 6)});
  const Region frame = without(square(0, 0, 8), hole);
  ASSERT_EQ(frame.faces().size(), 1u);
  EXPECT_EQ(frame.faces()[0].outer, Polygon::rectangle(box(0, 0, 8, 8)));
  ASSERT_EQ(frame.faces()[0].holes.size(), 1u);
  EXPECT_EQ(frame.faces()[0].holes[0], hole);
  EXPECT_EQ(united(frame, hole), square(0, 0, 8));
}

TEST(Region, AHoleMayTouchTheMiddleOfAnOuterEdge) {
  const Polygon hole = polygon({at(2, 2), at(6, 2), at(4, 8)});
  const Region frame = without(square(0, 0, 8), hole);
  ASSERT_EQ(frame.faces().size(), 1u);
  EXPECT_EQ(frame.faces()[0].outer.size(), 4u);
  EXPECT_EQ(frame.faces()[0].holes.size(), 1u);
  EXPECT_EQ(united(frame, hole), square(0, 0, 8));
  EXPECT_FALSE(overlaps(frame, hole));
  EXPECT_TRUE(contains(square(0, 0, 8), frame));
}

TEST(Region, AHoleThatTouchesTwiceCutsTheFaceInTwo) {
  const Region halves = without(square(0, 0, 8), polygon({at(0, 0), at(5, 3), at(8, 8), at(3, 5)}));
  EXPECT_EQ(halves.faces().size(), 2u);
  EXPECT_TRUE(oracle::geos_is_valid(halves));
}

// Four holes in a diamond touch at four corners and enclose an island: ring and island are separate faces.
TEST(Region, HolesThatTouchRoundAnIslandMakeItAFaceOfItsOwn) {
  const std::vector<Region> holes{box(2, 1, 4, 2), box(4, 2, 5, 4), box(2, 4, 4, 5), box(1, 2, 2, 4)};
  const Region frame = without(square(0, 0, 6), united(holes));
  ASSERT_EQ(frame.faces().size(), 2u);
  EXPECT_EQ(frame.faces()[0].holes.size(), 1u);
  EXPECT_EQ(frame.faces()[0].holes[0].size(), 12u);
  EXPECT_EQ(frame.faces()[1], (Face{Polygon::rectangle(box(2, 2, 4, 4)), {}}));
  EXPECT_TRUE(oracle::geos_is_valid(frame));
  EXPECT_EQ(united(frame, united(holes)), square(0, 0, 6));
}

TEST(Region, KeepsIslandsInHoles) {
  const Region moat = without(square(0, 0, 9), square(1, 1, 7));
  const Region both = united(moat, square(3, 3, 2));
  EXPECT_EQ(both.faces().size(), 2u);
  EXPECT_EQ(both.area(), Area::from_doubled(2 * (81 - 49 + 4)));
  EXPECT_EQ(both.side_of(at(2, 2)), Side::outside);
  EXPECT_EQ(both.side_of(at(4, 4)), Side::inside);
  EXPECT_EQ(both.side_of(at(1, 5)), Side::boundary);
  EXPECT_EQ(common(both, square(2, 2, 4)), square(3, 3, 2));
}

TEST(Region, OneTickIsEnoughToOverlapAndToStickOut) {
  const std::int64_t m = 1000 * ticks_per_mm;
  EXPECT_TRUE(overlaps(square(0, 0, m), square(m - 1, 0, m)));
  EXPECT_FALSE(overlaps(square(0, 0, m), square(m, 0, m)));
  EXPECT_EQ(common(square(0, 0, m), square(m - 1, 0, m)), Region(box(m - 1, 0, m, m)));
  EXPECT_TRUE(contains(square(0, 0, m), square(0, 0, m)));
  EXPECT_FALSE(contains(square(0, 0, m), square(1, 0, m)));
}

// The lines y = x / 3 and y = 1 - x meet at (3/4, 1/4): nearest tick (1, 0), which flattens the triangle
// (0,0) (1,0) (3/4,1/4) to nothing. The overlap is decided before that.
TEST(Region, ASliverThinnerThanATickVanishesButStillOverlaps) {
  const Region a = polygon({at(0, 0), at(3, 1), at(3, -5)});
  const Region b = polygon({at(0, 1), at(-5, 0), at(1, 0)});
  const Region low = polygon({at(0, 0), at(3, 0), at(3, 1)});
  const Region high = polygon({at(0, 0), at(1, 0), at(0, 1)});
  EXPECT_TRUE(overlaps(low, high));
  EXPECT_TRUE(common(low, high).empty());
  EXPECT_TRUE(overlaps(a, b));
}

// The lines y = x / 4 and y = (8 - x) / 4 ... cross at (4, 1); x / 3 and (8 - x) / 3 at (4, 4/3), rounded (4,
// 1).
TEST(Region, RoundsACornerOffTheLatticeToTheNearestTick) {
  const Region roof =
      common(polygon({at(0, 0), at(30, 0), at(30, 10)}), polygon({at(-22, 0), at(8, 0), at(-22, 10)}));
  EXPECT_EQ(roof, Region(polygon({at(0, 0), at(8, 0), at(4, 1)})));
  // The line y = x / 2 meets x = 1 at 1/2, rounded toward plus infinity; mirrored it meets at -1/2, rounded
  // to 0.
  const Region half = common(polygon({at(0, -4), at(4, 2), at(0, 0)}), Region(box(0, -9, 1, 9)));
  EXPECT_EQ(half.bounds().high, at(1, 1));
}

TEST(Region, HasNoBoundsWhenEmpty) {
  EXPECT_THROW(Region().bounds(), std::logic_error);
  EXPECT_TRUE(common(square(0, 0, 2), square(2, 0, 2)).empty());
  EXPECT_TRUE(without(square(0, 0, 2), square(0, 0, 2)).empty());
  EXPECT_TRUE(united(std::span<const Region>()).empty());
  EXPECT_TRUE(contains(Region(), Region()));
  EXPECT_FALSE(contains(Region(), square(0, 0, 1)));
  EXPECT_FALSE(overlaps(Region(), square(0, 0, 1)));
}

TEST(Region, EdgesKeepTheInteriorOnTheirLeft) {
  const Region frame = without(square(0, 0, 9), square(3, 3, 3));
  Int128 doubled = 0;
  for (const Edge& edge : edges(frame)) doubled += cross(at(0, 0), edge.from, edge.to);
  EXPECT_EQ(Area::from_doubled(doubled), frame.area());
}

// Slow twin: on whole cells of a small grid a region is a set of cells.
struct Raster {
  std::vector<bool> cells;
  explicit Raster(const Region& region) {
    for (std::int64_t x = 0; x < 10; ++x)
      for (std::int64_t y = 0; y < 10; ++y)
        cells.push_back(region.side_of(at(2 * x + 1, 2 * y + 1)) == Side::inside);
  }
};

TEST(Region, AgreesWithARasterOnBoxes) {
  for (unsigned seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region a = support::random_boxes(random, 7, 10, 2);
    const Region b = support::random_boxes(random, 7, 10, 2);
    const Raster ra(a), rb(b), both(common(a, b)), either(united(a, b)), rest(without(a, b));
    bool meet = false;
    bool covered = true;
    std::int64_t count = 0;
    for (std::size_t i = 0; i < 100; ++i) {
      ASSERT_EQ(both.cells[i], ra.cells[i] && rb.cells[i]);
      ASSERT_EQ(either.cells[i], ra.cells[i] || rb.cells[i]);
      ASSERT_EQ(rest.cells[i], ra.cells[i] && !rb.cells[i]);
      meet = meet || both.cells[i];
      covered = covered && (ra.cells[i] || !rb.cells[i]);
      count += either.cells[i];
    }
    ASSERT_EQ(overlaps(a, b), meet);
    ASSERT_EQ(contains(a, b), covered);
    ASSERT_EQ(united(a, b).area(), Area::from_doubled(8 * count));
    for (const Region& result : {common(a, b), united(a, b), without(a, b)})
      ASSERT_TRUE(oracle::geos_is_valid(result));
    ASSERT_EQ(united(common(a, b), without(a, b)), united(a, Region()));
  }
}

// Oracle: GEOS areas. Ours differ by the rounding of corners, at most a tick along the border.
void expect_areas_of_geos(const Region& a, const Region& b, double tolerance) {
  using enum oracle::Operation;
  const Region all = united(a, b), both = common(a, b), rest = without(a, b);
  ASSERT_NEAR(number(all.area()), oracle::geos_area(unite, a, b), tolerance);
  ASSERT_NEAR(number(both.area()), oracle::geos_area(intersect, a, b), tolerance);
  ASSERT_NEAR(number(rest.area()), oracle::geos_area(subtract, a, b), tolerance);
  for (const Region& result : {all, both, rest}) ASSERT_TRUE(oracle::geos_is_valid(result));
  ASSERT_EQ(overlaps(a, both), !both.empty());
  ASSERT_EQ(overlaps(a, b), oracle::geos_interiors_meet(a, b));
}

TEST(Region, AgreesWithGeosOnPolygonsOfACoarseLattice) {
  for (unsigned seed = 0; seed < 1500; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 27'720;
    const Region a = support::random_polygon(random, 3 + static_cast<int>(seed % 5), 8, step);
    const Region b = support::random_polygon(random, 3 + static_cast<int>(seed % 4), 8, step);
    // Border at most 2 x 8 edges of 8 x 1.42 steps.
    expect_areas_of_geos(a, b, 182.0 * static_cast<double>(step));
    ASSERT_EQ(contains(a, b), oracle::geos_covers(a, b));
  }
}

TEST(Region, AgreesWithGeosOnRegionsWithHolesAndSlivers) {
  for (unsigned seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region a = support::random_region(random, 9, 10'007);
    const Region b =
        moved(support::random_region(random, 9, 10'007), {Length::from_ticks(seed % 3), one_tick});
    expect_areas_of_geos(a, b, 300.0 * 10'007);
  }
}

// Every corner of a result is an end of an edge or a crossing of two, moved by half a tick in each axis at
// most.
void expect_corners_near_borders(const Region& result, std::span<const Edge> borders) {
  for (const Edge& edge : edges(result))
    ASSERT_TRUE(std::ranges::any_of(
        borders, [&](const Edge& b) { return squared_distance(edge.from, b) <= SquaredLength(1, 2); }));
}

// Coordinates of a few ticks: nearly every corner is rounded, faces collapse, rings touch.
TEST(Region, StaysValidWhereAlmostEverythingIsRounded) {
  for (unsigned seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    std::vector<Region> some;
    std::vector<Edge> borders;
    for (int i = 0; i < 4; ++i) {
      some.push_back(support::random_polygon(random, 3 + i, 12, 1));
      std::ranges::copy(edges(some.back()), std::back_inserter(borders));
    }
    const Region all = united(some);
    ASSERT_TRUE(oracle::geos_is_valid(all));
    ASSERT_EQ(united(std::array{all}), all);
    expect_corners_near_borders(all, borders);
    std::ranges::copy(edges(all), std::back_inserter(borders));
    for (const Region& one : some) {
      for (const Region& result : {without(all, one), common(all, one)}) {
        ASSERT_TRUE(oracle::geos_is_valid(result));
        expect_corners_near_borders(result, borders);
      }
    }
  }
}

TEST(Region, DoesNotCareAboutMirrorShiftOrOrder) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region a = support::random_boxes(random, 8, 12, 5);
    const Region b = support::random_boxes(random, 8, 12, 5);
    const Region c = support::random_region(random, 12, 5);
    const Vector by{Length::from_ticks(-777), Length::from_ticks(31)};
    ASSERT_EQ(united(std::array{a, b, c}), united(std::array{c, b, a}));
    ASSERT_EQ(common(a, b), common(b, a));
    ASSERT_EQ(mirrored(common(a, b)), common(mirrored(a), mirrored(b)));
    ASSERT_EQ(mirrored(mirrored(c)), c);
    ASSERT_EQ(moved(without(a, c), by), without(moved(a, by), moved(c, by)));
    ASSERT_EQ(overlaps(a, c), overlaps(mirrored(c), mirrored(a)));
    ASSERT_EQ(contains(c, a), contains(mirrored(c), mirrored(a)));
  }
}

}  // namespace
}  // namespace berthwright
