#include "solve/room/bending.h"

#include <gtest/gtest.h>

#include <random>

#include "oracle/beam.h"

namespace berthwright {
namespace {

StripValues strip(const char* name, bool along = true, int plies = 3) {
  const Panel panel = *panel_named(name, plies);
  return along ? panel.along : panel.across;
}

SpannedBoard over(Length clear, Length width = 42_in) { return {clear, width, width, false}; }
SpannedBoard at_edge(Length clear, Length width = 42_in) { return {clear, width, width, true}; }

constexpr double rounded = 1.001 / ticks_per_inch;  // a sag is rounded up to the tick

double in_inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

// AWC ASD/LRFD Manual, Table M9.2-1 (yumpu.com/en/document/view/32600583, page 75), one span, 30 psf:
// d = w L⁴ / (921.6 EI), M = w L² / 96. Sag in inches, span / sag, M and FbS in lb-in per foot.
TEST(Bending, UnderSleepersGivesTheCasesOfThePanelTable) {
  struct Case {
    StripValues values;
    Length clear;
    double sag, sag_error;
    std::int64_t part_of_span;
    double moment;
    bool stiff, strong;
  };
  for (const Case& one : {Case{strip("32/16"), 24_in, 0.0864, 5e-5, 278, 180, true, true},
                          Case{strip("40/20"), 24_in, 0.0432, 5e-5, 556, 180, true, true},
                          Case{strip("48/24"), 24_in, 0.0245, 5e-5, 978, 180, true, true},
                          Case{strip("48/24"), 30_in, 0.0599, 5e-5, 501, 281.25, true, true},
                          Case{strip("48/24", false), 30_in, 0.894, 5e-4, 34, 281.25, false, false}}) {
    SCOPED_TRACE(one.sag);
    const Bending bent = under_sleepers(over(one.clear), one.values);
    EXPECT_NEAR(in_inches(bent.sag), one.sag, one.sag_error);
    EXPECT_NEAR(in_inches(one.clear) / in_inches(bent.sag), static_cast<double>(one.part_of_span), 0.6);
    const double used = one.moment / static_cast<double>(one.values.strength) * 1000;
    EXPECT_GE(static_cast<double>(bent.used.thousandths), used);
    EXPECT_LT(static_cast<double>(bent.used.thousandths), used + 1);
    EXPECT_EQ(is_met(Bent::too_far_by_sleepers, over(one.clear), one.values), one.stiff);
    EXPECT_EQ(is_met(Bent::too_hard_by_sleepers, over(one.clear), one.values), one.strong);
  }
}

// The same table; 250 lb on 24 in, common practice without a source: M = P L / 4 / 2.
TEST(Bending, UnderAKneeGivesTheCasesOfThePanelTable) {
  EXPECT_EQ(under_knee(over(30_in), strip("48/24")).used, Portion{1110});  // 937.5 / 845 = 1.1095
  EXPECT_FALSE(is_met(Bent::too_hard_by_knee, over(30_in), strip("48/24")));

  const Bending thin = under_knee(over(20_in), strip("32/16"));  // 625 / 370 = 1.6892
  EXPECT_EQ(thin.used, Portion{1690});
  EXPECT_NEAR(in_inches(thin.sag), 0.167, 5e-4);  // L/120

  const Bending limit = under_knee(over(20_in), strip("40/20"));  // 625 / 625
  EXPECT_EQ(limit.used, Portion{1000});
  EXPECT_NEAR(in_inches(limit.sag), 0.083, 5e-4);  // L/240
  EXPECT_TRUE(is_met(Bent::too_hard_by_knee, over(20_in), strip("40/20")));
  EXPECT_FALSE(is_met(Bent::too_hard_by_knee, over(20_in + one_tick), strip("40/20")));

  const Bending enough = under_knee(over(24_in), strip("48/24"));  // 750 / 845 = 0.8876
  EXPECT_EQ(enough.used, Portion{888});
  EXPECT_NEAR(in_inches(enough.sag), 0.082, 5e-4);  // L/293
}

// A knee at a free edge is shared by half the width: 12 in, so twice the moment and the sag; a narrow board
// shares it by no more than its own width.
TEST(Bending, AKneeAtAFreeEdgeOrOnANarrowBoardIsSharedByLess) {
  const Bending middle = under_knee(over(20_in), strip("40/20"));
  const Bending edge = under_knee(at_edge(20_in), strip("40/20"));
  EXPECT_EQ(edge.used, Portion{2000});
  EXPECT_NEAR(in_inches(edge.sag), 2 * in_inches(middle.sag), 2 * rounded);
  EXPECT_EQ(under_knee(over(20_in, 12_in), strip("40/20")).used, Portion{2000});
  EXPECT_EQ(under_knee(at_edge(20_in, 12_in), strip("40/20")).used, Portion{2000});
  EXPECT_EQ(under_knee(at_edge(20_in, 6_in), strip("40/20")).used, Portion{4000});
  EXPECT_EQ(under_knee(over(20_in, 24_in), strip("40/20")).used, Portion{1000});
}

// Birch plywood 12 mm over 600 mm under 1.5 kPa bends 1.640 mm, L/366 (E 10,719 N/mm², from memory); 30 psf
// are 1.4364 kPa, so 1.640 x 1.4364 / 1.5 = 1.5705 mm.
TEST(Bending, OfBirchAgreesWithTheMetricHandbookCase) {
  const Bending bent = under_sleepers(over(600_mm), panel_named("birch 12 mm", std::nullopt)->along);
  EXPECT_NEAR(static_cast<double>(bent.sag.ticks()) / ticks_per_mm, 1.5705, 0.001);
}

// Any handbook of mechanics: 5 w L⁴ / (384 EI) and w L² / 8. w = 30 / 12 lb per inch of a strip 12 in wide, L
// = 48, EI = 440,000: 5 x 2.5 x 5,308,416 / 168,960,000 = 0.39273; 2.5 x 2,304 / 8 = 720 of 845 = 0.852.
TEST(Bending, IsThatOfASimpleBeam) {
  const Bending bent = under_sleepers(over(48_in), strip("48/24"));
  EXPECT_NEAR(in_inches(bent.sag), 0.39273, 1e-5);
  EXPECT_EQ(bent.used, Portion{853});
}

// Where only 14 in of a board 42 in wide bear at both ends, they carry three times the load.
TEST(Bending, WhatHangsFreeIsCarriedByWhatBears) {
  const Bending whole = under_sleepers({30_in, 42_in, 42_in, false}, strip("48/24"));
  const Bending part = under_sleepers({30_in, 14_in, 42_in, false}, strip("48/24"));
  EXPECT_NEAR(in_inches(part.sag), 3 * in_inches(whole.sag), 3 * rounded);
  EXPECT_EQ(part.used, Portion{999});  // 843.75 / 845 = 0.99852
  EXPECT_EQ(under_sleepers({30_in, 42_in, 14_in, false}, strip("48/24")).sag, whole.sag);
}

// The same table: longest spans in inches for L/240 at 30 psf, along the grain and across it with 3 plies.
TEST(Bending, LongestSpansAreThoseOfThePanelTable) {
  struct Row {
    const char* name;
    double along, across;
  };
  for (const Row& row : {Row{"24/0", 20.4, 7.7}, Row{"24/16", 22.2, 8.7}, Row{"32/16", 25.2, 10.1},
                         Row{"40/20", 31.7, 13.2}, Row{"48/24", 38.3, 15.6}}) {
    SCOPED_TRACE(row.name);
    const auto longest = [&](bool along) {
      return longest_span(Bent::too_far_by_sleepers, over(60_in), strip(row.name, along));
    };
    EXPECT_NEAR(in_inches(longest(true)), row.along, 0.06);
    EXPECT_NEAR(in_inches(longest(false)), row.across, 0.06);
    EXPECT_TRUE(is_met(Bent::too_far_by_sleepers, over(longest(true)), strip(row.name)));
    EXPECT_FALSE(is_met(Bent::too_far_by_sleepers, over(longest(true) + one_tick), strip(row.name)));
  }
  EXPECT_EQ(longest_span(Bent::too_far_by_sleepers, over(20_in), strip("48/24")), 20_in);
  // 845 x 2 x 4 / 250 = 27.04 in.
  EXPECT_NEAR(in_inches(longest_span(Bent::too_hard_by_knee, over(30_in), strip("48/24"))), 27.04, 0.001);
}

TEST(Bending, TheNextStrongerPanelIsTheFirstOfItsMakeThatWouldDo) {
  const auto next = [](Bent question, Length clear, const char* name, bool along) {
    return next_stronger(question, over(clear), *panel_named(name, std::nullopt), along);
  };
  EXPECT_EQ(next(Bent::too_hard_by_knee, 20_in, "32/16", true), "40/20");
  EXPECT_EQ(next(Bent::too_hard_by_knee, 24_in, "32/16", true), "48/24");
  EXPECT_EQ(next(Bent::too_hard_by_knee, 30_in, "48/24", true), "");
  EXPECT_EQ(next(Bent::too_far_by_sleepers, 30_in, "48/24", false), "");
  EXPECT_EQ(next(Bent::too_far_by_sleepers, 30_in, "24/0", true), "40/20");
  EXPECT_EQ(next(Bent::too_hard_by_knee, 800_mm, "birch 9 mm", true), "birch 12 mm");
}

// Numbers of every size against a beam cut into slices. The table's formulas are exact; the slices are not.
TEST(Bending, AgreesWithABeamAddedUpSliceBySlice) {
  std::mt19937 random(20261125);
  const auto between = [&](std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(high - low + 1));
  };
  constexpr std::size_t slices = 2001;
  for (int seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    const SpannedBoard board{Length::inches(between(16, 16 * 90), 16),
                             Length::inches(between(16, 16 * 60), 16),
                             Length::inches(between(16, 16 * 60), 16), between(0, 1) == 1};
    const StripValues values{between(3'000, 500'000), between(50, 1'500)};
    oracle::SlicedBeam beam{in_inches(board.clear), static_cast<double>(values.stiffness), {}};
    const double strength = static_cast<double>(values.strength);

    double area = in_inches(board.clear) * 12;
    if (board.open > board.carried) area *= in_inches(board.open) / in_inches(board.carried);
    beam.loads.assign(slices, 30.0 / 144 * area / slices);
    const oracle::BeamResult slept = oracle::summed(beam);
    const Bending sleepers = under_sleepers(board, values);
    EXPECT_NEAR(in_inches(sleepers.sag), slept.sag, slept.sag * 1e-5 + rounded);
    EXPECT_NEAR(static_cast<double>(sleepers.used.thousandths), slept.moment / strength * 1000 + 0.5,
                0.51 + slept.moment / strength * 0.1);

    const double shared = board.free_edge ? 12 : 24;
    beam.loads.assign(slices, 0);
    beam.loads[slices / 2] = 250.0 * 12 / std::min(shared, in_inches(board.carried));
    const oracle::BeamResult knelt = oracle::summed(beam);
    const Bending knee = under_knee(board, values);
    EXPECT_NEAR(in_inches(knee.sag), knelt.sag, knelt.sag * 1e-5 + rounded);
    EXPECT_NEAR(static_cast<double>(knee.used.thousandths), knelt.moment / strength * 1000 + 0.5,
                0.51 + knelt.moment / strength * 0.1);
  }
}

}  // namespace
}  // namespace berthwright
