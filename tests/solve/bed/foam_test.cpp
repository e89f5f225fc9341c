#include "solve/bed/foam.h"

#include <gtest/gtest.h>

#include "support/trailer_text.h"

namespace berthwright {
namespace {

// The grade of the trade as upholsteryresource.com/node/81 explains it: 2535 is 2.5 lb per cubic ft and 35 lb
// at 25 %, 1560 is 1.5 and 60.
TEST(FoamGrade, IsReadFromItsFourDigits) {
  EXPECT_EQ(foam_grade("2535"), (FoamGrade{25, 35}));
  EXPECT_EQ(foam_grade("1560"), (FoamGrade{15, 60}));
  EXPECT_EQ(foam_grade("HR 2835, wrapped"), (FoamGrade{28, 35}));
  EXPECT_EQ(foam_grade("foam(1824)"), (FoamGrade{18, 24}));
}

TEST(FoamGrade, IsNeverGuessedOrConverted) {
  for (const char* text : {"", "foam", "2.5 lb 35", "25350", "253", "2535N", "N2535", "12.2535", "2535/1824",
                           "2535 or 1824", "9935", "0535", "2504", "40 kg/m3 170 N", "°2535"}) {
    SCOPED_TRACE(text);
    EXPECT_FALSE(foam_grade(text));
  }
}

// A bunk 75 x 24 on a shelf; `foam` are the members of its cushion.
TrailerText on_a_shelf(const std::string& foam) {
  TrailerText text;
  text.fixtures = {
      R"({"id": "bunk", "kind": "shelf", "length": 75, "width": 24, "at": {"front": 0, "left": 0},
                       "base": 10, "top": 11})"};
  text.pieces = {R"({"id": "M", "kind": "cushion", "length": 75, "width": 24, )" + foam + "}"};
  text.night = {R"({"piece": "M", "at": {"front": 0, "left": 0}, "on": "bunk"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
  return text;
}

// Common practice, no source: under 4 in a sleeper feels the board, under 3 in at once.
TEST(Foam, OnABoardIsAskedToBeFourInches) {
  struct Case {
    const char* thickness;
    Status status;
    const char* variant;
  };
  for (const Case& one :
       {Case{"2", Status::not_met, "felt at once"}, Case{"2 63/64", Status::not_met, "felt at once"},
        Case{"3", Status::not_met, ""}, Case{"3 63/64", Status::not_met, ""}, Case{"4", Status::met, ""},
        Case{"5", Status::met, ""}}) {
    SCOPED_TRACE(one.thickness);
    const Answered made(on_a_shelf(std::string(R"("thickness": ")") + one.thickness + '"'));
    const Finding finding = made.one("foam.thickness");
    EXPECT_EQ(finding.status, one.status);
    EXPECT_EQ(finding.variant, one.variant);
    EXPECT_EQ(finding.subjects.empty(), one.status == Status::met);
    EXPECT_EQ(exit_code(made.answer), 0);
  }
}

// Common practice, no source: 28 lb at 25 %. 1824 is what backs are made of.
TEST(Foam, OnABoardIsAskedForTwentyEightPounds) {
  const auto firmness = [](const char* foam) {
    return Answered(on_a_shelf(std::string(R"("thickness": 4, "foam": ")") + foam + '"'))
        .one("foam.firmness");
  };
  EXPECT_EQ(firmness("1824").status, Status::not_met);
  EXPECT_EQ(firmness("1824").measured, Quantity(Count{24}));
  EXPECT_EQ(firmness("1824").subjects, (std::vector<std::string>{"M"}));
  EXPECT_EQ(firmness("2527").status, Status::not_met);
  EXPECT_EQ(firmness("2528").status, Status::met);
  EXPECT_EQ(firmness("2535").status, Status::met);
}

TEST(Foam, OfUnknownGradeIsToldOnceForTheBedAndNotCompared) {
  for (const char* foam : {R"("thickness": 4)", R"("thickness": 4, "foam": "40 kg/m3, 170 N")"}) {
    const Answered made(on_a_shelf(foam));
    EXPECT_EQ(made.one("foam.grade").status, Status::unknown);
    EXPECT_EQ(made.one("foam.grade").subjects, (std::vector<std::string>{"M"}));
    EXPECT_EQ(made.one("foam.grade").cure, (Cure{Cure::Kind::state_foam, "bed", {}}));
    EXPECT_TRUE(made.of("foam.firmness").empty());
  }
  EXPECT_TRUE(Answered(on_a_shelf(R"("thickness": 4, "foam": "2535")")).of("foam.grade").empty());
}

// A topper 2 in thick on a cushion of 4 in lies on foam; the cushion beneath is no surface of the bed.
TEST(Foam, OnFoamIsNotAskedForItsThickness) {
  TrailerText text = on_a_shelf(R"("thickness": 4)");
  text.pieces.push_back(R"({"id": "T", "kind": "cushion", "length": 75, "width": 24, "thickness": 2})");
  text.night.push_back(R"({"piece": "T", "at": {"front": 0, "left": 0}, "on": "M"})");
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["T"]})"};
  EXPECT_TRUE(Answered(text).of("foam.thickness").empty());
  text.night.back() = R"({"piece": "T", "at": {"front": 0, "left": 30}, "on": "floor"})";
  EXPECT_EQ(Answered(text).one("foam.thickness").measured, Quantity(2_in));
}

// Seats of 2535 and backs of 1824 side by side: the bed is as soft as its backs, whatever their order.
TEST(Foam, OfTheSoftestPieceIsTold) {
  TrailerText text = on_a_shelf(R"("thickness": 4, "foam": "2535")");
  text.pieces.push_back(
      R"({"id": "B", "kind": "cushion", "length": 75, "width": 24, "thickness": 4, "foam": "1824"})");
  text.fixtures.push_back(R"({"id": "other", "kind": "bench", "length": 75, "width": 24,
                              "at": {"front": 0, "left": 24}, "top": 11})");
  text.night.push_back(R"({"piece": "B", "at": {"front": 0, "left": 24}, "on": "other"})");
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M", "B"]})"};
  for (int turn = 0; turn < 2; ++turn) {
    for (const TrailerText& one : {text, text.mirrored()}) {
      const Answered made(one);
      EXPECT_EQ(made.one("foam.firmness").measured, Quantity(Count{24}));
      EXPECT_EQ(made.one("foam.firmness").subjects, (std::vector<std::string>{"B"}));
      EXPECT_EQ(made.one("foam.thickness").measured, Quantity(4_in));
    }
    std::swap(text.night.front(), text.night.back());
    std::swap(text.pieces.front(), text.pieces.back());
  }
}

}  // namespace
}  // namespace berthwright
