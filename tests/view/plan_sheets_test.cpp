#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <set>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "support/demos.h"
#include "support/drawn_room.h"
#include "support/plan_builder.h"
#include "support/sited_plan.h"
#include "support/trailer_text.h"
#include "view/lettering.h"
#include "view/paper.h"
#include "view/walls.h"

namespace berthwright {
namespace {

template <class Kind>
std::vector<Kind> marks_in(const Sheet& sheet, std::string_view title = {}) {
  std::vector<Kind> out;
  for (const Group& group : sheet.groups)
    if (title.empty() || group.title == title)
      for (const Mark& mark : group.marks)
        if (const Kind* one = std::get_if<Kind>(&mark)) out.push_back(*one);
  return out;
}

std::vector<std::string> words_in(const Sheet& sheet, std::string_view title) {
  std::vector<std::string> out;
  for (const Text& text : marks_in<Text>(sheet, title)) out.push_back(text.words);
  return out;
}

bool has(const std::vector<std::string>& words, std::string_view part) {
  return std::ranges::any_of(words, [&](const std::string& w) { return w.find(part) != std::string::npos; });
}

// Lettering of a drawing is set in lines: all of it, in order.
std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& line : words) all += line + " ";
  return all;
}

struct DrawnPlan {
  explicit DrawnPlan(Plan plan) : made(std::move(plan)), drawn(sheets(made.plan, made.answer)) {}
  const Sheet& of(std::string_view configuration) const {
    return *std::ranges::find_if(drawn, [&](const Sheet& sheet) {
      return sheet.file == std::to_string(1 + (&sheet - drawn.data())) + "-" + std::string(configuration);
    });
  }
  Answered made;
  std::vector<Sheet> drawn;
};

const DrawnPlan& drawn_demo(const std::string& name) {
  static MadeOfDemos<DrawnPlan> made;
  return made.of(name);
}

std::int64_t squared_distance(PaperPoint p, const PaperLine& line) {
  const auto x = [](PaperPoint a, PaperPoint b) { return (b.x - a.x).micrometres(); };
  const auto y = [](PaperPoint a, PaperPoint b) { return (b.y - a.y).micrometres(); };
  const std::int64_t dx = x(line.from, line.to);
  const std::int64_t dy = y(line.from, line.to);
  const double size = static_cast<double>(dx * dx + dy * dy);
  const double t =
      size == 0
          ? 0
          : std::clamp(static_cast<double>(dx * x(line.from, p) + dy * y(line.from, p)) / size, 0.0, 1.0);
  const double ex = static_cast<double>(x(line.from, p)) - t * static_cast<double>(dx);
  const double ey = static_cast<double>(y(line.from, p)) - t * static_cast<double>(dy);
  return static_cast<std::int64_t>(ex * ex + ey * ey);
}

bool lies_on_a_line(const Sheet& sheet, PaperPoint p) {
  constexpr std::int64_t reach = 100 * 100;  // a tenth of a millimetre
  for (const Ink ink : {Ink::cushion, Ink::appliance, Ink::bed_outline, Ink::made_up, Ink::overhead,
                        Ink::fixture, Ink::quiet, Ink::quiet_overhead})
    for (const Path& path : laid_paths(sheet, ink))
      for (const PaperLine& line : lines(path))
        if (squared_distance(p, line) <= reach) return true;
  return false;
}

TEST(PlanSheets, NoHeatLineEndsInMidAir) {
  int lines_seen = 0;
  for (const std::string& name : demo_names())
    for (const Sheet& sheet : drawn_demo(name).drawn)
      for (const Path& line : laid_paths(sheet, Ink::heat_line)) {
        ++lines_seen;
        EXPECT_TRUE(lies_on_a_line(sheet, line.from)) << sheet.title;
        EXPECT_TRUE(lies_on_a_line(sheet, line.stretches.front().to)) << sheet.title;
      }
  EXPECT_GE(lines_seen, 6);
}

TEST(PlanSheets, TheEdgeOfTheBeddingMadeUpIsDrawnWhereALineEndsAtIt) {
  const DrawnPlan& dunnock = drawn_demo("dunnock");
  EXPECT_TRUE(laid_paths(dunnock.of("day"), Ink::made_up).empty());
  EXPECT_FALSE(laid_paths(dunnock.of("night"), Ink::made_up).empty());
  EXPECT_TRUE(has(words_in(dunnock.of("night"), "Notes"), "bedding made up"));
  EXPECT_FALSE(has(words_in(dunnock.of("day"), "Notes"), "bedding made up"));
}

