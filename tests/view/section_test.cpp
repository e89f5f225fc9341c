#include "view/section.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/drawn_room.h"
#include "view/levels.h"
#include "view/section_lines.h"

namespace berthwright {
namespace {

CutLine along_trailer(Length y) { return {CutLine::Along::x, y}; }
CutLine across_trailer(Length x) { return {CutLine::Along::y, x}; }

std::vector<std::string> named(const Section& section, SectionShape::Kind kind) {
  std::vector<std::string> ids;
  for (const SectionShape& shape : section.shapes)
    if (shape.kind == kind) ids.push_back(shape.placed ? shape.placed->id : shape.opening->id.text());
  return ids;
}

Section cut_of(DrawnRoom& room, const CutLine& line) {
  return section_of(room.plan(), room.answer().configurations.at(0).arrangement, line);
}

// At y = 10 in: galley and ice box (0 to 20), left bench and seat, the filler (4 to 40); the left back
// ends at 4.
TEST(Section, CutsWhatThePlaneMeetsAndSeesWhatStandsBehind) {
  DrawnRoom room = rear_dinette();
  const Section section = cut_of(room, along_trailer(10_in));
  std::vector<std::string> cut = named(section, SectionShape::Kind::cut);
  std::ranges::sort(cut);
  EXPECT_EQ(cut, (std::vector<std::string>{"front filler", "front locker", "galley", "ice box", "left bench",
                                           "seat left"}));
  const std::vector<std::string> seen = named(section, SectionShape::Kind::seen);
  EXPECT_EQ(std::ranges::count(seen, "back right"), 1);
  EXPECT_EQ(std::ranges::count(seen, "back left"), 0) << "it stands before the plane";
  EXPECT_EQ(named(section, SectionShape::Kind::far_opening), std::vector<std::string>{"door"});
  const auto bench = std::ranges::find_if(section.shapes, [](const SectionShape& s) {
    return s.kind == SectionShape::Kind::cut && s.placed->id == "left bench";
  });
  EXPECT_EQ(bench->box, (Rect{{78_in, {}}, {120_in, 14_in}}));
}

TEST(Section, AcrossItLooksForwardSoTheRearIsGone) {
  DrawnRoom room = rear_dinette();
  const Section section = cut_of(room, across_trailer(50_in));
  EXPECT_EQ(named(section, SectionShape::Kind::cut), std::vector<std::string>{"galley"});
  const std::vector<std::string> seen = named(section, SectionShape::Kind::seen);
  EXPECT_EQ(std::ranges::count(seen, "front locker"), 1);
  EXPECT_EQ(std::ranges::count(seen, "seat left"), 0);
}

TEST(Section, WhatStandsFartherIsPaintedFirst) {
  DrawnRoom room = rear_dinette();
  const Section section = cut_of(room, along_trailer(10_in));
  Length last = 1000_in;
  for (const SectionShape& shape : section.shapes) {
    if (shape.kind != SectionShape::Kind::seen) continue;
    const Length away = distance_behind(shape.placed->solid.outline(), section.line);
    EXPECT_LE(away, last);
    last = away;
  }
}

// A roof that falls from 78 in at x = 60 to 48 in at the rear wall: at x = 110 it is 78 - 30 * 50/60 = 53 in.
TEST(Section, TheRoofFollowsTheProfile) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.parts.interior.side_profile =
      Outline::free({{0_in, 0_in}, {120_in, 0_in}, {120_in, 48_in}, {60_in, 78_in}, {0_in, 78_in}}).value();
  room.piece("mat", Piece::Kind::cushion, Region(inches(80, 0, 120, 70)), 14_in, 18_in);
  const Section along = cut_of(room, along_trailer(30_in));
  EXPECT_EQ(along.room, Region(room.parts.interior.side_profile.polygon()));
  const auto over = above(along, 110_in, 18_in);
  ASSERT_TRUE(over);
  EXPECT_EQ(over->height, 53_in);
  EXPECT_EQ(over->placed, nullptr);
  const Section across = cut_of(room, across_trailer(110_in));
  EXPECT_EQ(across.room, Region(Rect{{0_in, 0_in}, {72_in, 53_in}}));
  EXPECT_FALSE(above(across, 80_in, 18_in)) << "outside the room";
}

TEST(Section, WhereTheRoofIsOffTheLatticeItIsNeverTooHigh) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  const Length odd = 48_in + one_tick;
  room.parts.interior.side_profile =
      Outline::free({{0_in, 0_in}, {120_in, 0_in}, {120_in, odd}, {0_in, 78_in}}).value();
  room.piece("mat", Piece::Kind::cushion, Region(inches(80, 0, 120, 70)), 14_in, 18_in);
  const Section section = cut_of(room, along_trailer(30_in));
  // 78 in less 30 in (less a tick) by 7/120: the exact height lies between two ticks.
  const Length at = above(section, 7_in, 18_in)->height;
  const Int128 exact120 = Int128{(78_in).ticks()} * 120 - Int128{(78_in - odd).ticks()} * 7;
  EXPECT_LE(Int128{at.ticks()} * 120, exact120);
  EXPECT_GT(Int128{at.ticks() + 1} * 120, exact120);
}

