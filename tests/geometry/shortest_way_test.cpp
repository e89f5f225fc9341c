#include <berthwright/geometry/shortest_way.h>

#include <gtest/gtest.h>

#include <map>
#include <random>

#include "geometry/segment.h"
#include "oracle/geos.h"
#include "support/rects.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::inch_point;
using support::inch_rect;
using support::polygon;

// Corners (4, 3) and (10, 3) of a box between (0, 0) and (14, 0): 5 + 6 + 5 = 16 in.
TEST(ShortestWay, GoesRoundABoxFromCornerToCorner) {
  const Region free = without(Region(inch_rect(-20, -20, 40, 20)), Region(inch_rect(4, -20, 10, 3)));
  const ShortestWays ways(free, inch_point(14, 0));
  const ShortestWay way = ways.from(inch_point(0, 0)).value();
  EXPECT_EQ(way.length, 16_in);
  EXPECT_EQ(way.path,
            (std::vector<Point>{inch_point(0, 0), inch_point(4, 3), inch_point(10, 3), inch_point(14, 0)}));
  // Along the border of the box itself, and from a corner to the next.
  EXPECT_EQ(ways.from(inch_point(4, 1))->length, 13_in);
  EXPECT_EQ(ways.from(inch_point(4, 3))->length, 11_in);
  EXPECT_EQ(ways.from(inch_point(10, 3))->length, 5_in);
  EXPECT_EQ(ways.from(inch_point(14, 0))->length, Length{});
  EXPECT_EQ(ways.from(inch_point(17, 4))->path, (std::vector<Point>{inch_point(17, 4), inch_point(14, 0)}));
}

// Of a diagonal of one tick 1.41… are needed: 2. Two of them: 4, though 2.83 would do.
TEST(ShortestWay, IsNeverTooShort) {
  EXPECT_EQ(ShortestWays(box(0, 0, 9, 9), at(1, 1)).from(at(0, 0))->length, Length::from_ticks(2));
  const Region notched = without(Region(box(0, 0, 9, 9)), Region(polygon({at(0, 9), at(0, 1), at(2, 1)})));
  EXPECT_GE(ShortestWays(notched, at(2, 9)).from(at(0, 0))->length, Length::from_ticks(10));
}

TEST(ShortestWay, IsNoneFromOutsideOrToAnotherPart) {
  const Region parts = united(Region(inch_rect(0, 0, 10, 10)), Region(inch_rect(20, 0, 30, 10)));
  const ShortestWays ways(parts, inch_point(5, 5));
  EXPECT_TRUE(ways.from(inch_point(10, 10)).has_value());
  EXPECT_FALSE(ways.from(inch_point(25, 5)).has_value());
  EXPECT_FALSE(ways.from(inch_point(15, 5)).has_value());
  EXPECT_FALSE(ShortestWays(parts, inch_point(15, 5)).from(inch_point(5, 5)).has_value());
  EXPECT_TRUE(ShortestWays(parts, inch_point(15, 5)).within(50_in).empty());
  EXPECT_FALSE(ShortestWays(Region(), inch_point(0, 0)).from(inch_point(0, 0)).has_value());
}

// Two boxes in opposite corners of a room touch at its middle: no way leads through between them.
TEST(ShortestWay, DoesNotPassWherePartsOnlyTouch) {
  const Region free = without(Region(inch_rect(0, 0, 20, 20)),
                              united(Region(inch_rect(0, 0, 10, 10)), Region(inch_rect(10, 10, 20, 20))));
  EXPECT_FALSE(ShortestWays(free, inch_point(15, 5)).from(inch_point(5, 15)).has_value());
  // With a way round: a hole that touches another.
  const Region ring = without(Region(inch_rect(-5, -5, 25, 25)),
                              united(Region(inch_rect(0, 0, 10, 10)), Region(inch_rect(10, 10, 20, 20))));
  const ShortestWay round = ShortestWays(ring, inch_point(15, 5)).from(inch_point(5, 15)).value();
  EXPECT_GT(round.length, 20_in);
  EXPECT_EQ(ShortestWays(ring, inch_point(15, 5)).from(inch_point(10, 10))->length,
            SquaredLength::of(5_in).plus_square_of(5_in).ceiling());
}

// What boxes or polygons leave of a room, so that ways must bend; about every fourth time the boxes or
// polygons themselves, which lie apart.
Region cluttered_room(unsigned seed, std::mt19937_64& random, std::int64_t step) {
  const Region clutter =
      seed % 2 == 0 ? support::random_boxes(random, 9, 10, step) : support::random_region(random, 10, step);
  if (seed % 4 > 1 && random() % 2 == 0) return clutter;
  return without(Region(box(-step, -step, 11 * step, 11 * step)), clutter);
}

