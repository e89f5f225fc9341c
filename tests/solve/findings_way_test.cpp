#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "support/small_trailers.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

using Names = std::vector<std::string>;

std::string box(const std::string& id, const std::string& kind, const std::string& place,
                const std::string& heights) {
  return R"({"id": ")" + id + R"(", "kind": ")" + kind + R"(", )" + place + ", " + heights + "}";
}

/// A screen across the room that leaves 76 - `width` in along the left wall.
TrailerText with_screen(const std::string& width) {
  TrailerText text = way_trailer();
  text.fixtures.push_back(box("screen", "wall",
                              R"("length": 2, "width": ")" + width + R"(", "at": {"front": 60, "right": 0})",
                              R"("top": 70)"));
  return text;
}

// common practice, no source: 18 in is the least that passes.
TEST(WayFindings, TheWayToTheDoorIsComparedWithEighteenInches) {
  const Finding met = Answered(with_screen("57")).one("way.aisle");
  EXPECT_EQ(met.measured, Quantity(19_in));
  EXPECT_EQ(met.status, Status::met);
  EXPECT_EQ(met.subjects.front(), "door");
  EXPECT_EQ(met.bed.text(), "bed");
  EXPECT_EQ(Answered(with_screen("58")).one("way.aisle").status, Status::close);
  const Finding narrow = Answered(with_screen("60")).one("way.aisle");
  EXPECT_EQ(narrow.status, Status::not_met);
  EXPECT_EQ(narrow.margin, -2_in);
  EXPECT_EQ(narrow.cure, (Cure{Cure::Kind::none, "door", {}})) << "a partition may bear the roof";
  EXPECT_EQ(narrow.where.size(), 2U);
  TrailerText closet = with_screen("60");
  std::string& screen = closet.fixtures.back();
  screen.replace(screen.find("wall"), 4, "cabinet");
  EXPECT_EQ(Answered(closet).one("way.aisle").cure,
            (Cure{.kind = Cure::Kind::shorten, .subject = "screen", .by = 2_in, .side = Wall::left}))
      << "the way runs along the left wall";
}

TEST(WayFindings, APieceInTheWayIsToBeMoved) {
  TrailerText text = with_screen("40");
  text.pieces.push_back(R"({"id": "stool", "kind": "board", "length": 6, "width": 20, "thickness": 17})");
  text.night.push_back(R"({"piece": "stool", "at": {"front": 58, "left": 0}})");
  const Finding narrow = Answered(text).one("way.aisle");
  EXPECT_EQ(narrow.measured, Quantity(16_in));
  EXPECT_EQ(narrow.cure, (Cure{Cure::Kind::move_apart, "stool", 2_in}));
}

TEST(WayFindings, TellWhyThereIsNoWay) {
  const Finding shut = Answered(with_screen("76")).one("way.aisle");
  EXPECT_EQ(shut.variant, "no way");
  EXPECT_EQ(shut.status, Status::not_met);
  TrailerText walled = way_trailer();
  walled.fixtures.push_back(
      box("chest", "cabinet", R"("length": 2, "width": 76, "at": {"front": 38, "left": 0})", R"("top": 50)"));
  EXPECT_EQ(Answered(walled).one("way.aisle").variant, "no free edge");
}

// NFPA 1192 (2018), 6.2.1.2: two ways out of each sleeping area. The window is 8 in along from the bed's
// corner (30 to 38) and holds 30 x 20 in.
TEST(WayFindings, TheDoorAndAWindowInReachAreTwoWays) {
  const Finding two = Answered(way_trailer()).one("way.second");
  EXPECT_EQ(two.measured, Quantity(Count{2}));
  EXPECT_EQ(two.subjects, (Names{"door", "window"}));
  EXPECT_EQ(two.status, Status::met);
  // 17 in to the door do not count, though a body passes.
  const Answered narrow(with_screen("59"));
  EXPECT_EQ(narrow.one("way.second").subjects, Names{"window"});
  EXPECT_EQ(narrow.one("way.second").status, Status::not_met);
  EXPECT_EQ(narrow.one("way.none").subjects, (Names{"door", "window"}));
  EXPECT_EQ(exit_code(narrow.answer), 0);
}

