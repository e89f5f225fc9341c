#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <tuple>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "support/drawn_room.h"
#include "support/xml_nesting.h"
#include "view/paper.h"

namespace berthwright {
namespace {

std::vector<Path> paths(const Sheet& sheet, Ink ink) {
  std::vector<Path> out;
  for (const Group& group : sheet.groups)
    for (const Mark& mark : group.marks)
      if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink)
        out.push_back(*path);
  return out;
}

std::vector<Text> texts(const Sheet& sheet) {
  std::vector<Text> out;
  for (const Group& group : sheet.groups)
    for (const Mark& mark : group.marks)
      if (const Text* text = std::get_if<Text>(&mark)) out.push_back(*text);
  return out;
}

bool says(const Sheet& sheet, std::string_view words) {
  return std::ranges::any_of(texts(sheet),
                             [&](const Text& t) { return t.words.find(words) != std::string::npos; });
}

PaperBox bounds_of(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return bounds(ring);
}

// A traveller who faces the left edge of the page has the left hand at the foot of it.
TEST(Sheets, TheFrontIsAtTheLeftAndTheLeftWallAtTheFootOfThePage) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.piece("front left corner", Piece::Kind::cushion, Region(inches(0, 0, 30, 20)), {}, 4_in);
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  const PaperBox wall = bounds_of(paths(sheet, Ink::wall).at(0));
  const PaperBox piece = bounds_of(paths(sheet, Ink::cushion).at(0));
  EXPECT_EQ(piece.low.x, wall.low.x);
  EXPECT_EQ(piece.high.y, wall.high.y);
  EXPECT_LT(piece.high.x, wall.high.x);
  EXPECT_GT(piece.low.y, wall.low.y);
}

TEST(Sheets, AreTrueToScale) {
  DrawnRoom room = rear_dinette();
  for (const Sheet& sheet : sheets(room.plan(), room.answer())) {
    if (sheet.file.ends_with("-raised")) continue;
    const PaperBox wall = bounds_of(paths(sheet, Ink::wall).at(0));
    // 120 in is 3048 mm, 72 in 1828.8 mm, 78 in 1981.2 mm; the first section is the one along.
    const bool section = sheet.file.ends_with("sections");
    EXPECT_EQ(wall.width().micrometres(), 3'048'000 / sheet.scale);
    EXPECT_EQ(wall.height().micrometres(), (section ? 1'981'200 : 1'828'800) / sheet.scale);
    const auto bar =
        std::ranges::find_if(sheet.groups, [](const Group& g) { return g.natural_micrometres > 0; });
    ASSERT_NE(bar, sheet.groups.end());
    std::optional<PaperBox> reach;
    for (const Mark& mark : bar->marks)
      if (const Path* path = std::get_if<Path>(&mark))
        reach = reach ? hull(*reach, bounds_of(*path)) : bounds_of(*path);
    EXPECT_EQ(reach->width().micrometres(), bar->natural_micrometres / sheet.scale);
    EXPECT_TRUE(says(sheet, "1:" + std::to_string(sheet.scale)));
  }
}

TEST(Sheets, ArcsOfOutlinesAreDrawnAsArcs) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  const Outline rounded =
      Outline::worked({120_in, 72_in, {Round{20_in}, SquareCorner{}, SquareCorner{}, Round{20_in}}}).value();
  room.parts.interior.outline = rounded;
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  const Path wall = paths(sheet, Ink::wall).at(0);
  ASSERT_EQ(std::ranges::count_if(wall.stretches, [](const Stretch& s) { return s.radius > PaperLength{}; }),
            2);
  for (const Stretch& stretch : wall.stretches) {
    if (stretch.radius == PaperLength{}) continue;
    EXPECT_NEAR(static_cast<double>(stretch.radius.micrometres()), 508e3 / static_cast<double>(sheet.scale),
                0.5);
    // The walk is counter-clockwise in plan; a convex corner therefore turns against the clock on paper.
    EXPECT_FALSE(stretch.clockwise);
  }
  EXPECT_LE(wall.stretches.size(), 7U) << "no chord of the arcs is left";
}

