#include <berthwright/solve/convert/motion.h>

#include <gtest/gtest.h>

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

// The slow twin moves points of the thing along and finds none beyond the sweep.
TEST(Motion, SweepsCoverEverySampledPlace) {
  const Solid box_of_foam = box(3, 5, 26, 19, 7, 11);
  const Solid ell(Region(Polygon::checked({inch_point(0, 0), inch_point(20, 0), inch_point(20, 10),
                                           inch_point(10, 10), inch_point(7, 20), inch_point(0, 20)})
                             .value()),
                  2_in, 3_in);
  using Kind = oracle::PlainMotion::Kind;
  const std::vector<std::pair<Kind, Motion>> motions{
      {Kind::straight, raised(ell, 9_in)},          {Kind::straight, slid(ell, {13_in, -7_in})},
      {Kind::turn, quarter_turned(box_of_foam)},    {Kind::tip, tipped(box_of_foam, Wall::front)},
      {Kind::tip, tipped(box_of_foam, Wall::rear)}, {Kind::tip, tipped(box_of_foam, Wall::left)},
      {Kind::tip, tipped(box_of_foam, Wall::right)}};
  for (const auto& [kind, motion] : motions) {
    std::vector<oracle::PlainPrism> cover;
    for (const Solid& solid : motion.sweep) cover.push_back(support::plain("", solid, 0));
    const oracle::PlainMotion plain{kind, support::plain("", motion.before, 0),
                                    support::plain("", motion.after, 0)};
    EXPECT_LE(oracle::farthest_uncovered(plain, cover), 0.001) << static_cast<int>(motion.kind);
    for (oracle::PlainPrism& prism : cover) prism.top -= 1;  // a sweep a millimetre too low is found out
    EXPECT_GE(oracle::farthest_uncovered(plain, cover), 0.5) << static_cast<int>(motion.kind);
  }
}

}  // namespace
}  // namespace berthwright