TEST(WayFindings, AWindowCountsWithinTwentyFourInches) {
  const auto counted = [](const char* from) {
    TrailerText text = way_trailer();
    text.openings[1] =
        std::string(R"({"id": "window", "kind": "window", "wall": "left", "width": 30, "height": 20,
                                       "sill": 34, "opens": "out", "escape": true, "from_front": ")") +
        from + "\"}";
    return Answered(text).one("way.second").subjects;
  };
  EXPECT_EQ(counted("62"), (Names{"door", "window"}));
  EXPECT_EQ(counted("62 1/64"), Names{"door"});
}

// A bunk 50 in up over the bed: the window at 34 to 54 in ends 54 - 56 < 17 in above the bunk's mattress (52
// + 4), one at 60 begins above the bunk that lies over the bed.
TEST(WayFindings, AWindowOfAnotherStoreyIsNoWayOut) {
  const auto with_bunk = [](const char* sill) {
    TrailerText text = way_trailer();
    text.openings[1] = std::string(R"({"id": "window", "kind": "window", "wall": "left", "from_front": 10,
                                       "width": 30, "height": 20, "sill": )") +
                       sill + R"(, "opens": "out", "escape": true})";
    text.fixtures.push_back(box("shelf", "shelf",
                                R"("length": 38, "width": 76, "at": {"front": 0, "left": 0})",
                                R"("base": 50, "top": 52)"));
    text.pieces.push_back(R"({"id": "up", "kind": "cushion", "length": 38, "width": 76, "thickness": 4})");
    text.night.push_back(R"({"piece": "up", "at": {"front": 0, "left": 0}, "on": "shelf"})");
    text.beds.push_back(R"({"id": "bunk", "configuration": "night", "pieces": ["up"]})");
    return text;
  };
  const auto ways_of = [](const TrailerText& text, const char* bed) {
    for (const Finding& finding : Answered(text).of("way.second"))
      if (finding.bed.text() == bed) return finding.subjects;
    return Names{"no such bed"};
  };
  EXPECT_EQ(ways_of(with_bunk("25"), "bed"), (Names{"door", "window"}));
  EXPECT_EQ(std::ranges::count(ways_of(with_bunk("25"), "bunk"), "window"), 0);
  EXPECT_EQ(std::ranges::count(ways_of(with_bunk("58"), "bed"), "window"), 0);
  EXPECT_EQ(std::ranges::count(ways_of(with_bunk("58"), "bunk"), "window"), 1);
}

// The bed stands before the door: no way leads there over the floor, yet it is got out of from the bed.
TEST(WayFindings, ADoorBesideTheBedCountsWithoutAFreeEdge) {
  TrailerText text = way_trailer();
  text.openings[0] =
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 6, "width": 26, "height": 68})";
  text.openings.pop_back();
  const Answered beside(text);
  EXPECT_EQ(beside.one("way.aisle").variant, "no way");
  EXPECT_EQ(beside.one("way.second").subjects, Names{"door"});
}

TEST(WayFindings, ABedThatNobodyGetsOutOfIsAnAlert) {
  TrailerText text = with_screen("76");
  text.openings.pop_back();
  const Answered none(text);
  EXPECT_EQ(none.one("way.none").measured, Quantity(Count{0}));
  EXPECT_EQ(none.one("way.none").status, Status::not_met);
  EXPECT_EQ(exit_code(none.answer), 1);
  EXPECT_EQ(find_rule("way.second")->weight, Weight::advice);
}

TEST(WayFindings, ADoorThatOpensInwardAgainstSomethingIsNoWayOut) {
  TrailerText text = way_trailer();
  text.openings[0] =
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68,
                         "opens": "in", "hinge": "front"})";
  EXPECT_EQ(Answered(text).one("way.second").subjects, (Names{"door", "window"}));
  for (const Finding& clear : Answered(text).of("way.swing")) EXPECT_EQ(clear.status, Status::met);
  text.fixtures.push_back(box(
      "stool", "cabinet", R"("length": 6, "width": 6, "at": {"front": 82, "right": 14})", R"("top": 18)"));
  const Answered blocked(text);
  EXPECT_EQ(blocked.one_in("night", "way.swing").subjects, (Names{"door", "stool"}));
  EXPECT_EQ(blocked.one_in("day", "way.swing").status, Status::not_met);
  EXPECT_EQ(blocked.one("way.second").subjects, Names{"window"});
}

