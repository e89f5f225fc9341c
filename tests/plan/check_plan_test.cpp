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
