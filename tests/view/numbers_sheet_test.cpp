#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "support/plan_builder.h"
#include "support/sited_plan.h"
#include "support/trailer_text.h"
#include "view/lettering.h"
#include "view/load_bars.h"
#include "view/paper.h"
#include "view/scale.h"

namespace berthwright {
namespace {

/// A room of 200 x 72 in, its coupling 40 in ahead of the front wall and its axle 80 in behind it, with what
/// stands in it and what the chassis says besides.
std::string weighed_room(const std::string& boxes, const std::string& chassis, const std::string& more = "") {
  return R"("interior": {"length": 200, "width": 72, "height": 76}, "fixtures": [)" + boxes +
         R"(], "configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "track": "60", "range": "us")" +
         chassis + "}" + more;
}
std::string stated_box(const std::string& id, int from_front, const std::string& weight) {
  return R"({"id": ")" + id + R"(", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": )" +
         std::to_string(from_front) + R"(, "left": 0}, "top": 30)" +
         (weight.empty() ? "" : R"(, "weight": )" + weight) + "}";
}
constexpr auto wheels_weighed =
    R"(, "weighed": {"coupling": "100 lb", "axle": "700 lb", "left": "340 lb", "right": "360 lb"})";

struct NumbersOf {
  explicit NumbersOf(const std::string& sections) : made(small_plan(sections)), loads(loads_of(made.plan)) {
    for (Sheet& sheet : sheets(made.plan, made.answer, {.loads = loads}))
      if (sheet.file.find("-numbers") != std::string::npos) drawn.push_back(std::move(sheet));
  }
  Answered made;
  std::vector<Loads> loads;
  std::vector<Sheet> drawn;
};

/// How far to the right of the room's front wall a place on paper is, in nature.
Length behind_front(const Sheet& sheet, PaperPoint place) {
  const PaperBox floor = reach_of(laid_paths(sheet, Ink::floor).at(0));
  return in_nature(place.x - floor.low.x, sheet.scale);
}
Length from_left_wall(const Sheet& sheet, PaperPoint place) {
  const PaperBox floor = reach_of(laid_paths(sheet, Ink::floor).at(0));
  return in_nature(floor.high.y - place.y, sheet.scale);
}
void expect_at(Length length, Length wanted) {
  EXPECT_LE(std::max(length - wanted, wanted - length), Length::millimetres(1, 10));
}

// Bare: 700 lb on the axle and 100 on the coupling put the middle of 800 lb at (700 x 80 - 100 x 40)/800 = 65
// in, and 20 lb more to the right at 60 in of track (20 x 60/2)/800 = 3/4 in right of the middle, 36 in.
TEST(NumbersSheet, ShowsCouplingAxleAndCentreOfGravityWhereTheyAre) {
  const NumbersOf of(weighed_room("", wheels_weighed));
  ASSERT_FALSE(of.drawn.empty());
  const Sheet& sheet = of.drawn.front();
  const std::vector<Path> lines_drawn = laid_paths(sheet, Ink::chassis);
  ASSERT_EQ(lines_drawn.size(), 2U);
  const Path& axle = lines_drawn[0];
  expect_at(behind_front(sheet, axle.from), 80_in);
  expect_at(from_left_wall(sheet, axle.from), 6_in);
  expect_at(from_left_wall(sheet, axle.stretches.front().to), 66_in);
  const Path& drawbar = lines_drawn[1];
  expect_at(behind_front(sheet, drawbar.from), -40_in);
  expect_at(from_left_wall(sheet, drawbar.from), 36_in);
  expect_at(behind_front(sheet, drawbar.stretches.front().to), 0_in);
  const PaperPoint middle = reach_of(laid_paths(sheet, Ink::balance).at(0)).centre();
  expect_at(behind_front(sheet, middle), 65_in);
  expect_at(from_left_wall(sheet, middle), 36_in + Length::inches(3, 4));
  EXPECT_TRUE(laid_paths(sheet, Ink::balance_area).empty());
  const std::string names = lettered(sheet, "Names and figures");
  EXPECT_NE(names.find("tongue weight 100 lb"), std::string::npos) << names;
  EXPECT_NE(names.find("axle 700 lb"), std::string::npos) << names;
  EXPECT_NE(noted(sheet).find("no figure here replaces a scale"), std::string::npos);
  EXPECT_NE(noted(sheet).find("coupling, not to scale"), std::string::npos) << "a sign of its own";
  EXPECT_NE(noted(sheet).find("wheel, not to scale"), std::string::npos);
  EXPECT_EQ(noted(sheet).find("Named on the drawing"), std::string::npos) << "nothing moves it";
  EXPECT_NE(noted(sheet).find("Wiring is for a licensed person and the local code."), std::string::npos);
}

