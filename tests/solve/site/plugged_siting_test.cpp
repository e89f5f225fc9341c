#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include <berthwright/solve/site/siting.h>
#include <berthwright/solve/way/walkways.h>

#include "support/cord_trailers.h"
#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::inch_point;

SiteScope scope_in(const Plan& plan, const std::string& configuration) {
  const std::vector<ConfigurationId> chosen{ConfigurationId(configuration)};
  Result<std::vector<HeaterPlaces>> found = heater_places(plan, chosen);
  if (!found) throw std::invalid_argument(listed(found.problems()));
  return std::move(found).value().at(0).sitings.at(0).together;
}

const Region& taken_by_rule(const SiteScope& scope, Wall way, SiteRule rule) {
  const SiteRegions& regions = *std::ranges::find(scope.ways, way, &SiteRegions::faces);
  for (const auto& [which, region] : regions.forbidden)
    if (which == rule) return region;
  throw std::logic_error("no such rule");
}

bool breaks(const SiteScope& scope, SiteRule rule) {
  return std::ranges::find(scope.now->breaks, rule) != scope.now->breaks.end();
}

// The outlet's foot is (24, 35), its top 18 in up; looking to the rear the cord comes out 5 in beside the
// corner, so from the corner (x, 30) it runs x - 24 along and 18 up: one of 57 in reaches from up to 63.
// The circle of 39 in is a polygon of 64 sides inside of it, which loses 0.12 % or 0.05 in.
TEST(PluggedSiting, ReachesAsFarAsTheCordByHand) {
  const Plan plan = cord_trailer("57").plan();
  const SiteScope day = scope_in(plan, "day");
  const Region& out_of_reach = taken_by_rule(day, Wall::rear, SiteRule::cord);
  EXPECT_EQ(out_of_reach.side_of({63_in - Length::inches(1, 16), 30_in}), Side::outside);
  EXPECT_EQ(out_of_reach.side_of({63_in + Length::millimetres(1, 100), 30_in}), Side::inside);
  ASSERT_EQ(day.outlets.size(), 1U);
  EXPECT_EQ(day.outlets[0].outlet->id.text(), "outlet");
  // As the plan stands it, at 60: 36 along and 18 up.
  ASSERT_TRUE(day.outlets[0].now.has_value());
  EXPECT_EQ(day.outlets[0].now->length, 54_in);
  EXPECT_TRUE(day.outlets[0].best.has_value());
  EXPECT_FALSE(breaks(day, SiteRule::cord));
  EXPECT_TRUE(day.has_place());
}

TEST(PluggedSiting, ACordTooShortForItsPlaceIsToldAndOneTooShortForAnyLeavesNone) {
  const Plan plan = cord_trailer("53").plan();
  const SiteScope day = scope_in(plan, "day");
  EXPECT_TRUE(breaks(day, SiteRule::cord));
  EXPECT_TRUE(day.has_place());
  // Straight up to the top of the outlet it takes 18 in.
  const Plan shorter = cord_trailer("17").plan();
  const SiteScope none = scope_in(shorter, "day");
  EXPECT_FALSE(none.has_place());
  ASSERT_EQ(none.reliefs.size(), 1U);
  EXPECT_EQ(none.reliefs[0].rules, std::vector{SiteRule::cord});
  EXPECT_TRUE(none.reliefs[0].best.has_value());
  EXPECT_FALSE(none.outlets[0].best.has_value());
}

