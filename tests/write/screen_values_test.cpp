#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include <berthwright/view/words.h>

#include "support/convert_trailers.h"
#include "support/plan_builder.h"
#include "support/small_trailers.h"
#include "support/yard_plans.h"
#include "view/paper.h"
#include "write/screen.h"

namespace berthwright {
namespace {

const ScreenFinding* told_of(const ScreenFindings& findings, Status status) {
  const auto found = std::ranges::find(findings.list, status, &ScreenFinding::status);
  return found == findings.list.end() ? nullptr : &*found;
}

TEST(ScreenValues, AFindingSaysFirstWhatMendsIt) {
  const Answered made(plan_from(plan_that_does_not()));
  const ScreenFindings shown = screen_findings(made.plan, made.answer);
  ASSERT_EQ(shown.list.size(), made.answer.findings.size()) << "the number of a finding is its place";
  std::size_t cured = 0;
  for (std::size_t i = 0; i < shown.list.size(); ++i) {
    const Finding& finding = made.answer.findings[i];
    const bool asks = finding.status == Status::not_met || finding.status == Status::unknown;
    const std::string cure = asks ? cure_sentence(made.plan, finding) : "";
    EXPECT_EQ(shown.list[i].words, cure + (cure.empty() ? "" : " ") + sentence(made.plan, finding));
    EXPECT_EQ(shown.list[i].title, find_rule(finding.rule.text())->title);
    EXPECT_EQ(shown.list[i].where.size(), finding.where.size());
    cured += cure.empty() ? 0U : 1U;
  }
  EXPECT_GT(cured, 0U);
  ASSERT_NE(told_of(shown, Status::not_met), nullptr);
  EXPECT_NE(shown.verdict.find("not met"), std::string::npos);
  EXPECT_FALSE(shown.caution.empty());
}

// Line 1 holds title and room, 2 the openings, then each thing has a line of its own.
TEST(ScreenValues, AFindingNamesTheLinesOfWhatItIsAbout) {
  const TrailerText text = two_benches("0", "14");
  const std::string json = text.json();
  const Answered made(plan_from(json));
  const ScreenFindings shown = screen_findings(made.plan, made.answer);
  const auto text_of_line = [&](std::size_t number) {
    std::size_t from = 0;
    for (std::size_t line = 1; line < number; ++line) from = json.find('\n', from) + 1;
    return json.substr(from, json.find('\n', from) - from);
  };
  std::size_t things = 0;
  for (std::size_t i = 0; i < shown.list.size(); ++i) {
    const Finding& finding = made.answer.findings[i];
    std::set<std::size_t> lines;
    for (const FileLine& line : shown.list[i].lines) {
      EXPECT_GT(line.line, 0U);
      EXPECT_FALSE(line.what.empty());
      EXPECT_TRUE(lines.insert(line.line).second) << "one line is named once";
    }
    for (const std::string& id : finding.subjects) {
      if (made.plan.piece(id) == nullptr && made.plan.fixture(id) == nullptr) continue;
      ++things;
      EXPECT_TRUE(std::ranges::any_of(shown.list[i].lines,
                                      [&](const FileLine& line) {
                                        return text_of_line(line.line).find('"' + id + '"') !=
                                               std::string::npos;
                                      }))
          << id << " in: " << shown.list[i].words;
    }
  }
  EXPECT_GT(things, 4U);
}

TEST(ScreenValues, PinsStandWhereTheirFindingsAreAndOnTheirConfigurationAlone) {
  const Answered made(plan_from(plan_that_does_not()));
  const std::vector<PlanSheet> plans = plan_sheets(made.plan, made.answer);
  const std::vector<ScreenSheet> shown = screen_plans(made.plan, made.answer, plans);
  ASSERT_EQ(shown.size(), plans.size());
  std::size_t pins = 0;
  for (std::size_t i = 0; i < shown.size(); ++i)
    for (std::size_t number = 0; number < made.answer.findings.size(); ++number) {
      const Finding& finding = made.answer.findings[number];
      const auto pin = std::ranges::find(shown[i].pins, number, &ScreenPin::finding);
      const std::string& when = finding.configuration.text();
      const bool belongs = !finding.where.empty() && (when.empty() || when == plans[i].configuration) &&
                           place_on(plans[i].sheet, made.plan, finding.where.front().plan);
      ASSERT_EQ(pin != shown[i].pins.end(), belongs) << plans[i].sheet.title << ", finding " << number;
      if (!belongs) continue;
      ++pins;
      ASSERT_EQ(pin->at.size(), finding.where.size());
      EXPECT_EQ(pin->at.front(), *place_on(plans[i].sheet, made.plan, finding.where.front().plan));
    }
  EXPECT_GT(pins, 0U);
}

Sheet named_sheet(const std::string& file, const std::string& title) {
  Sheet sheet;
  sheet.file = file;
  sheet.title = title;
  sheet.width = paper_mm(100);
  sheet.height = paper_mm(80);
  return sheet;
}

TEST(ScreenValues, KeysOfSheetsStayWhenTheirNumbersChange) {
  const Plan plan = dinette().plan();
  const std::vector<ScreenSheet> first =
      screen_sheets(plan, {named_sheet("1-day", "Test: day"), named_sheet("2-day-notes", "Notes")}, {});
  ASSERT_EQ(first.size(), 2U);
  EXPECT_EQ(first[0].key, "day");
  EXPECT_EQ(first[0].name, "day") << "without the plan's own title";
  EXPECT_EQ(first[1].name, "Notes");
  const std::vector<ScreenSheet> more = screen_sheets(
      plan, {named_sheet("3-day", "a"), named_sheet("4-day-notes", "b"), named_sheet("5-day-notes", "c")},
      first);
  EXPECT_EQ(more[0].key, "day.2");
  EXPECT_EQ(more[1].key, "day-notes.2");
  EXPECT_EQ(more[2].key, "day-notes.3");
}

TEST(ScreenValues, APictureIsNamedAfterItsBytes) {
  const Picture one = picture_of(named_sheet("1-day", "Day"));
  const Picture same = picture_of(named_sheet("1-day", "Day"));
  const Picture other = picture_of(named_sheet("1-day", "Dax"));
  EXPECT_EQ(one.name, same.name);
  EXPECT_EQ(*one.bytes, *same.bytes);
  EXPECT_NE(one.name, other.name);
  EXPECT_EQ(one.name.size(), 16U);
  EXPECT_EQ(one.name.find_first_not_of("0123456789abcdef"), std::string::npos) << "it becomes an address";
  EXPECT_TRUE(one.bytes->starts_with("<svg "));
}

TEST(ScreenValues, AConversionHasAStageMoreThanStepsAndSaysHowFewTheyCouldBe) {
  const Plan plan = dinette().plan();
  const std::vector<Conversion> ways = conversions(plan).value();
  const ScreenConversion shown = screen_conversion(plan, ways.front());
  EXPECT_EQ(shown.key, "day to night");
  EXPECT_EQ(shown.heading, "From day to night: 3 steps");
  ASSERT_EQ(shown.stages.size(), 4U);
  ASSERT_FALSE(shown.words.empty());
  EXPECT_NE(shown.words.front().find("No order has fewer steps"), std::string::npos) << shown.words.front();
  std::set<std::string> names;
  for (const ScreenStage& stage : shown.stages) {
    names.insert(stage.above.name);
    names.insert(stage.raised.name);
  }
  EXPECT_EQ(names.size(), 8U) << "each stage looks otherwise";
}

TEST(ScreenValues, AConversionWithoutAnOrderSaysWhatKeepsItAndHasNothingToSlide) {
  TrailerText trailer = dinette();
  trailer.pieces[0] =
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "32 1/2", "thickness": "3/4"})";
  trailer.night[1] = R"({"piece": "table", "at": {"rear": "1/8", "left": "21 3/4"}, "base": "13 1/4"})";
  const Plan plan = trailer.plan();
  const std::vector<Conversion> ways = conversions(plan).value();
  const ScreenConversion shown = screen_conversion(plan, ways.front());
  EXPECT_TRUE(shown.stages.empty());
  std::string words;
  for (const std::string& one : shown.words) words += one + " ";
  EXPECT_NE(words.find("table cannot come to its place of night"), std::string::npos) << words;
}

}  // namespace
}  // namespace berthwright
