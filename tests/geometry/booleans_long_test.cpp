#include "oracle/booleans.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "geometry/overlay.h"
#include "oracle/geos.h"
#include "oracle/touched_corners.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::number;
using support::polygon;

Region guest_united(const Region& a, const Region& b) {
  return wound_round(border_of_united(std::array{a, b}));
}
Region guest_common(const Region& a, const Region& b) { return wound_round(border_of_common(a, b)); }
Region guest_without(const Region& a, const Region& b) { return wound_round(border_of_without(a, b)); }

double border_length(const Region& region) {
  double sum = 0;
  for (const Edge& edge : edges(region))
    sum += std::hypot((edge.to.x - edge.from.x).ticks(), (edge.to.y - edge.from.y).ticks());
  return sum;
}

// Ours moves a border by half a tick in each axis at most; CGAL's corners move by that and then are snapped
// by as much again. So the results differ within 0.71 + 1.42 ticks of the exact border, which is part of the
// operands' borders.
void expect_same_within_rounding(const Region& a, const Region& b) {
  const double bound = (std::sqrt(0.5) + std::sqrt(2)) * (border_length(a) + border_length(b));
  ASSERT_NEAR(number(guest_united(a, b).area()), number(united(a, b).area()), bound);
  ASSERT_NEAR(number(guest_common(a, b).area()), number(common(a, b).area()), bound);
  ASSERT_NEAR(number(guest_without(a, b).area()), number(without(a, b).area()), bound);
  for (const Region& result : {guest_united(a, b), guest_common(a, b), guest_without(a, b)})
    ASSERT_TRUE(oracle::geos_is_valid(result));
}

void expect_same(const Region& a, const Region& b) {
  ASSERT_EQ(guest_united(a, b), united(a, b));
  ASSERT_EQ(guest_common(a, b), common(a, b));
  ASSERT_EQ(guest_without(a, b), without(a, b));
}

// The edge from (-6, -3) to (6, 3) is y = x / 2, that from (-6, -2) to (6, 2) is y = x / 3; cut at x.
TEST(GuestRings, RoundAFractionToTheNearestTickAndAHalfUpward) {
  const Region halves = polygon({at(-6, -3), at(6, 3), at(-6, 3)});
  const Region thirds = polygon({at(-6, -2), at(6, 2), at(-6, 2)});
  const auto low_at = [](const Region& region, std::int64_t x) {
    const Region cut = guest_common(region, box(x, -9, 9, 9));
    std::int64_t low = 9;
    for (const Point& p : corners_of(cut.faces()[0]))
      if (p.x.ticks() == x) low = std::min(low, p.y.ticks());
    return low;
  };
  EXPECT_EQ(low_at(halves, 1), 1);    // 1/2
  EXPECT_EQ(low_at(halves, 2), 1);    // 1
  EXPECT_EQ(low_at(halves, -1), 0);   // -1/2
  EXPECT_EQ(low_at(halves, -3), -1);  // -3/2
  EXPECT_EQ(low_at(thirds, 4), 1);    // 4/3
  EXPECT_EQ(low_at(thirds, -1), 0);   // -1/3
  EXPECT_EQ(low_at(thirds, -2), -1);  // -2/3
  EXPECT_EQ(low_at(thirds, -4), -1);  // -4/3
  EXPECT_EQ(low_at(thirds, -5), -2);  // -5/3
}

TEST(GuestRings, GetACornerWhereAnotherRingTouchesAnEdge) {
  const Polygon square = Polygon::rectangle(box(0, 0, 8, 8));
  EXPECT_EQ(with_corners_on_edges(square, std::array{at(5, 8), at(0, 3), at(2, 8), at(8, 8), at(4, 4)}),
            (std::vector{at(0, 0), at(8, 0), at(8, 8), at(5, 8), at(2, 8), at(0, 8), at(0, 3)}));
}

TEST(Booleans, OfTheGuestEqualOurOwnOnBoxes) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region a = support::random_boxes(random, 8, 10, 2);
    const Region b = support::random_boxes(random, 8, 10, 2);
    expect_same(a, b);
  }
}

// Edges and corners in common are frequent on 8 x 8 cells; multiples of 840 ticks put many crossings on the
// lattice, 10'007 hardly any.
TEST(Booleans, OfTheGuestAgreeWithOurOwnOnPolygons) {
  for (unsigned seed = 0; seed < 250; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = seed % 2 == 0 ? 840 : 10'007;
    const Region a = support::random_region(random, 8, step);
    const Region b = support::random_region(random, 8, step);
    expect_same_within_rounding(a, b);
  }
}

// A region against itself, a tick or two aside: nothing but slivers.
TEST(Booleans, OfTheGuestAgreeWithOurOwnOnSlivers) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region a = support::random_region(random, 9, 10'007);
    expect_same_within_rounding(a, moved(a, {Length::from_ticks(seed % 3), one_tick}));
    expect_same(a, a);
  }
}

// Corners on nearly every tick: holes touch other rings at corners and in the middle of edges.
TEST(Booleans, OfTheGuestAgreeWithOurOwnOnAFewTicks) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region frame =
        without(support::random_polygon(random, 5, 12, 1), support::random_polygon(random, 4, 12, 1));
    const Region b = support::random_polygon(random, 5, 12, 1);
    if (!frame.empty()) expect_same_within_rounding(frame, b);
  }
}

TEST(Booleans, OfTheGuestTakeHolesThatTouchEdgesAndEachOther) {
  const std::vector<Region> holes{
      polygon({at(2, 2), at(6, 2), at(4, 8)}), polygon({at(0, 5), at(2, 4), at(2, 6)}),
      polygon({at(2, 6), at(3, 7), at(1, 7)}), polygon({at(6, 2), at(8, 0), at(8, 2)})};
  Region frame = box(0, 0, 8, 8);
  for (const Region& hole : holes) frame = without(frame, hole);
  ASSERT_FALSE(frame.faces().empty());
  for (const Region& hole : holes) {
    expect_same(frame, hole);
    expect_same(hole, frame);
  }
  expect_same(frame, box(0, 0, 8, 8));
  expect_same(box(0, 0, 8, 8), frame);
  expect_same(frame, polygon({at(0, 0), at(8, 0), at(8, 8)}));
}

TEST(Booleans, OfTheGuestJoinFacesThatShareAnEdge) {
  const Region two = Region::from_faces(
      {{polygon({at(0, 0), at(8, 0), at(8, 8)}), {}}, {polygon({at(0, 0), at(8, 8), at(0, 8)}), {}}});
  EXPECT_EQ(wound_round(border_of_united({&two, 1})), Region(box(0, 0, 8, 8)));
  EXPECT_EQ(guest_common(two, box(2, 2, 9, 6)), Region(box(2, 2, 8, 6)));
  EXPECT_TRUE(border_of_united({}).empty());
}

}  // namespace
}  // namespace berthwright
