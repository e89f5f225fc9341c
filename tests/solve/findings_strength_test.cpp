#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "solve/findings.h"
#include "support/board_trailers.h"

namespace berthwright {
namespace {

// What the plan says of the panel of its first piece, the board.
TrailerText stamped(TrailerText text, const std::string& members) {
  text.pieces.front().insert(1, members + ", ");
  return text;
}

// Two ledges 1 in wide under benches 30 in apart: a free span of 28 in, 40 in of board on it, both ends free.
// The span goes over the width of the board.
Answered board(const char* members) { return Answered(stamped(board_between_benches(), members)); }

Answered strong() { return board(R"("panel": "48/24", "plies": 3, "grain": "width")"); }
Answered turned() { return board(R"("panel": "48/24", "plies": 3, "grain": "length")"); }

// Strip of the panel table (AWC ASD/LRFD Manual, M9.2-1): 30 x 28⁴ / (921.6 x 440,000) = 0.04547 in of 28 /
// 240 = 0.11667; 30 x 28² / 96 = 245 of 845; a knee on 12 in at the free end: 250 x 28 / 4 = 1,750 of 845.
TEST(BoardStrength, AlongTheGrainCarriesSleepersButNoKneeAtItsFreeEdge) {
  const Answered made = strong();
  const Finding sag = made.one("strength.sag");
  EXPECT_EQ(sag.status, Status::met);
  const Length depth = std::get<Sag>(*sag.measured).depth;
  EXPECT_NEAR(static_cast<double>(depth.ticks()) / ticks_per_inch, 0.04547, 5e-6);
  EXPECT_EQ(std::get<Sag>(*sag.measured).span, 28_in);
  EXPECT_EQ(std::get<Sag>(*sag.compared).depth, Length::from_ticks(28 * ticks_per_inch / 240));
  EXPECT_EQ(sag.variant, "48/24 of 3 plies, face grain along the span");

  const Finding load = made.one("strength.load");
  EXPECT_EQ(load.status, Status::met);
  EXPECT_EQ(load.measured, Quantity(Portion{290}));  // 245 / 845 = 0.28994
  EXPECT_EQ(load.source.address, "yumpu.com/en/document/view/32600583 (page 75)");

  const Finding knee = made.one("strength.knee");
  EXPECT_EQ(knee.status, Status::not_met);
  EXPECT_EQ(knee.measured, Quantity(Portion{2072}));  // 1,750 / 845 = 2.07101
  EXPECT_EQ(knee.besides, (std::vector<Quantity>{28_in, 12_in}));
  // 845 x 4 / 250 = 13.52 in.
  EXPECT_EQ(knee.cure, (Cure{Cure::Kind::bear_between, "board", Length::inches(27, 2)}));
  EXPECT_EQ(made.one("strength.knee-sag").status, Status::met);
  EXPECT_EQ(exit_code(made.answer), 0);
}

// Turned: 0.04547 x 440,000 / 29,500 = 0.678 in, L/41; 245 of 225. Turning it back mends both.
TEST(BoardStrength, AcrossTheGrainFailsAndIsToBeTurned) {
  const Answered made = turned();
  for (const char* rule : {"strength.sag", "strength.load"}) {
    const Finding finding = made.one(rule);
    EXPECT_EQ(finding.status, Status::not_met) << rule;
    EXPECT_EQ(finding.cure, (Cure{Cure::Kind::turn_grain, "board", {}})) << rule;
    EXPECT_EQ(finding.variant, "48/24 of 3 plies, face grain across the span");
  }
  EXPECT_EQ(made.one("strength.load").measured, Quantity(Portion{1089}));  // 1.08889
  const Length depth = std::get<Sag>(*made.one("strength.sag").measured).depth;
  EXPECT_NEAR(static_cast<double>(depth.ticks()) / ticks_per_inch, 0.6782, 5e-5);
}

TEST(BoardStrength, OfUnknownGrainIsMetOnlyWhereBothWaysAre) {
  const Answered made = board(R"("panel": "48/24", "plies": 3)");
  const Finding sag = made.one("strength.sag");
  EXPECT_EQ(sag.status, Status::unknown);
  EXPECT_EQ(sag.cure, (Cure{Cure::Kind::state_grain, "board", {}}));
  EXPECT_EQ(sag.measured, turned().one("strength.sag").measured);  // the weaker way is told
  EXPECT_EQ(made.one("strength.knee").status, Status::not_met);    // neither way
  // Birch 18 mm bends little either way.
  EXPECT_EQ(board(R"("panel": "birch 18 mm")").one("strength.load").status, Status::met);
}

TEST(BoardStrength, OfAnUnknownPanelIsUnknown) {
  const Answered made(board_between_benches());
  const Finding panel = made.one("strength.panel");
  EXPECT_EQ(panel.status, Status::unknown);
  EXPECT_EQ(panel.subjects, (std::vector<std::string>{"board"}));
  EXPECT_EQ(panel.besides, (std::vector<Quantity>{28_in}));
  EXPECT_EQ(panel.cure, (Cure{Cure::Kind::state_panel, "board", {}}));
  for (const char* rule : {"strength.sag", "strength.load", "strength.knee"})
    EXPECT_TRUE(made.of(rule).empty()) << rule;
  EXPECT_TRUE(strong().of("strength.panel").empty());
}

// 32/16 over 28 in: 0.16006 in of 0.11667; the next that would do is 40/20 (0.0800). At most 25.2 in.
TEST(BoardStrength, OfAThinPanelNamesTheSpanAndThePanelThatWouldDo) {
  const Finding sag = board(R"("panel": "32/16", "plies": 3, "grain": "width")").one("strength.sag");
  EXPECT_EQ(sag.status, Status::not_met);
  EXPECT_EQ(sag.cure->kind, Cure::Kind::bear_between);
  EXPECT_EQ(sag.cure->by, Length::inches(201, 8));
  EXPECT_EQ(sag.cure->panel, "40/20");
}

// Ledges along the free ends too: then a knee is shared by 24 in. 875 / 845 = 1.0355.
TEST(BoardStrength, WithBothEndsBorneSharesTheKneeByTwentyFourInches) {
  TrailerText text = board_between_benches();
  for (const char* front : {"0", "39"})
    text.fixtures.push_back(std::string(R"({"id": "end )") + front +
                            R"(", "kind": "ledge", "length": 1, "width": 30, "at": {"front": )" + front +
                            R"(, "left": 20}, "base": 11, "top": "13.297"})");
  const Answered made(stamped(text, R"("panel": "48/24", "plies": 3, "grain": "width")"));
  const Finding knee = made.one("strength.knee");
  EXPECT_EQ(knee.measured, Quantity(Portion{1036}));
  EXPECT_EQ(knee.besides, (std::vector<Quantity>{28_in, 24_in}));
  // The side ledges: half a span of 28 in on the 38 in between the end ledges, 30 x 14 x 38 / 144 = 110.8 lb;
  // the ends: triangles of 14 x 14.
  for (const Finding& ledge : made.of("strength.ledge")) {
    const bool end = ledge.subjects.front().starts_with("end");
    const Mass slept = std::get<Mass>(ledge.besides.front());
    EXPECT_EQ(mass_text(slept, Unit::inch), end ? "41 lb (18.5 kg)" : "111 lb (50.3 kg)");
  }
  EXPECT_EQ(made.of("strength.ledge").size(), 4U);
}

// 30 x 14 x 40 / 144 = 116.67 lb, and 250: 366.67 / 69 = 5.3, so 6 screws (computed from the NDS equations).
TEST(BoardStrength, TellsWhatTheLedgesMustHold) {
  const Answered made = strong();
  const std::vector<Finding> ledges = made.of("strength.ledge");
  ASSERT_EQ(ledges.size(), 2U);
  for (const Finding& ledge : ledges) {
    EXPECT_EQ(ledge.measured, Quantity(Count{6}));
    EXPECT_EQ(ledge.subjects.back(), "board");
    EXPECT_EQ(ledge.status, Status::met);
  }
  EXPECT_EQ(ledges.front().subjects.front(), "left ledge");
}

// The same board with nothing on it is asked nothing.
TEST(BoardStrength, IsAskedOnlyUnderCushions) {
  TrailerText text = board_between_benches();
  text.night.erase(text.night.begin() + 1, text.night.end());
  text.beds.clear();
  const Answered made(stamped(text, R"("panel": "48/24", "plies": 3, "grain": "width")"));
  for (const char* rule :
       {"strength.sag", "strength.load", "strength.knee", "strength.ledge", "strength.panel"})
    EXPECT_TRUE(made.of(rule).empty()) << rule;
}

TEST(BoardStrength, ByDayAndByNightAlikeIsToldOnceOfTheTrailer) {
  EXPECT_EQ(strong().one("strength.load").configuration.text(), "night");
  TrailerText text = board_between_benches();
  text.day = text.night;
  const Answered made(stamped(text, R"("panel": "48/24", "plies": 3, "grain": "width")"));
  EXPECT_TRUE(made.one("strength.load").configuration.empty());
  EXPECT_EQ(made.of("strength.ledge").size(), 2U);
}

TEST(BoardStrength, IsTheSameInAMirrorAndInAnyOrder) {
  const auto figures = [](const TrailerText& text) {
    const Answered made(text);
    std::vector<Quantity> found;
    for (const char* rule : {"strength.sag", "strength.load", "strength.knee", "strength.knee-sag"})
      found.push_back(*made.one(rule).measured);
    return found;
  };
  TrailerText text = stamped(board_between_benches(), R"("panel": "40/20", "plies": 4, "grain": "width")");
  const std::vector<Quantity> straight = figures(text);
  EXPECT_EQ(figures(text.mirrored()), straight);
  std::ranges::reverse(text.fixtures);
  std::ranges::reverse(text.pieces);
  EXPECT_EQ(figures(text), straight);
}

// Drawn 3/4 in thick but stamped 48/24, whose label says 0.703 in: 0.047 in is over 1/32 (US PS 1 tolerance).
TEST(PanelThickness, OfThePlanIsComparedWithTheLabel) {
  TrailerText text = board_between_benches();
  EXPECT_EQ(Answered(stamped(text, R"("panel": "48/24", "plies": 3)")).one("strength.thickness").status,
            Status::met);
  const Finding thin = Answered(stamped(text, R"("panel": "32/16", "plies": 3)")).one("strength.thickness");
  EXPECT_EQ(thin.measured, Quantity(Length::inches(252, 1000)));
  text.pieces.front().replace(text.pieces.front().find("0.703"), 5, "0.750");
  const Answered made(stamped(text, R"("panel": "48/24", "plies": 3)"));
  const Finding thick = made.one("strength.thickness");
  EXPECT_EQ(thick.status, Status::not_met);
  EXPECT_EQ(thick.measured, Quantity(Length::inches(47, 1000)));
  EXPECT_EQ(thick.cure, (Cure{Cure::Kind::real_thickness, "board", Length::inches(703, 1000)}));
  // No figure of ours for 7/16: nothing is compared.
  EXPECT_TRUE(Answered(stamped(text, R"("panel": "24/16", "plies": 3)")).of("strength.thickness").empty());
}

}  // namespace
}  // namespace berthwright
