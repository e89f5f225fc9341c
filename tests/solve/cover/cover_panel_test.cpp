#include <berthwright/solve/cover/cover_panel.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <optional>
#include <random>
#include <stdexcept>

#include <berthwright/solve/cover/cover.h>

#include "support/cushions.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

CoverPanel panel_of(Length length, Length width) {
  return cover_panel(cushion(length, width, 4_in).outline, Length::inches(1, 2));
}

Sewing patterned(Length along, Length across, bool half_drop = false) {
  Sewing sewing;
  sewing.fabric.repeat = Repeat{along, across, half_drop};
  return sewing;
}

// A panel of 41 x 23 in, its up along the 41; a pattern again after 25 and 13 1/2 in: two repeats, 50 in, of
// the roll. Half of the panel is 20 1/2, so it begins 25 - 20 1/2 = 4 1/2 behind a motif; 13 1/2 - 11 1/2 = 2
// across.
TEST(PanelLay, TakesWholeRepeatsAndHasTheMotifInItsMiddle) {
  const PanelLay lay =
      panel_lay(panel_of(40_in, 22_in), Wall::rear, patterned(25_in, Length::inches(27, 2)), {});
  EXPECT_EQ(lay.along, 41_in);
  EXPECT_EQ(lay.across, 23_in);
  EXPECT_EQ(lay.takes, 50_in);
  ASSERT_TRUE(lay.begins);
  EXPECT_EQ(*lay.begins, (RepeatPlace{Length::inches(9, 2), 2_in}));
  // One column on, motifs stand half of 25 lower: 4 1/2 - 12 1/2 + 25 = 17.
  EXPECT_EQ(*panel_lay(panel_of(40_in, 22_in), Wall::rear, patterned(25_in, Length::inches(27, 2), true), {})
                 .begins,
            (RepeatPlace{17_in, 2_in}));
}

// Workroom Threads, 8/2011: a cut of 116 in, repeat 25: 125.
TEST(PanelLay, TakesWhatAWorkroomTakes) {
  EXPECT_EQ(panel_lay(panel_of(115_in, 22_in), Wall::front, patterned(25_in, {}), {}).takes, 125_in);
}

// 76 x 24 in across 54 in goods, its up along the 24: plain goods are turned, a nap takes the middle 54 and
// two sides of (76 + 2 - 54) / 2 = 12.
TEST(PanelLay, TurnsPlainGoodsAndPiecesTheRest) {
  const CoverPanel settee = panel_of(75_in, 23_in);
  Sewing sewing;
  const PanelLay plain = panel_lay(settee, Wall::left, sewing, {});
  EXPECT_TRUE(plain.turned);
  EXPECT_EQ(plain.fit, PanelFit::fits);
  EXPECT_EQ(plain.widths, (std::vector<Length>{24_in}));
  EXPECT_EQ(plain.along, 76_in);
  sewing.fabric.one_way = true;
  const PanelLay napped = panel_lay(settee, Wall::left, sewing, {});
  EXPECT_FALSE(napped.turned);
  EXPECT_EQ(napped.fit, PanelFit::turned_only);
  EXPECT_EQ(napped.widths, (std::vector<Length>{12_in, 54_in, 12_in}));
  EXPECT_EQ(napped.along, 24_in);
  // Woven railroaded, its up lies across: no seam.
  sewing.fabric.up_across = true;
  const PanelLay railroaded = panel_lay(settee, Wall::left, sewing, {});
  EXPECT_TRUE(railroaded.turned);
  EXPECT_EQ(railroaded.fit, PanelFit::fits);
  EXPECT_EQ(railroaded.along, 76_in);
}

TEST(PanelLay, IsTooWideBothWaysForANarrowFabric) {
  Sewing sewing;
  sewing.fabric.width = 20_in;
  const PanelLay lay = panel_lay(panel_of(75_in, 39_in), Wall::left, sewing, {});
  EXPECT_EQ(lay.fit, PanelFit::too_wide);
  EXPECT_EQ(lay.across, 40_in) << "the shorter side is pieced";
  // Two would give 40 less a seam of 1: three, the middle of 20 and two of (40 + 2 - 20) / 2.
  EXPECT_EQ(lay.widths, (std::vector<Length>{11_in, 20_in, 11_in}));
  sewing.fabric.width = 1_in;
  EXPECT_THROW(panel_lay(panel_of(75_in, 39_in), Wall::left, sewing, {}), std::invalid_argument);
}