TEST(Sheets, OneIsDrawnForEachConfigurationAndNumbered) {
  DrawnRoom room = rear_dinette();
  const auto drawn = sheets(room.plan(), room.answer());
  ASSERT_EQ(drawn.size(), 8U);
  EXPECT_EQ(drawn[0].file, "1-day");
  EXPECT_EQ(drawn[1].file, "2-night");
  EXPECT_EQ(drawn[2].file, "3-night-sections") << "by day nothing is told of where people sit";
  EXPECT_EQ(drawn[3].file, "4-day-heat");
  EXPECT_EQ(drawn[4].file, "5-night-heat");
  EXPECT_EQ(drawn[5].file, "6-night-ways") << "by day there is no bed, and the answer was given no opening";
  EXPECT_EQ(drawn[6].file, "7-day-raised");
  EXPECT_EQ(drawn[7].file, "8-night-raised");
  EXPECT_TRUE(says(drawn[0], "Sheet 1 of 8"));
  EXPECT_TRUE(says(drawn[2], "Sheet 3 of 8"));
  EXPECT_TRUE(says(drawn[0], "Plover Lane Trailer Works"));
}

TEST(Sheets, SayWhatIsStowedWhatIsBeneathAndWhatIsNotMet) {
  DrawnRoom room = rear_dinette();
  const Sheet night = sheets(room.plan(), room.answer()).at(1);
  EXPECT_TRUE(says(night, "front filler (front locker)"));
  EXPECT_TRUE(says(night, "left bench; right bench; table"));
  EXPECT_TRUE(says(night, "Alerts"));
  EXPECT_TRUE(says(night, "2\" (50.8"));
  EXPECT_TRUE(says(night, "not met"));
  EXPECT_TRUE(says(night, std::string(caution_line(English::american)).substr(0, 40)));
}

TEST(Sheets, GiveTheBedItsSizeAndItsLargestRectangle) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  // An L: 75 in along the rear, a chaise of 20 in more at the left.
  room.piece("long", Piece::Kind::cushion, Region(inches(80, 0, 120, 70)), 14_in, 18_in)
      .piece("chaise", Piece::Kind::cushion, Region(inches(60, 0, 80, 20)), 14_in, 18_in)
      .bed("bed", {"long", "chaise"});
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  EXPECT_TRUE(paths(sheet, Ink::bed_outline).at(0).closed);
  const PaperBox rectangle = bounds_of(paths(sheet, Ink::sleeping_rectangle).at(0));
  // 70 and 40 in, drawn 0.9 mm within each side.
  EXPECT_EQ(rectangle.height().micrometres(), 1'778'000 / sheet.scale - 1'800);
  EXPECT_EQ(rectangle.width().micrometres(), 1'016'000 / sheet.scale - 1'800);
  EXPECT_TRUE(says(sheet, "70\" × 60\" over all"));
  EXPECT_TRUE(says(sheet, "70\" × 40\""));
}

TEST(Sheets, ATableOverItsSeatsIsNoOverheadThingAndALockerIs) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("locker", Fixture::Kind::locker, inches(80, 0, 120, 10), 40_in, 56_in)
      .piece("seat", Piece::Kind::cushion, Region(inches(80, 0, 120, 20)), 12_in, 15_in)
      .piece("table", Piece::Kind::table, Region(inches(85, 18, 115, 44)), 28_in, 29_in);
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  EXPECT_EQ(paths(sheet, Ink::overhead).size(), 2U) << "the locker and its sample in the legend";
  EXPECT_TRUE(says(sheet, "locker"));
  EXPECT_TRUE(says(sheet, "(above)"));
  EXPECT_EQ(paths(sheet, Ink::table).size(), 2U);
}

// 66.675 cm is 26 1/4 in; a sixteenth less a tick must not be printed as 26 1/4.
TEST(Sheets, DistancesToHeatAreRoundedDown) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("heater", Fixture::Kind::heater, inches(60, 50, 70, 60), {}, 20_in)
      .piece("mat", Piece::Kind::cushion, Region(inches(80, 10, 110, 30)), {}, 4_in)
      .bed("bed", {"mat"})
      .heat("heater", "bed", {{65_in, 50_in}, 4_in}, {{80_in, 30_in}, 4_in},
            Length::inches(105, 4) - one_tick);
  const Sheet sheet = sheets(room.plan(), room.answer()).at(0);
  EXPECT_TRUE(says(sheet, "2' 2 3/16\""));
  EXPECT_FALSE(says(sheet, "2' 2 1/4\""));
  EXPECT_TRUE(says(sheet, "< 3' 0\": not met"));
}