// Wherever the regions say that the cord reaches, the exact run from there does too, and is no longer.
TEST(PluggedSiting, NeverClaimsAPlaceFromWhichTheCordIsTooShort) {
  TrailerText text = cord_trailer("60");
  text.fixtures.push_back(cabinet("box", "40", "20", "12", "20"));
  const Plan plan = text.plan();
  const SiteScope day = scope_in(plan, "day");
  const Arrangement arrangement = arranged(plan, plan->configurations.front()).value();
  const CordLevel level;
  const CordReach cords(plan, arrangement, "H", {level, cord_floor(plan, arrangement, "H", level)},
                        *plan.fixture("outlet"));
  int reached = 0;
  for (const auto& [way, side] : {std::pair{Wall::rear, Wall::front},
                                  {Wall::front, Wall::rear},
                                  {Wall::left, Wall::right},
                                  {Wall::right, Wall::left}})
    for (int x = 0; x < 110; x += 3)
      for (int y = 0; y < 66; y += 3) {
        const Point corner = inch_point(x, y);
        const bool stands = taken_by_rule(day, way, SiteRule::solids).side_of(corner) == Side::outside;
        if (!stands || taken_by_rule(day, way, SiteRule::cord).side_of(corner) != Side::outside) continue;
        const CordRun run = cords.from({{corner, corner + Vector{10_in, 10_in}}, {}, side});
        EXPECT_TRUE(run.reached() && run.length <= 60_in) << x << ' ' << y;
        ++reached;
      }
  EXPECT_GT(reached, 100);
}

// By night the bed fills the rear and the door is near the front: the way out lies between the left wall,
// where the plan stands the heater, and the outlet on the right one.
TEST(PluggedSiting, TheCordIsNotLedAcrossTheWayOut) {
  const Plan plan = across_the_walkway("200", "2").plan();
  const SiteScope night = scope_in(plan, "night");
  ASSERT_TRUE(night.now.has_value());
  EXPECT_TRUE(breaks(night, SiteRule::cord));
  EXPECT_FALSE(night.outlets[0].now->reached());
  // On the outlet's own side it reaches.
  EXPECT_TRUE(night.outlets[0].best.has_value());
  const Region& out_of_reach = taken_by_rule(night, Wall::rear, SiteRule::cord);
  EXPECT_EQ(out_of_reach.side_of({60_in, 0_in + 1_in}), Side::inside);
  EXPECT_EQ(out_of_reach.side_of({66_in, 62_in}), Side::outside);
}

// The heater itself keeps off the way out: exactly where its box shares more than a border with it.
TEST(PluggedSiting, TheHeaterKeepsOffTheWayOut) {
  const Plan plan = cord_and_bed("200").plan();
  const SiteScope night = scope_in(plan, "night");
  Arrangement arrangement = arranged(plan, *plan.configuration("night")).value();
  std::erase_if(arrangement.things, [](const Placed& thing) { return thing.id == "H"; });
  const Bed& bed = plan->beds.front();
  const Walkway walkway =
      walkway_of(bed, ways_out(plan, arrangement, bed, mattress_of(plan, arrangement, bed))).value();
  const Region& forbidden = taken_by_rule(night, Wall::rear, SiteRule::walkway);
  int in_the_way = 0;
  for (int x = 1; x < 110; x += 2)
    for (int y = 1; y < 66; y += 2) {
      const Point corner = inch_point(x, y);
      const bool taken = overlaps(Region(Rect{corner, corner + Vector{10_in, 10_in}}), walkway.floor);
      EXPECT_EQ(forbidden.side_of(corner) == Side::inside, taken) << x << ' ' << y;
      in_the_way += taken ? 1 : 0;
    }
  EXPECT_GT(in_the_way, 50);
}

// Two cabinets leave a passage of 20 in, from y = 28 to 48, to a door far in front; behind them, at 70, the
// bedding hangs at 88: nothing wider than 18 in passes. That runs in the middle of the passage, from 29 to
// 47, so a heater of 10 in may stand there up to 19 and from 47 on.
TEST(PluggedSiting, TheWayOutThroughAPassageByHand) {
  TrailerText text = across_the_walkway("200", "2");
  text.fixtures.push_back(cabinet("left", "40", "0", "30", "28"));
  text.fixtures.push_back(cabinet("right", "40", "48", "30", "28"));
  text.night[1] = R"({"piece": "H", "at": {"front": 0, "left": 0}, "on": "floor"})";
  const Plan plan = text.plan();
  const SiteScope night = scope_in(plan, "night");
  const Region& forbidden = taken_by_rule(night, Wall::rear, SiteRule::walkway);
  const Length little = Length::inches(1, 16);
  const auto side = [&](Length y) { return forbidden.side_of({50_in, y}); };
  EXPECT_EQ(side(19_in - little), Side::outside);
  EXPECT_EQ(side(19_in + little), Side::inside);
  EXPECT_EQ(side(47_in - little), Side::inside);
  EXPECT_EQ(side(47_in + little), Side::outside);
}