// Whatever the fabric: pieces fit it, and sewn together they are the panel again.
TEST(PanelLay, PiecesMakeUpThePanel) {
  std::mt19937_64 random(20261201);
  int pieced = 0;
  for (int i = 0; i < 500; ++i) {
    SCOPED_TRACE(i);
    Sewing sewing;
    sewing.fabric.width = Length::inches(6 + static_cast<std::int64_t>(random() % 100), 2);
    sewing.fabric.one_way = random() % 2 == 0;
    const CoverPanel panel = panel_of(Length::inches(20 + static_cast<std::int64_t>(random() % 200), 2),
                                      Length::inches(20 + static_cast<std::int64_t>(random() % 200), 2));
    const PanelLay lay = panel_lay(panel, random() % 2 == 0 ? Wall::left : Wall::front, sewing, {});
    Length sewn_up = -sewing.seam_allowance * 2 * static_cast<std::int64_t>(lay.widths.size() - 1);
    for (const Length each : lay.widths) {
      EXPECT_LE(each, sewing.fabric.width);
      EXPECT_GT(each, sewing.seam_allowance);
      sewn_up += each;
    }
    EXPECT_GE(sewn_up, lay.across);
    EXPECT_LE(sewn_up, lay.across + Length::from_ticks(40));
    EXPECT_EQ(lay.along + lay.across, panel.length + panel.width);
    if (!sewing.fabric.one_way && lay.widths.size() > 1) {
      EXPECT_GT(std::min(panel.length, panel.width), sewing.fabric.width);
    }
    pieced += lay.widths.size() > 1;
  }
  EXPECT_GT(pieced, 100);
}

// Motifs painted over the cloth one by one; one of them must stand in the middle of the seat.
TEST(PanelLay, AMotifStandsInTheMiddleOfTheSeat) {
  std::mt19937_64 random(20261202);
  for (int i = 0; i < 200; ++i) {
    SCOPED_TRACE(i);
    const auto eighths = [&](std::int64_t low, std::uint64_t more) {
      return Length::inches(2 * (low + static_cast<std::int64_t>(random() % more)), 8);
    };
    const Length along = eighths(8, 100), across = eighths(8, 100), beside = eighths(-60, 120);
    const bool drop = random() % 2 == 0;
    const PanelLay lay = panel_lay(panel_of(eighths(40, 200), eighths(40, 200)), Wall::rear,
                                   patterned(along, across, drop), beside);
    const Point middle{lay.begins->along + half(lay.along), lay.begins->across + half(lay.across) - beside};
    bool painted = false;
    for (std::int64_t column = -80; column <= 80; ++column)
      for (std::int64_t row = -80; row <= 80; ++row) {
        const bool low = drop && column % 2 != 0;
        painted = painted || middle == Point{along * row + (low ? half(along) : Length{}), across * column};
      }
    EXPECT_TRUE(painted);
    EXPECT_LT(lay.begins->along, along);
    EXPECT_LT(lay.begins->across, across);
    EXPECT_GE(std::min(lay.begins->along, lay.begins->across), Length{});
  }
}

/// A bench of 80 x 22 in along the left wall with two seats side by side, 30 and 50 in long, and two backs,
/// 45 and 35.
TrailerText settee_of_two() {
  TrailerText text;
  text.fixtures = {
      R"({"id": "bench", "kind": "bench", "length": 80, "width": 22, "at": {"front": 20, "left": 0}, "top": 14})"};
  text.pieces = {R"({"id": "s1", "kind": "cushion", "length": 30, "width": 22, "thickness": 4})",
                 R"({"id": "s2", "kind": "cushion", "length": 50, "width": 22, "thickness": 4})",
                 R"({"id": "b1", "kind": "cushion", "length": 45, "width": 16, "thickness": 4})",
                 R"({"id": "b2", "kind": "cushion", "length": 35, "width": 16, "thickness": 4})"};
  text.day = {R"({"piece": "s1", "at": {"front": 20, "left": 0}})",
              R"({"piece": "s2", "at": {"front": 50, "left": 0}})",
              R"({"piece": "b1", "at": {"front": 20, "left": 0}, "stands_on": "length", "faces": "right"})",
              R"({"piece": "b2", "at": {"front": 65, "left": 0}, "stands_on": "length", "faces": "right"})"};
  text.night = text.day;
  return text;
}

// Who looks at the settee looks to the left wall and has the front at the right. Its middle is 60 in from the
// front; the seats' are 35 and 75, the backs' 42 1/2 and 82 1/2.
TEST(PanelLay, StripesRunOnFromSeatToSeatAndToTheBacks) {
  Sewing sewing = patterned({}, 7_in);
  const Plan plan = settee_of_two().plan();
  const auto all = covers(plan, sewing).value();
  const std::array<Length, 4> beside{25_in, -15_in, Length::inches(35, 2), -Length::inches(45, 2)};
  const std::array<Length, 4> left_ends{30_in, 50_in, 45_in, 35_in};
  for (std::size_t i = 0; i < 4; ++i) {
    ASSERT_TRUE(all[i].lay.begins);
    // The stripe in the middle of the seat, counted from the middle of this panel, is `beside` to the left.
    const Length stripe = all[i].lay.begins->across + half(all[i].lay.across) - beside[i];
    EXPECT_EQ(stripe.ticks() % (7_in).ticks(), 0) << all[i].piece->id.text();
    EXPECT_EQ(all[i].lay.across, left_ends[i] + 1_in);
  }
  // Left and right exchanged, who looks has the front at the left.
  const Plan mirrored = settee_of_two().mirrored().plan();
  const auto twins = covers(mirrored, sewing).value();
  for (std::size_t i = 0; i < 4; ++i) {
    const Length stripe = twins[i].lay.begins->across + half(twins[i].lay.across) + beside[i];
    EXPECT_EQ(stripe.ticks() % (7_in).ticks(), 0) << twins[i].piece->id.text();
  }
}

}  // namespace
}  // namespace berthwright
