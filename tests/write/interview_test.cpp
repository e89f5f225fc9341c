#include <berthwright/write/interview.h>

#include <gtest/gtest.h>

#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

Interview told(Interview interview, const std::vector<std::string>& answers) {
  for (const std::string& answer : answers) {
    const Result<Interview> further = interview.answered(answer);
    if (!further) throw std::invalid_argument(answer + ": " + listed(further.problems()));
    interview = *further;
  }
  return interview;
}

std::string fault(const Interview& interview, const std::string& answer) {
  const Result<Interview> further = interview.answered(answer);
  return further ? "" : further.problems().front().id;
}

Interview usual_room(const std::string& more) {
  const Result<Interview> whole =
      interview_from("length: 120\nwidth: 76\nheight: 74\ndoor-from: 60\n" + more, true);
  if (!whole) throw std::invalid_argument(listed(whole.problems()));
  return *whole;
}

TEST(Interview, GoesAsOneWalksThroughATrailer) {
  Interview interview;
  std::vector<std::string> asked;
  for (const char* answer :
       {"", "", "", "10 ft", "76", "6 ft 2", "", "", "60", "", "", "", "", "", "", "", "", ""}) {
    ASSERT_TRUE(interview.next());
    asked.push_back(interview.next()->id);
    interview = told(interview, {answer});
  }
  EXPECT_EQ(asked, (std::vector<std::string>{"title", "unit", "square", "length", "width", "height", "door",
                                             "door-width", "door-from", "door-height", "wheel-arches",
                                             "layout", "bench-depth", "bench-height", "bench-length",
                                             "cushions", "board", "table-height"}));
  EXPECT_EQ(interview.length("length"), 120_in);
  EXPECT_EQ(interview.length("height"), 74_in);
  EXPECT_EQ(interview.word("title"), "My trailer");
  EXPECT_EQ(interview.next()->id, "counter");
}

TEST(Interview, ReadsEveryWayOfWritingALengthAndSaysWhatIsWrong) {
  const Interview at_length = told({}, {"", "in", "yes"});
  for (const char* text : {"120", "10'", "10 ft", "3048 mm", "3.048 m", " 120 in "})
    EXPECT_EQ(told(at_length, {text}).length("length"), 120_in) << text;
  EXPECT_EQ(told(at_length, {"10' 0\""}).length("length"), 120_in);
  EXPECT_EQ(fault(at_length, "0"), "answer.zero");
  EXPECT_EQ(fault(at_length, "-3"), "length.negative");
  EXPECT_EQ(fault(at_length, "ten"), "length.not-a-length");
  EXPECT_EQ(fault(at_length, ""), "answer.needed");
  EXPECT_EQ(fault(told({}, {""}), "cm"), "answer.choice");
  EXPECT_EQ(fault({}, "a\tb"), "answer.text");
  EXPECT_EQ(told({}, {"", "2"}).unit(), Unit::millimetre) << "a choice by its number";
}

// Benches on both sides leave at least 12 in between: in a room 76 in wide each is at most (76 - 12) / 2 = 32
// in deep. A door 26 in wide in a wall of 120 in begins at most 94 in from the front.
TEST(Interview, RefusesWhatIsLargerThanTheTrailer) {
  const Interview at_door = told({}, {"", "in", "yes", "120", "76", "74", "right"});
  EXPECT_EQ(fault(at_door, "121"), "answer.too-long");
  const Interview at_from = told(at_door, {"26"});
  EXPECT_EQ(fault(at_from, "94 1/16"), "answer.too-long");
  const Interview at_depth = told(at_from, {"94", "68", "none", "cross dinette at the rear"});
  EXPECT_EQ(at_depth.next()->id, "bench-depth");
  EXPECT_EQ(fault(at_depth, "32 1/8"), "answer.too-long");
  EXPECT_EQ(fault(at_depth, "32"), "");
}

TEST(Interview, GoesBackAndThenAsksWhatFollowsFromTheNewAnswer) {
  const Interview square = told({}, {"", "in", "yes"});
  EXPECT_EQ(square.next()->id, "length");
  const Interview skew = told(square.back(), {"no"});
  EXPECT_EQ(skew.next()->id, "front");
  EXPECT_EQ(Interview{}.back().given(), Interview{}.given());
}

TEST(Interview, IsWrittenAndReadAgain) {
  const Interview some = told({}, {"Wren", "mm", "yes", "3048"});
  EXPECT_EQ(interview_from(some.text(), false)->given(), some.given());
  // What was prepared counts as usual when its turn comes, and is kept till then.
  const Interview ready = *interview_from("height: 70\nunit: in\ntitle: Wren\n", false);
  EXPECT_EQ(ready.next()->id, "square");
  EXPECT_NE(ready.text().find("\nheight: 70\n"), std::string::npos);
  EXPECT_EQ(told(ready, {"", "120", "76"}).next()->otherwise, "70");
}