TEST(PluggedSiting, WithoutCordOrOutletTheAnswerIsUnknown) {
  TrailerText text = cord_trailer("");
  const auto unknown = [](const TrailerText& of) {
    const Plan plan = of.plan();
    const std::vector<HeaterPlaces> heaters = heater_places(plan, {}).value();
    EXPECT_TRUE(heaters[0].has_place());
    EXPECT_TRUE(heaters[0].sitings[0].together.outlets.empty());
    EXPECT_EQ(exit_code(heaters), 2);
    return std::ranges::find(heaters[0].not_compared, SiteRule::cord) != heaters[0].not_compared.end();
  };
  EXPECT_TRUE(unknown(text));
  text = cord_trailer("60");
  text.fixtures.clear();
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}, "on": "floor"})"};
  EXPECT_TRUE(unknown(text));
}

std::string inches_of(Length length) { return exact_text(length, Unit::inch); }

// The heater stood at the best place, a check of that plan says the same: nothing overlaps, the cord reaches,
// and the least distances are those that were told.
TEST(PluggedSiting, ACheckOfThePlanAtTheBestPlaceAgrees) {
  TrailerText text = cord_and_bed("90");
  text.interior = R"({"length": 140, "width": 76, "height": 76})";
  text.pieces[0] = R"({"id": "H", "kind": "heater", "length": 10, "width": 8, "height": 10, "faces": "rear",
                      "data_plate": {"front": 30, "back": 6, "sides": 12, "top": 24}, "cord": {"length": 90}})";
  const Plan plan = text.plan();
  const SiteScope night = scope_in(plan, "night");
  ASSERT_TRUE(night.best.has_value());
  const SitePlace& best = *night.best;
  const char* turn = best.faces == Wall::rear    ? "0"
                     : best.faces == Wall::right ? "90"
                     : best.faces == Wall::front ? "180"
                                                 : "270";
  text.night[1] = R"({"piece": "H", "at": {"front": ")" + inches_of(best.box.low.x) + R"(", "left": ")" +
                  inches_of(best.box.low.y) + R"("}, "turn": )" + turn +
                  R"(, "on": "floor", "plugged_into": "outlet"})";
  const Answered made(text);
  const ConfigurationAnswer& answer = made.answer.configurations.at(1);
  ASSERT_EQ(answer.configuration->id.text(), "night");
  EXPECT_TRUE(answer.collisions.empty());
  EXPECT_TRUE(answer.overreach.empty());
  EXPECT_EQ(answer.arrangement.find("H")->solid.outline(), Region(best.box));
  for (const SiteMargin& margin : best.margins) {
    Length least = farthest;
    for (const HeatDistance& entry : answer.heat)
      if (entry.source == "H" && margin.yardstick == SiteRule::three_feet)
        least = std::min(least, entry.distance - 36_in);
      else if (entry.source == "H" && entry.plate_margin)
        least = std::min(least, *entry.plate_margin);
    EXPECT_EQ(margin.margin, least);
    EXPECT_GE(least, Length{});
  }
  ASSERT_EQ(answer.plugged.size(), 1U);
  EXPECT_TRUE(answer.plugged[0].run->reached());
  EXPECT_LE(answer.plugged[0].run->length, 90_in);
  EXPECT_TRUE(answer.plugged[0].crossings.empty());
  EXPECT_FALSE(answer.plugged[0].under_bedding.has_value());
}

}  // namespace
}  // namespace berthwright
