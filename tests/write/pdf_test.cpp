#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <set>
#include <sstream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#define POINTERHOLDER_TRANSITION 4
#include <qpdf/QPDF.hh>

#include "support/drawn_room.h"
#include "support/process.h"
#include "support/temporary_folder.h"
#include "view/letters.h"
#include "view/paper.h"
#include "write/pdf_tags.h"
#include "yard/font.h"

namespace berthwright {
namespace {

// What is looked at here is what poppler reads and draws, which shares nothing with what wrote the file.

const std::string& font_bytes() {
  static const std::string bytes = lettering_font().value();
  return bytes;
}

std::string written(const std::vector<Sheet>& sheets, const PdfTitle& about = {"Linnet", "", {}}) {
  return pdf(sheets, about, font_bytes()).value();
}

class PdfFile : public testing::Test {
 protected:
  /// What one of poppler's tools says of `bytes`, with the words after its own name and before the file's.
  std::string said(const std::string& bytes, const std::string& tool, std::vector<std::string> words,
                   const std::string& target = "-") const {
    words.push_back(folder.put("a.pdf", bytes));
    if (!target.empty()) words.push_back(target);
    Process process("/usr/bin/" + tool, words);
    EXPECT_EQ(process.code(), 0) << tool << ": " << process.err();
    EXPECT_EQ(process.err(), "") << tool;
    return process.out();
  }
  std::string info(const std::string& bytes, const std::vector<std::string>& words = {}) const {
    return said(bytes, "pdfinfo", words, "");
  }

