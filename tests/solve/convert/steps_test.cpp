#include <berthwright/solve/convert/steps.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/convert_trailers.h"
#include "support/demos.h"
#include "support/plan_builder.h"
#include "support/replay.h"

namespace berthwright {
namespace {

using Decided = Conversion::Verdict;

std::vector<Conversion> conversions_of(const Plan& plan) {
  Result<std::vector<Conversion>> found = conversions(plan);
  return std::move(found).value();
}

std::vector<std::string> pieces_of(const Conversion& conversion) {
  std::vector<std::string> pieces;
  for (const Step& step : conversion.steps) pieces.push_back(step.piece.text());
  return pieces;
}

// By day the leg carries the table, so the table is taken up first; by night the table lies where the leg
// stood, so the leg goes before the table comes: table aside, leg into the bench, table down: three.
TEST(Steps, ATableOnALegBecomesTheBedInThreeSteps) {
  const Plan plan = dinette().plan();
  const std::vector<Conversion> found = conversions_of(plan);
  ASSERT_EQ(found.size(), 2U);
  EXPECT_EQ(found[0].verdict, Decided::order);
  EXPECT_EQ(pieces_of(found[0]), (std::vector<std::string>{"table", "leg", "table"}));
  EXPECT_EQ(found[0].at_least, 3U);
  EXPECT_EQ(found[0].steps[1].opens, std::vector<std::string>{"left lid"});
  EXPECT_EQ(found[1].from->id.text(), "night");
  EXPECT_EQ(pieces_of(found[1]), (std::vector<std::string>{"table", "leg", "table"}));
  for (const Conversion& one : found) EXPECT_EQ(support::replayed(plan, one), "");
}

// The left seat lies on the lid of the locker, and the left back stands on it: both are put aside before the
// leg goes in, and come back: the back takes two steps, the seat two, table two, leg one, right back one: 8.
TEST(Steps, WhatLiesOnTheLidIsPutAsideFirst) {
  const Plan plan = dinette_with_cushions().plan();
  for (const Conversion& one : conversions_of(plan)) {
    ASSERT_EQ(one.verdict, Decided::order);
    EXPECT_EQ(one.steps.size(), 8U);
    EXPECT_EQ(one.at_least, 8U);
    EXPECT_EQ(support::replayed(plan, one), "");
  }
}

// A counter beside the bench takes the seat (38 x 22) while the lid is open; with a cooktop flush in its top,
// cold or not, it takes none. A top of 20 x 14 in takes none either: 20 of 38 in are less than two thirds.
TEST(Steps, NothingIsPutAsideOnACooktopOrOnTooSmallATop) {
  const auto laid_on_the_counter = [](const std::string& size, const std::string& more) {
    TrailerText text = dinette_with_cushions();
    text.fixtures.push_back(R"({"id": "counter", "kind": "counter", )" + size +
                            R"(, "at": {"rear": 40, "left": 0}, "top": 30})");
    if (!more.empty()) text.fixtures.push_back(more);
    const Plan plan = text.plan();
    int count = 0;
    for (const Conversion& one : conversions_of(plan)) {
      EXPECT_EQ(one.verdict, Decided::order);
      EXPECT_EQ(support::replayed(plan, one), "");
      for (const Step& step : one.steps)
        count += step.to.carried_by == std::vector<std::string>{"counter"} ? 1 : 0;
    }
    return count;
  };
  const std::string large = R"("length": 40, "width": 24)";
  EXPECT_GT(laid_on_the_counter(large, ""), 0);
  EXPECT_EQ(laid_on_the_counter(large, R"({"id": "hob", "kind": "cooktop", "length": 20, "width": 16,
      "faces": "right", "at": {"rear": 50, "left": 4}, "base": 26, "top": 30})"),
            0);
  EXPECT_EQ(laid_on_the_counter(R"("length": 20, "width": 14)", ""), 0);
}

TEST(Steps, EveryOrderOfTheDemosIsReplayedWithoutOverlap) {
  std::size_t orders = 0;
  for (const std::string& name : demo_names()) {
    const Plan plan = plan_from(demo_text(name));
    for (const Conversion& one : conversions_of(plan)) {
      SCOPED_TRACE(name + " from " + one.from->name + " to " + one.to->name);
      if (one.verdict != Decided::order) continue;
      ++orders;
      EXPECT_EQ(support::replayed(plan, one), "");
    }
  }
  EXPECT_GE(orders, 8U);
}

// The replay must see what is wrong: a step left out, and a movement through the bench.
TEST(Steps, TheReplayFindsAFaultThatWasPutIn) {
  const Plan plan = dinette().plan();
  Conversion broken = conversions_of(plan)[0];
  broken.steps.erase(broken.steps.begin() + 1);
  EXPECT_NE(support::replayed(plan, broken), "");
  broken = conversions_of(plan)[0];
  Step& last = broken.steps[2];
  const Solid down = last.to.solid();
  last.from.pose.outline = moved(down.outline(), {Length{}, -20_in});
  last.from.pose.height = down.height();
  last.from.base = down.base();
  last.motions = {slid(last.from.solid(), {Length{}, 20_in})};
  EXPECT_NE(support::replayed(plan, broken).find("meets"), std::string::npos);
}

TEST(Steps, DayThatEqualsNightTakesNone) {
  TrailerText text = dinette();
  text.night = text.day;
  for (const Conversion& one : conversions_of(text.plan())) {
    EXPECT_EQ(one.verdict, Decided::order);
    EXPECT_TRUE(one.steps.empty());
    EXPECT_EQ(one.at_least, 0U);
  }
}

// A table 32 1/2 in wide between benches 32 in apart reaches 1/4 in into each of them.
TEST(Steps, ATableTooWideForItsPlaceIsStuckOnTheBenches) {
  TrailerText text = dinette();
  text.pieces[0] =
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "32 1/2", "thickness": "3/4"})";
  text.night[1] = R"({"piece": "table", "at": {"rear": "1/8", "left": "21 3/4"}, "base": "13 1/4"})";
  const std::vector<Conversion> found = conversions_of(text.plan());
  ASSERT_EQ(found[0].verdict, Decided::none);
  const auto table =
      std::ranges::find_if(found[0].stuck, [](const Stuck& s) { return s.piece == "table" && s.at_goal; });
  ASSERT_NE(table, found[0].stuck.end());
  EXPECT_EQ(table->by, (std::vector<std::string>{"left bench", "right bench"}));
  EXPECT_EQ(table->depth, Length::inches(1, 4));
  EXPECT_FALSE(std::ranges::any_of(found[1].stuck, &Stuck::at_goal) &&
               std::ranges::none_of(found[1].stuck, [](const Stuck& s) { return !s.at_goal; }));
}

