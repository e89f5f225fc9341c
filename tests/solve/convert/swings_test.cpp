#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/solve/convert/steps.h>

#include "support/convert_trailers.h"
#include "support/replay.h"

namespace berthwright {
namespace {

using Decision = Conversion::Verdict;

// The ledges' table is 31 3/4 in between benches 32 in apart. A lip on the right bench reaches 1/2 in over it,
// some inches higher: level it does not come up.
TrailerText under_a_lip(const std::string& base, const std::string& top) {
  TrailerText text = dinette();
  text.fixtures.push_back(R"({"id": "lip", "kind": "protrusion", "length": 38, "width": "1/2",
      "at": {"rear": 0, "left": "53 1/2"}, "base": ")" +
                          base + R"(", "top": ")" + top + R"("})");
  return text;
}

const Motion* tilt_in(const Conversion& conversion) {
  for (const Step& step : conversion.steps)
    for (const Motion& motion : step.motions)
      if (motion.kind == Motion::Kind::tilt) return &motion;
  return nullptr;
}

// Its low side stays at 22 1/8, so 31 3/8 in are left beside the lip. Tilted by 8 degrees it takes 31.75 x
// 0.9903 + 0.75 x 0.1392 = 31.546, by 12 degrees 31.75 x 0.9781 + 0.75 x 0.2079 = 31.212. Its upper edge
// is then 13.25 + 31.75 x 0.2079 + 0.75 x 0.9781 = 20.585 above the floor, still below the lip at 20.75.
TEST(Swings, ATableIsTiltedPastALip) {
  const Plan plan = under_a_lip("20 3/4", "21 3/4").plan();
  const std::vector<Conversion> found = conversions(plan).value();
  for (const Conversion& one : found) {
    ASSERT_EQ(one.verdict, Decision::order);
    EXPECT_EQ(one.steps.size(), 3U);
    const Motion* tilt = tilt_in(one);
    ASSERT_NE(tilt, nullptr);
    EXPECT_EQ(tilt->swing->degrees, 12);
    EXPECT_EQ(low_side(*tilt->swing), Wall::left);
    EXPECT_EQ(support::replayed(plan, one), "");
  }
  EXPECT_LT(tilt_in(found[0])->after.base(), tilt_in(found[0])->before.base());  // down into its place
  EXPECT_GT(tilt_in(found[1])->after.base(), tilt_in(found[1])->before.base());
}

TEST(Swings, TheTiltIsTheSameInTheMirror) {
  const Plan plan = under_a_lip("20 3/4", "21 3/4").mirrored().plan();
  for (const Conversion& one : conversions(plan).value()) {
    ASSERT_NE(tilt_in(one), nullptr);
    EXPECT_EQ(tilt_in(one)->swing->degrees, 12);
    EXPECT_EQ(low_side(*tilt_in(one)->swing), Wall::right);
    EXPECT_EQ(support::replayed(plan, one), "");
  }
}

// 15 in above the floor the lip is 1 in over the table: it cannot rise by the 6 in that the tilt takes.
TEST(Swings, ALipCloseAboveTheTableKeepsItThere) {
  const Plan plan = under_a_lip("15", "16").plan();
  for (const Conversion& one : conversions(plan).value()) {
    EXPECT_EQ(one.verdict, Decision::none);
    ASSERT_FALSE(one.stuck.empty());
    EXPECT_EQ(one.stuck.front().by, std::vector<std::string>{"lip"});
  }
}

// A galley 36 in high with a leaf of 20 x 24 in hinged to its rear face: by day it lies flat, 35 in above the
// floor, by night it hangs from there.
TrailerText with_a_leaf() {
  TrailerText text;
  text.openings = dinette().openings;
  text.fixtures = {
      R"({"id": "galley", "kind": "counter", "length": 24, "width": 24, "at": {"front": 0, "left": 0}, "top": 36})"};
  text.pieces = {
      R"({"id": "leaf", "kind": "table", "length": 20, "width": 24, "thickness": 1, "hinged_to": "galley"})"};
  text.day = {R"({"piece": "leaf", "at": {"front": 24, "left": 0}, "base": 35})"};
  text.night = {
      R"({"piece": "leaf", "at": {"front": 24, "left": 0}, "stands_on": "width", "faces": "rear", "base": 15})"};
  return text;
}

TEST(Swings, ALeafIsFoldedAtItsHinge) {
  const Plan plan = with_a_leaf().plan();
  for (const Conversion& one : conversions(plan).value()) {
    ASSERT_EQ(one.verdict, Decision::order);
    ASSERT_EQ(one.steps.size(), 1U);
    ASSERT_EQ(one.steps[0].motions.size(), 1U);
    EXPECT_EQ(one.steps[0].motions[0].kind, Motion::Kind::fold);
    EXPECT_EQ(support::replayed(plan, one), "");
  }
}

// An inch too low to hang from the same hinge.
TEST(Swings, WhatNoHingeDoesIsToldOfTheHinge) {
  TrailerText text = with_a_leaf();
  text.night = {
      R"({"piece": "leaf", "at": {"front": 24, "left": 0}, "stands_on": "width", "faces": "rear", "base": 13})"};
  const Plan plan = text.plan();
  const std::vector<Conversion> found = conversions(plan).value();
  EXPECT_EQ(found[0].verdict, Decision::none);
  ASSERT_FALSE(found[0].stuck.empty());
  EXPECT_EQ(found[0].stuck.front().by, std::vector<std::string>{"galley"});
}

// A box stands where the leaf swings, with its top at 30: the leaf's edge comes by there, 20 in from the hinge.
TEST(Swings, WhatStandsInTheFoldKeepsTheLeafWhereItIs) {
  TrailerText text = with_a_leaf();
  text.fixtures.push_back(
      R"({"id": "box", "kind": "cabinet", "length": 4, "width": 10, "at": {"front": 39, "left": 4}, "top": 30})");
  const Plan plan = text.plan();
  for (const Conversion& one : conversions(plan).value()) {
    EXPECT_EQ(one.verdict, Decision::none);
    ASSERT_FALSE(one.stuck.empty());
    EXPECT_EQ(one.stuck.front().by, std::vector<std::string>{"box"});
  }
}

// The same box as a stool that can be moved goes first.
TEST(Swings, WhatCanBeMovedOutOfTheFoldIsMovedFirst) {
  TrailerText text = with_a_leaf();
  text.pieces.push_back(R"({"id": "stool", "kind": "board", "length": 4, "width": 10, "thickness": 30})");
  text.day.push_back(R"({"piece": "stool", "at": {"front": 39, "left": 4}})");
  text.night.push_back(R"({"piece": "stool", "at": {"front": 80, "left": 4}})");
  const Plan plan = text.plan();
  const std::vector<Conversion> found = conversions(plan).value();
  ASSERT_EQ(found[0].steps.size(), 2U);
  EXPECT_EQ(found[0].steps[0].piece.text(), "stool");
  EXPECT_EQ(found[1].steps[0].piece.text(), "leaf");
  for (const Conversion& one : found) EXPECT_EQ(support::replayed(plan, one), "");
}

}  // namespace
}  // namespace berthwright
