#include "geometry/convex.h"

#include <gtest/gtest.h>

#include <random>

#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

bool is_convex(const Polygon& ring) {
  const auto corners = ring.vertices();
  for (std::size_t i = 0; i < corners.size(); ++i)
    if (cross(corners[i], corners[(i + 1) % corners.size()], corners[(i + 2) % corners.size()]) <= 0)
      return false;
  return true;
}

std::vector<Region> regions(const std::vector<Polygon>& polygons) {
  return {polygons.begin(), polygons.end()};
}

TEST(Convex, AConvexRegionIsItsOnlyPart) {
  const Polygon disc = disc_around(10_in);
  EXPECT_EQ(convex_parts(Region(disc)), std::vector<Polygon>{disc});
  EXPECT_TRUE(convex_parts(Region()).empty());
}

// An L of 6 x 6 less 3 x 3: cut along x through its one inward corner, at y = 3.
TEST(Convex, CutsAnLThroughItsInwardCorner) {
  const Region ell = without(box(0, 0, 6, 6), Region(box(3, 3, 6, 6)));
  EXPECT_EQ(convex_parts(ell),
            (std::vector<Polygon>{Polygon::rectangle(box(0, 0, 6, 3)), Polygon::rectangle(box(0, 3, 3, 6))}));
}

// A frame round a hole: below, two beside, above.
TEST(Convex, CutsAFrameIntoFour) {
  const Region frame = without(box(0, 0, 9, 9), Region(box(3, 3, 6, 6)));
  const std::vector<Polygon> parts = convex_parts(frame);
  EXPECT_EQ(parts.size(), 4U);
  EXPECT_EQ(united(regions(parts)), frame);
}

TEST(Convex, PartsAreConvexAndCoverWhateverTheRegion) {
  std::mt19937_64 random(7);
  for (int round = 0; round < 60; ++round) {
    SCOPED_TRACE(round);
    const Region region = support::random_region(random, 12, 1'000'003);
    const std::vector<Polygon> parts = convex_parts(region);
    for (const Polygon& part : parts) EXPECT_TRUE(is_convex(part));
    const Region covered = united(regions(parts));
    // Too large by a tick at most: what lies outside is gone once it is made two ticks smaller.
    EXPECT_TRUE(without(region, grown(covered, 2 * one_tick)).empty());
    EXPECT_TRUE(shrunk(without(covered, region), 2 * one_tick).empty());
  }
}

TEST(Convex, TheSumOfTwoRectanglesAddsTheirSides) {
  EXPECT_EQ(convex_sum(Polygon::rectangle(box(1, 2, 4, 6)), Polygon::rectangle(box(-2, -1, 0, 0))),
            Polygon::rectangle(box(-1, 1, 4, 6)));
}

// A right triangle of 2 and the square of 1 make a pentagon.
TEST(Convex, TheSumOfATriangleAndASquare) {
  const Polygon triangle = polygon({at(0, 0), at(2, 0), at(0, 2)});
  EXPECT_EQ(convex_sum(triangle, Polygon::rectangle(box(0, 0, 1, 1))),
            polygon({at(0, 0), at(3, 0), at(3, 1), at(1, 3), at(0, 3)}));
}

// CGAL's reduced convolution, another algorithm: exact on the lattice too where both are convex.
TEST(Convex, SumsAsTheGuestDoes) {
  std::mt19937_64 random(8);
  std::uniform_int_distribution<std::int64_t> coordinate(-4'000'000, 4'000'000);
  const auto hull_of_some = [&] {
    std::vector<Point> corners;
    while (corners.size() < 3) {
      corners.clear();
      for (int i = 0; i < 9; ++i) corners.push_back(at(coordinate(random), coordinate(random)));
      corners = convex_hull(corners);
    }
    return Polygon::promised(corners);
  };
  for (int round = 0; round < 40; ++round) {
    SCOPED_TRACE(round);
    const Polygon a = hull_of_some();
    const Polygon b = round % 2 == 0 ? hull_of_some() : disc_around(Length::from_ticks(1'234'567));
    EXPECT_EQ(Region(convex_sum(a, b)), swept(Region(a), b));
    EXPECT_EQ(convex_sum(a, b), convex_sum(b, a));
  }
}

}  // namespace
}  // namespace berthwright
