#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <vector>

#include "view/paper.h"
#include "write/screen.h"

namespace berthwright {
namespace {

// What a person may have written, and what of it must never stand on the page.
const std::string hostile = "<img src=x onerror=\"alert('1')\">&";
const std::string hostile_as_text = "&lt;img src=x onerror=&quot;alert(&#39;1&#39;)&quot;&gt;&amp;";

Picture picture_named(const std::string& name) {
  return {name,          "Title of " + name, "Words.",
          paper_mm(100), paper_mm(80),       std::make_shared<const std::string>("<svg/>")};
}

ScreenFinding finding_of(Status status, Weight weight, const std::string& words) {
  return {"gap of a bed", status, weight, "night", words, {{3, "Bench"}}, {Point{}}};
}

WatchBoard board_of(std::size_t save) {
  WatchBoard board;
  board.file = "wren.json";
  board.edition = 9;
  board.save = save;
  board.text = std::make_shared<const std::string>("{\n\t\"title\": \"Wren\",\r\n  \"unit\": \"in\"\n}\n");
  return board;
}

WatchBoard drawn_board() {
  WatchBoard board = board_of(4);
  ScreenFindings findings{"Wren", "Plover Lane Trailer Works", "1 alert not met.", "Who comes first.", {}};
  findings.list = {finding_of(Status::not_met, Weight::alert, "Raise it. It is low."),
                   finding_of(Status::met, Weight::advice, "It is closed."),
                   finding_of(Status::met, Weight::information, "It is large.")};
  board.findings = {4, std::make_shared<const ScreenFindings>(std::move(findings))};
  // 25 of 100 mm and 20 of 80: a quarter both ways; the tie leads to a half.
  ScreenSheet sheet{"night", "night", picture_named("aaaa"), {}};
  sheet.pins = {{0, {{paper_mm(25), paper_mm(20)}, {paper_mm(50), paper_mm(40)}}},
                {1, {{paper_mm(100), {}}}}};
  board.plans = {4, std::make_shared<const std::vector<ScreenSheet>>(std::vector{sheet})};
  board.others = {4, std::make_shared<const std::vector<ScreenSheet>>()};
  const std::vector<ScreenStage> stages{{{"As it stands."}, picture_named("s0"), picture_named("r0")},
                                        {{"Lift the table."}, picture_named("s1"), picture_named("r1")},
                                        {{"Lay it down."}, picture_named("s2"), picture_named("r2")}};
  board.conversions = {4,
                       std::make_shared<const std::vector<ScreenConversion>>(std::vector<ScreenConversion>{
                           {"day to night", "From day to night: 2 steps", {"No order has fewer."}, stages}})};
  return board;
}

bool holds(const std::string& page, const std::string& part) { return page.find(part) != std::string::npos; }
std::size_t times(const std::string& page, const std::string& part) {
  std::size_t count = 0;
  for (std::size_t at = page.find(part); at != std::string::npos; at = page.find(part, at + 1)) ++count;
  return count;
}

TEST(WatchPage, BeforeAnythingIsReadItSaysSo) {
  const std::string page = watch_page(WatchBoard{});
  EXPECT_TRUE(holds(page, "The file is being read…"));
  EXPECT_TRUE(holds(page, "The first drawings are being made…"));
  EXPECT_FALSE(holds(page, "data-broken"));
}

TEST(WatchPage, SaysHowFarASaveHasCome) {
  WatchBoard board = drawn_board();
  EXPECT_TRUE(holds(watch_page(board), "<b>Save 4: 1 alert not met.</b></p>"));
  board.others.save = 3;
  EXPECT_TRUE(holds(watch_page(board), "More sheets are being drawn…"));
  board.plans.save = 3;
  EXPECT_TRUE(holds(watch_page(board), "<span>Being drawn…</span>"));
  board.findings.save = 3;
  EXPECT_TRUE(holds(watch_page(board), "Save 4 is being worked out…"));
}

TEST(WatchPage, KeepsTheLastGoodDrawingBesideTheFaultsAndSaysOfWhichSave) {
  WatchBoard board = drawn_board();
  board.save = 5;
  board.problems = {{.id = "length.comma",
                     .pointer = "/title",
                     .line = 2,
                     .column = 4,
                     .message = "a comma cannot stand in a length",
                     .found = "1,5",
                     .allowed = "a length",
                     .cure = "write a decimal point"}};
  const std::string page = watch_page(board);
  EXPECT_TRUE(holds(page, "Save 5 has 1 fault."));
  EXPECT_TRUE(holds(page, "What is drawn is save 4, the last good one."));
  EXPECT_TRUE(holds(page, "data-broken"));
  EXPECT_TRUE(holds(page, "Findings (of save 4)"));
  EXPECT_TRUE(holds(
      page, "<a class=\"line\" href=\"#L2\">line 2</a>, column 4: <b>a comma cannot stand in a length.</b>"));
  EXPECT_TRUE(holds(page, "<pre>2  &quot;title&quot;: &quot;Wren&quot;,</pre>"))
      << "the line, without its indent";
  EXPECT_LT(page.find("write a decimal point"), page.find("<dd>1,5</dd>")) << "the cure first";
  EXPECT_TRUE(holds(page, "<li id=\"L2\" class=\"marked\">"));
  EXPECT_FALSE(holds(page, "href=\"#f1\"")) << "lines of an old finding are not those of this text";
}

TEST(WatchPage, IsolatesNamesFromTheFiguresBesideThem) {
  WatchBoard board = drawn_board();
  ScreenFindings findings = *board.findings.value;
  findings.shop = "ورشة, 2 Plover Lane";
  findings.list[0].words = "باب lies 5\" from مقعد, 3\" asked.";
  findings.list[0].lines = {{3, "مقعد"}};
  board.findings.value = std::make_shared<const ScreenFindings>(std::move(findings));
  std::vector<ScreenSheet> sheets = *board.plans.value;
  sheets[0].name = "ليل";
  board.plans.value = std::make_shared<const std::vector<ScreenSheet>>(std::move(sheets));
  const std::string page = watch_page(board);
  EXPECT_TRUE(holds(page, "<bdi>باب</bdi> lies 5&quot; from <bdi>مقعد</bdi>, 3&quot; asked."));
  for (const char* isolated : {"<bdi>ورشة</bdi>, 2 Plover", " (<bdi>مقعد</bdi>)", "<bdi>ليل</bdi> by itself"})
    EXPECT_TRUE(holds(page, isolated)) << isolated;
}

TEST(WatchPage, AFileThatIsAwayHasNoLinesAndIsNoReasonToFall) {
  WatchBoard board = drawn_board();
  board.save = 5;
  board.text = nullptr;
  board.problems = {{.id = "file.unreadable",
                     .message = "wren.json: No such file or directory",
                     .cure = "It is read as soon as it is back."}};
  const std::string page = watch_page(board);
  EXPECT_TRUE(holds(page, "No such file or directory"));
  EXPECT_FALSE(holds(page, "id=\"L1\""));
  board.problems[0].line = 77;
  EXPECT_TRUE(holds(watch_page(board), "line 77")) << "a line beyond the text";
}

TEST(WatchPage, AFaultOfOurOwnIsToldAsThat) {
  WatchBoard board = board_of(1);
  board.own_fault = "no room for <labels>";
  const std::string page = watch_page(board);
  EXPECT_TRUE(holds(page, "Save 1 led us into a fault of our own."));
  EXPECT_TRUE(holds(page, "A fault of our own, not of your plan:</b> no room for &lt;labels&gt;"));
  EXPECT_TRUE(holds(page, "data-broken"));
}

TEST(WatchPage, PinsStandAtTheirShareOfTheSheet) {
  const std::string page = watch_page(drawn_board());
  EXPECT_TRUE(holds(page,
                    "<button type=\"button\" class=\"pin not-met\" data-finding=\"1\" data-x=\"0.2500\" "
                    "data-y=\"0.2500\" aria-label=\"Finding 1: Raise it. It is low.\">1</button>"));
  EXPECT_TRUE(holds(page, "class=\"pin met quiet\" data-finding=\"2\" data-x=\"1\" data-y=\"0.0000\""));
  EXPECT_TRUE(holds(page, "<path class=\"not-met\" data-finding=\"1\" d=\"M250 200L500 400\"/>"));
  EXPECT_EQ(times(page, "<path "), 1U) << "one point has no tie";
}

TEST(WatchPage, PinsOfAnotherSaveOrOfNoFindingAreLeftOut) {
  WatchBoard board = drawn_board();
  board.plans.save = 3;
  EXPECT_EQ(times(watch_page(board), "class=\"pin "), 0U);
  board = drawn_board();
  std::vector<ScreenSheet> sheets = *board.plans.value;
  sheets[0].pins = {{3, {{paper_mm(10), paper_mm(10)}}}};
  board.plans.value = std::make_shared<const std::vector<ScreenSheet>>(sheets);
  EXPECT_EQ(times(watch_page(board), "class=\"pin "), 0U);
}

TEST(WatchPage, TheSliderHasAFrameForTheStartAndEachStep) {
  const std::string page = watch_page(drawn_board());
  EXPECT_TRUE(holds(
      page,
      "<input type=\"range\" min=\"0\" value=\"0\" max=\"2\" aria-label=\"From day to night: 2 steps\"/>"));
  EXPECT_TRUE(holds(page, "<ol start=\"0\">"));
  EXPECT_EQ(times(page, "<li hidden><h3>"), 3U);
  const std::size_t start = page.find("At the start</h3><p>As it stands.</p>");
  const std::size_t one = page.find("Step 1 of 2</h3><p>Lift the table.</p>");
  const std::size_t two = page.find("Step 2 of 2</h3><p>Lay it down.</p>");
  ASSERT_NE(two, std::string::npos);
  EXPECT_TRUE(start < one && one < two);
  for (const char* name : {"s0", "r0", "s1", "r1", "s2", "r2"})
    EXPECT_EQ(times(page, "src=\"/" + std::string(name) + ".svg\""), 1U) << name;
}

TEST(WatchPage, WithoutStagesThereIsNothingToSlide) {
  WatchBoard board = drawn_board();
  board.conversions.value = std::make_shared<const std::vector<ScreenConversion>>(
      std::vector<ScreenConversion>{{"day to night", "From day to night: none", {"It is too wide."}, {}}});
  std::string page = watch_page(board);
  EXPECT_FALSE(holds(page, "type=\"range\""));
  EXPECT_TRUE(holds(page, "<p>It is too wide.</p>"));
  board.conversions.value = std::make_shared<const std::vector<ScreenConversion>>();
  EXPECT_FALSE(holds(watch_page(board), "From one configuration to another"));
}

TEST(WatchPage, WhatNeedsDoingIsOpenAndWhatIsMetIsFolded) {
  const std::string page = watch_page(drawn_board());
  EXPECT_TRUE(holds(page, "<details data-group=\"not met\" open><summary><h3>Not met (1)</h3>"));
  EXPECT_TRUE(holds(page, "<details data-group=\"met\"><summary><h3>Met (1)</h3>"));
  EXPECT_TRUE(holds(page, "<details data-group=\"for information\"><summary><h3>For information (1)</h3>"));
  EXPECT_FALSE(holds(page, "Unknown ("));
  EXPECT_TRUE(holds(page, "In the file: <a class=\"line\" href=\"#L3\">line 3</a> (Bench)"));
  EXPECT_TRUE(holds(page, "<a href=\"#f1\" class=\"not-met\">1</a>"));
  EXPECT_FALSE(holds(page, "<a href=\"#f2\"")) << "what is met marks no line";
}

TEST(WatchPage, WhateverAPersonWroteStaysText) {
  WatchBoard board = drawn_board();
  board.file = hostile;
  board.text = std::make_shared<const std::string>(hostile + "\n");
  ScreenFindings findings = *board.findings.value;
  findings.title = findings.shop = findings.verdict = findings.caution = hostile;
  for (ScreenFinding& one : findings.list) {
    one.title = one.configuration = one.words = hostile;
    one.lines = {{1, hostile}};
  }
  board.findings.value = std::make_shared<const ScreenFindings>(findings);
  Picture picture = picture_named("aaaa");
  picture.title = picture.description = hostile;
  ScreenSheet sheet{hostile, hostile, picture, {{0, {{paper_mm(1), paper_mm(1)}}}}};
  board.plans.value = std::make_shared<const std::vector<ScreenSheet>>(std::vector{sheet});
  const std::vector<ScreenStage> stages{{{hostile}, picture, picture}, {{hostile}, picture, picture}};
  board.conversions.value = std::make_shared<const std::vector<ScreenConversion>>(
      std::vector<ScreenConversion>{{hostile, hostile, {hostile}, stages}});
  const std::string good = watch_page(board);
  board.save = 5;
  board.own_fault = hostile;
  board.problems = {{.id = hostile,
                     .pointer = hostile,
                     .line = 1,
                     .column = 1,
                     .message = hostile,
                     .found = hostile,
                     .allowed = hostile,
                     .cure = hostile}};
  for (const std::string& page : {good, watch_page(board)}) {
    EXPECT_FALSE(holds(page, "<img src=x"));
    EXPECT_FALSE(holds(page, "onerror=\""));
    EXPECT_GE(times(page, hostile_as_text), 15U);
  }
}

TEST(WatchPage, ShowsTheTextOfTheFileAsFarAsItIsShown) {
  WatchBoard board = board_of(1);
  std::string page = watch_page(board);
  EXPECT_EQ(times(page, "<li id=\"L"), 4U) << "the end of the last line begins no other";
  EXPECT_TRUE(holds(page, "<code>  &quot;title&quot;: &quot;Wren&quot;,</code>"))
      << "a tab as spaces, no return";
  std::string lines;
  for (int i = 0; i < 6000; ++i) lines += "//\n";
  board.text = std::make_shared<const std::string>(lines);
  page = watch_page(board);
  EXPECT_EQ(times(page, "<li id=\"L"), 5000U);
  EXPECT_TRUE(holds(page, "The first 5000 lines of the file."));
  board.text = std::make_shared<const std::string>(std::string(1000, 'x'));
  EXPECT_TRUE(holds(watch_page(board), "<code>" + std::string(400, 'x') + "</code>"));
  board.text = std::make_shared<const std::string>("");
  EXPECT_EQ(times(watch_page(board), "<li id=\"L"), 0U);
}

TEST(WatchPage, TheSaveOfEachPartIsKnownToTheScript) {
  WatchBoard board = drawn_board();
  board.others.save = 3;
  EXPECT_TRUE(holds(watch_page(board),
                    "<body data-edition=\"9\" data-save=\"4\" data-findings=\"4\" data-plans=\"4\" "
                    "data-others=\"3\" data-conversions=\"4\">"));
}

}  // namespace
}  // namespace berthwright
