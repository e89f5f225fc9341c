#include <berthwright/plan/plan.h>

#include <gtest/gtest.h>

#include <functional>
#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

/// What `Plan::checked` says about the example after `change`; "" when it is a plan.
std::string after(const std::function<void(PlanParts&)>& change) {
  const Plan example = plan_from(repository_text("tests/plan/example.json"));
  PlanParts parts = *example.operator->();
  change(parts);
  const Result<Plan> plan = Plan::checked(std::move(parts));
  std::string ids;
  for (const Problem& problem : plan.problems())
    ids += (ids.empty() ? "" : " ") + problem.id + problem.pointer;
  return ids;
}

TEST(PlanChecked, TakesAPlanThatKeepsItsPromises) {
  EXPECT_EQ(after([](PlanParts&) {}), "");
}

TEST(PlanChecked, RefusesIdsThatAreTakenOrEmpty) {
  EXPECT_EQ(after([](PlanParts& p) { p.fixtures[8].id = FixtureId("door"); }), "id.twice/fixtures/8/id");
  EXPECT_EQ(after([](PlanParts& p) { p.openings[1].id = OpeningId(""); }), "id.empty/openings/1/id");
  EXPECT_EQ(after([](PlanParts& p) { p.beds[1].id = p.beds[0].id; }), "id.twice/beds/1/id");
}

TEST(PlanChecked, RefusesPiecesThatArePosedTwiceOrNever) {
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses.pop_back(); }),
            "pose.missing/configurations/day");
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses.push_back(p.configurations[0].poses[0]); }),
            "pose.twice/configurations/day/0/piece");
  EXPECT_EQ(after([](PlanParts& p) {
              p.configurations.clear();
              p.beds.clear();
            }),
            "plan.no-configuration/configurations");
}

TEST(PlanChecked, RefusesReferencesToNothing) {
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses[0].on = {"nowhere"}; }),
            "reference.unknown/configurations/day/0/on/0");
  EXPECT_EQ(after([](PlanParts& p) { p.beds[0].configuration = ConfigurationId("dusk"); }),
            "reference.unknown/beds/0/configuration");
  EXPECT_EQ(after([](PlanParts& p) { p.overrides[0].rule = RuleId("bed.nothing"); }),
            "reference.unknown/rules/bed.gap");
}

TEST(PlanChecked, RefusesSizesThatCannotBe) {
  EXPECT_EQ(after([](PlanParts& p) { p.pieces[0].thickness = Length{}; }), "piece.size/pieces/0");
  EXPECT_EQ(after([](PlanParts& p) { p.pieces[0].width += one_tick; }), "piece.size/pieces/0");
  EXPECT_EQ(after([](PlanParts& p) { p.openings[0].height = Length{}; }), "size.zero/openings/0");
  EXPECT_EQ(after([](PlanParts& p) { p.beds[0].people[0].width = Length{}; }),
            "size.zero/beds/0/people/0/width");
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses[0].outline = Region(); }),
            "pose.outline/configurations/day/0");
  EXPECT_EQ(after([](PlanParts& p) { p.interior.height += one_tick; }), "interior.profile/interior");
}

TEST(PlanChecked, RefusesWhatNoTrailerPersonOrPanelHas) {
  const auto built = [](int year) { return after([&](PlanParts& p) { p.title.built = year; }); };
  EXPECT_EQ(built(1900) + built(2100), "");
  EXPECT_EQ(built(1899), "title.built/built");
  EXPECT_EQ(built(2101), "title.built/built");
  const auto weight = [](Mass mass) {
    return after([&](PlanParts& p) { p.beds[0].people[0].weight = mass; });
  };
  EXPECT_EQ(weight(Mass::pounds(5)) + weight(Mass::pounds(1000)), "");
  EXPECT_EQ(weight(Mass::pounds(5) - Mass::from_units(1)), "person.weight/beds/0/people/0/weight");
  EXPECT_EQ(weight(Mass::pounds(1000) + Mass::from_units(1)), "person.weight/beds/0/people/0/weight");
  const auto plies = [](int count) { return after([&](PlanParts& p) { p.pieces[6].plies = count; }); };
  EXPECT_EQ(plies(3) + plies(35), "");
  EXPECT_EQ(plies(2), "piece.plies/pieces/6/plies");
  EXPECT_EQ(plies(36), "piece.plies/pieces/6/plies");
  EXPECT_EQ(after([](PlanParts& p) { p.pieces[6].panel = "oak"; }), "reference.unknown/pieces/6/panel");
  EXPECT_EQ(after([](PlanParts& p) { p.pieces[11].cord->length = Length{}; }),
            "size.zero/pieces/11/cord/length");
}

