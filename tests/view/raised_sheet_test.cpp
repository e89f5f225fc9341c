#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "support/drawn_room.h"
#include "view/paper.h"

namespace berthwright {
namespace {

Sheet raised_of(DrawnRoom& room) {
  const std::vector<Sheet> drawn = sheets(room.plan(), room.answer());
  return *std::ranges::find_if(drawn, [](const Sheet& sheet) { return sheet.file.ends_with("-raised"); });
}

std::vector<PaperBox> reaches(const Sheet& sheet, std::string_view group, Ink ink) {
  std::vector<PaperBox> out;
  for (const Group& one : sheet.groups)
    for (const Mark& mark : one.marks)
      if (const Path* path = std::get_if<Path>(&mark);
          path && path->ink == ink && one.title.starts_with(group)) {
        PaperRing ring{path->from};
        for (const Stretch& stretch : path->stretches) ring.push_back(stretch.to);
        out.push_back(bounds(ring));
      }
  return out;
}

bool tells(const Sheet& sheet, std::string_view words) {
  return sheet.description.find(words) != std::string::npos;
}

// 120 in are 3048 mm along; across, 72 in or 1828.8 mm lean by three tenths, 548.64 mm, and rise by six.
TEST(RaisedSheet, IsTrueToScaleAlongTheTrailer) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.piece("mat", Piece::Kind::cushion, Region(inches(10, 10, 70, 40)), {}, 4_in);
  const Sheet sheet = raised_of(room);
  const PaperBox floor = reaches(sheet, "Room", Ink::quiet).at(0);
  EXPECT_NEAR(static_cast<double>(floor.width().micrometres()),
              (3'048'000 + 548'640) / static_cast<double>(sheet.scale), 2);
  EXPECT_NEAR(static_cast<double>(floor.height().micrometres()),
              1'828'800 * 0.6 / static_cast<double>(sheet.scale), 2);
}

// In a photocopy tints are lost: lines and dots stay.
TEST(RaisedSheet, TellsCushionsBoardsAndTablesApartWithoutColour) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.piece("mat", Piece::Kind::cushion, Region(inches(10, 10, 50, 40)), {}, 4_in);
  Sheet sheet = raised_of(room);
  EXPECT_FALSE(reaches(sheet, "Things", Ink::foam_dots).empty());
  EXPECT_TRUE(reaches(sheet, "Things", Ink::grain).empty());
  const auto lines_on_a = [](Piece::Kind kind) {
    DrawnRoom one(Unit::inch, 120_in, 72_in);
    one.piece("top", kind, Region(inches(10, 10, 50, 40)), {}, 1_in);
    const Sheet drawn = raised_of(one);
    EXPECT_TRUE(reaches(drawn, "Things", Ink::foam_dots).empty());
    std::vector<PaperLength> levels;
    for (const PaperBox& box : reaches(drawn, "Things", Ink::grain)) levels.push_back(box.low.y);
    std::ranges::sort(levels);
    return levels;
  };
  // A board's lines stand 1.5 mm apart, a table's in pairs 0.9 mm apart.
  const auto board = lines_on_a(Piece::Kind::board);
  const auto table = lines_on_a(Piece::Kind::table);
  ASSERT_GT(board.size(), 3U);
  ASSERT_GT(table.size(), 3U);
  const auto has_gap = [](const std::vector<PaperLength>& levels, PaperLength gap) {
    for (std::size_t i = 1; i < levels.size(); ++i)
      if (levels[i] - levels[i - 1] == gap) return true;
    return false;
  };
  EXPECT_TRUE(has_gap(board, paper_mm(15, 10)));
  EXPECT_FALSE(has_gap(board, paper_mm(9, 10)));
  EXPECT_TRUE(has_gap(table, paper_mm(9, 10)));
}

TEST(RaisedSheet, SaysWhatIsCutOffLeftOffAndHidden) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("wardrobe", Fixture::Kind::cabinet, inches(0, 0, 20, 20), {}, 70_in)
      .fixture("roof locker", Fixture::Kind::locker, inches(60, 0, 120, 12), 52_in, 66_in)
      .fixture("bench", Fixture::Kind::bench, inches(60, 30, 110, 60), {}, 14_in)
      .piece("mat", Piece::Kind::cushion, Region(inches(60, 30, 110, 60)), 14_in, 18_in);
  const Sheet sheet = raised_of(room);
  EXPECT_TRUE(tells(sheet, "Cut off at 4' 0\" (1219.2 mm): wardrobe."));
  EXPECT_TRUE(tells(sheet, "Left off, higher than that: roof locker."));
  EXPECT_TRUE(tells(sheet, "Hidden by other things: bench."));
  EXPECT_TRUE(tells(sheet, "It shows wardrobe, bench and mat."));
}

// A bunk is what the night is about, however high it is: 6/10 of 60 in is 914.4 mm above the floor's nearest
// corner and the 3/10 by which 60 in of depth lean belong to the place, not to the height.
TEST(RaisedSheet, ShowsPiecesHoweverHighTheyAre) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("bunk cleat", Fixture::Kind::ledge, inches(0, 0, 70, 2), 54_in, 56_in)
      .piece("bunk board", Piece::Kind::board, Region(inches(0, 0, 70, 30)), 56_in, 57_in)
      .piece("bunk mattress", Piece::Kind::cushion, Region(inches(0, 0, 70, 30)), 57_in, 60_in);
  const Sheet sheet = raised_of(room);
  EXPECT_TRUE(tells(sheet, "bunk board and bunk mattress."));
  EXPECT_TRUE(tells(sheet, "Left off, higher than that: bunk cleat."));
  const PaperBox floor = reaches(sheet, "Room", Ink::quiet).at(0);
  const std::vector<PaperBox> tops = reaches(sheet, "Things", Ink::cushion);
  ASSERT_FALSE(tops.empty());
  const PaperBox& top = tops.back();
  EXPECT_NEAR(static_cast<double>((floor.high.y - top.high.y).micrometres()),
              914'400 / static_cast<double>(sheet.scale), 2);
}

}  // namespace
}  // namespace berthwright