TEST(Interview, NamesTheLineOfAnAnswerThatCannotBe) {
  const auto first = [](const std::string& text) {
    const Result<Interview> result = interview_from(text, true);
    return result ? "" : std::to_string(result.problems().front().line) + " " + result.problems().front().id;
  };
  EXPECT_EQ(first("# mine\n\nunit: in\nlength: long"), "4 length.not-a-length");
  EXPECT_EQ(first("length 120"), "1 answer.line");
  EXPECT_EQ(first("length: 120\nwidth: 76\nheight: 74\ndoor-from: 60\nbed-width: 40"), "5 answer.not-asked");
  EXPECT_EQ(first("unit: cm"), "1 answer.choice");
}

class StartedPlan : public testing::TestWithParam<std::string> {};

TEST_P(StartedPlan, IsAPlanInHouseOrderForEveryLayoutInEitherUnit) {
  for (const char* unit :
       {"unit: in\n", "unit: mm\nlength: 3048\nwidth: 1930\nheight: 1880\ndoor-from: 1524\n"}) {
    const Interview asked = usual_room(
        std::string(unit) + (GetParam() == "side dinette" ? "from-front: 10 in\n" : "") +
        "layout: " + GetParam() +
        "\nwindows: 1\nwindow-1-from: 20 in\ncounter: left\ncounter-from: 0\n"
        "heater: yes\nheater-length: 7 in\nheater-width: 10 in\nheater-height: 14 in\nheater-from-front: 30 "
        "in\nheater-from-left: 30 in\n"
        "plate: yes\nplate-front: 36 in\nplate-back: 6 in\nplate-sides: 12 in\nplate-top: 24 in\noutlet: "
        "front\noutlet-from: 30 in\n"
        "wheel-arches: both\narch-length: 28 in\narch-width: 6 in\narch-height: 9 in\narch-from: 70 in\n");
    const Result<std::string> text = started_plan(asked);
    ASSERT_TRUE(text.ok()) << listed(text.problems());
    const Plan plan = plan_from(*text);
    EXPECT_NE(plan.configuration("day"), nullptr);
    EXPECT_NE(plan.configuration("night"), nullptr);
    EXPECT_EQ(plan->openings.size(), 2U);
    EXPECT_NE(plan.fixture("left arch"), nullptr);
    EXPECT_EQ(plan.fixture("outlet")->solid.outline().bounds().low.y, Length::inches(30));
    EXPECT_EQ(plan.piece("heater")->length, Length::inches(7));
  }
}

INSTANTIATE_TEST_SUITE_P(Layouts, StartedPlan, testing::ValuesIn(start_layouts()), [](const auto& layout) {
  std::string name = layout.param;
  std::erase_if(name, [](char c) { return c == ' ' || c == '-'; });
  return name;
});

// Room 120 x 76 in, benches 22 in deep and 44 in long, 14 in high, a board of 3/4 in: the bay between them is
// 76 - 2 * 22 = 32 in wide; the table has 1/4 in of play, so it is 43 3/4 x 31 3/4 in, on ledges whose tops
// are at 14 - 3/4 = 13 1/4 in; its leg is 28 - 3/4 = 27 1/4 in long and stands in the middle, (32 - 2) / 2 =
// 15 in from a bench.
TEST(StartedPlanOfACrossDinette, HasTheSizesThatFollow) {
  const Plan plan = plan_from(*started_plan(usual_room("")));
  EXPECT_EQ(plan.piece("table")->length, Length::inches(175, 4));
  EXPECT_EQ(plan.piece("table")->width, Length::inches(127, 4));
  EXPECT_EQ(plan.piece("leg")->thickness, Length::inches(109, 4));
  EXPECT_EQ(plan.fixture("left ledge")->solid.top(), Length::inches(53, 4));
  EXPECT_EQ(plan.fixture("right bench")->solid.outline().bounds(), (Rect{{76_in, 54_in}, {120_in, 76_in}}));
}

// The rear wall is 1/2 in narrower than the front one, the walls 120 in, both diagonals as long: an even
// taper of 1/4 in a side, to first order. The benches stand 1/4 in inside the box around the room at the side
// where the wall comes in most.
TEST(StartedPlanOutOfSquare, SaysEachMisfitAndKeepsFurnitureInside) {
  const Interview asked = *interview_from(
      "square: no\nfront: 76\nrear: 75 1/2\nleft: 120\nright: 120\nfront-left-to-rear-right: 141 "
      "7/8\nfront-right-to-rear-left: 141 3/4\n"
      "height: 74\ndoor-from: 60\n",
      true);
  const std::vector<std::string> misfits = misfits_of(asked);
  ASSERT_EQ(misfits.size(), 6U);
  const Result<std::string> text = started_plan(asked);
  ASSERT_TRUE(text.ok()) << listed(text.problems());
  for (const std::string& line : misfits)
    EXPECT_NE(text->find("// " + line + "\n"), std::string::npos) << line;
  const Plan plan = plan_from(*text);
  for (const char* bench : {"left bench", "right bench"}) {
    const Rect box = plan.fixture(bench)->solid.outline().bounds();
    EXPECT_GE(box.low.y, 0_in);
    EXPECT_LE(box.high.x, plan->interior.length);
  }
}

}  // namespace
}  // namespace berthwright
