#include <berthwright/geometry/polygon.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "oracle/geos.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::polygon;

TEST(Polygon, IsTheSameValueFromEitherWindingAndAnyFirstCorner) {
  std::vector<Point> corners{at(0, 0), at(8, 0), at(8, 3), at(4, 3), at(4, 6), at(0, 6)};
  const Polygon whole = polygon(corners);
  for (int turn = 0; turn < 6; ++turn) {
    std::ranges::rotate(corners, corners.begin() + 1);
    EXPECT_EQ(polygon(corners), whole);
    EXPECT_EQ(polygon({corners.rbegin(), corners.rend()}), whole);
  }
  // 8 x 3 + 4 x 3 = 36.
  EXPECT_EQ(whole.area(), Area::rectangle(Length::from_ticks(4), Length::from_ticks(9)));
  EXPECT_EQ(whole.vertices().front(), at(0, 0));
  EXPECT_EQ(whole.bounds(), support::box(0, 0, 8, 6));
  EXPECT_TRUE(whole.is_rectilinear());
}

TEST(Polygon, DropsRepeatedAndStraightCorners) {
  const Polygon square = polygon({at(2, 0), at(4, 0), at(4, 0), at(4, 4), at(4, 4), at(1, 4), at(0, 4),
                                  at(0, 2), at(0, 1), at(0, 0), at(1, 0)});
  EXPECT_EQ(square, Polygon::rectangle(support::box(0, 0, 4, 4)));
  EXPECT_EQ(square.size(), 4u);
}

TEST(Polygon, RefusesOutlinesWithoutArea) {
  for (const std::vector<Point>& corners : {std::vector<Point>{},
                                            {at(0, 0)},
                                            {at(0, 0), at(5, 5)},
                                            {at(0, 0), at(5, 5), at(9, 9)},
                                            {at(0, 0), at(9, 9), at(5, 5)},
                                            {at(1, 1), at(1, 1), at(1, 1), at(1, 1)}}) {
    const auto result = Polygon::checked(corners);
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.problems().front().id, "polygon.flat");
  }
}

// The bow tie (0,0) (4,4) (4,0) (0,4) crosses itself at (2,2): edges 1-2 and 3-4.
TEST(Polygon, NamesTheTwoEdgesThatCrossAndWhere) {
  const auto mm = [](std::int64_t x, std::int64_t y) { return at(x * ticks_per_mm, y * ticks_per_mm); };
  const auto result = Polygon::checked({mm(0, 0), mm(4, 4), mm(4, 0), mm(0, 4)});
  ASSERT_FALSE(result.ok());
  EXPECT_EQ(result.problems().front().id, "polygon.crossing");
  EXPECT_EQ(
      result.problems().front().message,
      "the edge from corner 1 to corner 2 and the edge from corner 3 to corner 4 meet at x 1/16\" (2 mm), "
      "y 1/16\" (2 mm)");
}

TEST(Polygon, RefusesSpikesAndOutlinesThatTouchThemselves) {
  const std::vector<std::vector<Point>> broken{
      {at(0, 0), at(4, 0), at(8, 0), at(4, 0), at(4, 4)},            // spike along an edge
      {at(0, 0), at(4, 0), at(4, 4), at(4, 9), at(4, 4), at(0, 4)},  // spike outward
      {at(0, 0), at(4, 0), at(4, 4), at(2, 0), at(0, 4)},            // corner on an edge
      {at(0, 0), at(2, 2), at(4, 0), at(4, 4), at(2, 2), at(0, 4)},  // corner on a corner
      {at(0, 0), at(6, 0), at(6, 4), at(2, 4), at(2, 0), at(4, 0), at(4, 8), at(0, 8)},  // edge on an edge
  };
  for (const auto& corners : broken) {
    const auto result = Polygon::checked(corners);
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.problems().front().id, "polygon.crossing");
  }
}

TEST(Polygon, KnowsItsBorderFromItsInside) {
  const Polygon triangle = polygon({at(0, 0), at(6, 0), at(0, 3)});
  EXPECT_EQ(triangle.side_of(at(1, 1)), Side::inside);
  EXPECT_EQ(triangle.side_of(at(2, 2)), Side::boundary);  // on x + 2 y = 6
  EXPECT_EQ(triangle.side_of(at(0, 3)), Side::boundary);
  EXPECT_EQ(triangle.side_of(at(3, 2)), Side::outside);
  EXPECT_EQ(triangle.side_of(at(-1, 0)), Side::outside);
  EXPECT_EQ(triangle.side_of(at(7, 0)), Side::outside);
  EXPECT_FALSE(triangle.is_rectilinear());
}

// Oracle: GEOS' test for simple rings. A ring with a spike or a straight corner is judged after ours are
// gone.
TEST(Polygon, AgreesWithGeosOnWhatIsSimple) {
  std::mt19937_64 random(11);
  int simple = 0;
  for (int round = 0; round < 3000; ++round) {
    SCOPED_TRACE(round);
    std::vector<Point> corners;
    const std::size_t count = 3 + random() % 5;
    for (std::size_t i = 0; i < count; ++i)
      corners.push_back(at(static_cast<std::int64_t>(random() % 5), static_cast<std::int64_t>(random() % 5)));
    const auto result = Polygon::checked(corners);
    if (result.ok()) {
      ++simple;
      const auto kept = result->vertices();
      ASSERT_TRUE(oracle::geos_is_simple({kept.begin(), kept.end()}));
    } else if (result.problems().front().id == "polygon.crossing") {
      corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
      ASSERT_FALSE(oracle::geos_is_simple(corners));
    }
  }
  EXPECT_GT(simple, 500);
}

}  // namespace
}  // namespace berthwright
