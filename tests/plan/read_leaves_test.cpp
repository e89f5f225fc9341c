#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include <berthwright/plan/plan.h>

#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::rect;

/// A counter 34 x 20 in that begins 38 in from the front at the left wall, 2 to 36 in high, and what opens.
std::string galley(const std::string& opens, const std::string& more = "") {
  return R"("fixtures": [{"id": "galley", "kind": "counter", "length": 34, "width": 20, "at": {"front": 38, "left": 0},
    "base": 2, "top": 36, )" +
         more + R"("opens": [)" + opens + R"(]}], "configurations": {"day": []})";
}

std::string fault_of_leaves(const std::string& opens, const std::string& more = "") {
  const Result<Plan> plan = read_plan(
      R"({"berthwright": 1, "title": "T", "unit": "in", "interior": {"length": 120, "width": 76, "height": 76},)" +
      galley(opens, more) + "}");
  return plan ? "none" : listed(plan.problems());
}

TEST(ReadLeaves, TheExampleShowsEveryKind) {
  const Leaf& lid = *example().leaf("left lid");
  EXPECT_EQ(lid.kind, Leaf::Kind::lid);
  EXPECT_EQ(lid.name, "Left lid");
  EXPECT_EQ(lid.fixture, FixtureId("left bench"));
  EXPECT_EQ(lid.outline, rect(80_in, 0_in, 120_in, 24_in));  // the whole top
  EXPECT_EQ(lid.hinge, Leaf::Edge::left);                    // the street side where one drives on the right
  EXPECT_EQ(lid.stop, Turn::degrees(100'000'000));
  EXPECT_EQ(lid.held_by, Hold::latch);
  EXPECT_FALSE(lid.inside);

  // 20 x 18 in, its rear edge 10 in from the rear wall at 120, its right edge 3 in from the wall at 76.
  const Leaf& loose = *example().leaf("right lid");
  EXPECT_EQ(loose.outline, rect(90_in, 55_in, 110_in, 73_in));
  EXPECT_FALSE(loose.hinge);
  EXPECT_FALSE(loose.held_by);

  // The galley is 36 x 20 in and begins at x = 41: the drawer from 41 + 20 to 41 + 36, heights as given.
  const Leaf& drawer = *example().leaf("galley drawer");
  EXPECT_EQ(drawer.kind, Leaf::Kind::drawer);
  EXPECT_EQ(drawer.face, Wall::right);
  EXPECT_EQ(drawer.outline, rect(61_in, 28_in, 77_in, 34_in));
  EXPECT_EQ(drawer.pull, 16_in);
  EXPECT_EQ(drawer.inside, (InsideBox{14_in, 16_in, 5_in}));
  EXPECT_FALSE(drawer.hinge);

  const Leaf& door = *example().leaf("galley door");
  EXPECT_EQ(door.outline, rect(41_in, 3_in, 59_in, 26_in));
  EXPECT_EQ(door.hinge, Leaf::Edge::front);
  EXPECT_EQ(door.stop, Turn::degrees(170'000'000));

  // The rear face looks to the rear and runs across, from 0 to 20.
  const Leaf& flap = *example().leaf("galley flap");
  EXPECT_EQ(flap.face, Wall::rear);
  EXPECT_EQ(flap.outline, rect(0_in, 20_in, 20_in, 30_in));
  EXPECT_EQ(flap.hinge, Leaf::Edge::top);
  EXPECT_EQ(flap.stop, Turn::quarters(1));
  EXPECT_EQ(example().leaf("galley"), nullptr);
}