TEST(PlanSheets, NoLineOfLetteringEndsWithinAMeasure) {
  // Feet without their inches, a number without its unit or fraction, one side of two, a lonely comparison.
  const std::regex torn(R"((\d'|×|<|≥|\d sq|[ (]\d+\.\d|[ (]\d+ \d|\d' \d+)$)");
  ASSERT_TRUE(std::regex_search("1' 8 3/8\" < 3'", torn));
  ASSERT_TRUE(std::regex_search("largest rectangle 26\" ×", torn));
  ASSERT_TRUE(std::regex_search("stands 2'", torn));
  ASSERT_TRUE(std::regex_search("(1905", std::regex(R"([ (]\d+$)")));
  for (const std::string& name : demo_names())
    for (const Sheet& sheet : drawn_demo(name).drawn)
      for (const std::string& words : words_in(sheet, {}))
        EXPECT_FALSE(std::regex_search(words, torn)) << sheet.title << ": " << words;
}

std::set<std::string> alert_tags_in(const std::string& words) {
  static const std::regex tag(R"(\bA\d+ (?=not met|unknown))");
  std::set<std::string> tags;
  for (std::sregex_token_iterator one(words.begin(), words.end(), tag); one != std::sregex_token_iterator();
       ++one)
    tags.insert(one->str().substr(0, one->str().size() - 1));
  return tags;
}

// Those that the margin tells, each with its tag on the drawing where it has a place or a bed; no two of a
// plan have one number.
TEST(PlanSheets, EveryAlertIsFoundOnTheDrawing) {
  std::size_t alerts = 0;
  for (const std::string& name : demo_names()) {
    const DrawnPlan& plan = drawn_demo(name);
    std::set<std::string> all;
    for (const ConfigurationAnswer& answer : plan.made.answer.configurations) {
      const Sheet& sheet = plan.of(answer.configuration->id.text());
      std::set<std::pair<std::string, std::vector<std::string>>> open;
      for (const Finding& finding : plan.made.answer.findings)
        if (find_rule(finding.rule.text())->weight == Weight::alert &&
            finding.configuration == answer.configuration->id &&
            (finding.status == Status::not_met || finding.status == Status::unknown))
          open.emplace(finding.rule.text(), finding.subjects);
      const std::set<std::string> tags = alert_tags_in(joined(words_in(sheet, "Notes")));
      EXPECT_EQ(tags.size(), open.size()) << sheet.title;
      const std::string drawing = joined(words_in(sheet, "Names and figures"));
      for (const std::string& tag : tags) {
        EXPECT_TRUE(all.insert(tag).second) << sheet.title << " " << tag;
        EXPECT_TRUE(std::regex_search(drawing, std::regex(tag + "[:,]"))) << sheet.title << " " << tag;
      }
    }
    for (std::size_t i = 1; i <= all.size(); ++i) EXPECT_TRUE(all.contains("A" + std::to_string(i))) << name;
    alerts += all.size();
  }
  EXPECT_GE(alerts, 9U);
}

TEST(PlanSheets, WhatIsMeasuredInsideStandsInside) {
  int seen = 0;
  for (const std::string& name : demo_names())
    for (const Sheet& sheet : drawn_demo(name).drawn) {
      if (sheet.file.find("sections") != std::string::npos || laid_paths(sheet, Ink::wall).empty()) continue;
      const Path wall = laid_paths(sheet, Ink::wall).front();
      PaperBox room{wall.from, wall.from};
      for (const Stretch& stretch : wall.stretches) room = hull(room, {stretch.to, stretch.to});
      for (const Text& text : marks_in<Text>(sheet, "Names and figures")) {
        const bool inner = text.words.find("gap") != std::string::npos ||
                           text.words.find("met") != std::string::npos ||
                           text.words.find(" mm)") != std::string::npos;
        seen += inner;
        EXPECT_TRUE(!inner || holds(room, box_of(text))) << sheet.title << ": " << text.words;
      }
    }
  EXPECT_GE(seen, 8);
}

TEST(PlanSheets, ThingsThatNeedTheSameSpaceAreCrossedOutAndNamed) {
  const DrawnPlan& nuthatch = drawn_demo("nuthatch");
  EXPECT_EQ(laid_paths(nuthatch.of("night"), Ink::clash).size(), 2U);
  EXPECT_TRUE(laid_paths(nuthatch.of("day"), Ink::clash).empty());
  const std::string names = joined(words_in(nuthatch.of("night"), "Names and figures"));
  EXPECT_NE(names.find("clash"), std::string::npos) << names;
  EXPECT_TRUE(has(words_in(nuthatch.of("night"), "Notes"), "clash"));
}