// What the plan does not say is neither met nor an alert.
TEST(WayFindings, APlanWithoutAWayOutIsUnknownAndNoAlert) {
  const Answered made(two_benches("0", "14"));
  EXPECT_EQ(made.one("way.not-stated").status, Status::unknown);
  EXPECT_TRUE(made.of("way.none").empty());
  EXPECT_EQ(exit_code(made.answer), 0);
  TrailerText text = way_trailer();
  text.openings[1].replace(text.openings[1].find(R"("opens": "out")"), 14, R"("opens": "fixed")");
  const Answered fixed(text);
  EXPECT_EQ(fixed.one("way.opening").status, Status::unknown);
  EXPECT_EQ(fixed.one("way.second").subjects, Names{"door"});
  EXPECT_TRUE(fixed.of("way.dwelling-window").empty());
}

// 24 x 22 in: 528 sq in = 3.67 sq ft. 30 x 20: the smaller side.
TEST(WayFindings, TheFigureForHomesNamesTheSideOrTheArea) {
  TrailerText text = way_trailer();
  EXPECT_EQ(Answered(text).one("way.dwelling-window").measured, Quantity(20_in));
  EXPECT_EQ(Answered(text).one("way.opening").margin, 3_in);
  text.openings[1] =
      R"({"id": "window", "kind": "window", "wall": "left", "from_front": 30, "width": 24, "height": 22,
                         "sill": 30, "opens": "out", "escape": true})";
  const Finding small = Answered(text).one("way.dwelling-window");
  EXPECT_EQ(small.variant, "area");
  EXPECT_EQ(small.measured, Quantity(Area::rectangle(24_in, 22_in)));
  EXPECT_EQ(small.status, Status::not_met);
  EXPECT_EQ(Answered(text).one("way.sill").margin, 6_in);
}

TrailerText with_smoke_alarm(const char* base, const char* top, const char* more = "") {
  TrailerText text = way_trailer();
  text.fixtures.push_back(box("closet", "cabinet",
                              R"("length": 10, "width": 20, "at": {"rear": 0, "left": 20})", R"("top": 80)"));
  text.fixtures.push_back(smoke_alarm(base, top));
  text.more = more;
  return text;
}

// An alarm's manual that quotes NFPA 74 (manualsdump.com): its top 4 to 12 in below the ceiling. It is at 80.
TEST(AlarmFindings, ATopFourToTwelveInchesBelowTheCeiling) {
  const auto status = [](const char* rule, const char* base, const char* top) {
    return Answered(with_smoke_alarm(base, top)).one(rule).status;
  };
  EXPECT_EQ(status("alarm.dead-air", "72", "76"), Status::met);
  EXPECT_EQ(status("alarm.dead-air", "72", "76 1/64"), Status::not_met);
  EXPECT_EQ(status("alarm.below-ceiling", "64", "68"), Status::met);
  EXPECT_EQ(status("alarm.below-ceiling", "64", "67 63/64"), Status::not_met);
  EXPECT_EQ(Answered(with_smoke_alarm("74", "78")).one("alarm.dead-air").cure,
            (Cure{Cure::Kind::lower, "smoke", 2_in}));
  EXPECT_TRUE(Answered(with_smoke_alarm("78", "80")).of("alarm.dead-air").empty());
}

// Alarm manuals that name 24 CFR 3280 (manualshive.com): an inside wall where it was built before 1978.
TEST(AlarmFindings, OldTrailersAskForAnInsideWall) {
  const auto on_the_wall = [](const char* more) {
    TrailerText text = way_trailer();
    text.more = more;
    text.fixtures.push_back(box("smoke", "smoke alarm",
                                R"("length": 5, "width": 2, "at": {"rear": 4, "left": 0})",
                                R"("base": 70, "top": 74)"));
    return Answered(text).of("alarm.inside-wall");
  };
  ASSERT_EQ(on_the_wall("").size(), 1U);
  EXPECT_EQ(on_the_wall("").front().status, Status::unknown);
  EXPECT_EQ(on_the_wall(R"("built": 1977, )").front().status, Status::not_met);
  EXPECT_TRUE(on_the_wall(R"("built": 1978, )").empty());
  EXPECT_EQ(Answered(with_smoke_alarm("70", "74", R"("built": 1960, )")).one("alarm.inside-wall").status,
            Status::met);
  EXPECT_EQ(Answered(with_smoke_alarm("78", "80", R"("built": 1960, )")).one("alarm.inside-wall").status,
            Status::not_met);
}

