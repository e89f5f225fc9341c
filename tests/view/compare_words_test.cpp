#include "view/compare_words.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/compared_texts.h"
#include "support/sited_plan.h"
#include "view/scale.h"

namespace berthwright {
namespace {

using support::ComparedTexts;
using support::heater_before_cushion;
using support::warming_heater;
using support::weighed_cabinet;
using testing::AssertionFailure;
using testing::AssertionResult;
using testing::AssertionSuccess;

AssertionResult compare_says(const std::string& words, const std::string& part) {
  if (words.find(part) != std::string::npos) return AssertionSuccess();
  return AssertionFailure() << "not there: " << part << "\nsaid is: " << words;
}

std::vector<std::string> feet_of_our_own(const std::string& limit) {
  return {R"("heat.three-feet": {"limit": )" + limit + R"(, "reason": "our own choice"})"};
}

// 12 in against 10 of the plan's own, 30 against 36 1/2 of its own, 50 against the published 36.
TEST(CompareWords, TellWhoseTheNumbersAreWhereTheyDiffer) {
  const ComparedTexts both(heater_before_cushion(50, feet_of_our_own("36.5")),
                           heater_before_cushion(32, feet_of_our_own("10")));
  const ComparedFigure& figure = both.figure("heat.three-feet");
  const std::string verdict = compared_verdict(both.of, figure);
  EXPECT_TRUE(compare_says(verdict,
                           "They were compared with different numbers, so neither is better: A with at least "
                           "3' 0 1/2\" (927.1 mm), the plan's own figure (our own choice) in place of "));
  EXPECT_TRUE(
      compare_says(verdict, "; B with at least 10\" (254 mm), the plan's own figure (our own choice) in "));
  EXPECT_TRUE(compare_says(compared_side(both.one, figure.first),
                           "not met (asked 3' 0 1/2\" (927.1 mm), the plan's own figure: our own choice)"));
  EXPECT_TRUE(compare_says(compared_side(both.other, figure.second),
                           "met (asked 10\" (254 mm), the plan's own figure: our own choice)"));
  const ComparedTexts one(heater_before_cushion(70), heater_before_cushion(32, feet_of_our_own("10")));
  const std::string of_one = compared_verdict(one.of, one.figure("heat.three-feet"));
  EXPECT_TRUE(compare_says(of_one, "A with at least 3' 0\" (914.4 mm) ("));
  EXPECT_TRUE(compare_says(of_one, "; B with at least 10\" (254 mm), the plan's own figure"));
  EXPECT_EQ(compared_side(one.one, one.figure("heat.three-feet").first).find("own figure"),
            std::string::npos);
}

TEST(CompareWords, DoNotTellAPlansOwnNumberAsPublished) {
  const ComparedTexts own(heater_before_cushion(50, feet_of_our_own("20")),
                          heater_before_cushion(32, feet_of_our_own("20")));
  EXPECT_TRUE(
      compare_says(compared_verdict(own.of, own.figure("heat.three-feet")),
                   "A is better by heat.three-feet (the plan's own figure (our own choice) in place of "));
  const ComparedTexts half(heater_before_cushion(40), heater_before_cushion(70, feet_of_our_own("36")));
  const std::string of_half = compared_verdict(half.of, half.figure("heat.three-feet"));
  EXPECT_TRUE(compare_says(of_half, "B is better by heat.three-feet (A: "));
  EXPECT_TRUE(compare_says(of_half, "; B: the plan's own figure (our own choice) in place of "));
  const ComparedTexts published(heater_before_cushion(40), heater_before_cushion(70));
  EXPECT_EQ(compared_verdict(published.of, published.figure("heat.three-feet")).find("own figure"),
            std::string::npos);
}

TEST(CompareWords, TellBothRangesOfAShare) {
  const ComparedTexts both(weighed_cabinet("0"),
                           weighed_cabinet("0", "120 lb", "880 lb", R"(, "range": "uk")"));
  const std::string verdict = compared_verdict(both.of, both.figure(LoadFigure::Kind::share));
  EXPECT_TRUE(compare_says(verdict, "so neither is better: A with 10 to 15 % ("));
  EXPECT_TRUE(compare_says(verdict, "; B with 5 to 7 % ("));
}

TEST(CompareWords, TellWhichSideIsNotKnown) {
  const auto verdict_of = [](const char* first, const char* second) {
    const ComparedTexts both(weighed_cabinet(first), weighed_cabinet(second));
    return compared_verdict(both.of, both.figure(LoadFigure::Kind::whole));
  };
  EXPECT_EQ(verdict_of("", R"("40 lb")"), "A is not fully known, so neither is better.");
  EXPECT_EQ(verdict_of(R"("40 lb")", ""), "B is not fully known, so neither is better.");
  EXPECT_EQ(verdict_of("", ""), "Neither is fully known, so neither is better.");
  const ComparedTexts same(weighed_cabinet(""), weighed_cabinet(""));
  EXPECT_TRUE(compare_says(pair_sum(same.of.pairs.at(0)), "Nothing that is known differs; "));
  EXPECT_TRUE(compare_says(pair_sum(ComparedTexts(TrailerText{}, TrailerText{}).of.pairs.at(0)),
                           "Nothing differs; "));
}

// What nobody says weighs at least nothing, which says nothing.
TEST(CompareWords, CallAFigureUnknownThatHasNoEnd) {
  const ComparedTexts both(weighed_cabinet(""), weighed_cabinet(R"("40 lb")"));
  EXPECT_EQ(compared_side(both.one, both.figure(LoadFigure::Kind::added).first), "unknown");
  EXPECT_EQ(compared_side(both.other, both.figure(LoadFigure::Kind::added).second), "40 lb (18.2 kg)");
  EXPECT_EQ(compared_side(both.one, both.figure(LoadFigure::Kind::whole).first),
            "at least 1000 lb (453.5 kg)");
}

// A plate of 1204.4 lb less 1000 leaves 204.4: not 205.
TEST(CompareWords, TellNoRoomLargerThanItIs) {
  const auto plate = [](const std::string& limit) {
    TrailerText text;
    text.more = R"("chassis": {"coupling": 40, "axle": 70, "limits": {"whole": ")" + limit +
                R"("}, "weighed": {"coupling": "120 lb", "axle": "880 lb"}}, )";
    return text;
  };
  const ComparedTexts both(plate("1204.4 lb"), plate("1300 lb"));
  EXPECT_EQ(compared_side(both.one, both.figure(LoadFigure::Kind::cargo_left).first), "204 lb (92.7 kg)");
}

