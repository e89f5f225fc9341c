#include <berthwright/geometry/widest_way.h>

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "geometry/segment.h"
#include "oracle/clearance.h"
#include "oracle/grid_way.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::polygon;

Rect inches(int x0, int y0, int x1, int y1) {
  return {{Length::inches(x0), Length::inches(y0)}, {Length::inches(x1), Length::inches(y1)}};
}

/// A room of 120 x 76 in, a door of 26 in in its right wall from x = 50, and a porch before it that widens.
struct Trailer {
  std::vector<Region> solids;
  Rect bed = inches(0, 0, 38, 76);

  Region free() const {
    const Region porch = polygon({{50_in, 76_in}, {76_in, 76_in}, {100_in, 126_in}, {26_in, 126_in}});
    return without(united(inches(0, 0, 120, 76), porch), united(united(solids), bed));
  }
  static Rect goal() { return inches(20, 77, 106, 126); }
  std::vector<Edge> from() const { return edges(bed); }
  std::optional<WidestWay> way() const { return widest_way(free(), from(), Region(goal())); }
};

// Nothing stands in the room: the way is as wide as the door, 26 in, between its two posts.
TEST(WidestWay, ThroughAnEmptyRoomIsTheDoor) {
  const WidestWay way = Trailer{}.way().value();
  EXPECT_EQ(way.width, 26_in);
  EXPECT_EQ(std::min(way.left, way.right), (Point{50_in, 76_in}));
  EXPECT_EQ(std::max(way.left, way.right), (Point{76_in, 76_in}));
}

// A counter of 20 in along the left wall and a cabinet of 34 in along the right one leave 76 - 20 - 34 = 22
// in between them, which is less than the door of 26 in; both begin 10 in and more before the bed.
TEST(WidestWay, IsPinchedBetweenCounterAndCabinet) {
  const Trailer trailer{{inches(30, 0, 80, 20), inches(32, 42, 48, 76)}, inches(0, 0, 20, 76)};
  const WidestWay way = trailer.way().value();
  EXPECT_EQ(way.width, 22_in);
  EXPECT_EQ(way.left.y + way.right.y, 62_in);
  EXPECT_EQ(way.left.x, way.right.x);
  EXPECT_GE(way.left.x, 32_in);
  EXPECT_LE(way.left.x, 48_in);
}

// The corners (48, 42) and (60, 26) of two cabinets: 12 and 16 in apart along and across, sqrt(144 + 256)
// = 20.
TEST(WidestWay, IsPinchedBetweenTwoCorners) {
  const Trailer trailer{{inches(38, 42, 48, 76), inches(60, 0, 120, 26), inches(76, 26, 120, 76)},
                        inches(0, 0, 38, 76)};
  const WidestWay way = trailer.way().value();
  EXPECT_EQ(way.width, 20_in);
  EXPECT_EQ(std::min(way.left, way.right), (Point{48_in, 42_in}));
  EXPECT_EQ(std::max(way.left, way.right), (Point{60_in, 26_in}));
}

// A bed in a niche 18 in wide: its only free edge is 18 in long and the disc that touches it is no wider.
TEST(WidestWay, BeginsNoWiderThanTheNiche) {
  const Trailer trailer{{inches(0, 0, 60, 20), inches(0, 38, 40, 76)}, inches(0, 20, 30, 38)};
  const WidestWay way = trailer.way().value();
  EXPECT_EQ(way.width, 18_in);
}

// A bed cut along a slant, whose edge runs on as the face of a cabinet: the disc starts at the bed's part
// alone, so a fence round that part shuts it in.
TEST(WidestWay, BeginsAtTheBedsPartOfASlantedLine) {
  const Point bed_end{13_in, 56_in + 1_in};
  const Polygon bed =
      polygon({{0_in, 76_in}, {0_in, 37_in + Length::from_ticks(333)}, bed_end, {13_in, 76_in}});
  const Polygon rest = polygon({bed_end, {26_in, 76_in}, {13_in, 76_in}});
  const Region porch = polygon({{50_in, 76_in}, {76_in, 76_in}, {100_in, 126_in}, {26_in, 126_in}});
  const auto way = [&](const Region& other) {
    const Region free = without(united(inches(0, 0, 120, 76), porch), united(united(bed, rest), other));
    return widest_way(free, edges(bed), Region(Trailer::goal()));
  };
  ASSERT_TRUE(way(Region()).has_value());
  EXPECT_EQ(way(Region())->width, 26_in);
  const Region fence =
      polygon({{0_in, 20_in}, {20_in, 40_in}, {20_in, 66_in}, {19_in, 64_in}, {19_in, 41_in}, {0_in, 22_in}});
  const Region shut =
      united(fence, polygon({{19_in, 60_in}, {20_in, 60_in}, {20_in, 70_in}, {19_in, 70_in}}));
  EXPECT_FALSE(way(shut).has_value());
}