  TemporaryFolder folder;
};

Sheet page_with(std::vector<Mark> marks) {
  Sheet sheet;
  sheet.title = "Linnet: day";
  sheet.description = "Plan seen from above.";
  sheet.width = paper_mm(2159, 10);
  sheet.height = paper_mm(2794, 10);
  sheet.groups.push_back({"All", std::move(marks), 0});
  return sheet;
}

Text lettering_at(PaperPoint at, const std::string& words, Anchor anchor = Anchor::start) {
  return {Ink::label, at, paper_mm(5), anchor, false, words};
}

std::vector<Sheet> dinette_sheets() {
  DrawnRoom room = rear_dinette();
  const Plan& plan = room.plan();
  return sheets(plan, room.answer());
}

/// A grey picture of part of a page, 0.04 mm a dot.
struct Picture {
  std::int64_t width = 0;
  std::int64_t height = 0;
  std::string dots;
  bool dark(std::int64_t x, std::int64_t y) const {
    return static_cast<unsigned char>(dots[static_cast<std::size_t>(y * width + x)]) < 128;
  }
  /// Around all that is dark, from the corner of the part.
  PaperBox ink() const {
    std::int64_t low_x = width, low_y = height, high_x = 0, high_y = 0;
    for (std::int64_t y = 0; y < height; ++y)
      for (std::int64_t x = 0; x < width; ++x)
        if (dark(x, y)) {
          low_x = std::min(low_x, x), high_x = std::max(high_x, x + 1);
          low_y = std::min(low_y, y), high_y = std::max(high_y, y + 1);
        }
    return {{paper_mm(low_x, 25), paper_mm(low_y, 25)}, {paper_mm(high_x, 25), paper_mm(high_y, 25)}};
  }
};

class PdfPicture : public PdfFile {
 protected:
  Picture picture(const std::string& bytes, const PaperBox& part) const {
    const auto dot = [](PaperLength length) { return std::to_string(length.micrometres() / 40); };
    const std::string text = said(bytes, "pdftoppm",
                                  {"-r", "635", "-gray", "-singlefile", "-x", dot(part.low.x), "-y",
                                   dot(part.low.y), "-W", dot(part.width()), "-H", dot(part.height())},
                                  "");
    Picture picture;
    std::istringstream head(text.substr(0, 40));
    std::string kind;
    int most = 0;
    head >> kind >> picture.width >> picture.height >> most;
    EXPECT_EQ(kind, "P5");
    picture.dots = text.substr(static_cast<std::size_t>(head.tellg()) + 1);
    EXPECT_EQ(picture.dots.size(), static_cast<std::size_t>(picture.width * picture.height));
    return picture;
  }
};

void expect_near(PaperLength measured, PaperLength wanted) {
  EXPECT_LE(std::abs((measured - wanted).micrometres()), 100)
      << measured.micrometres() << " for " << wanted.micrometres();
}
void expect_near(const PaperBox& measured, const PaperBox& wanted) {
  expect_near(measured.low.x, wanted.low.x);
  expect_near(measured.low.y, wanted.low.y);
  expect_near(measured.high.x, wanted.high.x);
  expect_near(measured.high.y, wanted.high.y);
}

TEST_F(PdfFile, HasAPageASheetOfItsSize) {
  Sheet a4 = page_with({});
  a4.width = paper_mm(297);
  a4.height = paper_mm(210);
  const std::string told = info(written({page_with({}), a4}), {"-f", "1", "-l", "2"});
  EXPECT_NE(told.find("\nPages:           2\n"), std::string::npos) << told;
  // A point is 25.4 / 72 mm: 215.9 and 279.4 mm are 612 and 792, 297 and 210 mm 841.89 and 595.276.
  EXPECT_NE(told.find("size:  612 x 792 pts"), std::string::npos) << told;
  EXPECT_NE(told.find("size:  841.89 x 595.276 pts"), std::string::npos) << told;
}

TEST_F(PdfFile, CarriesItsFontsAndNoDate) {
  const std::string bytes =
      written(dinette_sheets(), {"Linnet", "Plover Lane Trailer Works", English::british});
  std::istringstream fonts(said(bytes, "pdffonts", {}, ""));
  std::string line;
  std::getline(fonts, line);
  std::getline(fonts, line);
  int count = 0;
  for (; std::getline(fonts, line); ++count) {
    EXPECT_NE(line.find("+DejaVuSans "), std::string::npos) << line;
    EXPECT_NE(line.find(" yes yes yes "), std::string::npos)
        << "embedded, in part, with its letters: " << line;
  }
  EXPECT_GE(count, 1);
  const std::string told = info(bytes);
  EXPECT_EQ(told.find("Date"), std::string::npos) << told;
  EXPECT_NE(told.find("Author:          Plover Lane Trailer Works\n"), std::string::npos) << told;
  EXPECT_NE(told.find("Tagged:          yes\n"), std::string::npos) << told;
}

TEST_F(PdfFile, IsWrittenWithTheSameBytesTwice) {
  const std::vector<Sheet> drawn = dinette_sheets();
  EXPECT_TRUE(written(drawn) == written(drawn));
}

TEST_F(PdfFile, LetsEveryWordBeFound) {
  const std::vector<Sheet> drawn = dinette_sheets();
  std::string found = said(written(drawn), "pdftotext", {"-raw"});
  std::ranges::replace(found, '\n', ' ');
  found = plain_blanks(found);
  int words = 0;
  for (const Sheet& sheet : drawn)
    for (const Group& group : sheet.groups)
      for (const Mark& mark : group.marks)
        if (const Text* text = std::get_if<Text>(&mark)) {
          ++words;
          EXPECT_NE(found.find(plain_blanks(text->words)), std::string::npos) << text->words;
        }
  EXPECT_GT(words, 30);
}

TEST_F(PdfFile, BookmarksEverySheetAndPutsPagesThatGoOnUnderTheFirst) {
  Sheet night = page_with({});
  night.title = "Linnet: night <b> & more";
  const std::string told =
      said(written({page_with({}), night, night, page_with({})}), "pdftohtml", {"-xml", "-i", "-stdout"}, "");
  EXPECT_NE(
      told.find(
          "<outline>\n<item page=\"1\">1 day</item>\n<item page=\"2\">2 night &lt;b&gt; &amp; more</item>\n"
          "<outline>\n<item page=\"3\">3 night &lt;b&gt; &amp; more</item>\n</outline>\n"
          "<item page=\"4\">4 day</item>\n</outline>"),
      std::string::npos)
      << told;
}

// A document of sections, in it figures, and lines where there is lettering alone.
TEST_F(PdfFile, TellsWhatItsPartsAre) {
  Sheet sheet = page_with({straight(Ink::rule, {}, {paper_mm(10), paper_mm(10)})});
  sheet.groups.push_back({"Notes", {lettering_at({paper_mm(20), paper_mm(20)}, "Measure first.")}, 0});
  std::istringstream told(info(written({sheet}), {"-struct"}));
  std::vector<std::string> parts;
  for (std::string part; told >> part;) parts.push_back(part);
  EXPECT_EQ(parts, (std::vector<std::string>{"Document", "Sect", "Figure", "P", "(block)"}));
}

TEST(PdfTags, RefuseAnotherNumberOfFigures) {
  const std::string bytes = written({page_with({straight(Ink::rule, {}, {paper_mm(10), paper_mm(10)})})});
  EXPECT_NO_THROW(with_tags(bytes, {"en-US", {"a plan"}}));
  EXPECT_THROW(with_tags(bytes, {"en-US", {}}), std::logic_error);
  EXPECT_THROW(with_tags(bytes, {"en-US", {"a plan", "another"}}), std::logic_error);
}

TEST(PdfTags, AreTheWordsOfTheFigureAndTheLanguage) {
  Sheet sheet = page_with({straight(Ink::rule, {}, {paper_mm(10), paper_mm(10)})});
  sheet.groups.push_back(
      {"Key",
       {circle(Ink::balloon, {}, paper_mm(2)), lettering_at({}, "1"), lettering_at({}, "Left\u00a0seat")},
       0});
  const std::string bytes = written({sheet}, {"Linnet", "", English::british});
  QPDF file;
  file.processMemoryFile("test", bytes.data(), bytes.size());
  QPDFObjectHandle root = file.getRoot();
  EXPECT_EQ(root.getKey("/Lang").getUTF8Value(), "en-GB");
  EXPECT_EQ(root.getKey("/ViewerPreferences").getKey("/PrintScaling").getName(), "/None");
  QPDFObjectHandle parts =
      root.getKey("/StructTreeRoot").getKey("/K").getKey("/K").getArrayItem(0).getKey("/K");
  ASSERT_EQ(parts.getArrayNItems(), 2);
  EXPECT_EQ(parts.getArrayItem(0).getKey("/Alt").getUTF8Value(), "Linnet: day. Plan seen from above. All");
  EXPECT_EQ(parts.getArrayItem(1).getKey("/Alt").getUTF8Value(), "Key: 1 Left seat");
}

TEST_F(PdfPicture, ShowsTheScaleBarAtTheLengthThatItDeclares) {
  const std::vector<Sheet> drawn = dinette_sheets();
  int bars = 0;
  for (std::size_t i = 0; i < drawn.size() && bars < 2; ++i)
    for (const Group& group : drawn[i].groups) {
      if (group.natural_micrometres == 0) continue;
      ++bars;
      std::optional<PaperBox> bar;
      for (const Mark& mark : group.marks)
        if (const Path* path = std::get_if<Path>(&mark))
          for (const PaperLine& line : lines(*path)) {
            const PaperBox box = bounds(PaperRing{line.from, line.to});
            bar = bar ? hull(*bar, box) : box;
          }
      const PaperBox ink = picture(written({drawn[i]}), grown(*bar, paper_mm(5, 10))).ink();
      const PaperLength line = PaperLength::micrometres(180);  // half of it outside at each end
      expect_near(ink.width() - line, PaperLength::micrometres(group.natural_micrometres / drawn[i].scale));
      EXPECT_GT(ink.width(), paper_mm(50));
    }
  EXPECT_EQ(bars, 2);
}

// Half chord 8, radius 10: the middle of the arc stands 10 - sqrt(10 * 10 - 8 * 8) = 4 mm off the chord.
// Clockwise from left to right it passes above, the other way below. Its line of 0.18 mm ends square to an
// arc that leaves at 4 to 3, which adds 4/5 of 0.09 mm at each end.
TEST_F(PdfPicture, TurnsArcsTheWayTheyAreSeen) {
  const PaperBox part{{paper_mm(10), paper_mm(20)}, {paper_mm(40), paper_mm(44)}};
  for (const bool clockwise : {true, false}) {
    Path arc{Ink::hatch,
             {paper_mm(12), paper_mm(30)},
             {{{paper_mm(28), paper_mm(30)}, paper_mm(10), clockwise}},
             false};
    const PaperBox ink = picture(written({page_with({arc})}), part).ink();
    expect_near(ink.width(), paper_mm(16144, 1000));
    expect_near(clockwise ? ink.low.y : ink.high.y, clockwise ? paper_mm(591, 100) : paper_mm(1409, 100));
    // Where it begins, the lower (or upper) edge of the line: 3/5 of 0.09 mm off the chord.
    expect_near(clockwise ? ink.high.y : ink.low.y, clockwise ? paper_mm(1005, 100) : paper_mm(995, 100));
  }
  // A whole disc of radius 10, away from the middle of its two arcs as well: 3, 4 and 5 times 2 mm.
  const Picture ring = picture(
      written({page_with({circle(Ink::leader_dot, {paper_mm(25), paper_mm(32)}, paper_mm(10))})}), part);
  expect_near(ring.ink(), {{paper_mm(5), paper_mm(2)}, {paper_mm(25), paper_mm(22)}});
  for (const auto& [x, y] : {std::pair{6, 8}, {8, 6}, {-6, 8}, {8, -6}, {-8, -6}, {6, -8}}) {
    const auto there = [&](int further) {
      return ring.dark((15 + x) * 25 + (x > 0 ? further : -further),
                       (12 + y) * 25 + (y > 0 ? further : -further));
    };
    EXPECT_TRUE(there(-2)) << x << ", " << y;
    EXPECT_FALSE(there(2)) << x << ", " << y;
  }
}

// 0.25 mm wide: 3 mm drawn and 0.75 mm left out, so on 30 mm there are eight dashes.
TEST_F(PdfPicture, BreaksHiddenLinesAndClearsPatches) {
  const Path line = straight(Ink::overhead, {paper_mm(20), paper_mm(50)}, {paper_mm(50), paper_mm(50)});
  const PaperBox part{{paper_mm(20), paper_mm(49)}, {paper_mm(50), paper_mm(51)}};
  const auto dashes = [&](const Picture& seen) {
    int count = 0;
    for (std::int64_t x = 1; x < seen.width; ++x) count += seen.dark(x, 25) && !seen.dark(x - 1, 25) ? 1 : 0;
    return count + (seen.dark(0, 25) ? 1 : 0);
  };
  EXPECT_EQ(dashes(picture(written({page_with({line})}), part)), 8);
  const Patch half{{paper_mm(35), paper_mm(49)}, {paper_mm(51), paper_mm(51)}};
  EXPECT_EQ(dashes(picture(written({page_with({line, half})}), part)), 4);
  EXPECT_EQ(dashes(picture(written({page_with({half, line})}), part)), 8);
}

// Pairs that kerning would draw together stand as far apart as the advance table says: upright, from the
// middle, and turned.
TEST_F(PdfFile, SetsLetteringAsWideAsTheSheetsTakeIt) {
  std::vector<Text> texts;
  for (const Anchor anchor : {Anchor::start, Anchor::middle, Anchor::end})
    for (const bool upward : {false, true}) {
      const auto count = static_cast<std::int64_t>(texts.size());
      texts.push_back(lettering_at({paper_mm(100), paper_mm(60 + 30 * count)},
                                   "AVATAR-To.LY" + std::to_string(count), anchor));
      texts.back().reads_upward = upward;
    }
  const std::string told = said(written({page_with({texts.begin(), texts.end()})}), "pdftotext", {"-bbox"});
  for (const Text& text : texts) {
    SCOPED_TRACE(text.words);
    const std::size_t word = told.find(">" + text.words + "<");
    ASSERT_NE(word, std::string::npos) << told;
    const auto value = [&](const std::string& name) {
      const std::size_t at = told.rfind(name + "=\"", word);
      return PaperLength::micrometres(std::lround(std::stod(told.substr(at + name.size() + 2)) * 25400 / 72));
    };
    const PaperLength width = text_width(text.words, text.height);
    const PaperLength before = text.anchor == Anchor::start    ? PaperLength{}
                               : text.anchor == Anchor::middle ? width / 2
                                                               : width;
    const PaperLength start = (text.reads_upward ? -text.at.y : text.at.x) - before;
    expect_near(text.reads_upward ? -value("yMax") : value("xMin"), start);
    expect_near(text.reads_upward ? -value("yMin") : value("xMax"), start + width);
  }
}

TEST_F(PdfFile, IsSoundWhateverPeopleWrite) {
  std::vector<Sheet> pages;
  std::string all;
  for (const std::string& theirs :
       {std::string("(Tj) ET \\) endobj %%EOF <</S>>"), std::string("a\0b\x01\x1f", 5),
        std::string("\xff\xfe\xc3"), std::string("\u202eevil\u2066"), std::string("🛏 布 שלום"),
        std::string(2000, 'W'), std::string()}) {
    pages.push_back(page_with(
        {lettering_at({paper_mm(20), paper_mm(20)}, theirs), circle(Ink::balloon, {}, paper_mm(2))}));
    pages.back().title = theirs;
    pages.back().description = theirs;
    pages.back().groups.front().title = theirs;
    all += theirs;
  }
  const std::string told = info(written(pages, {all, all, {}}));
  EXPECT_NE(told.find("\nPages:           7\n"), std::string::npos) << told;
}

TEST(Pdf, RefusesAnotherFont) {
  const std::vector<Sheet> page{page_with({})};
  EXPECT_EQ(pdf(page, {}, "no font").problems().at(0).id, "font.unreadable");
  EXPECT_EQ(pdf(page, {}, "").problems().at(0).id, "font.unreadable");
  const std::string bold = bytes_of("/usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf");
  EXPECT_EQ(pdf(page, {}, bold).problems().at(0).id, "font.other");
}

TEST(Pdf, SheetsTellOfLettersThatTheFontLacks) {
  EXPECT_FALSE(lacks_letters(page_with({lettering_at({}, "Größe ⅝″")})));
  EXPECT_TRUE(lacks_letters(page_with({lettering_at({}, "seat"), lettering_at({}, "布")})));
}

}  // namespace
}  // namespace berthwright
