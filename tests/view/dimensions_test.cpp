#include "view/dimensions.h"

#include <gtest/gtest.h>

#include <array>

#include <berthwright/view/sheets.h>

#include "view/lettering.h"

namespace berthwright {
namespace {

const PlanView plan_view{24, {paper_mm(50), paper_mm(150)}};

PaperBox room(Length length, Length width) { return {plan_view({{}, width}), plan_view({length, {}})}; }

std::vector<Text> figures(const std::vector<Mark>& marks) {
  std::vector<Text> out;
  for (const Mark& mark : marks)
    if (const Text* text = std::get_if<Text>(&mark)) out.push_back(*text);
  return out;
}

TEST(Dimensions, AFigureStandsOnItsLineAndOverTheMiddleOfWhatItMeasures) {
  const ChainSetting set = set_chain({Wall::left, {{}, 120_in}, false}, 24, Unit::inch);
  const auto texts = figures(marks_of(set, plan_view, room(120_in, 72_in), paper_mm(10)));
  ASSERT_EQ(texts.size(), 1U);
  EXPECT_EQ(texts[0].words, "10' 0\"");
  // 60 in at 1:24 is 63.5 mm from x = 0; the line lies 10 mm below the room, the figure above the line.
  EXPECT_EQ(texts[0].at.x.micrometres(), 113'500);
  EXPECT_LT(texts[0].at.y, paper_mm(160));
  EXPECT_GT(texts[0].at.y, paper_mm(158));
}

TEST(Dimensions, BothUnitsStandOnEitherSideOfTheLine) {
  const ChainSetting set = set_chain({Wall::front, {{}, 1829_mm}, true}, 24, Unit::millimetre);
  const auto texts = figures(marks_of(set, plan_view, room(3_ft, 1829_mm), paper_mm(10)));
  ASSERT_EQ(texts.size(), 2U);
  EXPECT_EQ(texts[0].words, "1829");
  EXPECT_EQ(texts[1].words, "[6' 0\"]");
  EXPECT_TRUE(texts[0].reads_upward);
  EXPECT_LT(texts[0].at.x, paper_mm(40)) << "left of its line: above it for one who reads from the right";
  EXPECT_GT(texts[1].at.x, paper_mm(40));
}

TEST(Dimensions, FiguresOfNarrowPlacesMoveOutInOrder) {
  const std::vector<Length> stops{{}, 1_in, 2_in, 3_in, 4_in, 60_in};
  for (const Wall wall : {Wall::left, Wall::right, Wall::front, Wall::rear}) {
    const ChainSetting set = set_chain({wall, stops, false}, 24, Unit::inch);
    EXPECT_FALSE(set.crowded);
    const auto texts = figures(marks_of(set, plan_view, room(60_in, 60_in), paper_mm(10)));
    ASSERT_EQ(texts.size(), 5U);
    for (std::size_t i = 0; i < texts.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(overlaps(box_of(texts[i]), box_of(texts[j]))) << i << j;
    for (std::size_t i = 1; i < 4; ++i) EXPECT_LT(*set.moved_out[i - 1], *set.moved_out[i]);
  }
}

// At 1:24 60 in are 63.5 mm. A line through the middle of the first interval; the second has no room beside
// its two.
TEST(Dimensions, FiguresKeepOffTheLinesOfChainsBeyond) {
  ChainSetting set = set_chain({Wall::left, {{}, 60_in, 72_in}, false}, 24, Unit::inch);
  const ChainSetting beyond =
      set_chain({Wall::left, {{}, 30_in, 64_in, 68_in, 72_in}, false}, 24, Unit::inch);
  keep_off(set, std::array{beyond}, 24);
  EXPECT_FALSE(set.crossed[0]);
  const PaperLength line = on_paper(30_in, 24);
  const PaperLength reach = text_width(set.figures[0], lettering::label) / 2;
  EXPECT_GE(std::abs((set.middles[0] - line).micrometres()), reach.micrometres());
  EXPECT_LE(std::abs((set.middles[0] - line).micrometres()), reach.micrometres() + 1000);
  EXPECT_TRUE(set.crossed[1]);
  ChainSetting alone = set_chain({Wall::left, {{}, 60_in, 72_in}, false}, 24, Unit::inch);
  keep_off(alone, {}, 24);
  EXPECT_EQ(alone.middles[0], on_paper(30_in, 24));
}

TEST(Dimensions, AChainTooCrowdedSaysSo) {
  std::vector<Length> stops;
  for (int i = 0; i <= 40; ++i) stops.push_back(Length::inches(i));
  EXPECT_TRUE(set_chain({Wall::left, stops, false}, 24, Unit::inch).crowded);
}

TEST(Dimensions, LanesKeepEightMillimetresAndTheirFigures) {
  const ChainSetting plain = set_chain({Wall::left, {{}, 60_in, 120_in}, false}, 24, Unit::inch);
  const ChainSetting narrow = set_chain({Wall::left, {{}, 1_in, 120_in}, false}, 24, Unit::inch);
  const ChainSetting whole = set_chain({Wall::left, {{}, 120_in}, true}, 24, Unit::inch);
  const Lanes even = lanes_of({plain, whole}, paper_mm(10));
  EXPECT_EQ(even.lines[0], paper_mm(10));
  EXPECT_EQ(even.lines[1], paper_mm(18));
  const Lanes wider = lanes_of({narrow, whole}, paper_mm(10));
  EXPECT_GE(wider.lines[1], wider.lines[0] + narrow.outward + whole.inward);
  EXPECT_GE(wider.depth, wider.lines[1] + whole.outward);
}

}  // namespace
}  // namespace berthwright
