#include <berthwright/solve/heat/plugged.h>

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "oracle/clearance.h"
#include "support/cord_trailers.h"
#include "support/rects.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::inch_point;
using support::inch_rect;

const PluggedIn& plugged(const Answered& made, std::size_t configuration = 0) {
  return made.answer.configurations.at(configuration).plugged.at(0);
}

// (0, 0) to (30, 40): 50 in long. A band from x = 6 to 12 holds a fifth of it, 10 in, from (6, 8) on; a
// second one from 18 to 21 a tenth.
TEST(CordOn, AddsUpWhatLiesInsideAndNamesTheFirstPlace) {
  const Region bands = united(Region(inch_rect(6, 0, 12, 40)), Region(inch_rect(18, 0, 21, 40)));
  const CordOn on = cord_on({inch_point(0, 0), inch_point(30, 40)}, bands).value();
  EXPECT_EQ(on.length, 15_in);
  EXPECT_EQ(on.first, inch_point(6, 8));
  EXPECT_EQ(cord_on({inch_point(30, 40), inch_point(0, 0)}, bands)->first, inch_point(21, 28));
  // Bent: 4 in of the first part, 5 of the second.
  EXPECT_EQ(cord_on({inch_point(2, 10), inch_point(10, 10), inch_point(10, 15)}, bands)->length, 9_in);
}

TEST(CordOn, WhatOnlyTouchesTheBorderIsNotOnIt) {
  const Region box(inch_rect(10, 10, 20, 20));
  EXPECT_FALSE(cord_on({inch_point(0, 10), inch_point(30, 10)}, box).has_value());
  EXPECT_FALSE(cord_on({inch_point(0, 20), inch_point(20, 40)}, box).has_value());
  EXPECT_FALSE(cord_on({inch_point(0, 15), inch_point(10, 15)}, box).has_value());
  EXPECT_FALSE(cord_on({inch_point(0, 15), inch_point(30, 15)}, Region()).has_value());
  EXPECT_FALSE(cord_on({inch_point(15, 15)}, box).has_value());
  EXPECT_EQ(cord_on({inch_point(10, 10), inch_point(20, 20)}, box)->first, inch_point(10, 10));
}

// Twin: the segment in 4,000 steps, each asked by even-odd rays.
TEST(CordOn, AgreesWithSteps) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const std::int64_t step = ticks_per_inch;
    const Region region = support::random_region(random, 10, step);
    if (region.empty()) continue;
    const auto draw = [&] { return Length::from_ticks(static_cast<std::int64_t>(random() % 10'000'001)); };
    const Point a{draw(), draw()}, b{draw(), draw()};
    const double dx = static_cast<double>((b.x - a.x).ticks()), dy = static_cast<double>((b.y - a.y).ticks());
    constexpr int steps = 4000;
    int inside = 0;
    for (int i = 0; i < steps; ++i)
      if (oracle::clearance(region, static_cast<double>(a.x.ticks()) + dx * (i + 0.5) / steps,
                            static_cast<double>(a.y.ticks()) + dy * (i + 0.5) / steps) > 0)
        ++inside;
    const std::optional<CordOn> on = cord_on({a, b}, region);
    const double length = on ? static_cast<double>(on->length.ticks()) : 0;
    EXPECT_NEAR(length, inside * std::hypot(dx, dy) / steps, 12 * std::hypot(dx, dy) / steps + 40);
  }
}

TEST(Walkway, IsABandOfEighteenInchesOrOfItsOwnWidth) {
  const std::vector<Point> path{
      inch_point(0, 0), {20_in, Length::inches(1, 32)}, inch_point(40, 0), inch_point(40, 30)};
  const Region wide = walkway_along(path, 26_in);
  EXPECT_EQ(wide.side_of({20_in, 8_in}), Side::inside);
  EXPECT_EQ(wide.side_of({20_in, Length::inches(75, 8)}), Side::outside);
  EXPECT_EQ(wide.side_of({47_in, 20_in}), Side::inside);
  const Region narrow = walkway_along(path, 12_in);
  EXPECT_EQ(narrow.side_of({20_in, 5_in}), Side::inside);
  EXPECT_EQ(narrow.side_of({20_in, 7_in}), Side::outside);
  EXPECT_TRUE(walkway_along({inch_point(0, 0)}, 26_in).empty());
  EXPECT_TRUE(walkway_along(path, Length{}).empty());
}

