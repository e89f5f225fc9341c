#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include <berthwright/view/sheets.h>

#include "support/drawn_room.h"
#include "view/cut_marks.h"
#include "view/section_lines.h"
#include "view/walls.h"

namespace berthwright {
namespace {

CutLine lengthwise(Length y) { return {CutLine::Along::x, y}; }
CutLine crosswise(Length x) { return {CutLine::Along::y, x}; }

SittingPlace seat_at(Wall faces, const Rect& clear) {
  return {nullptr, faces, {}, {half(clear.low.x + clear.high.x), half(clear.low.y + clear.high.y)},
          clear,   18_in};
}

std::vector<Length> cut_lengthwise(const std::vector<SittingPlace>& places) {
  DrawnRoom room = rear_dinette();
  const DrawnConfiguration of{&room.plan(), &room.answer().configurations.at(0), {}, {}};
  std::vector<Length> at;
  for (const CutLine& line : section_lines(of, places))
    if (line.along == CutLine::Along::x) at.push_back(line.at);
  return at;
}

// The middle half of the seat from 0 to 40 in is 10 to 30, ends included. The middle of the second seat is 30
// (20 to 40) or 10 (0 to 20); beyond by a tick it needs a line of its own.
TEST(SectionLines, ALineServesUpToTheEndsOfTheMiddleHalf) {
  const SittingPlace wide = seat_at(Wall::rear, inches(0, 0, 20, 40));
  const auto shifted = [](int from, int to, Length by) {
    Rect box = inches(60, from, 80, to);
    box.low.y = box.low.y + by * 2;
    return seat_at(Wall::rear, box);
  };
  EXPECT_EQ(cut_lengthwise({wide, shifted(20, 40, {})}), std::vector<Length>{30_in});
  EXPECT_EQ(cut_lengthwise({wide, shifted(20, 40, one_tick)}),
            (std::vector<Length>{20_in, 30_in + one_tick}));
  EXPECT_EQ(cut_lengthwise({wide, shifted(0, 20, {})}), std::vector<Length>{10_in});
  EXPECT_EQ(cut_lengthwise({wide, shifted(0, 20, -one_tick)}),
            (std::vector<Length>{10_in - one_tick, 20_in}));
}

// Of a narrow seat the middle half is narrower than 6 in: there 3 in to either side are one with the middle.
TEST(SectionLines, WithinThreeInchesLinesAreOne) {
  const SittingPlace narrow = seat_at(Wall::rear, inches(0, 16, 20, 24));  // 17 to 23 serve it
  Rect other = inches(60, 19, 80, 27);                                     // and 20 to 26 this
  EXPECT_EQ(cut_lengthwise({narrow, seat_at(Wall::rear, other)}), std::vector<Length>{20_in});
  other.high.y = other.high.y + one_tick * 2;
  EXPECT_EQ(cut_lengthwise({narrow, seat_at(Wall::rear, other)}),
            (std::vector<Length>{20_in, 23_in + one_tick}));
}

TEST(SectionLines, AKnownPlaneIsUsedAgainWhereItServesAsMany) {
  DrawnRoom room = rear_dinette();  // by night a bed of 78 to 120 by 0 to 72: 88 1/2 to 109 1/2, 18 to 54
  const DrawnConfiguration night{&room.plan(), &room.answer().configurations.at(1), {}, {}};
  EXPECT_EQ(section_lines(night, {}, {lengthwise(20_in), crosswise(109_in)}),
            (std::vector<CutLine>{lengthwise(20_in), crosswise(109_in)}));
  EXPECT_EQ(section_lines(night, {}, {lengthwise(17_in), crosswise(110_in)}),
            (std::vector<CutLine>{lengthwise(36_in), crosswise(99_in)}));
}

TEST(SectionCuts, ALetterMeansOnePlaneInAllConfigurations) {
  DrawnRoom room(Unit::inch, 144_in, 72_in);
  const auto mat = Piece::Kind::cushion;
  room.begin("day")
      .piece("one", mat, Region(inches(0, 0, 30, 72)), 14_in, 18_in)
      .stow("two", "one")
      .bed("a", {"one"})
      .begin("night")
      .piece("two", mat, Region(inches(100, 0, 140, 72)), 14_in, 18_in)
      .stow("one", "two")
      .bed("b", {"two"})
      .begin("away")
      .piece("one", mat, Region(inches(1, 0, 31, 72)), 14_in, 18_in)
      .stow("two", "one")
      .bed("c", {"one"});
  std::vector<DrawnConfiguration> all;
  for (const ConfigurationAnswer& answer : room.answer().configurations)
    all.push_back({&room.plan(), &answer, {}, {}});
  const auto cuts = section_cuts(all);
  ASSERT_EQ(cuts.size(), 3U);
  EXPECT_EQ(cuts[0], (std::vector<SectionCut>{{lengthwise(36_in), "A"}, {crosswise(15_in), "B"}}));
  EXPECT_EQ(cuts[1], (std::vector<SectionCut>{{lengthwise(36_in), "A"}, {crosswise(120_in), "C"}}));
  EXPECT_EQ(cuts[2], cuts[0]) << "an inch beside: the same planes serve";
}

TEST(SectionCuts, LettersThatReadAsFiguresAreLeftOutAndNoneComesTwice) {
  EXPECT_EQ(section_letter(0), "A");
  EXPECT_EQ(section_letter(7), "H");
  EXPECT_EQ(section_letter(8), "J");
  EXPECT_EQ(section_letter(23), "Z");
  EXPECT_EQ(section_letter(24), "AA");
  EXPECT_EQ(section_letter(24 + 23), "AZ");
  EXPECT_EQ(section_letter(24 + 24), "BA");
  std::set<std::string> letters;
  for (std::size_t i = 0; i < 1000; ++i) letters.insert(section_letter(i));
  EXPECT_EQ(letters.size(), 1000U);
}

// At 1:20 on paper: x = 2000 mm lies 100 mm right of the origin, y = 500 mm lies 25 mm up.
TEST(CutMarks, StandOutsideBothWallsAndPointTheWayTheSectionLooks) {
  DrawnRoom room(Unit::millimetre, 3000_mm, 2000_mm);
  room.piece("mat", Piece::Kind::cushion, Region(mm(0, 0, 500, 500)), {}, 100_mm);
  const std::vector<SectionCut> cuts{{crosswise(2000_mm), "B"}, {lengthwise(500_mm), "A"}};
  const PlanView view{20, {paper_mm(50), paper_mm(150)}};
  const PaperBox face{{paper_mm(50) - wall_band, paper_mm(50) - wall_band},
                      {paper_mm(200) + wall_band, paper_mm(150) + wall_band}};
  const std::vector<CutMark> marks = cut_marks(room.plan(), cuts, 20);
  ASSERT_EQ(marks.size(), 4U);
  const auto stroke = [&](std::size_t i) { return std::get<Path>(marks_of(marks[i], view, face).at(0)); };
  const auto head = [&](std::size_t i) { return std::get<Path>(marks_of(marks[i], view, face).at(2)); };
  EXPECT_EQ(marks[0].wall, Wall::left);
  EXPECT_EQ(stroke(0).from.x, paper_mm(150));
  EXPECT_GT(stroke(0).from.y, face.high.y);
  EXPECT_EQ(marks[1].wall, Wall::right);
  EXPECT_LT(stroke(1).from.y, face.low.y);
  EXPECT_EQ(marks[2].wall, Wall::front);
  EXPECT_EQ(stroke(2).from.y, paper_mm(125));
  EXPECT_LT(stroke(2).from.x, face.low.x);
  EXPECT_EQ(marks[3].wall, Wall::rear);
  for (std::size_t i = 0; i < 4; ++i) {
    // Its point is next to the stroke, its base behind: right of it, or below where one looks to the right
    // wall.
    const PaperPoint tip = head(i).from;
    const PaperPoint base = head(i).stretches.at(0).to;
    EXPECT_LT(std::abs((i < 2 ? tip.x - stroke(i).from.x : tip.y - stroke(i).from.y).micrometres()), 400);
    EXPECT_GT(i < 2 ? base.x - tip.x : base.y - tip.y, paper_mm(2));
    const LabelWish letter = letter_wish(marks[i], view, face, Unit::millimetre);
    EXPECT_EQ(letter.wordings.at(0).lines, std::vector<std::string>{i < 2 ? "B" : "A"});
    EXPECT_GT(i < 2 ? letter.target.x - tip.x : letter.target.y - tip.y, paper_mm(4));
  }
  EXPECT_EQ(depth_of(marks, Wall::left), depth_of(marks, Wall::rear));
  EXPECT_EQ(depth_of({marks[0], marks[1]}, Wall::rear), PaperLength{});
}

TEST(CutMarks, StandInRowsWhereTheyWouldMeetAndKeepOffTheLeavesOfDoors) {
  DrawnRoom room(Unit::millimetre, 3000_mm, 2000_mm);
  room.piece("mat", Piece::Kind::cushion, Region(mm(0, 0, 500, 500)), {}, 100_mm);
  room.parts.openings = {{OpeningId("door"),
                          "",
                          Opening::Kind::door,
                          Wall::right,
                          1000_mm,
                          600_mm,
                          1700_mm,
                          {},
                          Opening::Swing::out,
                          Wall::front,
                          true,
                          {}}};
  const std::vector<SectionCut> cuts{{crosswise(100_mm), "A"},
                                     {crosswise(180_mm), "B"},
                                     {crosswise(600_mm), "C"},
                                     {crosswise(1300_mm), "D"}};
  const std::vector<CutMark> marks = cut_marks(room.plan(), cuts, 20);
  const auto out = [&](std::size_t cut, Wall wall) {
    return std::ranges::find_if(marks,
                                [&](const CutMark& m) { return m.cut == &cuts[cut] && m.wall == wall; })
        ->out;
  };
  EXPECT_EQ(out(0, Wall::left), out(2, Wall::left));
  EXPECT_GE(out(1, Wall::left) - out(0, Wall::left), paper_mm(6)) << "80 mm beside it are 4 on paper";
  EXPECT_EQ(out(3, Wall::left), out(0, Wall::left));
  // The leaf, 600 mm wide or 30 on paper, stands ajar by 20 degrees: 30 x 0.342 = 10.26 mm.
  EXPECT_GT(out(3, Wall::right), paper_mm(1026, 100));
}

TEST(CutMarks, EverySectionOfASheetHasItsLetterOnThePlanOfItsConfiguration) {
  DrawnRoom room = rear_dinette();
  const std::vector<Sheet> drawn = sheets(room.plan(), room.answer());
  const auto count = [](const Sheet& sheet, std::string_view words) {
    std::ptrdiff_t found = 0;
    for (const Group& group : sheet.groups)
      for (const Mark& mark : group.marks)
        if (const Text* text = std::get_if<Text>(&mark)) found += text->words == words;
    return found;
  };
  ASSERT_EQ(drawn[1].file, "2-night");
  EXPECT_EQ(count(drawn[0], "A"), 0) << "by day nothing is cut";
  for (const char* letter : {"A", "B"}) {
    EXPECT_EQ(count(drawn[1], letter), 2) << letter;
    EXPECT_EQ(count(drawn[2], std::string("Section ") + letter + "–" + letter + ", night"), 1) << letter;
  }
}

}  // namespace
}  // namespace berthwright