TEST(Sheets, NeverSaySafe) {
  DrawnRoom room = rear_dinette();
  for (const Sheet& sheet : sheets(room.plan(), room.answer())) {
    std::string all = svg(sheet);
    std::ranges::transform(all, all.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    for (const std::string_view word : {"safe", "approved", "complies"})
      EXPECT_EQ(all.find(word), std::string::npos) << word;
  }
}

void expect_within_margins(const Sheet& sheet) {
  const PaperBox inner{{paper_mm(127, 10), paper_mm(127, 10)},
                       {sheet.width - paper_mm(127, 10), sheet.height - paper_mm(127, 10)}};
  for (const Text& text : texts(sheet)) EXPECT_TRUE(holds(inner, box_of(text))) << text.words;
  for (const Path& path : paths(sheet, Ink::frame))
    EXPECT_TRUE(holds(inner, grown(bounds_of(path), paper_mm(25, 100))));
}

// Tabloid is 11 by 17 in; A3 is the sheet of which A4 is half.
TEST(Sheets, StayWithinTheMarginsOfHomePrintersOnEveryPaper) {
  constexpr std::array papers{std::tuple{Paper::letter, paper_mm(2159, 10), paper_mm(2794, 10)},
                              std::tuple{Paper::tabloid, paper_mm(2794, 10), paper_mm(4318, 10)},
                              std::tuple{Paper::a4, paper_mm(210), paper_mm(297)},
                              std::tuple{Paper::a3, paper_mm(297), paper_mm(420)}};
  for (const auto& [paper, narrow, wide] : papers) {
    DrawnRoom room = rear_dinette();
    room.parts.paper = paper;
    for (const Sheet& sheet : sheets(room.plan(), room.answer())) {
      EXPECT_EQ(std::min(sheet.width, sheet.height), narrow);
      EXPECT_EQ(std::max(sheet.width, sheet.height), wide);
      expect_within_margins(sheet);
    }
  }
}

// The room of 10 ft by 6 ft 4 in is drawn at a scale that fills the paper: at twice the area, half as large
// again.
TEST(Sheets, AreDrawnLargerOnLargerPaper) {
  const auto ratio_on = [](Paper paper) {
    DrawnRoom room = rear_dinette();
    room.parts.paper = paper;
    return sheets(room.plan(), room.answer()).front().scale;
  };
  EXPECT_GT(ratio_on(Paper::letter), ratio_on(Paper::tabloid));
  EXPECT_GT(ratio_on(Paper::a4), ratio_on(Paper::a3));
}

TEST(Sheets, SectionsTellHeadRoomLevelsAndTheWayOfTravel) {
  // A mat of 80 in, so that a man of the 95th percentile (73 5/8 in) lies on it.
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("bench", Fixture::Kind::bench, inches(40, 0, 120, 40), {}, 14_in)
      .piece("mat", Piece::Kind::cushion, Region(inches(40, 0, 120, 40)), 14_in, 18_in)
      .bed("bed", {"mat"});
  const Sheet sections = sheets(room.plan(), room.answer()).at(1);
  EXPECT_TRUE(says(sections, "Section A–A"));
  EXPECT_TRUE(says(sections, "Section B–B"));
  EXPECT_TRUE(says(sections, "1'\u00A08\" (508\u00A0mm)"));
  EXPECT_TRUE(says(sections, "5' 0\" (1524 mm)")) << "head room, 78 less 18 in";
  EXPECT_TRUE(says(sections, "1' 6\" [457.2 mm]"));
  EXPECT_TRUE(says(sections, "6' 6\" [1981.2 mm]"));
  EXPECT_TRUE(says(sections, "direction of travel"));
  EXPECT_FALSE(paths(sections, Ink::cut_foam).empty());
  EXPECT_FALSE(paths(sections, Ink::person).empty());
  EXPECT_NE(sections.description.find("Section B: Across the trailer"), std::string::npos);
  // Each of the two sections tells its own levels.
  const auto count = [&](std::string_view words) {
    return std::ranges::count_if(texts(sections), [&](const Text& t) { return t.words.find(words) == 0; });
  };
  EXPECT_EQ(count("1' 6\" ["), 2);
  EXPECT_EQ(count("direction of travel"), 1);
}

TEST(Sheets, OnABedTooShortForItsPersonNobodyIsDrawn) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.piece("mat", Piece::Kind::cushion, Region(inches(60, 0, 120, 40)), 14_in, 18_in).bed("cot", {"mat"});
  const Sheet sections = sheets(room.plan(), room.answer()).at(1);
  EXPECT_TRUE(paths(sections, Ink::person).empty());
  EXPECT_TRUE(says(sections, "Nobody lies on cot"));
}