TEST(Section, ThingsOverThePlaceLowerWhatIsAbove) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("locker", Fixture::Kind::locker, inches(80, 0, 120, 12), 50_in, 64_in)
      .piece("mat", Piece::Kind::cushion, Region(inches(80, 0, 120, 70)), 14_in, 18_in);
  const Section section = cut_of(room, across_trailer(100_in));
  EXPECT_EQ(above(section, 6_in, 18_in)->height, 50_in);
  EXPECT_EQ(above(section, 6_in, 18_in)->placed->id, "locker");
  EXPECT_EQ(above(section, 20_in, 18_in)->height, 78_in);
  EXPECT_FALSE(above(section, 6_in, 55_in)) << "inside the locker";
}

DrawnConfiguration of(DrawnRoom& room, std::size_t configuration) {
  return {&room.plan(), &room.answer().configurations.at(configuration), room.answer().findings, {}};
}

TEST(SectionLines, ABedIsCutBothWaysThroughTheMiddleOfItsRectangle) {
  DrawnRoom room = rear_dinette();  // by night 78 to 120 by 0 to 72
  EXPECT_EQ(section_lines(of(room, 1), {}),
            (std::vector<CutLine>{along_trailer(36_in), across_trailer(99_in)}));
}

TEST(SectionLines, WithoutBedOrSeatThereIsNone) {
  DrawnRoom room = rear_dinette();
  EXPECT_TRUE(section_lines(of(room, 0), {}).empty());
}

SittingPlace place(Wall faces, const Rect& clear) {
  return {nullptr, faces, {}, {half(clear.low.x + clear.high.x), half(clear.low.y + clear.high.y)},
          clear,   18_in};
}

// Two seats that face each other across the trailer are cut by one line across; the one along goes through
// the first of them. A settee that looks to the rear wants its own line along, which then serves for it.
TEST(SectionLines, ASeatIsCutTheWayThePersonLooks) {
  DrawnRoom room = rear_dinette();
  const SittingPlace left = place(Wall::right, inches(78, 4, 120, 22));
  const SittingPlace right = place(Wall::left, inches(80, 50, 120, 68));
  const SittingPlace settee = place(Wall::rear, inches(4, 0, 24, 72));
  EXPECT_EQ(section_lines(of(room, 0), {left, right}),
            (std::vector<CutLine>{along_trailer(13_in), across_trailer(99_in)}));
  EXPECT_EQ(section_lines(of(room, 0), {left, right, settee}),
            (std::vector<CutLine>{along_trailer(36_in), across_trailer(99_in)}));
}

TEST(SectionLines, TwoBedsApartAreCutApart) {
  DrawnRoom room(Unit::inch, 144_in, 72_in);
  room.piece("one", Piece::Kind::cushion, Region(inches(0, 0, 30, 72)), 14_in, 18_in)
      .piece("two", Piece::Kind::cushion, Region(inches(100, 0, 140, 72)), 14_in, 18_in)
      .bed("a", {"one"})
      .bed("b", {"two"});
  EXPECT_EQ(section_lines(of(room, 0), {}),
            (std::vector<CutLine>{along_trailer(36_in), across_trailer(15_in), across_trailer(120_in)}));
}