TEST(PlanSheets, WhereABedHasNoMattressTheDrawingSaysSo) {
  const DrawnPlan& nuthatch = drawn_demo("nuthatch");
  const Sheet& night = nuthatch.of("night");
  EXPECT_FALSE(laid_paths(night, Ink::off_level).empty());
  const std::string names = joined(words_in(night, "Names and figures"));
  // By a number and the key where other words leave no room beside it.
  EXPECT_TRUE(names.find("no mattress here") != std::string::npos ||
              has(words_in(night, "Notes"), "no mattress here"))
      << names;
  EXPECT_NE(names.find("in 2 parts"), std::string::npos) << names;
  const DrawnPlan& dunnock = drawn_demo("dunnock");
  EXPECT_TRUE(laid_paths(dunnock.of("night"), Ink::off_level).empty());
}

TEST(PlanSheets, TheLargestRectangleIsSeenWhereItIsNotTheWholeBed) {
  const DrawnPlan& nuthatch = drawn_demo("nuthatch");
  const Sheet& night = nuthatch.of("night");
  const std::vector<Path> rectangles = laid_paths(night, Ink::sleeping_rectangle);
  ASSERT_EQ(rectangles.size(), 1U);
  // Half of the heavy line is 0.35 mm, half of the dashed one 0.175.
  for (const PaperLine& line : lines(rectangles.front()))
    for (const Path& bed : laid_paths(night, Ink::bed_outline))
      for (const PaperLine& edge : lines(bed))
        for (const PaperPoint p :
             {line.from, line.to, PaperPoint{(line.from.x + line.to.x) / 2, (line.from.y + line.to.y) / 2}})
          EXPECT_GT(squared_distance(p, edge), 600 * 600);
  const DrawnPlan& sanderling = drawn_demo("sanderling");
  EXPECT_TRUE(laid_paths(sanderling.of("night"), Ink::sleeping_rectangle).empty());
  EXPECT_FALSE(has(words_in(sanderling.of("night"), "Notes"), "largest rectangle"));
}

TEST(PlanSheets, TheLegendShowsNoSignOfWhatIsHidden) {
  const DrawnPlan& sanderling = drawn_demo("sanderling");
  const std::vector<std::string> notes = words_in(sanderling.of("night"), "Notes");
  for (const char* hidden : {"table top", "board", "gap"})
    EXPECT_EQ(std::ranges::count(notes, hidden), 0) << hidden;
  EXPECT_EQ(std::ranges::count(notes, "cushion"), 1);
  EXPECT_EQ(std::ranges::count(words_in(sanderling.of("day"), "Notes"), "table top"), 1);
}

// Door at 40 in, 24 in wide, in a wall of 120; window at 20, 32 wide, in one of 72; window at 84, 30 wide.
TEST(PlanSheets, OpeningsAreMeasuredAlongTheirWalls) {
  DrawnRoom room = rear_dinette();
  const std::vector<std::string> figures = words_in(sheets(room.plan(), room.answer()).at(0), "Dimensions");
  for (const char* figure : {"3' 4\"", "2' 0\"", "4' 8\"", "1' 8\"", "2' 8\"", "7' 0\"", "2' 6\"", "6\""})
    EXPECT_EQ(std::ranges::count(figures, figure) > 0, true) << figure;
}

// The galley is 20 in deep and touches neither end wall; the locker hangs 12 in over the front.
TEST(PlanSheets, HowDeepFurnitureIsStandsInIt) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("galley", Fixture::Kind::counter, inches(24, 0, 66, 20), {}, 36_in)
      .fixture("locker", Fixture::Kind::locker, inches(60, 60, 110, 72), 52_in, 66_in)
      .piece("seat", Piece::Kind::cushion, Region(inches(80, 0, 120, 22)), 14_in, 18_in);
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  EXPECT_EQ(words_in(sheet, "Depths"), (std::vector<std::string>{"1' 8\"", "4' 2\"", "1' 0\""}));
  // 20 in, 50 in and 12 in at the scale of the sheet.
  std::vector<std::int64_t> reaches;
  for (const Path& path : marks_in<Path>(sheet, "Depths"))
    if (path.ink == Ink::dimension)
      reaches.push_back(std::abs((path.stretches.front().to.y - path.from.y).micrometres()) +
                        std::abs((path.stretches.front().to.x - path.from.x).micrometres()));
  ASSERT_EQ(reaches.size(), 3U);
  EXPECT_NEAR(static_cast<double>(reaches[0]), 508e3 / static_cast<double>(sheet.scale), 2);
  EXPECT_NEAR(static_cast<double>(reaches[1]), 1270e3 / static_cast<double>(sheet.scale), 2);
  EXPECT_NEAR(static_cast<double>(reaches[2]), 304.8e3 / static_cast<double>(sheet.scale), 2);
  // Nothing else tells where the locker begins, 5 ft from the front.
  const std::string told = joined(words_in(sheet, "Notes"));
  EXPECT_NE(told.find("locker 5'\u00A00\" from the front"), std::string::npos) << told;
}