TEST(CompareWords, TellWhatNeverComesAbout) {
  const ComparedTexts both(warming_heater("100"), warming_heater("8000"));
  const ComparedFigure& figure = both.figure(LoadFigure::Kind::warm_up);
  EXPECT_EQ(compared_side(both.one, figure.first), "never, by these figures");
  EXPECT_TRUE(compare_says(compared_side(both.other, figure.second), " min to "));
  EXPECT_EQ(compared_verdict(both.of, figure), "They differ; no rule says which is better.");
  const ComparedTexts dark(warming_heater(""), warming_heater("100"));
  EXPECT_EQ(compared_side(dark.one, dark.figure(LoadFigure::Kind::warm_up).first), "unknown");
}

/// A room of that length with a cabinet that may weigh anything and a cushion that is stowed.
TrailerText room_of_length(int length) {
  TrailerText text;
  text.interior = R"({"length": )" + std::to_string(length) + R"(, "width": 76, "height": 76})";
  text.fixtures = {
      R"({"id": "K", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": 60, "left": 0}, "top": 30})"};
  text.pieces = {R"({"id": "C", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})"};
  return text;
}

std::string compared_table(const ComparedTexts& both) {
  std::string words;
  for (const Sheet& sheet : compare_sheets(both.of))
    if (sheet.file.ends_with("what-differs")) words += lettered(sheet, "Row") + " ";
  return words;
}