// Fixture 2 is the left bench with its one lid, 6 the galley with drawer, door and flap.
TEST(PlanChecked, RefusesLeavesThatCannotBe) {
  const auto leaf = [](std::size_t i, const std::function<void(Leaf&)>& change) {
    return after([&](PlanParts& p) { change(p.fixtures[6].leaves[i]); });
  };
  const std::string at = "/fixtures/6/opens/";
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.id = LeafId("cooktop"); }), "id.twice/fixtures/7/id");
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.id = LeafId("P"); }), "id.twice/pieces/7/id");
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.fixture = FixtureId("sink"); }), "leaf.fixture" + at + "0");
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.pull = Length{}; }), "leaf.pull" + at + "0/pull");
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.hinge = Leaf::Edge::front; }), "leaf.hinge" + at + "0/hinge");
  EXPECT_EQ(leaf(1, [](Leaf& l) { l.hinge.reset(); }), "leaf.hinge" + at + "1/hinge");
  EXPECT_EQ(leaf(1, [](Leaf& l) { l.hinge = Leaf::Edge::left; }), "leaf.hinge" + at + "1/hinge");
  EXPECT_EQ(leaf(1, [](Leaf& l) { l.stop = Turn{}; }), "leaf.angle" + at + "1/angle");
  EXPECT_EQ(leaf(1, [](Leaf& l) { l.stop = Turn::quarters(3); }), "leaf.angle" + at + "1/angle");
  EXPECT_EQ(leaf(2, [](Leaf& l) { l.hinge = Leaf::Edge::right; }), "leaf.hinge" + at + "2/hinge");
  EXPECT_EQ(leaf(2, [](Leaf& l) { l.outline.high.x += one_tick; }), "leaf.outside" + at + "2/width");
  EXPECT_EQ(leaf(2, [](Leaf& l) { l.outline.low.x -= one_tick; }), "leaf.outside" + at + "2/from");
  EXPECT_EQ(leaf(2, [](Leaf& l) { l.outline.high.y = l.outline.low.y; }), "leaf.size" + at + "2/top");
  EXPECT_EQ(after([](PlanParts& p) { p.fixtures[2].leaves[0].outline.high.y += one_tick; }),
            "leaf.outside/fixtures/2/opens/0/at");
  EXPECT_EQ(after([](PlanParts& p) { p.fixtures[2].leaves[0].hinge = Leaf::Edge::top; }),
            "leaf.hinge/fixtures/2/opens/0/hinge");
  EXPECT_EQ(after([](PlanParts& p) { p.fixtures[3].inside->width = 24_in + one_tick; }),
            "inside.size/fixtures/3/inside/width");
  EXPECT_EQ(leaf(0, [](Leaf& l) { l.inside->height = Length{}; }), "inside.size" + at + "0/inside/height");
}

// Pose 11 of the day is the heater's, pose 11 of the night stows it.
TEST(PlanChecked, OnlyAnApplianceInTheRoomIsPluggedIntoAnOutlet) {
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses[11].plugged_into = "galley"; }),
            "reference.unknown/configurations/day/11/plugged_into");
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[0].poses[0].plugged_into = "outlet"; }),
            "pose.plug/configurations/day/0/plugged_into");
  EXPECT_EQ(after([](PlanParts& p) { p.configurations[1].poses[11].plugged_into = "outlet"; }),
            "pose.plug/configurations/night/11/plugged_into");
}

// A room from 3 ft to 15 m: both ends count as possible, a tick beyond does not.
TEST(PlanChecked, ARoomIsFromThreeFeetToFifteenMetres) {
  const auto room = [](Length length) {
    return after([&](PlanParts& p) {
      p.interior.length = length;
      p.interior.outline =
          Outline::worked({.length = length, .width = p.interior.width, .corners = {}}).value();
      p.interior.side_profile =
          Outline::worked({.length = length, .width = p.interior.height, .corners = {}}).value();
      p.openings.clear();
    });
  };
  EXPECT_EQ(room(3_ft), "");
  EXPECT_EQ(room(15'000_mm), "");
  EXPECT_EQ(room(3_ft - one_tick), "interior.too-small/interior/length");
  EXPECT_EQ(room(15'000_mm + one_tick), "interior.too-large/interior/length");
}

// The door, 26 in wide and 70 high, begins 44 in from the front of a wall of 120 in under a roof at 76.
TEST(PlanChecked, AnOpeningEndsWithItsWall) {
  EXPECT_EQ(after([](PlanParts& p) { p.openings[0].from = 94_in; }), "");
  EXPECT_EQ(after([](PlanParts& p) { p.openings[0].from = 94_in + one_tick; }),
            "opening.outside-wall/openings/0/width");
  EXPECT_EQ(after([](PlanParts& p) { p.openings[0].sill = 6_in; }), "");
  EXPECT_EQ(after([](PlanParts& p) { p.openings[0].sill = 6_in + one_tick; }),
            "opening.outside-wall/openings/0/height");
}

TEST(PlanChecked, ThingsStandWithinTwentyFiveMetres) {
  EXPECT_EQ(after([](PlanParts& p) {
              p.fixtures[0].solid = Solid(Rect{{farthest, 0_in}, {farthest + one_tick, 1_in}}, 0_in, 1_in);
            }),
            "place.too-far/fixtures/0");
}

}  // namespace
}  // namespace berthwright
