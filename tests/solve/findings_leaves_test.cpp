#include <gtest/gtest.h>

#include <berthwright/view/words.h>

#include "support/small_trailers.h"

namespace berthwright {
namespace {

using Ids = std::vector<std::string>;

std::vector<Finding> of_door(const Answered& made, std::string_view rule) {
  std::vector<Finding> found = made.of(rule);
  std::erase_if(found, [](const Finding& f) { return f.subjects.front() != "door"; });
  return found;
}

// 13 sin a = 6 at 27.486 degrees. By day that is advice; by night, with a bed made up, information.
TEST(LeafFindings, ADoorBeforeAHeaterIsAdviceByDayAndInformationBesideABed) {
  const Answered made(what_opens("6"));
  const std::vector<Finding> day = of_door(made, "leaf.opens");
  ASSERT_EQ(day.size(), 1U);
  EXPECT_EQ(day[0].configuration.text(), "day");
  EXPECT_EQ(day[0].status, Status::not_met);
  EXPECT_EQ(day[0].measured, Quantity(Degrees{27}));
  EXPECT_EQ(day[0].compared, Quantity(Degrees{90}));
  EXPECT_EQ(day[0].subjects, (Ids{"door", "H"}));
  EXPECT_EQ(sentence(made.plan, day[0]).substr(0, 41), "By day, door opens by 27°, then meets H,");
  const std::vector<Finding> night = of_door(made, "leaf.opens-by-bed");
  ASSERT_EQ(night.size(), 1U);
  EXPECT_EQ(night[0].configuration.text(), "night");
  EXPECT_EQ(night[0].measured, Quantity(Degrees{27}));
}

// 13 sin a = 12.5 at 74.05 degrees, more than three quarters of 90.
TEST(LeafFindings, ThreeQuartersOfTheWayAreClose) {
  EXPECT_EQ(of_door(Answered(what_opens("12 1/2")), "leaf.opens")[0].status, Status::close);
  EXPECT_EQ(of_door(Answered(what_opens("12")), "leaf.opens")[0].status, Status::not_met);  // 67.38
  EXPECT_EQ(of_door(Answered(what_opens("13")), "leaf.opens").size(), 2U);  // met day and night
}

// A post that is built in stops the door the same way in every configuration: told once, for the trailer; and
// a piece that stops it earlier still, in its own.
TEST(LeafFindings, WhatIsBuiltInIsToldOnceForTheTrailer) {
  TrailerText text = what_opens("20");
  text.fixtures.push_back(R"({"id": "post", "kind": "wall", "length": 2, "width": 2, "top": 70,
                              "at": {"front": 53, "right_of": ["galley", 8]}})");
  const std::vector<Finding> once = of_door(Answered(text), "leaf.opens");
  ASSERT_EQ(once.size(), 1U);
  EXPECT_TRUE(once[0].configuration.empty());
  EXPECT_EQ(once[0].subjects, (Ids{"door", "post"}));
  text.day[1] = what_opens("4").day[1];
  text.night[1] = what_opens("20").night[1];
  const std::vector<Finding> twice = of_door(Answered(text), "leaf.opens");
  ASSERT_EQ(twice.size(), 2U);
  EXPECT_EQ(twice[0].configuration.empty() ? twice[1].subjects : twice[0].subjects, (Ids{"door", "H"}));
}

TEST(LeafFindings, ALidUnderACushionIsNamedWithIt) {
  const Answered made(what_opens("20"));
  const Finding day = made.one_in("day", "leaf.under-pieces");
  EXPECT_EQ(day.subjects, (Ids{"lid", "M"}));
  EXPECT_EQ(sentence(made.plan, day),
            "By day, storage that opens only once cushions are lifted off: lid (M).");
}

TEST(LeafFindings, TheRoadIsUncheckedWhereThePlanDoesNotLayItOut) {
  TrailerText text = what_opens("20");
  EXPECT_EQ(Answered(text).one("road.unchecked").status, Status::unknown);
  EXPECT_TRUE(Answered(text).of("road.hold").empty());
  text.road = text.day;
  const Answered made(text);
  EXPECT_TRUE(made.of("road.unchecked").empty());
  EXPECT_EQ(made.one("road.hold").subjects, (Ids{"M", "door", "lid"}));
  EXPECT_EQ(made.one("road.hold").status, Status::unknown);
  EXPECT_EQ(made.one("road.heater").subjects, Ids{"H"});
  EXPECT_EQ(made.one("road.heater").status, Status::unknown);
  for (const Finding& finding : made.of("leaf.opens")) EXPECT_NE(finding.configuration.text(), "road");
}

// A strap holds a heater; it does not cool it.
TEST(LeafFindings, AHeaterThatRunsOnTheRoadIsToldHeldOrNot) {
  for (const char* held : {"", R"(, "held_by": "strap")"}) {
    TrailerText text = what_opens("20");
    text.road = {R"({"piece": "H", "at": {"front": 53, "left": 40}, "state": "running"})"};
    text.pieces[1].insert(text.pieces[1].size() - 1, held);
    const Answered made(text);
    const Finding running = made.one("road.heater");
    EXPECT_EQ(running.status, Status::unknown);
    EXPECT_EQ(running.variant, "running");
    EXPECT_TRUE(cure_sentence(made.plan, running).starts_with("Switch H off for the road"));
  }
}

// All that opens is shut on the road, and what stops it there is no finding.
TEST(LeafFindings, AreNeverAlerts) {
  for (const Rule& rule : all_rules()) {
    const bool own = rule.id.text().starts_with("leaf.") || rule.id.text().starts_with("road.");
    EXPECT_FALSE(own && rule.weight == Weight::alert) << rule.id.text();
  }
}

}  // namespace
}  // namespace berthwright