TEST(Sheets, AnyCrowdOfPiecesIsLetteredWithoutFault) {
  for (unsigned seed = 0; seed < 24; ++seed) {
    SCOPED_TRACE(seed);
    const int count = 2 + static_cast<int>(seed * 7 % 39);
    DrawnRoom room = crowded_room(seed, count);
    const auto drawn = sheets(room.plan(), room.answer());
    std::string everything;
    for (const Sheet& sheet : drawn) {
      EXPECT_EQ(lettering_faults(sheet), std::vector<std::string>{});
      EXPECT_EQ(xml_fault(svg(sheet)), "");
      everything += sheet.description;
      for (const Text& text : texts(sheet)) everything += " " + text.words;
    }
    // Nothing is dropped: each piece is named on the drawing or in its key, by the number its name begins
    // with.
    for (const Piece& piece : room.plan()->pieces)
      EXPECT_NE(everything.find(piece.name.substr(0, 8)), std::string::npos) << piece.name;
  }
}

TEST(Sheets, TheSameAnswerGivesTheSameBytes) {
  DrawnRoom one = rear_dinette();
  DrawnRoom two = rear_dinette();
  const auto a = sheets(one.plan(), one.answer());
  const auto b = sheets(two.plan(), two.answer());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(svg(a[i]), svg(b[i]));
}

TEST(Sheets, TheOrderOfTheFixturesChangesNoSheetsSoundness) {
  DrawnRoom room = rear_dinette();
  std::ranges::reverse(room.parts.fixtures);
  for (const Sheet& sheet : sheets(room.plan(), room.answer())) {
    EXPECT_EQ(lettering_faults(sheet), std::vector<std::string>{});
    // Over a quiet plan only that is named which the sheet is about.
    EXPECT_TRUE(says(sheet, "left bench") || !paths(sheet, Ink::quiet).empty()) << sheet.file;
  }
}

TEST(Sheets, HostileNamesAreShownAndHeldWithinThePage) {
  for (const std::string& name :
       {std::string("<script>alert(1)</script>"), std::string("\"'&<>"), std::string("\u202eturned\u2066"),
        std::string("a\x01\x02z"), std::string("\xff\xfe"), std::string("שלום עולם"),
        std::string("🛏🛏🛏 布布"), std::string(200, 'W'), std::string("  "),
        std::string("../../etc/passwd")}) {
    SCOPED_TRACE(name);
    DrawnRoom room = rear_dinette();
    room.parts.title = {name, name, name, name, name, name};
    for (Piece& piece : room.parts.pieces) piece.name = name;
    for (Fixture& fixture : room.parts.fixtures) fixture.name = name;
    for (Opening& opening : room.parts.openings) opening.name = name;
    for (const Sheet& sheet : sheets(room.plan(), room.answer())) {
      EXPECT_EQ(lettering_faults(sheet), std::vector<std::string>{});
      EXPECT_EQ(xml_fault(svg(sheet)), "");
      EXPECT_EQ(svg(sheet).find("<script"), std::string::npos);
      EXPECT_TRUE(std::ranges::all_of(
          sheet.file, [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; }));
    }
  }
}

}  // namespace
}  // namespace berthwright