bool is_pinched(const Region& region) {
  std::map<Point, int> times;
  for (const Edge& edge : edges(region)) ++times[edge.from];
  for (const auto& [corner, count] : times) {
    if (count > 1) return true;
    for (const Edge& edge : edges(region))
      if (corner != edge.from && corner != edge.to && squared_distance(corner, edge) == Length{}) return true;
  }
  return false;
}

Point point_in(const Region& region, std::mt19937_64& random, int cells, std::int64_t step) {
  const auto draw = [&] { return static_cast<std::int64_t>(random() % static_cast<unsigned>(2 * cells)); };
  for (;;) {
    const Point p = at(draw() * step / 2, draw() * step / 2);
    if (region.side_of(p) != Side::outside) return p;
  }
}

// Oracle: GEOS says where the region covers a straight line, for every two corners.
TEST(ShortestWay, AgreesWithGeosAndInTheMirror) {
  int found = 0;
  int bent = 0;
  int none = 0;
  for (unsigned seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 9'974;
    const Region region = cluttered_room(seed, random, step);
    if (region.empty() || is_pinched(region)) continue;
    const Point from = point_in(region, random, 10, step);
    const Point to = point_in(region, random, 10, step);
    const std::optional<ShortestWay> way = ShortestWays(region, to).from(from);
    const double expected = oracle::geos_way(region, from, to);
    ASSERT_EQ(way.has_value(), expected >= 0);
    const auto mirror = [](Point p) { return Point{p.x, -p.y}; };
    const std::optional<ShortestWay> mirrored_way =
        ShortestWays(mirrored(region), mirror(to)).from(mirror(from));
    ASSERT_EQ(mirrored_way.has_value(), way.has_value());
    none += way ? 0 : 1;
    if (!way) continue;
    ASSERT_EQ(mirrored_way->length, way->length);
    const double length = static_cast<double>(way->length.ticks());
    ASSERT_GE(length, expected - 1e-6);
    ASSERT_LE(length, expected + static_cast<double>(way->path.size()));
    const std::optional<ShortestWay> back = ShortestWays(region, from).from(to);
    ASSERT_NEAR(static_cast<double>(back->length.ticks()), length, static_cast<double>(way->path.size()));
    ++found;
    bent += way->path.size() > 2 ? 1 : 0;
  }
  EXPECT_GT(found, 150);
  EXPECT_GT(bent, 60);
  EXPECT_GT(none, 5);
}

// Every place of it has a way that short, and every place with a way shorter by 1/500 belongs to it: circles
// lose 0.13 % of their radius.
TEST(ShortestWay, PlacesWithinALengthAreNeverTooManyAndHardlyTooFew) {
  int in = 0;
  int out = 0;
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = 2 * ticks_per_inch;
    const Region region = cluttered_room(seed, random, step);
    if (region.empty()) continue;
    const Point goal = point_in(region, random, 10, step);
    const ShortestWays ways(region, goal);
    const Length length = Length::inches(4 + static_cast<int>(random() % 16));
    const Region within = ways.within(length);
    if (!within.empty()) {
      EXPECT_TRUE(contains(grown(region.bounds(), one_tick), within));
    }
    for (int x = 0; x < 40; ++x)
      for (int y = 0; y < 40; ++y) {
        const Point p = at(x * step / 4 + 1'234, y * step / 4 + 4'321);
        const std::optional<ShortestWay> way = ways.from(p);
        if (!within.empty() && within.side_of(p) != Side::outside) {
          ASSERT_TRUE(way.has_value());
          ASSERT_LE(way->length, length);
          ++in;
        } else if (way && way->length.ticks() * 500 < length.ticks() * 499) {
          ADD_FAILURE() << p.x.ticks() << ' ' << p.y.ticks() << ' ' << way->length.ticks();
        } else {
          ++out;
        }
      }
  }
  EXPECT_GT(in, 1000);
  EXPECT_GT(out, 1000);
}

// A goal in an open room: the ways that do not set out toward the front come from places ahead of it.
TEST(ShortestWay, MaySetOutToOneSideOnly) {
  const ShortestWays ways(Region(inch_rect(0, 0, 40, 40)), inch_point(20, 20));
  const Region rearward = ways.within(10_in, Vector{one_tick, Length{}});
  EXPECT_EQ(rearward.bounds().high.x, 20_in);
  EXPECT_NE(rearward.side_of(inch_point(12, 20)), Side::outside);
  EXPECT_EQ(rearward.side_of(inch_point(21, 20)), Side::outside);
  const Region leftward = ways.within(10_in, Vector{Length{}, -one_tick});
  EXPECT_EQ(leftward.bounds().low.y, 20_in);
  EXPECT_NE(leftward.side_of(inch_point(20, 28)), Side::outside);
}

}  // namespace
}  // namespace berthwright