TEST(WidestWay, IsNoneWithoutAFreeEdgeOrWithoutAnOpening) {
  Trailer walled;
  walled.solids = {inches(38, 0, 40, 76)};
  EXPECT_FALSE(walled.way());
  Trailer shut;
  shut.solids = {inches(48, 74, 80, 76)};
  EXPECT_FALSE(shut.way());
  EXPECT_FALSE(widest_way(Region(), walled.from(), Region(Trailer::goal())));
  EXPECT_FALSE(widest_way(walled.free(), {}, Region(Trailer::goal())));
}

Trailer random_trailer(std::mt19937_64& random) {
  const auto pick = [&](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low));
  };
  Trailer trailer;
  trailer.bed = inches(0, pick(0, 30), pick(20, 40), 76);
  const int count = pick(2, 7);
  for (int i = 0; i < count; ++i) {
    const int x = pick(40, 110), y = pick(0, 60);
    if (random() % 3 == 0) {
      const int r = pick(3, 9);
      trailer.solids.push_back(polygon({{Length::inches(x), Length::inches(y)},
                                        {Length::inches(x + r), Length::inches(y + 3)},
                                        {Length::inches(x + r - 2), Length::inches(y + r)},
                                        {Length::inches(x - 1), Length::inches(y + r - 1)}}));
    } else {
      trailer.solids.emplace_back(inches(x, y, x + pick(3, 30), y + pick(3, 30)));
    }
  }
  return trailer;
}

// Half an inch of grid: half a width may be off by 0.71 of a step along the grid and once more in a chain of
// neighbours.
TEST(WidestWay, AgreesWithAFloodedGrid) {
  std::mt19937_64 random(47);
  const double step = 0.5 * ticks_per_inch;
  int ways = 0;
  double worst = 0;
  for (int seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    const Trailer trailer = random_trailer(random);
    const double twin = oracle::widest_clearance(trailer.free(), trailer.from(), Trailer::goal(), step);
    const std::optional<WidestWay> way = trailer.way();
    const double found = way ? static_cast<double>(way->width.ticks()) : 0;
    if (!way) {
      EXPECT_LT(2 * twin, 2 * step);
      continue;
    }
    ++ways;
    worst = std::max(worst, std::abs(2 * twin - found));
    EXPECT_NEAR(2 * twin, found, 1.5 * step);
  }
  EXPECT_GT(ways, 30);
  RecordProperty("worst_in_steps", std::to_string(worst / step));
}

// Every place of the path keeps its distance, and the two pinching places lie on the border, that far apart.
TEST(WidestWay, ShowsAPathThatKeepsClearAndAPinchOnTheBorder) {
  std::mt19937_64 random(48);
  for (int seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    const Trailer trailer = random_trailer(random);
    const std::optional<WidestWay> way = trailer.way();
    if (!way) continue;
    const Region free = trailer.free();
    const double half = static_cast<double>(way->width.ticks()) / 2;
    for (std::size_t i = 1; i < way->path.size(); ++i)
      EXPECT_GT(oracle::clearance(free, static_cast<double>(way->path[i].x.ticks()),
                                  static_cast<double>(way->path[i].y.ticks())),
                half - 4);
    EXPECT_EQ(free.side_of(way->left), Side::boundary);
    EXPECT_GE(squared_distance(way->left, {way->right, way->right}).ceiling(), way->width);
    EXPECT_TRUE(Trailer::goal().low.y < way->path.back().y);
  }
}

TEST(WidestWay, IsTheSameInTheMirror) {
  std::mt19937_64 random(49);
  for (int seed = 0; seed < 40; ++seed) {
    SCOPED_TRACE(seed);
    const Trailer trailer = random_trailer(random);
    const std::optional<WidestWay> way = trailer.way();
    std::vector<Edge> from;
    for (const Edge& edge : edges(mirrored(Region(trailer.bed)))) from.push_back(edge);
    const std::optional<WidestWay> twin =
        widest_way(mirrored(trailer.free()), from, mirrored(Region(Trailer::goal())));
    ASSERT_EQ(way.has_value(), twin.has_value());
    if (!way) continue;
    EXPECT_LE(abs(way->width - twin->width), Length::from_ticks(2));
  }
}

}  // namespace
}  // namespace berthwright
