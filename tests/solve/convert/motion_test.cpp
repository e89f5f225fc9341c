#include <berthwright/solve/convert/motion.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "oracle/carried_samples.h"
#include "support/rects.h"
#include "support/replay.h"

namespace berthwright {
namespace {

using support::inch_point;
using support::inch_rect;

Solid box(int left, int low, int right, int high, int base, int top) {
  return {Region(inch_rect(left, low, right, high)), Length::inches(base), Length::inches(top)};
}

Region outline_of(const Motion& motion) { return motion.sweep.front().outline(); }

// A board of 30 x 20, 1 in thick, lifted from 10 to 14: it passes from 10 to 15.
TEST(Motion, ALiftPassesThroughItsOutlineAndNothingElse) {
  const Motion motion = raised(box(0, 0, 30, 20, 10, 11), 14_in);
  EXPECT_EQ(motion.kind, Motion::Kind::lift);
  EXPECT_EQ(motion.after, box(0, 0, 30, 20, 14, 15));
  EXPECT_EQ(motion.sweep, std::vector{box(0, 0, 30, 20, 10, 15)});
  EXPECT_EQ(raised(motion.after, 10_in).kind, Motion::Kind::lower);
  EXPECT_EQ(raised(motion.after, 10_in).sweep, motion.sweep);
  EXPECT_THROW(raised(motion.after, 14_in), std::invalid_argument);
}

// A triangle with legs of 10 slid by (20, 0): the triangle 50, and a band as high as it is, 10 x 20 = 200.
TEST(Motion, ASlideSweepsOutlineAndPath) {
  const Solid triangle(
      Region(Polygon::checked({inch_point(0, 0), inch_point(10, 0), inch_point(0, 10)}).value()), 0_in, 2_in);
  const Motion motion = slid(triangle, {20_in, 0_in});
  EXPECT_EQ(outline_of(motion).area(), Area::rectangle(250_in, 1_in));
  EXPECT_EQ(motion.sweep.front().top(), 2_in);
  EXPECT_THROW(slid(triangle, {}), std::invalid_argument);
}

// An L of 20 x 20 less 10 x 10, slid by (5, 0) along its foot: area 300 and what its right sides sweep, 5 x
// 20 in all: 400. Its inward corner keeps 5 x 10 of its notch free.
TEST(Motion, ASlideOfANotchedOutlineKeepsTheNotch) {
  const Solid ell(Region(Polygon::checked({inch_point(0, 0), inch_point(20, 0), inch_point(20, 10),
                                           inch_point(10, 10), inch_point(10, 20), inch_point(0, 20)})
                             .value()),
                  0_in, 1_in);
  EXPECT_EQ(outline_of(slid(ell, {5_in, 0_in})).area(), Area::rectangle(400_in, 1_in));
}

// 30 x 40 has a diagonal of 50: the square around its circle is 50 wide and goes from -10 to 40 along its
// length and from -5 to 45 across it.
TEST(Motion, ATurnNeedsTheSquareAroundItsCircle) {
  const Motion motion = quarter_turned(box(0, 0, 30, 40, 0, 4));
  EXPECT_EQ(motion.after, box(-5, 5, 35, 35, 0, 4));
  const Rect needed = outline_of(motion).bounds();
  EXPECT_EQ(needed.low, (Point{-10_in, -5_in}));
  EXPECT_LE(needed.high.x - 40_in, Length::from_ticks(2));
  EXPECT_LE(needed.high.y - 45_in, Length::from_ticks(2));
}

// 12 wide and 5 high has a diagonal of 13: tipped over its front edge it lies 5 before it and stands 12 high.
TEST(Motion, ATipNeedsTheDiagonalInHeight) {
  const Motion motion = tipped(box(20, 0, 32, 40, 10, 15), Wall::front);
  EXPECT_EQ(motion.after, box(15, 0, 20, 40, 10, 22));
  EXPECT_EQ(motion.sweep, std::vector{box(15, 0, 32, 40, 10, 23)});
  EXPECT_EQ(tipped(box(20, 0, 32, 40, 10, 15), Wall::right).after, box(20, 40, 32, 45, 10, 50));
}

Rect reach_at(const Motion& motion, Length height) {
  std::optional<Rect> reach;
  for (const Solid& solid : motion.sweep) {
    if (solid.top() <= height || height <= solid.base()) continue;
    const Rect box = solid.outline().bounds();
    reach = reach ? hull(*reach, box) : box;
  }
  return reach.value();
}
Length top_of(const Motion& motion) { return std::ranges::max(motion.sweep, {}, &Solid::top).top(); }
Length base_of(const Motion& motion) { return std::ranges::min(motion.sweep, {}, &Solid::base).base(); }
void expect_within(Length found, Length from, Length to) {
  EXPECT_GE(found, from);
  EXPECT_LE(found, to);
}

// 40 in long and 1 thick, tilted by 60 degrees: 40 x 1/2 + 1 x 0.8660 = 20.866 wide and 40 x 0.8660 + 1/2 =
// 35.141 high. It goes inward before it turns, by sin 2 = 0.0349 for the first two degrees: 40.035 wide, which is more
// than its diagonal, the root of 1601, 40.0125.
TEST(Motion, ATiltPassesWhatIsNarrowerThanTheBoard) {
  const Motion up = tilted(box(0, 0, 40, 20, 10, 11), 60_in, {Wall::front, 60, 0_in});
  EXPECT_EQ(up.kind, Motion::Kind::tilt);
  EXPECT_EQ(up.after, box(0, 0, 40, 20, 60, 61));
  EXPECT_EQ(low_side(*up.swing), Wall::front);
  const Rect between = reach_at(up, 50_in);
  EXPECT_EQ(between.low, (Point{0_in, 0_in}));
  expect_within(between.high.x, Length::inches(20'866, 1000), Length::inches(20'867, 1000));
  EXPECT_EQ(between.high.y, 20_in);
  const Rect below = reach_at(up, Length::inches(21, 2));
  EXPECT_GE(below.low.x, 0_in);
  expect_within(below.high.x, Length::inches(40'034, 1000), Length::inches(40'036, 1000));
  EXPECT_EQ(base_of(up), 10_in);
  expect_within(top_of(up), Length::inches(95'141, 1000), Length::inches(95'142, 1000));
}

TEST(Motion, ATiltIsTheSameInTheMirrorAndShiftsItsLowSide) {
  const Motion left = tilted(box(0, 0, 20, 40, 10, 11), 60_in, {Wall::left, 30, 2_in});
  const Motion right = tilted(box(0, 0, 20, 40, 10, 11), 60_in, {Wall::right, 30, 2_in});
  EXPECT_EQ(left.after, box(0, -2, 20, 38, 60, 61));
  EXPECT_EQ(right.after, box(0, 2, 20, 42, 60, 61));
  const Rect a = reach_at(left, 45_in), b = reach_at(right, 45_in);
  EXPECT_EQ(a.low.y, 40_in - b.high.y);
  EXPECT_EQ(a.high.y, 40_in - b.low.y);
  EXPECT_THROW(tilted(left.after, 60_in, {Wall::left, 30, 0_in}), std::invalid_argument);
  EXPECT_THROW(tilted(left.after, 10_in, {Wall::left, 31, 0_in}), std::invalid_argument);
}

// A leaf of 20 in, 1 thick, hinged at (10, 28): its far upper corner is the root of 20^2 + 1^2 = 20.025 away,
// its far lower one 20.
TEST(Motion, ALeafFoldsDownAboutItsHinge) {
  const Motion down = folded(box(10, 0, 30, 30, 28, 29), box(10, 0, 11, 30, 8, 28)).value();
  EXPECT_EQ(down.kind, Motion::Kind::fold);
  EXPECT_EQ(down.swing->pivot, (Point{10_in, 28_in}));
  EXPECT_EQ(down.swing->degrees, 90);
  EXPECT_EQ(base_of(down), 8_in);
  EXPECT_EQ(top_of(down), 29_in);
  const Rect reach = reach_at(down, Length::inches(281, 10));
  EXPECT_EQ(reach.low.x, 10_in);
  expect_within(reach.high.x, Length::inches(30'024, 1000), Length::inches(30'026, 1000));
}

// Folded over onto its neighbour about (10, 29), by way of standing up: 29 + 20.025.
TEST(Motion, ALeafFoldsOverByWayOfStandingUp) {
  for (const bool back : {false, true}) {
    const Solid here = box(10, 0, 30, 30, 28, 29), there = box(-10, 0, 10, 30, 29, 30);
    const Motion over = (back ? folded(there, here) : folded(here, there)).value();
    EXPECT_EQ(over.swing->degrees, 180);
    EXPECT_EQ(base_of(over), 28_in);
    expect_within(top_of(over), Length::inches(49'024, 1000), Length::inches(49'026, 1000));
  }
}

TEST(Motion, NoHingeTakesABoardElsewhere) {
  EXPECT_FALSE(folded(box(10, 0, 30, 30, 28, 29), box(40, 0, 41, 30, 8, 28)));
  EXPECT_FALSE(folded(box(10, 0, 30, 30, 28, 29), box(10, 1, 11, 31, 8, 28)));
  EXPECT_FALSE(folded(box(10, 0, 30, 30, 28, 29), box(10, 0, 30, 30, 28, 29)));
}

// The slow twin moves points of the thing along and finds none beyond the sweep.
TEST(Motion, SweepsCoverEverySampledPlace) {
  const Solid box_of_foam = box(3, 5, 26, 19, 7, 11);
  const Solid ell(Region(Polygon::checked({inch_point(0, 0), inch_point(20, 0), inch_point(20, 10),
                                           inch_point(10, 10), inch_point(7, 20), inch_point(0, 20)})
                             .value()),
                  2_in, 3_in);
  std::vector<Motion> motions{raised(ell, 9_in),
                              slid(ell, {13_in, -7_in}),
                              quarter_turned(box_of_foam),
                              tilted(box(0, 0, 40, 20, 10, 11), 12_in, {Wall::front, 24, 3_in}),
                              *folded(box(10, 0, 30, 30, 28, 29), box(10, 0, 11, 30, 8, 28)),
                              *folded(box(10, 0, 30, 30, 28, 29), box(-10, 0, 10, 30, 29, 30))};
  for (const Wall side : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    motions.push_back(tipped(box_of_foam, side));
    motions.push_back(tilted(box_of_foam, 6_in, {side, 20, 0_in}));
  }
  for (const Motion& motion : motions) {
    std::vector<oracle::PlainPrism> cover;
    for (const Solid& solid : motion.sweep) cover.push_back(support::plain("", solid, 0));
    const oracle::PlainMotion plain = support::plain_motion(motion, 0);
    EXPECT_LE(oracle::farthest_uncovered(plain, cover), 0.001) << static_cast<int>(motion.kind);
    for (oracle::PlainPrism& prism : cover) prism.top -= 1;  // a sweep a millimetre too low is found out
    EXPECT_GE(oracle::farthest_uncovered(plain, cover), 0.5) << static_cast<int>(motion.kind);
  }
}

}  // namespace
}  // namespace berthwright