// A leg 27 1/4 in high under the table of Whinchat. The way up is free, but the places of the table, by night
// at 13 in and by day over it, and of the bunk over both leave no height at which it could be carried off.
// Neither walls nor roof are in the way.
TEST(Steps, ALooseLegUnderTheTableIsStuckByPlacesNotByTheRoom) {
  std::string text = repository_text("plans/whinchat.json");
  const auto put_before = [&](const std::string& mark, const std::string& more) {
    const std::size_t at = text.find(mark);
    ASSERT_NE(at, std::string::npos);
    text.insert(at, more);
  };
  put_before(R"({ "id": "heater")",
             R"({ "id": "leg", "kind": "leg", "length": 2, "width": 2, "thickness": "27 1/4" },)");
  put_before(R"({ "piece": "table")", R"({ "piece": "leg", "at": { "rear": 22, "left": 38 } },)");
  put_before(R"({ "piece": "table", "at": { "rear": "1/8", "left": "22 1/8" }, "on")",
             R"({ "piece": "leg", "stowed": "front locker" },)");
  const Plan plan = plan_from(text);
  const std::vector<Conversion> found = conversions_of(plan);
  ASSERT_EQ(found[0].verdict, Decided::none);
  const auto leg = std::ranges::find(found[0].stuck, "leg", &Stuck::piece);
  ASSERT_NE(leg, found[0].stuck.end());
  EXPECT_TRUE(leg->by_places);
  EXPECT_EQ(std::ranges::count(leg->by, "room"), 0);
  EXPECT_EQ(std::ranges::count(leg->by, "table"), 1);
}

// A room 7 in longer at the front, and all that stands in it 7 in farther from there: the same steps, each 7
// in farther along.
TEST(Steps, AreShiftedWithTheirTrailer) {
  const TrailerText text = dinette_with_cushions();
  TrailerText shifted = text;
  shifted.interior = R"({"length": 127, "width": 76, "height": 76})";
  std::string& door = shifted.openings[0];
  door.replace(door.find(R"("from_front": 40)"), 16, R"("from_front": 47)");
  const Plan plan = text.plan();
  const Plan farther = shifted.plan();
  const std::vector<Conversion> here = conversions_of(plan);
  const std::vector<Conversion> there = conversions_of(farther);
  ASSERT_EQ(here.size(), there.size());
  const Vector by{7_in, Length{}};
  for (std::size_t way = 0; way < here.size(); ++way) {
    ASSERT_EQ(pieces_of(here[way]), pieces_of(there[way]));
    EXPECT_EQ(support::replayed(farther, there[way]), "");
    for (std::size_t i = 0; i < here[way].steps.size(); ++i) {
      const Step& a = here[way].steps[i];
      const Step& b = there[way].steps[i];
      EXPECT_EQ(a.to.kind, b.to.kind);
      EXPECT_EQ(a.to.carried_by, b.to.carried_by);
      EXPECT_EQ(a.to.base, b.to.base);
      if (a.to.stands_in_room()) {
        EXPECT_EQ(a.to.pose.outline.bounds().low + by, b.to.pose.outline.bounds().low);
      }
    }
  }
}

// Mirrored, told in another order: as many steps.
TEST(Steps, DoNotDependOnMirrorOrOrder) {
  const auto count = [](const TrailerText& text) {
    const Plan plan = text.plan();
    const std::vector<Conversion> found = conversions_of(plan);
    EXPECT_EQ(support::replayed(plan, found[0]), "");
    return found[0].verdict == Decided::order ? found[0].steps.size() : 0;
  };
  TrailerText text = dinette_with_cushions();
  EXPECT_EQ(count(text.mirrored()), 8U);
  std::ranges::reverse(text.pieces);
  std::ranges::reverse(text.fixtures);
  EXPECT_EQ(count(text), 8U);
}

}  // namespace
}  // namespace berthwright