// 0 to 800 lb at 20 in pull the middle of 800 lb from 65 in down to 42.5, half way; across from 36.75 in to
// 23.375, half way to 10.
TEST(NumbersSheet, ShowsTheAreaThatUnknownWeightsSpan) {
  const NumbersOf of(weighed_room(stated_box("a", 10, R"(["0 lb", "800 lb"])"), wheels_weighed));
  const Sheet& sheet = of.drawn.at(0);
  const PaperBox area = reach_of(laid_paths(sheet, Ink::balance_area).at(0));
  expect_at(behind_front(sheet, area.low), 42_in + Length::inches(1, 2));
  expect_at(behind_front(sheet, area.high), 65_in);
  expect_at(from_left_wall(sheet, area.high), 23_in + Length::inches(3, 8));
  EXPECT_TRUE(laid_paths(sheet, Ink::balance).empty());
}

TEST(NumbersSheet, ShowsNoWheelOfACouplingAlone) {
  const NumbersOf of(R"("configurations": {"day": []}, "chassis": {"coupling": 40})");
  EXPECT_NE(noted(of.drawn.at(0)).find("coupling, not to scale"), std::string::npos);
  EXPECT_EQ(noted(of.drawn.at(0)).find("wheel, not to scale"), std::string::npos);
}

TEST(NumbersSheet, SaysWhyItNamesThings) {
  const NumbersOf of(weighed_room(stated_box("a", 10, R"("40 lb")"), wheels_weighed));
  std::string words;
  for (const Sheet& sheet : of.drawn) words += noted(sheet);
  EXPECT_NE(words.find("Named on the drawing are the things that move the load on the coupling most"),
            std::string::npos);
  EXPECT_EQ(words.find("see the loads"), std::string::npos);
}

// A heater that says nothing: all on is at least the fan's 0.9 A.
TEST(NumbersSheet, ItsTableTellsWhatIsAtLeast) {
  const NumbersOf of(
      R"("pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right"}],
         "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "at": {"front": 40, "left": 0},
                       "base": 12, "top": 16}],
         "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}, "plugged_into": "outlet"}]},
         "supply": {"volts": 120, "circuits": [{"id": "c", "breaker": 15, "feeds": ["outlet"],
                    "loads": [{"name": "Fan", "watts": 100}]}]})");
  EXPECT_NE(lettered(of.drawn.at(0), "Circuits").find("≥ 0.9 A"), std::string::npos);
}

TEST(NumbersSheet, ShowsNoAreaOfWhatMayWeighAnything) {
  const NumbersOf of(weighed_room(stated_box("a", 10, ""), wheels_weighed));
  EXPECT_TRUE(laid_paths(of.drawn.at(0), Ink::balance_area).empty());
  EXPECT_TRUE(laid_paths(of.drawn.at(0), Ink::balance).empty());
}

// Without the wheels weighed it lies anywhere between the side walls.
TEST(NumbersSheet, SpansTheRoomWhereTheSidesWereNotWeighed) {
  const NumbersOf of(weighed_room("", R"(, "weighed": {"coupling": "100 lb", "axle": "700 lb"})"));
  const Sheet& sheet = of.drawn.at(0);
  const PaperBox area = reach_of(laid_paths(sheet, Ink::balance_area).at(0));
  expect_at(from_left_wall(sheet, area.low), 72_in);
  expect_at(from_left_wall(sheet, area.high), 0_in);
}