TEST(AlarmFindings, WhatThePlanDoesNotShowIsUnknown) {
  const Answered bare(way_trailer());
  EXPECT_EQ(bare.one("alarm.smoke").status, Status::unknown);
  EXPECT_EQ(bare.one("alarm.co").status, Status::unknown);
  EXPECT_TRUE(bare.of("alarm.gas").empty());
  EXPECT_EQ(Answered(with_smoke_alarm("70", "74")).one("alarm.smoke").status, Status::met);
  TrailerText text = way_trailer();
  text.fixtures.push_back(R"({"id": "stove", "kind": "cooktop", "length": 12, "width": 12, "faces": "left",
                              "at": {"rear": 0, "right": 0}, "base": 36, "top": 38})");
  EXPECT_EQ(Answered(text).one("alarm.gas").status, Status::unknown);
  EXPECT_EQ(Answered(text).one("alarm.gas").subjects, Names{"stove"});
  TrailerText no_bed = way_trailer();
  no_bed.beds.clear();
  EXPECT_TRUE(Answered(no_bed).of("alarm.smoke").empty());
}

// From memory: 4 to 20 in above the floor.
TEST(AlarmFindings, AGasAlarmHangsLow) {
  const auto height = [](const char* base, const char* top) {
    TrailerText text = way_trailer();
    text.fixtures.push_back(box("gas", "gas alarm",
                                R"("length": 5, "width": 2, "at": {"rear": 4, "left": 0})",
                                std::string(R"("base": ")") + base + R"(", "top": ")" + top + '"'));
    return Answered(text).one("alarm.gas-height");
  };
  EXPECT_EQ(height("4", "20").status, Status::met);
  EXPECT_EQ(height("16", "20 1/64").status, Status::not_met);
  EXPECT_EQ(height("3 63/64", "8").status, Status::not_met);
  EXPECT_EQ(height("3 63/64", "8").variant, "low");
}

TEST(AlarmFindings, ACurtainIsToldInItsConfigurationAndACushionOnlyWhereItLies) {
  TrailerText text = way_trailer();
  text.fixtures.push_back(box("gas", "gas alarm",
                              R"("length": 5, "width": 2, "at": {"front": 50, "left": 0})",
                              R"("base": 6, "top": 10)"));
  EXPECT_EQ(Answered(text).one("alarm.covered").status, Status::met);
  text.pieces.push_back(R"({"id": "pad", "kind": "cushion", "length": 30, "width": 20, "thickness": 8})");
  text.day = {R"({"piece": "pad", "at": {"front": 45, "left": 4}, "base": 4})"};
  const Finding covered = Answered(text).one("alarm.covered");
  EXPECT_EQ(covered.configuration.text(), "day");
  EXPECT_EQ(covered.subjects, (Names{"gas", "pad"}));
}

TEST(WayFindings, AreTheSameInTheMirror) {
  for (const TrailerText& text : ways_of_every_status()) {
    const Answered made(text);
    const Answered mirrored(text.mirrored());
    ASSERT_EQ(made.answer.findings.size(), mirrored.answer.findings.size());
    for (std::size_t i = 0; i < made.answer.findings.size(); ++i) {
      const Finding& a = made.answer.findings[i];
      const Finding& b = mirrored.answer.findings[i];
      EXPECT_EQ(a.rule, b.rule);
      EXPECT_EQ(a.status, b.status) << sentence(made.plan, a);
      EXPECT_EQ(a.measured, b.measured) << sentence(made.plan, a);
    }
  }
}

// The stove's top is 38 in up, the alarm begins at 70: 32 in apart in height, so of 10 ft sqrt(120^2 - 32^2)
// = 115.655 in must lie in plan. There the alarm, 108 to 110 in from the front and 24 to 29 from the left, is
// 35 in from the stove, 108 to 120 and 64 to 76. Where that much is free no direction from here tells, so the
// distance itself is told, marked out as 115 3/4.
TEST(WayFindings, AnAlarmAboveAStoveHangsAsFarOffAsItsHeightDoesNotHelp) {
  TrailerText text = way_trailer();
  text.fixtures.push_back(R"({"id": "stove", "kind": "cooktop", "length": 12, "width": 12, "faces": "left",
                              "at": {"rear": 0, "right": 0}, "base": 36, "top": 38})");
  text.fixtures.push_back(smoke_alarm("70", "74"));
  EXPECT_EQ(Answered(text).one("alarm.cooking").cure,
            (Cure{Cure::Kind::as_told, "smoke", Length::inches(463, 4)}));
}

}  // namespace
}  // namespace berthwright