TEST(PluggedIn, TakesTheOutletNamedElseTheNearest) {
  TrailerText text = cord_trailer("80");
  text.fixtures.push_back(outlet("near", "43", "33", "rear"));
  const Answered named(text);
  EXPECT_EQ(plugged(named).outlet->id.text(), "outlet");
  EXPECT_TRUE(plugged(named).named);
  EXPECT_EQ(plugged(named).run->length, 54_in);
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}, "on": "floor"})"};
  const Answered nearest(text);
  EXPECT_EQ(plugged(nearest).outlet->id.text(), "near");
  EXPECT_FALSE(plugged(nearest).named);
  EXPECT_EQ(plugged(nearest).run->length, 34_in);
  // The nearest is shut out: the next is taken.
  text.fixtures.push_back(cabinet("box", "40", "33", "10", "4"));
  EXPECT_EQ(plugged(Answered(text)).outlet->id.text(), "outlet");
}

TEST(PluggedIn, OfAStowedHeaterIsNothing) {
  TrailerText text = cord_trailer("80");
  EXPECT_TRUE(Answered(text).answer.configurations[1].plugged.empty());
  text.day[0].insert(text.day[0].size() - 1, R"(, "state": "off")");
  EXPECT_EQ(Answered(text).answer.configurations[0].plugged.size(), 1U);
}

// The bed hangs to x = 88 in, the outlet's face looks at it from x = 86: 2 in for the plug.
TEST(OutletFront, MeasuresTheFreeDepthToBeddingThingsAndWalls) {
  TrailerText text = cord_and_bed("90");
  text.fixtures[0] = outlet("outlet", "85", "33", "rear");
  const Answered made(text);
  const OutletFront& front = plugged(made, 1).front;
  EXPECT_EQ(front.depth, 2_in);
  EXPECT_EQ(front.met, "bed");
  EXPECT_EQ(front.bedding->squared, 2_in);
  EXPECT_EQ(front.bed, "bed");
  // By day no bed is made up: the bench begins at 90 in, as high as the outlet's underside, and so not before
  // it.
  EXPECT_EQ(plugged(made).front.met, "the rear wall");
  EXPECT_EQ(plugged(made).front.depth, 34_in);
  text.fixtures[0] = outlet("outlet", "85", "33", "front");
  const Answered away(text);
  EXPECT_EQ(plugged(away, 1).front.depth, 85_in);  // over the heater, which is lower
  EXPECT_EQ(plugged(away, 1).front.met, "the front wall");
  EXPECT_FALSE(plugged(away, 1).front.bedding.has_value());
  text.fixtures[0] = outlet("outlet", "85", "33", "");
  EXPECT_FALSE(plugged(Answered(text), 1).front.depth.has_value());
}

// It looks to the right from (83.5, 37): within 45 degrees the bedding at x = 88 begins 4.5 in aside and 4.5
// ahead: 6.36 in; what lies straight beside it, nearer, does not count.
TEST(OutletFront, SeesBeddingWithinFortyFiveDegrees) {
  TrailerText text = cord_and_bed("90");
  text.fixtures[0] = outlet("outlet", "83", "33", "right");
  const Nearest seen = plugged(Answered(text), 1).front.bedding.value();
  EXPECT_EQ(seen.squared, SquaredLength::of(Length::inches(9, 2)).plus_square_of(Length::inches(9, 2)));
  EXPECT_EQ(seen.to.plan, (Point{88_in, Length::inches(83, 2)}));
  EXPECT_EQ(seen.from.plan, (Point{Length::inches(167, 2), 37_in}));
}

}  // namespace
}  // namespace berthwright