// 100 of 800 lb are 12.5 %: at 12.5/20 of an axis from 0 to 20 %, within 10 to 15. The right wheels carry 20
// of 700 lb more, 2.86 %, within 5.
TEST(NumbersSheet, ABarStandsWhereItsFigureIs) {
  const NumbersOf of(weighed_room("", std::string(R"(, "limits": {"whole": "750 lb"})") + wheels_weighed));
  const std::vector<LoadBar> bars = load_bars(of.made.plan, of.loads.front());
  ASSERT_EQ(bars.size(), 3U);
  EXPECT_EQ(bars[0].figures, "12.50 % of the whole, 100 lb");
  EXPECT_EQ(bars[0].asked, "asked 10 to 15 %");
  EXPECT_EQ(bars[0].verdict, "met");
  EXPECT_EQ(bars[0].from(), 0);
  EXPECT_EQ(bars[0].to(), 2000);
  EXPECT_EQ(bars[1].figures, "800 lb");
  EXPECT_EQ(bars[1].asked, "allowed at most 750 lb");
  EXPECT_EQ(bars[1].verdict, "not met");
  EXPECT_EQ(*bars[1].lines.front().low, 10'666);
  EXPECT_EQ(*bars[1].lines.front().high, 10'667);
  EXPECT_EQ(bars[2].figures, "+20 lb");
  EXPECT_EQ(bars[2].asked, "allowed at most 5 % of the axle, 35 lb");
  EXPECT_EQ(*bars[2].lines.front().low, 285);
  EXPECT_EQ(*bars[2].lines.front().high, 286);
  const Sheet& sheet = of.drawn.at(0);
  const PaperBox asked = reach_of(laid_paths(sheet, Ink::asked_range).at(0));
  const PaperBox figure = reach_of(laid_paths(sheet, Ink::figure_span).at(0));
  EXPECT_EQ(figure.centre().x, asked.centre().x);
  EXPECT_LT(figure.width(), asked.width());
}

// What may weigh anything has no end on its bar: an arrow, not a figure.
TEST(NumbersSheet, AnUnknownEndIsAnArrow) {
  const NumbersOf of(weighed_room(stated_box("a", 10, ""),
                                  std::string(R"(, "limits": {"whole": "1000 lb"})") + wheels_weighed));
  const std::vector<LoadBar> bars = load_bars(of.made.plan, of.loads.front());
  EXPECT_EQ(bars[1].figures, "at least 800 lb");
  EXPECT_EQ(bars[1].verdict, "unknown");
  EXPECT_FALSE(bars[1].lines.front().high);
}

// One on each side of the middle, neither weighed: either wheel may carry more, by anything.
TEST(NumbersSheet, ABarWithoutAnEndHasNoFigure) {
  std::string right = stated_box("b", 10, "");
  right.replace(right.find("\"left\": 0"), 9, "\"left\": 50");
  const NumbersOf of(weighed_room(stated_box("a", 10, "") + ", " + right, wheels_weighed));
  const std::vector<LoadBar> bars = load_bars(of.made.plan, of.loads.front());
  EXPECT_EQ(bars.back().figures, "unknown");
}

TEST(NumbersSheet, FullTanksHaveALineOfTheirOwn) {
  const Plan plan = plan_from(repository_text("tests/plan/loads.json"));
  const std::vector<Loads> loads = loads_of(plan);
  const std::vector<LoadBar> bars = load_bars(plan, loads.front());
  ASSERT_EQ(bars.front().lines.size(), 3U);
  EXPECT_EQ(bars.front().lines[0].tanks, "as told");
  EXPECT_EQ(bars.front().lines[2].tanks, "full");
  std::string text = repository_text("tests/plan/loads.json");
  const std::string limit = R"("whole": "1500 lb")";
  text.replace(text.find(limit), limit.size(), R"("whole": "1300 lb")");
  const Plan broken = plan_from(text);
  EXPECT_EQ(load_bars(broken, loads_of(broken).front())[3].verdict, "not met, tanks full");
  EXPECT_GT(*bars[3].lines[2].high, *bars[3].lines[0].high);
}

std::string circuits(int count) {
  std::string list;
  for (int i = 0; i < count; ++i)
    list += (list.empty() ? "" : ", ") + std::string(R"({"id": "c)") + std::to_string(i) +
            R"(", "breaker": 15, "loads": [{"name": "Pump", "watts": 60}]})";
  return R"(, "supply": {"volts": 120, "amps": 30, "circuits": [)" + list + "]}";
}

