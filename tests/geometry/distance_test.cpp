#include <gtest/gtest.h>

#include <berthwright/geometry/solid.h>

#include <cmath>
#include <optional>
#include <tuple>

#include "geometry/segment.h"
#include "oracle/geos.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

Point3 in_space(Point plan, std::int64_t z) { return {plan, Length::from_ticks(z)}; }

// Corner (4, 4) against the edge 3x + 4y = 53 from (15, 2) to (3, 11): (53 - 28) / 5 = 5, foot (7, 8).
TEST(Nearest, MeasuresFromACornerToASlantedEdge) {
  const Nearest found = nearest(box(0, 0, 4, 4), polygon({at(15, 2), at(3, 11), at(15, 11)}));
  EXPECT_EQ(found.squared, Length::from_ticks(5));
  EXPECT_EQ(found.from, in_space(at(4, 4), 0));
  EXPECT_EQ(found.to, in_space(at(7, 8), 0));
}

TEST(Nearest, OfEqualPairsTheLeastIsTaken) {
  const Nearest found = nearest(box(0, 2, 4, 9), Region(box(7, 0, 9, 5)));
  EXPECT_EQ(found.from.plan, at(4, 2));
  EXPECT_EQ(found.to.plan, at(7, 2));
  const Nearest back = nearest(Region(box(7, 0, 9, 5)), Region(box(0, 2, 4, 9)));
  EXPECT_EQ(back.from.plan, at(7, 2));
  EXPECT_EQ(back.to.plan, at(4, 2));
}

TEST(Nearest, IsZeroAtTheLeastCommonPointWhenTheyMeet) {
  const Nearest inside = nearest(box(0, 0, 9, 9), Region(box(3, 4, 5, 6)));
  EXPECT_EQ(inside.squared, Length{});
  EXPECT_EQ(inside.from.plan, at(3, 4));
  EXPECT_EQ(inside.to.plan, at(3, 4));
  EXPECT_EQ(nearest(box(0, 0, 4, 4), Region(box(4, 4, 5, 5))).from.plan, at(4, 4));
  EXPECT_EQ(nearest(box(0, 0, 4, 4), Region(box(4, 1, 5, 5))).from.plan, at(4, 1));
  EXPECT_EQ(nearest(box(2, 0, 4, 9), Region(box(0, 3, 9, 5))).from.plan, at(2, 3));
}

TEST(Nearest, AnIslandInAHoleIsApartFromItsFrame) {
  const Region frame = without(box(0, 0, 20, 20), Region(box(5, 5, 15, 15)));
  const Nearest found = nearest(frame, Region(box(8, 8, 11, 13)));
  EXPECT_EQ(found.squared, Length::from_ticks(2));
  EXPECT_EQ(found.from.plan, at(8, 15));
  EXPECT_EQ(found.to.plan, at(8, 13));
  EXPECT_THROW(nearest(Region(), frame), std::invalid_argument);
}

// CPSC and NFPA: 3 ft. A corner 30 in and 20 in off: sqrt(900 + 400) = 36.06 in; 30 in and 19.8 in: 35.94 in.
TEST(Nearest, MeasuresSolidsInSpace) {
  const auto block = [](Length x, Length z) {
    return Solid(Rect{{x, Length{}}, {x + 10_in, 10_in}}, z, z + 5_in);
  };
  const Solid heater = block(Length{}, Length{});
  const Nearest met = nearest(heater, block(40_in, 25_in));
  EXPECT_GT(met.squared, 36_in);
  EXPECT_EQ(met.from, (Point3{{10_in, Length{}}, 5_in}));
  EXPECT_EQ(met.to, (Point3{{40_in, Length{}}, 25_in}));
  EXPECT_LT(nearest(heater, block(40_in, Length::inches(248, 10))).squared, 36_in);
  const Nearest under = nearest(block(Length{}, 9_in), heater);
  EXPECT_EQ(under.squared, 4_in);
  EXPECT_EQ(under.from, (Point3{{}, 9_in}));
  EXPECT_EQ(under.to, (Point3{{}, 5_in}));
  const Nearest beside = nearest(heater, block(12_in, 3_in));
  EXPECT_EQ(beside.squared, 2_in);
  EXPECT_EQ(beside.from.z, 3_in);
  EXPECT_EQ(beside.to.z, 3_in);
}

TEST(Solid, OverlapsOnlyWithMoreThanABorder) {
  const Solid low(box(0, 0, 4, 4), Length{}, 5_in);
  EXPECT_FALSE(overlaps(low, Solid(box(0, 0, 4, 4), 5_in, 6_in)));
  EXPECT_FALSE(overlaps(low, Solid(box(4, 0, 8, 4), Length{}, 5_in)));
  EXPECT_TRUE(overlaps(low, Solid(box(3, 3, 8, 8), 5_in - one_tick, 6_in)));
  EXPECT_THROW(Solid(Region(), Length{}, 1_in), std::invalid_argument);
  EXPECT_THROW(Solid(box(0, 0, 1, 1), 1_in, 1_in), std::invalid_argument);
}

// Slow twin: every corner against every edge, no pruning; only for regions without a common point.
Nearest slowly(const Region& a, const Region& b) {
  std::optional<std::tuple<SquaredLength, Point, Point>> least;
  const auto offer = [&](std::tuple<SquaredLength, Point, Point> pair) {
    if (!least || pair < *least) least = pair;
  };
  for (const Edge& s : edges(a)) {
    for (const Edge& t : edges(b)) {
      offer({squared_distance(s.from, t), s.from, nearest_point(s.from, t)});
      offer({squared_distance(t.from, s), nearest_point(t.from, s), t.from});
    }
  }
  return {std::get<0>(*least), {std::get<1>(*least), {}}, {std::get<2>(*least), {}}};
}

// Oracle: GEOS distances.
TEST(Nearest, AgreesWithGeosAndWithItsSlowTwin) {
  int apart = 0;
  int touching = 0;
  for (unsigned seed = 0; seed < 1200; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 9'973;
    const Region a = support::random_region(random, 8, step);
    const Vector by{Length::from_ticks(step * static_cast<std::int64_t>(random() % 12)),
                    Length::from_ticks(step * static_cast<std::int64_t>(random() % 5))};
    const Region b = moved(
        seed % 2 == 0 ? support::random_region(random, 8, step) : support::random_boxes(random, 6, 8, step),
        by);
    if (b.empty()) continue;
    const Nearest found = nearest(a, b);
    const double expected = oracle::geos_distance(a, b);
    ASSERT_NEAR(static_cast<double>(found.squared.floor().ticks()), expected, 1.0 + 1e-9 * expected);
    ASSERT_EQ(found.squared == Length{}, expected == 0);
    if (expected == 0) {
      touching += !overlaps(a, b);
    } else {
      ++apart;
      const Nearest twin = slowly(a, b);
      ASSERT_EQ(found.squared, twin.squared);
      ASSERT_EQ(found.from, twin.from);
      ASSERT_EQ(found.to, twin.to);
    }
    const Nearest back = nearest(b, a);
    ASSERT_EQ(back.squared, found.squared);
    const Nearest mirror = nearest(mirrored(a), mirrored(b));
    ASSERT_EQ(mirror.squared, found.squared);
    const Nearest shifted = nearest(moved(a, by), moved(b, by));
    ASSERT_EQ(shifted.from.plan, found.from.plan + by);
    ASSERT_EQ(shifted.to.plan, found.to.plan + by);
  }
  EXPECT_GT(apart, 400);
  EXPECT_GT(touching, 10);
}

}  // namespace
}  // namespace berthwright