// Each with the end of what lies there: from there a line leads to the tag.
TEST(Levels, AreToldFromTheFloorUpEachByWhatLiesThere) {
  DrawnRoom room = rear_dinette();
  EXPECT_EQ(levels_of(cut_of(room, along_trailer(10_in))),
            (std::vector<Level>{{{}, "floor", 120_in},
                                {14_in, "left bench top", 120_in},
                                {15_in, "front filler top", 20_in},
                                {18_in, "seat left top", 120_in},
                                {78_in, "roof", 120_in}}));
}

TEST(Levels, OfTheSameHeightAreOne) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("bench", Fixture::Kind::bench, inches(80, 0, 120, 22), {}, 14_in)
      .fixture("settee", Fixture::Kind::bench, inches(0, 0, 20, 22), {}, 14_in)
      .piece("board", Piece::Kind::board, Region(inches(60, 0, 80, 22)), 13_in, 14_in + one_tick);
  const std::vector<Level> levels = levels_of(cut_of(room, along_trailer(10_in)));
  ASSERT_EQ(levels.size(), 3U);
  EXPECT_EQ(levels[1].name, "bench tops, board top");
  EXPECT_EQ(levels[1].from, 120_in);
}

// By night two pairs of cushions on two heights: "cushion tops" twice would tell them apart for nobody.
TEST(Levels, ThatWouldBearTheSameWordsBearNames) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  const auto cushion = Piece::Kind::cushion;
  room.piece("a", cushion, Region(inches(0, 0, 20, 72)), 14_in, 18_in)
      .piece("b", cushion, Region(inches(20, 0, 40, 72)), 13_in, 16_in)
      .piece("c", cushion, Region(inches(40, 0, 60, 72)), 13_in, 16_in)
      .piece("d", cushion, Region(inches(60, 0, 80, 72)), 14_in, 18_in);
  const std::vector<Level> levels = levels_of(cut_of(room, along_trailer(10_in)));
  ASSERT_EQ(levels.size(), 4U);
  EXPECT_EQ(levels[1], (Level{16_in, "b, c", 60_in}));
  EXPECT_EQ(levels[2], (Level{18_in, "a, d", 80_in}));
}

// The lower of two cushions ends at 60 in: its line begins there, left of the section's right wall.
TEST(Levels, TagsAreLedFromWhatTheyMeasure) {
  const LevelColumn column = level_column({{16_in, "low", 60_in}, {18_in, "high", 120_in}}, Unit::inch);
  const PlanView view{20, {paper_mm(20), paper_mm(100)}};
  const std::vector<Mark> marks = marks_of(column, view, paper_mm(180), paper_mm(20), paper_mm(102));
  std::vector<PaperPoint> begins;
  for (const Mark& mark : marks)
    if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == Ink::dimension)
      begins.push_back(path->from);
  ASSERT_EQ(begins.size(), 2U);
  EXPECT_EQ(begins[0], view({60_in, 16_in}));
  EXPECT_EQ(begins[1], view({120_in, 18_in}));
}

TEST(Levels, MarksOfNeighboursDoNotMeet) {
  const LevelColumn column = level_column(
      {{{}, "floor", {}}, {1_in, "a", {}}, {2_in, "b", {}}, {3_in, "c", {}}, {70_in, "roof", {}}},
      Unit::inch);
  const PlanView view{24, {paper_mm(20), paper_mm(100)}};
  const std::vector<Mark> marks = marks_of(column, view, paper_mm(120), paper_mm(20), paper_mm(102));
  std::vector<PaperBox> boxes;
  for (const Mark& mark : marks)
    if (const Text* text = std::get_if<Text>(&mark)) boxes.push_back(box_of(*text));
  ASSERT_EQ(boxes.size(), 10U);
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    EXPECT_GE(boxes[i].low.y, paper_mm(20));
    EXPECT_LE(boxes[i].high.y, paper_mm(102));
    EXPECT_LE(boxes[i].high.x, paper_mm(120) + column.width);
    for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(overlaps(boxes[i], boxes[j]));
  }
}

}  // namespace
}  // namespace berthwright