// 60 W at 120 V draw 0.5 A; the breaker of 15 A carries 12 A for hours.
TEST(NumbersSheet, ListsEveryCircuitOrSaysItInWords) {
  const NumbersOf few(weighed_room("", wheels_weighed, circuits(2)));
  const std::string table = lettered(few.drawn.at(0), "Circuits");
  EXPECT_NE(table.find("15 A"), std::string::npos) << table;
  EXPECT_NE(table.find("12 A"), std::string::npos);
  EXPECT_NE(table.find("0.5 A"), std::string::npos);
  EXPECT_NE(table.find("Pump, by a cord"), std::string::npos);
  const NumbersOf many(weighed_room("", wheels_weighed, circuits(12)));
  std::string words;
  for (const Sheet& sheet : many.drawn) {
    EXPECT_EQ(lettered(sheet, "Circuits"), "");
    words += noted(sheet);
  }
  EXPECT_NE(words.find("c11, breaker of 15 A"), std::string::npos) << words;
}

// 1500 W draw 12.5 A of the 12 A that a breaker of 15 carries for hours (NEC 210.23(A)(1)).
TEST(NumbersSheet, AHeaterAboveItsCircuitStandsOut) {
  const NumbersOf of(
      R"("pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right",
                     "watts": 1500}],
         "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "at": {"front": 40, "left": 0},
                       "base": 12, "top": 16}],
         "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}, "plugged_into": "outlet"}]},
         "supply": {"volts": 120, "circuits": [{"id": "c", "breaker": 15, "feeds": ["outlet"]}]})");
  const std::string table = lettered(of.drawn.at(0), "Circuits");
  EXPECT_NE(table.find("12.5 A"), std::string::npos) << table;
  EXPECT_NE(table.find("too much"), std::string::npos);
  EXPECT_NE(table.find("not met"), std::string::npos);
}

// Where nothing weighs anything there is no middle of it.
TEST(NumbersSheet, OfZeroWeightsShowsNoCentreOfGravity) {
  const NumbersOf of(weighed_room(stated_box("a", 10, "0"), ""));
  ASSERT_FALSE(of.drawn.empty());
  EXPECT_TRUE(laid_paths(of.drawn[0], Ink::balance).empty());
  EXPECT_TRUE(laid_paths(of.drawn[0], Ink::balance_area).empty());
  EXPECT_NE(noted(of.drawn[0]).find("What the plan holds weighs 0 lb (0.0 kg)."), std::string::npos);
  EXPECT_EQ(noted(of.drawn[0]).find("centre of gravity lies"), std::string::npos);
}

TEST(NumbersSheet, APlanThatStatesNothingHasNoneAndLoadsSaysWhy) {
  const NumbersOf of(R"("configurations": {"day": []})");
  EXPECT_TRUE(of.drawn.empty());
  EXPECT_NE(loads_text(of.made.plan, of.loads)
                .find("No numbers are drawn: the plan states no chassis and no circuit, and not"),
            std::string::npos);
  const std::string alone = R"(], "configurations": {"day": []})";
  const NumbersOf unknown(R"("fixtures": [)" + stated_box("a", 10, "") + "," +
                          stated_box("b", 40, R"("9 lb")") + alone);
  EXPECT_TRUE(unknown.drawn.empty()) << "it may lie anywhere";
  const NumbersOf weights(R"("fixtures": [)" + stated_box("a", 10, R"(["4 lb", "9 lb"])") + alone);
  EXPECT_FALSE(weights.drawn.empty());
  const NumbersOf said(weighed_room("", ""));
  EXPECT_FALSE(said.drawn.empty());
  EXPECT_EQ(loads_text(said.made.plan, said.loads).find("No numbers are drawn"), std::string::npos);
}