// A line that runs along another within 0.7 mm could be taken for it.
TEST(PlanSheets, ADepthRunsAlongNoOtherLine) {
  int depths = 0;
  for (const std::string& name : demo_names())
    for (const Sheet& sheet : drawn_demo(name).drawn)
      for (const Path& depth : marks_in<Path>(sheet, "Depths")) {
        if (depth.ink != Ink::dimension) continue;
        ++depths;
        const PaperPoint end = depth.stretches.front().to;
        const PaperPoint middle{(depth.from.x + end.x) / 2, (depth.from.y + end.y) / 2};
        for (const Ink ink : {Ink::cushion, Ink::fixture, Ink::overhead, Ink::table, Ink::appliance})
          for (const Path& path : laid_paths(sheet, ink))
            for (const PaperLine& line : lines(path)) {
              const bool parallel =
                  depth.from.x == end.x ? line.from.x == line.to.x : line.from.y == line.to.y;
              if (parallel) {
                EXPECT_GT(squared_distance(middle, line), 700 * 700) << sheet.title;
              }
            }
      }
  EXPECT_GE(depths, 8);
}

TEST(PlanSheets, TheDepthOfWhatIsCoveredIsToldInWords) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("bench", Fixture::Kind::bench, inches(40, 0, 80, 22), {}, 14_in)
      .piece("seat", Piece::Kind::cushion, Region(inches(40, 0, 80, 20)), 14_in, 18_in);
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  const std::string told = joined(words_in(sheet, "Notes"));
  EXPECT_NE(told.find("bench 1'\u00A010\" across"), std::string::npos) << told;
}

TEST(PlanSheets, ChainsAreOfWhatIsSeenInThatConfiguration) {
  const DrawnPlan& sanderling = drawn_demo("sanderling");
  const std::vector<std::string> day = words_in(sanderling.of("day"), "Dimensions");
  const std::vector<std::string> night = words_in(sanderling.of("night"), "Dimensions");
  // By day the table of 31 3/4 in, by night two backs of 16 in in its place.
  EXPECT_EQ(std::ranges::count(day, "2' 7 3/4\""), 1);
  EXPECT_EQ(std::ranges::count(night, "2' 7 3/4\""), 0);
  EXPECT_EQ(std::ranges::count(night, "1' 4\""), 2);
  for (const auto* figures : {&day, &night})
    for (const char* split : {"1/8\"", "1/2\""}) EXPECT_EQ(std::ranges::count(*figures, split), 0) << split;
  EXPECT_TRUE(has(words_in(sanderling.of("night"), "Notes"), "leave out splits of less than"));
}

TEST(PlanSheets, AnAlarmIsASignOfReadableSizeWithItsName) {
  const DrawnPlan& sanderling = drawn_demo("sanderling");
  for (const std::string_view which : {"day", "night"}) {
    const Sheet& sheet = sanderling.of(which);
    const std::vector<Path> rings = laid_paths(sheet, Ink::alarm);
    ASSERT_EQ(rings.size(), 2U);
    EXPECT_GE(rings.front().stretches.front().radius, paper_mm(17, 10));
    EXPECT_NE(joined(words_in(sheet, "Names and figures")).find("Smoke"), std::string::npos) << which;
  }
}

TEST(PlanSheets, OnTheRoadEachHoldIsToldWithWhatItHolds) {
  const DrawnPlan& sanderling = drawn_demo("sanderling");
  const std::string told = joined(words_in(sanderling.of("road"), "Notes"));
  EXPECT_NE(told.find("Held on the road"), std::string::npos);
  EXPECT_NE(told.find("By snap: Settee seat"), std::string::npos) << told;
  EXPECT_NE(told.find("By hook: Table"), std::string::npos) << told;
  EXPECT_EQ(told.find("Not told"), std::string::npos);
  EXPECT_FALSE(has(words_in(sanderling.of("day"), "Notes"), "Held on the road"));
}

}  // namespace
}  // namespace berthwright
