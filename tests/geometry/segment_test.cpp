#include "geometry/segment.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;

// Line 3x + 4y = 0 runs along (4, -3), length 5 a step; the point (7, 9) is |21 + 36| / 5 = 57/5 away, its
// foot is (7, 9) - 57/25 (3, 4) = (0.16, -0.12), which rounds to (0, 0).
TEST(Segment, DistanceToTheInsideOfASlantedEdgeIsAFraction) {
  const Edge edge{at(-4, 3), at(8, -6)};
  EXPECT_EQ(squared_distance(at(7, 9), edge), SquaredLength(57 * 57, 25));
  EXPECT_EQ(nearest_point(at(7, 9), edge), at(0, 0));
}

TEST(Segment, BeyondAnEndTheEndIsNearest) {
  const Edge edge{at(0, 0), at(10, 0)};
  EXPECT_EQ(squared_distance(at(13, 4), edge), SquaredLength(25, 1));
  EXPECT_EQ(nearest_point(at(13, 4), edge), at(10, 0));
  EXPECT_EQ(squared_distance(at(-3, -4), edge), SquaredLength(25, 1));
  EXPECT_EQ(nearest_point(at(-3, -4), edge), at(0, 0));
}

TEST(Segment, APointIsASegmentToo) {
  EXPECT_EQ(squared_distance(at(3, 4), {at(0, 0), at(0, 0)}), SquaredLength(25, 1));
  EXPECT_EQ(nearest_point(at(3, 4), {at(0, 0), at(0, 0)}), at(0, 0));
}

// The foot of (1, 0) on the diagonal is (1/2, 1/2); of (-1, 0) on the other side of the datum (-1/2, -1/2).
TEST(Segment, HalvesRoundUpward) {
  const Edge diagonal{at(-9, -9), at(9, 9)};
  EXPECT_EQ(nearest_point(at(1, 0), diagonal), at(1, 1));
  EXPECT_EQ(nearest_point(at(-1, 0), diagonal), at(0, 0));
}

TEST(Segment, HoldsAtTheFarthestCorners) {
  const std::int64_t far = farthest.ticks();
  // The diagonal from corner to corner passes sqrt(2) x 25 m from the third corner: squared 2 far^2.
  const Edge diagonal{at(-far, -far), at(far, far)};
  EXPECT_EQ(squared_distance(at(far, -far), diagonal), SquaredLength(Int128{2} * far * far, 1));
  EXPECT_EQ(nearest_point(at(far, -far), diagonal), at(0, 0));
}

// Twin: the least of all lattice points of a lattice segment walked by its direction in fine steps.
TEST(Segment, NoPointOfTheEdgeIsNearer) {
  std::mt19937 random(7);
  std::uniform_int_distribution<std::int64_t> draw(-1000, 1000);
  for (int round = 0; round < 500; ++round) {
    SCOPED_TRACE(round);
    const Point a = at(draw(random), draw(random));
    const Point b = at(draw(random), draw(random));
    const Point p = at(draw(random), draw(random));
    const auto exact = static_cast<double>(squared_distance(p, {a, b}).floor().ticks());
    double least = 1e300;
    for (int i = 0; i <= 4000; ++i) {
      const double t = i / 4000.0;
      const double x = static_cast<double>(a.x.ticks()) * (1 - t) + static_cast<double>(b.x.ticks()) * t;
      const double y = static_cast<double>(a.y.ticks()) * (1 - t) + static_cast<double>(b.y.ticks()) * t;
      least = std::min(
          least, std::hypot(x - static_cast<double>(p.x.ticks()), y - static_cast<double>(p.y.ticks())));
    }
    EXPECT_LE(exact, least + 1e-6);
    EXPECT_GE(exact, least - 2);  // one tick of floor, half a step of at most 2829/4000 ticks
  }
}

}  // namespace
}  // namespace berthwright
