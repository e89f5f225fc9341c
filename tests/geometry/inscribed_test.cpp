#include "geometry/inscribed.h"

#include <gtest/gtest.h>

#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

Corners corners(const Rect& r) { return {r.low, {r.high.x, r.low.y}, r.high, {r.low.x, r.high.y}}; }
bool lies_in(const Rect& rect, const Region& region) { return is_inscribed(corners(rect), edges(region)); }

TEST(Inscribed, TouchingTheBorderIsInsideAndATickBeyondIsNot) {
  const Region room = box(0, 0, 100, 50);
  EXPECT_TRUE(lies_in(box(0, 0, 100, 50), room));
  EXPECT_TRUE(lies_in(box(0, 0, 1, 1), room));
  EXPECT_FALSE(lies_in(box(0, 0, 101, 50), room));
  EXPECT_FALSE(lies_in(box(0, -1, 100, 50), room));
}

TEST(Inscribed, OutsideOrInAHoleMeetsNoEdgeAndIsStillNotInside) {
  const Region ring = without(Region(box(0, 0, 100, 100)), Region(box(20, 20, 80, 80)));
  EXPECT_FALSE(lies_in(box(20, 20, 80, 80), ring));
  EXPECT_FALSE(lies_in(box(100, 0, 120, 20), ring));
  EXPECT_FALSE(lies_in(box(10, 10, 90, 90), ring));  // swallows the hole
  EXPECT_TRUE(lies_in(box(0, 0, 100, 20), ring));
}

// The slanted side runs from (0, 60) to (80, 0): the corner (40, 30) lies on it, (41, 30) and (40, 31)
// beyond.
TEST(Inscribed, ACornerMayLieOnASlantedSide) {
  const Region triangle = polygon({at(0, 0), at(80, 0), at(0, 60)});
  EXPECT_TRUE(lies_in(box(0, 0, 40, 30), triangle));
  EXPECT_FALSE(lies_in(box(0, 0, 41, 30), triangle));
  EXPECT_FALSE(lies_in(box(0, 0, 40, 31), triangle));
}

// The long side of the hole runs along x - y = 90 and cuts off the corner (100, 0); no vertex lies inside.
// Along x - y = 100 it only touches that corner.
TEST(Inscribed, AnEdgeThatCutsACornerOffIsNoticed) {
  const Region room = box(-100, -100, 200, 200);
  EXPECT_FALSE(lies_in(box(0, 0, 100, 50), without(room, polygon({at(30, -60), at(160, 70), at(160, -60)}))));
  EXPECT_TRUE(lies_in(box(0, 0, 100, 50), without(room, polygon({at(40, -60), at(160, 60), at(160, -60)}))));
}

TEST(Inscribed, ClockwiseOrFlatCornersAreRefused) {
  const auto room = edges(Region(box(0, 0, 100, 50)));
  EXPECT_FALSE(is_inscribed({at(0, 0), at(0, 10), at(10, 10), at(10, 0)}, room));
  EXPECT_FALSE(is_inscribed({at(0, 0), at(10, 0), at(10, 0), at(0, 10)}, room));
  EXPECT_FALSE(is_inscribed({at(0, 0), at(5, 0), at(10, 0), at(0, 10)}, room));
}

TEST(Inscribed, HoldsAtTheFarthestCoordinates) {
  const std::int64_t far = farthest.ticks();
  const Region diamond = polygon({at(-far, 0), at(0, -far), at(far, 0), at(0, far)});
  EXPECT_TRUE(lies_in(box(-far / 2, -far / 2, far / 2, far / 2), diamond));
  EXPECT_FALSE(lies_in(box(-far / 2, -far / 2, far / 2 + 1, far / 2), diamond));
}

// Along (4, 3) the sides are 50 and 25 long; one corner pushed out by 5 along x changes nothing, pushed in by
// (-4, -3) it takes 5 from the length.
TEST(Inscribed, WhatItHoldsIsTheGapBetweenFacingCorners) {
  const Corners exact{at(0, 0), at(40, 30), at(25, 50), at(-15, 20)};
  EXPECT_EQ(held_by(exact).along, Length::from_ticks(50));
  EXPECT_EQ(held_by(exact).across, Length::from_ticks(25));
  const Corners pushed_in{at(0, 0), at(40, 30), at(21, 47), at(-15, 20)};
  EXPECT_EQ(held_by(pushed_in).along, Length::from_ticks(45));
  EXPECT_EQ(held_by(pushed_in).across, Length::from_ticks(25));
}

// Between the lines x = y / 3 on the left and x = 100 - y / 3 on the right a strip 5 <= y <= 10 is free from
// 10/3 to 100 - 10/3, in whole ticks from 4 to 96.
TEST(Inscribed, AStripIsFreeToWholeTicks) {
  const auto border = edges(Region(polygon({at(0, 0), at(100, 0), at(80, 60), at(20, 60)})));
  const auto free = free_along_x(box(0, 5, 1, 10), at(50, 0).x, border);
  ASSERT_TRUE(free);
  EXPECT_EQ(free->from, at(4, 0).x);
  EXPECT_EQ(free->to, at(96, 0).x);
  EXPECT_FALSE(free_along_x(box(0, 5, 1, 70), at(50, 0).x, border));  // the top edge lies across
  EXPECT_TRUE(free_along_x(box(0, 5, 1, 60), at(50, 0).x, border));   // and here it only touches
}

std::vector<std::pair<std::int64_t, std::int64_t>> free_between(std::int64_t low, std::int64_t high,
                                                                const Region& region) {
  std::vector<std::pair<std::int64_t, std::int64_t>> out;
  for (const FreeStretch& stretch : free_stretches(at(0, low).y, at(0, high).y, edges(region)))
    out.emplace_back(stretch.from.ticks(), stretch.to.ticks());
  return out;
}
using Stretches = std::vector<std::pair<std::int64_t, std::int64_t>>;

// Between two islands, in a hole and in a bay the strip is as empty as inside them, but it lies outside.
TEST(Inscribed, WhatLiesBetweenOrInAHoleIsNoStretchOfTheRegion) {
  const Region islands = united(Region(box(0, 0, 10, 100)), Region(box(30, 0, 50, 100)));
  EXPECT_EQ(free_between(40, 60, islands), (Stretches{{0, 10}, {30, 50}}));
  const Region ring = without(Region(box(0, 0, 100, 100)), Region(box(20, 20, 80, 80)));
  EXPECT_EQ(free_between(40, 60, ring), (Stretches{{0, 20}, {80, 100}}));
  EXPECT_EQ(free_between(80, 100, ring), (Stretches{{0, 100}}));
  const Region bay = without(Region(box(0, 0, 100, 100)), Region(box(40, 50, 60, 100)));
  EXPECT_EQ(free_between(60, 90, bay), (Stretches{{0, 40}, {60, 100}}));
  EXPECT_EQ(free_between(110, 120, bay), Stretches{});
}

}  // namespace
}  // namespace berthwright
