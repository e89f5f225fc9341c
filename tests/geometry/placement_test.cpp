#include <berthwright/geometry/placement.h>

#include <gtest/gtest.h>

#include <cmath>

#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

constexpr Vector shift(std::int64_t x, std::int64_t y) {
  return {Length::from_ticks(x), Length::from_ticks(y)};
}

// (3, 1), mirrored in the x axis (3, -1), a quarter turn to the left (1, 3), moved by (10, 20): (11, 23).
TEST(Placement, MirrorsThenTurnsThenShifts) {
  const Placement placement{true, Turn::quarters(1), shift(10, 20)};
  EXPECT_EQ(placement(at(3, 1)), at(11, 23));
  const Polygon ell = polygon({at(0, 0), at(4, 0), at(4, 1), at(1, 1), at(1, 3), at(0, 3)});
  EXPECT_EQ(placement(ell),
            polygon({at(10, 20), at(10, 24), at(11, 24), at(11, 21), at(13, 21), at(13, 20)}));
  EXPECT_EQ(placement(Region(ell)), Region(placement(ell)));
}

TEST(Placement, AMirrorTurnsAnArcTheOtherWay) {
  const Arc arc{at(0, 2), at(2, 0), Length::from_ticks(2), true};
  const Arc flipped = Placement{true, Turn(), {}}(arc);
  EXPECT_EQ(flipped.from, at(0, -2));
  EXPECT_EQ(flipped.to, at(2, 0));
  EXPECT_FALSE(flipped.left);
  EXPECT_TRUE((Placement{false, Turn::quarters(3), {}})(arc).left);
}

// 3-4-5: the turn toward (4, 3) takes (10, 5) to (8 - 3, 6 + 4) = (5, 10); it may differ by 1e-8 degree.
TEST(Placement, OtherTurnsRoundOnceToTheLattice) {
  const Placement placement{false, Turn::toward(4, 3), {}};
  EXPECT_EQ(placement(at(10, 5)), at(5, 10));
  EXPECT_EQ(placement(at(2, 0)), at(2, 1));     // (1.6, 1.2)
  EXPECT_EQ(placement(at(-2, 0)), at(-2, -1));  // rounded alike: no half is involved
}

TEST(Placement, QuarterTurnsKeepRegionsExactly) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region = support::random_boxes(random, 8, 10, 3);
    for (int quarters = 0; quarters < 4; ++quarters) {
      const Placement there{seed % 2 == 0, Turn::quarters(quarters), {}};
      const Region moved_there = there(region);
      ASSERT_EQ(moved_there.area(), region.area());
      // A mirror and a turn are undone by the same again; a turn alone by its reverse.
      const Placement back{there.flipped, there.flipped ? there.turn : there.turn.reversed(), {}};
      ASSERT_EQ(back(moved_there), region);
    }
  }
}

TEST(Placement, TurnedRegionsKeepTheirAreaNearlyAndTheirParts) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region = support::random_boxes(random, 8, 10, 1'000'000);
    const Placement placement{seed % 2 == 0, Turn::degrees(1'234'567 * static_cast<std::int64_t>(seed + 1)),
                              shift(5, 7)};
    const Region turned = placement(region);
    const double area = support::number(region.area());
    // Each of some 60 edges moves by less than a tick over at most 10 000 000.
    ASSERT_NEAR(support::number(turned.area()), area, 6e8);
    for (const Face& face : region.faces())
      ASSERT_NEAR(support::number(placement(face.outer).area()), support::number(face.outer.area()), 6e8);
  }
}

TEST(Placement, APolygonThatCollapsesWhenTurnedKeepsItsLargestPart) {
  // A square of 5 with a spur one tick wide.
  const Polygon spur =
      polygon({at(0, 0), at(5, 0), at(5, 2), at(90, 2), at(90, 3), at(5, 3), at(5, 5), at(0, 5)});
  const Polygon turned = Placement{false, Turn::degrees(33'000'000), {}}(spur);
  EXPECT_GE(turned.area(), Area::rectangle(Length::from_ticks(4), Length::from_ticks(5)));
}

}  // namespace
}  // namespace berthwright