TEST(ReadLeaves, ListsTheDefaultsItApplied) {
  const Plan plan = small_plan(galley(R"({"id": "x", "kind": "drawer", "face": "right", "from": 4},
    {"id": "y", "kind": "flap", "face": "front"}, {"id": "z", "kind": "lid", "hinge": "rear"})"));
  const auto value = [&](const std::string& field) {
    for (const AppliedDefault& d : plan->defaults)
      if (d.pointer == "/fixtures/0/opens/" + field) return d.value;
    return std::string("not listed");
  };
  EXPECT_EQ(value("0/width"), "30 in");
  EXPECT_EQ(value("0/base"), "2 in");
  EXPECT_EQ(value("0/top"), "36 in");
  EXPECT_EQ(value("0/pull"), "20 in");
  EXPECT_EQ(value("0/from"), "not listed");
  EXPECT_EQ(value("1/from"), "0");
  EXPECT_EQ(value("1/hinge"), "bottom");
  EXPECT_EQ(value("1/angle"), "90");
  EXPECT_EQ(value("1/width"), "20 in");
  EXPECT_EQ(value("2/at"), "the whole top");
  EXPECT_EQ(plan.leaf("x")->outline, rect(42_in, 2_in, 72_in, 36_in));
  EXPECT_EQ(plan.leaf("z")->outline, rect(38_in, 0_in, 72_in, 20_in));
}

// Turned by a quarter the counter is 20 along and 34 across, and its faces are those it then shows.
TEST(ReadLeaves, FacesAreThoseOfTheTurnedFixture) {
  const Plan plan =
      small_plan(galley(R"({"id": "x", "kind": "drawer", "face": "rear", "width": 30})", R"("turn": 90, )"));
  EXPECT_EQ(plan.leaf("x")->outline, rect(0_in, 2_in, 30_in, 36_in));
  EXPECT_EQ(plan.leaf("x")->pull, 20_in);
}

TEST(ReadLeaves, ALidIsMeasuredFromFixturesToo) {
  const Plan plan = small_plan(R"("fixtures": [
      {"id": "shelf", "kind": "shelf", "length": 10, "width": 4, "at": {"front": 40, "left": 0}, "base": 50, "top": 51},
      {"id": "bench", "kind": "bench", "length": 34, "width": 20, "at": {"front": 38, "left": 0}, "top": 14, "opens": [
        {"id": "x", "kind": "lid", "hinge": "lifts out", "length": 8, "width": 10,
         "at": {"behind": ["shelf", 2], "right_of": ["shelf", "1/2"]}}]}],
    "configurations": {"day": []})");
  // The shelf ends at x = 50 and y = 4.
  EXPECT_EQ(plan.leaf("x")->outline, rect(52_in, Length::inches(9, 2), 60_in, Length::inches(29, 2)));
}