// 100 and 200 in long, the longer one at the left and at the right: one scale for both, and both whole.
TEST(CompareSheets, DrawBothAtOneScaleBesideEachOther) {
  for (const auto& [first, second] : {std::pair(100, 200), std::pair(200, 100)}) {
    const ComparedTexts both(room_of_length(first), room_of_length(second));
    const std::vector<Sheet> drawn = compare_sheets(both.of);
    ASSERT_EQ(drawn.front().file, "1-day-plan");
    const Sheet& plans = drawn.front();
    const std::vector<Path> floors = laid_paths(plans, Ink::floor);
    ASSERT_EQ(floors.size(), 2U);
    const auto expect_long = [&](const Path& floor, int length) {
      EXPECT_LE(abs(in_nature(reach_of(floor).width(), plans.scale) - Length::inches(length)),
                Length::millimetres(1));
    };
    expect_long(floors[0], first);
    expect_long(floors[1], second);
    EXPECT_LT(reach_of(floors[0]).high.x, reach_of(floors[1]).low.x);
    EXPECT_LT(reach_of(floors[1]).high.x, plans.width);
    EXPECT_EQ(lettered(plans, "A"), "A ");
    EXPECT_EQ(lettered(plans, "B"), "B ");
  }
}

// However many rows: some of these tables end just at the foot of a page.
TEST(CompareSheets, EveryPageOfTheTableHasItsHeads) {
  const ComparedTexts both(room_of_length(100), room_of_length(120), {});
  Comparison of = both.of;
  of.pairs.resize(1);
  ASSERT_EQ(of.pairs[0].first, nullptr);
  const ComparedFigure of_two_lines = of.pairs[0].figures.at(0);
  ComparedFigure of_one_line = of_two_lines;
  of_one_line.second.reset();
  of_one_line.verdict = ComparedFigure::Verdict::only_first;
  std::size_t pages = 0;
  for (std::size_t short_rows = 0; short_rows < 30; ++short_rows) {
    of.pairs[0].figures.assign(short_rows, of_one_line);
    of.pairs[0].figures.insert(of.pairs[0].figures.end(), 60, of_two_lines);
    for (const Sheet& sheet : compare_sheets(of)) {
      const std::string words = lettered(sheet, "Row");
      if (words.find("length of the room") == std::string::npos) continue;
      EXPECT_TRUE(compare_says(words, "Which is better")) << short_rows;
      ++pages;
    }
  }
  EXPECT_GT(pages, 40U);
}

TEST(CompareWords, SaysWhySidesAreNotCompared) {
  const auto told = [](const std::string& first, const std::string& second) {
    TrailerText a = room_of_length(100);
    TrailerText b = room_of_length(120);
    a.more = R"("chassis": {"axle": 60)" + first + "}, ";
    b.more = R"("chassis": {"axle": 60)" + second + "}, ";
    const ComparedTexts both(a, b);
    std::string sentences;
    for (const std::string& one : lacking_configurations(both.of)) sentences += one;
    return sentences;
  };
  const std::string end = " how far apart the wheels are, so left and right are not compared.";
  const std::string track = R"(, "track": 60)";
  EXPECT_EQ(told("", ""), "Neither plan says" + end);
  EXPECT_EQ(told(track, ""), "B does not say" + end);
  EXPECT_EQ(told("", track), "A does not say" + end);
  EXPECT_EQ(told(track, track), "");
  TrailerText van;
  van.more = R"("chassis": {"towed": false}, )";
  EXPECT_TRUE(lacking_configurations(ComparedTexts(van, van).of).empty());
}

TEST(CompareSheets, TheTableEndsWithWhatIsLackingAndWhatBetterMeans) {
  TrailerText with_road = room_of_length(100);
  with_road.road = {R"({"piece": "C", "stowed": "elsewhere"})"};
  const std::string caution(compared_caution());
  for (const char* who : {"A", "B"}) {
    const bool first = who == std::string("A");
    const ComparedTexts both(first ? with_road : room_of_length(120), first ? room_of_length(120) : with_road,
                             {});
    const std::string table = compared_table(both);
    EXPECT_TRUE(compare_says(table, "length of the room"));
    EXPECT_TRUE(
        compare_says(table, "Only " + std::string(who) + " shows the trailer on the road: not compared."));
    EXPECT_TRUE(compare_says(table, caution));
  }
  const ComparedTexts same(room_of_length(100), room_of_length(120));
  EXPECT_EQ(compared_table(same).find("not compared"), std::string::npos);
}

}  // namespace
}  // namespace berthwright