// Wheels wider apart than the room, a coupling far ahead of it, nothing weighed at all.
TEST(NumbersSheet, HasRoomForWhatLiesOutsideTheBody) {
  const NumbersOf of(
      R"("configurations": {"day": []}, "chassis": {"coupling": 150, "axle": 120, "track": "110", "range": "uk"})");
  const Sheet& sheet = of.drawn.at(0);
  const PaperBox ball = reach_of(laid_paths(sheet, Ink::chassis).at(1));
  EXPECT_GT(ball.low.x, paper_mm(13));
  for (const Path& wheel : laid_paths(sheet, Ink::wheel)) {
    EXPECT_GT(reach_of(wheel).low.y, paper_mm(13));
    EXPECT_LT(reach_of(wheel).high.x, sheet.width - paper_mm(13));
  }
}

/// All bars and the table lie under the plan, and in the page.
void expect_under_plan(const Sheet& sheet, std::size_t bars) {
  const PaperBox floor = reach_of(laid_paths(sheet, Ink::floor).at(0));
  const std::vector<Path> asked = laid_paths(sheet, Ink::asked_range);
  EXPECT_EQ(asked.size(), bars);
  for (const Path& bar : asked) {
    EXPECT_GT(reach_of(bar).low.y, floor.high.y);
    EXPECT_LT(reach_of(bar).high.y, sheet.height);
  }
}

// On paper the room is wider than three bars, 234 mm, of which no more than two stand beside each other: five
// take three rows, three take two.
TEST(NumbersSheet, OfAWideRoomHasRoomForItsBars) {
  const auto wide = [](const std::string& limits) {
    return R"("interior": {"length": "20 ft", "width": 60, "height": 76}, "configurations": {"day": []},
              "chassis": {"coupling": 40, "axle": 130, "track": 72, "limits": {)" +
           limits +
           R"(}, "weighed": {"coupling": "130 lb", "axle": "880 lb", "left": "440 lb", "right": "440 lb"}})";
  };
  const NumbersOf five(wide(R"("whole": "1500 lb", "axle": "1200 lb", "coupling": "200 lb")"));
  expect_under_plan(five.drawn.at(0), 5);
  const NumbersOf three(wide(R"("whole": "1500 lb")"));
  expect_under_plan(three.drawn.at(0), 3);
}

// A name that a table of the least width, 154 mm, has no column for, but one as wide as the page has.
TEST(NumbersSheet, HasRoomForATableThatTheLeastWidthDoesNotHold) {
  std::string name;
  while (text_width(name, lettering::note) < paper_mm(70)) name += 'm';
  std::string list;
  for (int i = 0; i < 9; ++i)
    list += (list.empty() ? R"({"id": "c)" : R"(, {"id": "c)") + std::to_string(i) +
            R"(", "breaker": 15, "name": ")" + name + R"("})";
  const NumbersOf of(R"("interior": {"length": 120, "width": 72, "height": 76}, "configurations": {"day": []},
                        "supply": {"volts": 120, "circuits": [)" +
                     list + "]}");
  const Sheet& sheet = of.drawn.at(0);
  const PaperBox floor = reach_of(laid_paths(sheet, Ink::floor).at(0));
  std::size_t rows = 0;
  for (const Group& group : sheet.groups) {
    if (group.title != "Circuits") continue;
    for (const Mark& mark : group.marks)
      if (const Text* text = std::get_if<Text>(&mark)) {
        EXPECT_GT(text->at.y, floor.high.y);
        ++rows;
      }
  }
  EXPECT_GT(rows, 0U);
}

}  // namespace
}  // namespace berthwright