// The face runs from 38 to 72 in: 34 in. Exactly its end is inside, a tick more is not.
TEST(ReadLeaves, ALeafKeepsToItsFace) {
  EXPECT_EQ(fault_of_leaves(R"({"id": "x", "kind": "drawer", "face": "right", "from": 14, "width": 20})"),
            "none");
  const std::string beyond =
      fault_of_leaves(R"({"id": "x", "kind": "drawer", "face": "right", "from": 14, "width": "20.001"})");
  EXPECT_NE(beyond.find("leaf.outside /fixtures/0/opens/0/width"), std::string::npos) << beyond;
  const std::string low =
      fault_of_leaves(R"({"id": "x", "kind": "flap", "face": "right", "base": 1, "top": 30})");
  EXPECT_NE(low.find("leaf.outside /fixtures/0/opens/0/base"), std::string::npos) << low;
  EXPECT_NE(low.find(R"("x" reaches 1" (25.4 mm) beyond the right face of "galley")"), std::string::npos)
      << low;
  const std::string high = fault_of_leaves(R"({"id": "x", "kind": "flap", "face": "right", "top": 37})");
  EXPECT_NE(high.find("leaf.outside /fixtures/0/opens/0/top"), std::string::npos) << high;
  const std::string lid = fault_of_leaves(
      R"({"id": "x", "kind": "lid", "hinge": "rear", "length": 30, "at": {"front": 43, "left": 0}})");
  EXPECT_NE(lid.find(R"("x" reaches 1" (25.4 mm) beyond the top of "galley")"), std::string::npos) << lid;
}

TEST(ReadLeaves, SaysWhatWasFoundAndAllowedAsOneMeasuresIt) {
  const Result<Plan> plan = read_plan(
      R"({"berthwright": 1, "title": "T", "unit": "in", "interior": {"length": 120, "width": 76, "height": 76},)" +
      galley(R"({"id": "x", "kind": "drawer", "face": "right", "from": 20, "width": 16})") + "}");
  ASSERT_EQ(plan.problems().size(), 1U);
  EXPECT_EQ(plan.problems()[0].found, "20 in to 36 in from the front end of the face");
  EXPECT_EQ(plan.problems()[0].allowed, "0 in to 34 in from the front end of the face");
  EXPECT_EQ(plan.problems()[0].cure, "make it smaller, or move it, by 2 in");
}

TEST(ReadLeaves, AnAngleEndsAtAHalfTurnWhateverItsSign) {
  const auto angle = [](const std::string& degrees) {
    return fault_of_leaves(R"({"id": "x", "kind": "lid", "hinge": "rear", "angle": )" + degrees + "}");
  };
  EXPECT_EQ(angle("180"), "none");
  EXPECT_EQ(angle("\"0.5 deg\""), "none");
  for (const char* degrees : {"0", "181", "360", "450", "-90", "-300"})
    EXPECT_NE(angle(degrees).find("leaf.angle"), std::string::npos) << degrees;
}

TEST(ReadLeaves, OneFaultIsReportedOnce) {
  const auto ids = [](const std::string& leaf) {
    const std::string text = fault_of_leaves(leaf);
    return std::ranges::count(text, '\n') + (text.ends_with('\n') ? 0 : 1);
  };
  EXPECT_EQ(ids(R"({"id": "x", "kind": "door", "face": "rihgt", "hinge": "left"})"), 1);
  EXPECT_EQ(ids(R"({"id": "x", "kind": "lid", "hinge": "raer", "angle": 80})"), 1);
  EXPECT_EQ(ids(R"({"id": "x", "kind": "dor", "face": "right", "hinge": "front", "angle": 80})"), 1);
  EXPECT_EQ(ids(R"({"id": "x", "kind": "drawer", "face": "right", "pull": 0})"), 1);
  EXPECT_EQ(
      ids(R"({"id": "x", "kind": "lid", "hinge": "rear", "length": 5, "at": {"behind": ["gally", 1], "left": 2}})"),
      1);
}

// Where the size of the fixture itself cannot be read, nothing is said about what would not fit it.
TEST(ReadLeaves, AFaultOfTheFixtureIsNotALeafs) {
  const Result<Plan> plan = read_plan(R"({"berthwright": 1, "title": "T", "unit": "in",
    "interior": {"length": 120, "width": 76, "height": 76}, "fixtures": [
      {"id": "a", "kind": "counter", "length": "long", "width": 20, "at": {"front": 38, "left": 0}, "top": 36,
       "inside": {"length": 30, "width": 18, "height": 30},
       "opens": [{"id": "x", "kind": "drawer", "face": "right", "from": 20, "width": 10}]},
      {"id": "b", "kind": "counter", "length": 30, "width": 20, "at": {"front": 38, "left": 0}, "top": "high",
       "inside": {"length": 28, "width": 18, "height": 30},
       "opens": [{"id": "y", "kind": "drawer", "face": "right", "from": 20, "base": 20, "top": 30}]},
      {"id": "c", "kind": "counter", "length": 30, "width": 20, "at": {"behind": ["d", 0], "left": 0}, "top": 36,
       "opens": [{"id": "z", "kind": "lid", "hinge": "rear", "length": 20, "at": {"front": 38, "left": 0}}]}],
    "configurations": {"day": []}})");
  std::string ids;
  for (const Problem& problem : plan.problems()) ids += problem.id + problem.pointer + ' ';
  EXPECT_EQ(ids,
            "length.not-a-length/fixtures/0/length length.not-a-length/fixtures/1/top "
            "reference.unknown/fixtures/2/at/behind/0 ");
}

}  // namespace
}  // namespace berthwright
