#include "view/on_screen.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "support/convert_trailers.h"
#include "view/paper.h"

namespace berthwright {
namespace {

Path floor_from(PaperPoint low, PaperPoint high) {
  return {
      Ink::floor, low, {{{high.x, low.y}, {}, false}, {high, {}, false}, {{low.x, high.y}, {}, false}}, true};
}

Sheet sheet_with(std::vector<Mark> marks) {
  Sheet sheet;
  sheet.scale = 20;
  sheet.groups = {{"Plan", std::move(marks), 0}};
  return sheet;
}

// A room of 120 x 76 in at 1:20 is 152.4 x 96.52 mm: laid with its upper left corner 20 mm from the left of
// the page and 30 mm from its top, its front left corner is at 20 and 30 + 96.52 = 126.52 mm.
const Sheet& floor_sheet() {
  static const Sheet sheet = sheet_with({floor_from(
      {paper_mm(20), paper_mm(30)}, {PaperLength::micrometres(172'400), PaperLength::micrometres(126'520)})});
  return sheet;
}

TEST(OnScreen, APointOfTheRoomHasItsPlaceOnTheFloorThatIsDrawn) {
  const Plan plan = dinette().plan();
  const auto at = [&](Length x, Length y) { return place_on(floor_sheet(), plan, {x, y}); };
  EXPECT_EQ(at(0_in, 0_in), (PaperPoint{paper_mm(20), PaperLength::micrometres(126'520)}));
  EXPECT_EQ(at(120_in, 76_in), (PaperPoint{PaperLength::micrometres(172'400), paper_mm(30)}));
  // 60 in are 76.2 mm on paper, 38 in 48.26: 20 + 76.2 and 126.52 - 48.26.
  EXPECT_EQ(at(60_in, 38_in),
            (PaperPoint{PaperLength::micrometres(96'200), PaperLength::micrometres(78'260)}));
  // What stands outside the room is not drawn back into it.
  EXPECT_EQ(at(-20_in, 0_in)->x, paper_mm(20) - PaperLength::micrometres(25'400));
}

TEST(OnScreen, APointHasNoPlaceWhereTheFloorIsNotSeenOnceFromAbove) {
  const Plan plan = dinette().plan();
  EXPECT_FALSE(place_on(sheet_with({}), plan, {}));
  const Path floor = floor_from({}, {paper_mm(100), paper_mm(50)});
  EXPECT_FALSE(place_on(sheet_with({floor, floor}), plan, {})) << "two stages of one conversion";
  Sheet notes = floor_sheet();
  notes.scale = 0;
  EXPECT_FALSE(place_on(notes, plan, {}));
  Path wall = floor;
  wall.ink = Ink::wall;
  EXPECT_FALSE(place_on(sheet_with({wall}), plan, {}));
}

TEST(OnScreen, ThePlansAreTheFirstOfAllSheetsAndNameTheirConfigurations) {
  const Plan plan = dinette().plan();
  const Answer answer = answered(plan).value();
  const std::vector<PlanSheet> plans = plan_sheets(plan, answer);
  const std::vector<Sheet> all = sheets(plan, answer);
  ASSERT_GE(plans.size(), 2U);
  ASSERT_GE(all.size(), plans.size());
  for (std::size_t i = 0; i < plans.size(); ++i) {
    EXPECT_EQ(plans[i].sheet.title, all[i].title);
    EXPECT_EQ(plans[i].sheet.file, all[i].file);
    EXPECT_TRUE(plans[i].configuration == "day" || plans[i].configuration == "night");
    EXPECT_NE(plans[i].sheet.file.find(plans[i].configuration), std::string::npos);
  }
  const auto front_left = place_on(plans.front().sheet, plan, {});
  ASSERT_TRUE(front_left);
  const auto rear_right = place_on(plans.front().sheet, plan, {120_in, 76_in});
  EXPECT_EQ((rear_right->x - front_left->x).micrometres(), 3'048'000 / plans.front().sheet.scale);
}

TEST(OnScreen, AConversionHasADrawingOfEachStageAllOfOneSize) {
  const Plan plan = dinette().plan();
  const std::vector<Conversion> ways = conversions(plan).value();
  ASSERT_EQ(ways.front().steps.size(), 3U);
  const std::vector<StageDrawing> stages = stage_drawings(plan, ways.front());
  ASSERT_EQ(stages.size(), 4U) << "the start and what is after each step";
  for (std::size_t i = 0; i < stages.size(); ++i) {
    SCOPED_TRACE(i);
    const std::string where = i == 0 ? "at the start" : "after step " + std::to_string(i);
    EXPECT_EQ(stages[i].above.title, "day to night, " + where + ", from above");
    EXPECT_EQ(stages[i].raised.title, "day to night, " + where + ", raised view");
    EXPECT_EQ(stages[i].above.width, stages[0].above.width);
    EXPECT_EQ(stages[i].above.height, stages[0].above.height);
    EXPECT_EQ(stages[i].raised.width, stages[0].raised.width);
    EXPECT_EQ(stages[i].raised.height, stages[0].raised.height);
    EXPECT_LE(stages[i].above.width, paper_mm(120)) << "to be read on a telephone";
    EXPECT_LE(stages[i].raised.width, paper_mm(120));
    EXPECT_EQ(stages[i].above.description, stages[i].raised.description);
    for (const std::string& words : stages[i].words)
      EXPECT_NE(stages[i].above.description.find(words), std::string::npos) << "heard as well as read";
  }
  EXPECT_NE(stages[1].words.front().find("Lift table off leg"), std::string::npos) << stages[1].words.front();
}

TEST(OnScreen, WhatHasNoOrderHasNoStages) {
  TrailerText trailer = dinette();
  trailer.pieces[0] =
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "32 1/2", "thickness": "3/4"})";
  trailer.night[1] = R"({"piece": "table", "at": {"rear": "1/8", "left": "21 3/4"}, "base": "13 1/4"})";
  const Plan plan = trailer.plan();
  const std::vector<Conversion> ways = conversions(plan).value();
  ASSERT_NE(ways.front().verdict, Conversion::Verdict::order);
  EXPECT_TRUE(stage_drawings(plan, ways.front()).empty());
}

}  // namespace
}  // namespace berthwright
