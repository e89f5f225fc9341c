#include "view/letters.h"

#include <gtest/gtest.h>

#include <berthwright/view/sheets.h>

#include "view/letter_widths.h"
#include "view/paper.h"

namespace berthwright {
namespace {

// At a height of 2048 micrometres one unit of the font is one micrometre.
std::int64_t units(std::string_view words) {
  return text_width(words, PaperLength::micrometres(2048)).micrometres();
}

// Sums of `hmtx` advances of DejaVuSans.ttf 2.37 (Debian fonts-dejavu-core 2.37-6), read with
// fonttools 4.38.0, an implementation that shares nothing with ours.
TEST(TextWidth, IsTheSumOfTheAdvancesOfTheFont) {
  EXPECT_EQ(units("H"), 1540);
  EXPECT_EQ(units("i"), 569);
  EXPECT_EQ(units("W"), 2025);
  EXPECT_EQ(units("6' 2 1/2\""), 8709);
  EXPECT_EQ(units("Sleeping height"), 16035);
  EXPECT_EQ(units("26 1/4\" (666.7 mm) < 3' 0\""), 28028);
}

TEST(TextWidth, TakesNoKerningOff) {
  // With kerning the same font sets this 5.4 % narrower (facts of this project, measured).
  EXPECT_EQ(units("AVAVA To We"), 14096);
}

TEST(TextWidth, KnowsTheLettersBeyondAscii) {
  EXPECT_EQ(units("Größe 37 ⅝″"), 12890);
  EXPECT_EQ(units("↑→≤≥⌀×²°"), 11658);
}

TEST(TextWidth, RoundsUp) {
  // 1540 / 2048 of 2500 micrometres is 1879.88.
  EXPECT_EQ(text_width("H", paper_mm(25, 10)).micrometres(), 1880);
  EXPECT_EQ(text_width("", paper_mm(25, 10)).micrometres(), 0);
}

TEST(TextWidth, ReservesAnEmForLettersOfOtherFonts) {
  EXPECT_EQ(units("布"), 2048);
  EXPECT_GT(units("🛏"), 2048) << "pictures are wider than an em";
}

TEST(TextWidth, CountsBrokenBytesAndControlsAsTheSignThatReplacesThem) {
  EXPECT_EQ(units("\xff"), 2100);  // U+FFFD, fonttools
  EXPECT_EQ(units("\x01"), 2100);
  EXPECT_EQ(units("\u202e"), 2100);  // turns the direction of writing
}

TEST(LetterWidths, AreSortedSoThatTheyCanBeFound) {
  for (std::size_t i = 1; i < letter_widths.size(); ++i)
    EXPECT_LT(letter_widths[i - 1].letter, letter_widths[i].letter);
}

TEST(Wrapped, KeepsEveryWordAndStaysWithinItsWidth) {
  const PaperLength height = paper_mm(25, 10);
  const std::string words = "Measure again before you cut, and ask whoever sleeps there";
  for (const std::int64_t width : {20, 31, 47, 200}) {
    std::string joined;
    for (const std::string& line : wrapped(words, height, paper_mm(width))) {
      EXPECT_LE(text_width(line, height), paper_mm(width)) << line;
      joined += (joined.empty() ? "" : " ") + line;
    }
    EXPECT_EQ(joined, words);
  }
}

TEST(Wrapped, BreaksAWordThatIsWiderThanTheLine) {
  const PaperLength height = paper_mm(25, 10);
  std::string joined;
  for (const std::string& line : wrapped(std::string(200, 'W'), height, paper_mm(30))) {
    EXPECT_LE(text_width(line, height), paper_mm(30));
    joined += line;
  }
  EXPECT_EQ(joined, std::string(200, 'W'));
}

TEST(Wrapped, DoesNotTearAMeasure) {
  const PaperLength height = paper_mm(25, 10);
  for (int width = 14; width < 60; ++width)
    for (const std::string& line :
         wrapped(unbroken_measures("it stands 2' 8 1/2\" (825.5 mm) away"), height, paper_mm(width))) {
      EXPECT_FALSE(line.ends_with("2'")) << width;
      EXPECT_FALSE(line.ends_with("8")) << width;
      EXPECT_FALSE(line.ends_with("825.5") || line.ends_with("(825.5")) << width;
    }
}

TEST(Wrapped, KeepsSidesAreasAndComparisonsTogether) {
  for (const std::string_view measure : {"75\" × 38\"", "across × high", "1905 mm × 965.2 mm", "7.2 sq ft",
                                         "< 3' 0\"", "≥ 914.4 mm", "13.297 in", "250 lb", "50 %"})
    EXPECT_EQ(unbroken_measures(measure).find(' '), std::string::npos) << measure;
  for (const std::string_view words : {"2 inside", "9 of them", "× marks", "a 3", "12 install"})
    EXPECT_NE(unbroken_measures(words).find(' '), std::string::npos) << words;
}

TEST(Shortened, LeavesWhatFitsAndMarksWhatDoesNot) {
  const PaperLength height = paper_mm(25, 10);
  EXPECT_EQ(shortened("Sanderling", height, paper_mm(40)), "Sanderling");
  const std::string cut = shortened("Sanderling", height, paper_mm(10));
  EXPECT_TRUE(cut.starts_with("San"));
  EXPECT_TRUE(cut.ends_with("…"));
  EXPECT_LE(text_width(cut, height), paper_mm(10));
}

}  // namespace
}  // namespace berthwright
