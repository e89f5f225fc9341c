#include <gtest/gtest.h>

#include <berthwright/write/outputs.h>

#include "support/xml_nesting.h"
#include "view/paper.h"
#include "write/escaped.h"

namespace berthwright {
namespace {

Sheet sheet_with(std::vector<Mark> marks) {
  Sheet sheet;
  sheet.title = "Sanderling: day";
  sheet.description = "Plan seen from above.";
  sheet.width = paper_mm(2159, 10);
  sheet.height = paper_mm(2794, 10);
  sheet.scale = 24;
  sheet.groups.push_back({"all", std::move(marks), 0});
  return sheet;
}

Text words(const std::string& said) {
  return {Ink::label, {paper_mm(20), paper_mm(30)}, paper_mm(28, 10), Anchor::start, false, said};
}

std::size_t count(std::string_view text, std::string_view part) {
  std::size_t found = 0;
  for (std::size_t at = text.find(part); at != std::string_view::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

TEST(Svg, SizesThePageInMillimetresAndItsUnitsInTenths) {
  const std::string text = svg(sheet_with({}));
  EXPECT_NE(text.find(R"(width="215.9mm" height="279.4mm" viewBox="0 0 2159 2794")"), std::string::npos);
}

TEST(Svg, PrintsCoordinatesFromWholeMicrometres) {
  const std::string text =
      svg(sheet_with({straight(Ink::rule, {PaperLength::micrometres(12'345), PaperLength::micrometres(-50)},
                               {PaperLength::micrometres(100), PaperLength::micrometres(1)})}));
  EXPECT_NE(text.find(R"(d="M123.45 -0.5L1 0.01")"), std::string::npos) << text;
}

TEST(Svg, TurnsArcsTheWayTheyAreSeen) {
  const std::string text = svg(sheet_with({circle(Ink::balloon, {paper_mm(10), paper_mm(10)}, paper_mm(2))}));
  EXPECT_NE(text.find(R"(d="M80 100A20 20 0 0 1 120 100A20 20 0 0 1 80 100Z")"), std::string::npos) << text;
}

TEST(Svg, SetsLetteringWithoutKerningOrLigatures) {
  const std::string text = svg(sheet_with({words("AVA fi")}));
  EXPECT_NE(text.find(R"(font-family="DejaVu Sans" text-rendering="geometricPrecision" font-kerning="none")"),
            std::string::npos);
  EXPECT_NE(text.find(R"(font-variant-ligatures="none")"), std::string::npos);
  EXPECT_NE(text.find(R"(<text x="200" y="300" font-size="28" fill="#000000">AVA fi</text>)"),
            std::string::npos);
}

TEST(Svg, HoldsLettersOfOtherFontsToTheirRoom) {
  EXPECT_EQ(count(svg(sheet_with({words("seat")})), "textLength"), 0U);
  EXPECT_EQ(count(svg(sheet_with({words("布 seat")})), "textLength"), 1U);
}

TEST(Svg, SaysTheScaleOfItsBar) {
  Sheet sheet = sheet_with({});
  sheet.groups.push_back({"Scale bar", {}, 1'524'000});
  EXPECT_NE(svg(sheet).find(R"(<g data-scale="1:24" data-bar-mm="1524">)"), std::string::npos);
  sheet.scale = 0;
  sheet.groups.pop_back();
  EXPECT_NE(svg(sheet).find(R"(data-scale="none")"), std::string::npos);
}

TEST(Svg, StaysWellFormedWhateverPeopleWrite) {
  for (const std::string& said :
       {std::string("<script>alert(1)</script>"), std::string("\"/><a href='x'>"),
        std::string("&amp; &#0; &nosuch;"), std::string("a\0b\x01\x1f", 5), std::string("\xff\xfe\xc3"),
        std::string("\xed\xa0\x80"), std::string("\u202eevil\u2066"), std::string("🛏 布 שלום"),
        std::string("]]>"), std::string("\uffff\ufffe"), std::string(200, 'W')}) {
    SCOPED_TRACE(said);
    Sheet sheet = sheet_with({words(said)});
    sheet.title = said;
    sheet.description = said;
    sheet.groups.front().title = said;
    const std::string text = svg(sheet);
    EXPECT_EQ(xml_fault(text), "");
    EXPECT_EQ(count(text, "<script"), 0U);
    EXPECT_EQ(count(text, "<a "), 0U);
    EXPECT_EQ(count(text, "\u202e") + count(text, "\u2066"), 0U);
    EXPECT_EQ(text.find('\0'), std::string::npos);
  }
}

TEST(XmlFault, FiresOnControls) {
  EXPECT_EQ(xml_fault("<a b=\"c\"><d/>&lt;</a>"), "");
  EXPECT_NE(xml_fault("<a><b></a></b>"), "");
  EXPECT_NE(xml_fault("<a>&nosuch;</a>"), "");
  EXPECT_NE(xml_fault("<a b=\"c\"d=\"e\"/>"), "");
  EXPECT_NE(xml_fault("<a>\x01</a>"), "");
  EXPECT_NE(xml_fault("<a>"), "");
}

TEST(Escaped, ReplacesTheFiveSignsAndWhatCannotBeShown) {
  EXPECT_EQ(escaped("6' 2\" <&>"), "6&#39; 2&quot; &lt;&amp;&gt;");
  EXPECT_EQ(escaped("a\x01"
                    "b"),
            "a\uFFFD"
            "b");
  EXPECT_EQ(escaped("Größe ⅝″ 🛏"), "Größe ⅝″ 🛏");
}

}  // namespace
}  // namespace berthwright
