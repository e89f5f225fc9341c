#include <berthwright/view/words.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "solve/findings.h"
#include "support/board_trailers.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

constexpr Length flush_ledge = Length::inches(13'297, 1000);

Finding of_board(const Answered& made, std::string_view rule, std::string_view variant = {}) {
  for (const Finding& finding : made.of(rule, variant))
    if (!finding.subjects.empty() && finding.subjects.front() == "board") return finding;
  ADD_FAILURE() << rule << " tells nothing of the board";
  return {};
}

// Bench 14 in, board 0.703 in (the label of 23/32 plywood, PS 1 performance category as quoted at
// dev.carverwilde.com): ledge at 14.0 - 0.703 = 13.297 in. From below and from above the cure names it.
TEST(FlushBoard, WantsItsLedgeAtTheBenchTopLessItsRealThickness) {
  const Finding low =
      Answered(board_between_benches({.left_ledge = "12.797", .right_ledge = "12.797"})).one("support.flush");
  EXPECT_EQ(low.status, Status::not_met);
  EXPECT_EQ(low.variant, "lower");
  EXPECT_EQ(low.measured, Quantity(Length::inches(1, 2)));
  EXPECT_EQ(low.cure,
            (Cure{Cure::Kind::raise, "left ledge", Length::inches(1, 2), flush_ledge, {"right ledge"}}));
  const Answered high(board_between_benches({.left_ledge = "13.5", .right_ledge = "13.5"}));
  const Finding finding = high.one("support.flush");
  EXPECT_EQ(finding.variant, "higher");
  EXPECT_EQ(finding.measured, Quantity(Length::inches(203, 1000)));
  EXPECT_EQ(finding.cure->kind, Cure::Kind::lower);
  EXPECT_EQ(finding.cure->to, flush_ledge);
  EXPECT_EQ(cure_sentence(high.plan, finding),
            "Lower left ledge and right ledge by 1/4\" (5.2 mm), to 13.297 in above the floor.");
  const Finding met = Answered(board_between_benches()).one("support.flush");
  EXPECT_EQ(met.status, Status::met);
  EXPECT_EQ(met.measured, Quantity(Length{}));
}

TEST(Ridge, OverLowLedgesNamesTheirHeight) {
  const Answered made(board_between_benches({.left_ledge = "12.547", .right_ledge = "12.547"}));
  for (const Finding& ridge : made.of("bed.ridge"))
    EXPECT_EQ(ridge.cure,
              (Cure{Cure::Kind::raise, "left ledge", Length::inches(3, 4), flush_ledge, {"right ledge"}}));
  EXPECT_EQ(made.of("bed.ridge").size(), 2U);
}

// Ledges an inch too high: the backs are what lies high, and they come down.
TEST(Ridge, OverHighLedgesLowersThem) {
  const Answered made(board_between_benches({.left_ledge = "14.297", .right_ledge = "14.297"}));
  for (const Finding& ridge : made.of("bed.ridge"))
    EXPECT_EQ(ridge.cure, (Cure{Cure::Kind::lower, "left ledge", 1_in, flush_ledge, {"right ledge"}}));
  EXPECT_EQ(made.of("bed.ridge").size(), 2U);
}

// The commonest fault: backs an inch thinner than seats, all on one height.
TEST(Ridge, OfUnequalThicknessWantsAFillerAsThickAsTheDifference) {
  const Answered made(board_between_benches({.back = "3"}));
  ASSERT_EQ(made.of("bed.ridge").size(), 2U);
  for (const Finding& ridge : made.of("bed.ridge")) {
    EXPECT_EQ(ridge.measured, Quantity(1_in));
    EXPECT_EQ(ridge.cure, (Cure{Cure::Kind::pad, ridge.subjects.front(), 1_in}));
  }
  EXPECT_EQ(cure_sentence(made.plan, made.of("bed.ridge").front()),
            "Lay a filler of 1\" (25.4 mm) under left back, or make it of foam that much thicker.");
  EXPECT_TRUE(made.of("support.flush").empty());  // the cushions are levelled, not the boards
}

// Both at once: the ledge rises no higher than flush with its bench, a filler does the rest.
TEST(Ridge, OfThinBacksOnLowLedgesWantsBoth) {
  const Answered made(board_between_benches({.left_ledge = "12.797", .right_ledge = "12.797", .back = "3"}));
  ASSERT_FALSE(made.of("bed.dropped-piece").empty());
  for (const char* rule : {"bed.ridge", "bed.dropped-piece"})
    for (const Finding& finding : made.of(rule)) {
      Cure cure{Cure::Kind::raise, "left ledge", Length::inches(1, 2), flush_ledge, {"right ledge"}};
      cure.then = {{Cure::Kind::pad, finding.subjects.front(), 1_in}};
      EXPECT_EQ(finding.cure, cure) << rule;
    }
}

// Right ledge 1/2 in low: on the left one alone the board's middle hangs 14 in beyond (35 - 21 in).
TEST(Board, ThatHangsOverOneLedgeIsAnAlertWithTheOtherLedgeAsItsCure) {
  const Answered made(board_between_benches({.right_ledge = "12.797"}));
  const Finding rests = of_board(made, "support.rests");
  EXPECT_EQ(rests.status, Status::not_met);
  EXPECT_EQ(rests.subjects, (std::vector<std::string>{"board", "left ledge"}));
  EXPECT_EQ(std::get<Length>(*rests.measured), 14_in + one_tick);
  EXPECT_EQ(rests.where.front().plan, (Point{20_in, 35_in}));
  EXPECT_EQ(rests.cure, (Cure{Cure::Kind::raise, "right ledge", Length::inches(1, 2), flush_ledge, {}}));
  EXPECT_EQ(exit_code(made.answer), 1);
  EXPECT_TRUE(made.of("support.tipping").empty());  // it does not lie there at all
}

TEST(Board, ThatRestsIsToldOnceForAll) {
  const Answered made(board_between_benches());
  EXPECT_EQ(made.one("support.rests").status, Status::met);
  EXPECT_TRUE(made.one("support.rests").subjects.empty());
  EXPECT_EQ(made.one("support.tipping").status, Status::met);
  EXPECT_FALSE(made.one("support.tipping").measured.has_value());
  EXPECT_EQ(of_board(made, "support.span").measured, Quantity(28_in));
  EXPECT_EQ(of_board(made, "support.span").variant, "width");
  EXPECT_EQ(of_board(made, "support.free-edge", "rear").measured, Quantity(Length::inches(119, 4)));
  EXPECT_EQ(made.of("support.free-edge").size(), 2U);
}

// 7/8 in as it lies less 1/8 in of play is the 3/4 in asked; ledges of 7/8 in are 1/8 in short of it.
TEST(Bearing, IsComparedShovedOverAndTheCureWidensTheLedge) {
  EXPECT_EQ(of_board(Answered(board_between_benches()), "support.bearing", "left").status, Status::close);
  const Answered made(board_between_benches({.ledge_width = "7/8"}));
  const Finding left = of_board(made, "support.bearing", "left");
  EXPECT_EQ(left.status, Status::not_met);
  EXPECT_EQ(left.measured, Quantity(Length::inches(5, 8)));
  EXPECT_EQ(left.besides, (std::vector<Quantity>{Length::inches(3, 4), Length::inches(1, 8)}));
  EXPECT_EQ(left.cure, (Cure{.kind = Cure::Kind::widen,
                             .subject = "left ledge",
                             .by = Length::inches(1, 8),
                             .side = Wall::right}))
      << "farther under the board";
  EXPECT_EQ(left.subjects, (std::vector<std::string>{"board", "left ledge"}));
}

// Ledges 36 in long under a board of 40: it reaches 4 in over, its middle is 16 in within: 17.43 x 16 / 4
// = 69.7.
TEST(Tipping, ComparesTheLoadThatTipsWithAPerson) {
  const Answered made(board_between_benches({.ledge_length = "36"}));
  const Finding tips = of_board(made, "support.tipping");
  EXPECT_EQ(tips.status, Status::not_met);
  EXPECT_EQ(tips.besides.front(), Quantity(4_in));
  EXPECT_EQ(tips.compared, Quantity(Mass::pounds(250)));
  EXPECT_GT(std::get<Mass>(*tips.measured), Mass::pounds(69));
  EXPECT_LT(std::get<Mass>(*tips.measured), Mass::pounds(70));
  // 39 in: 17.43 x 19 / 1 = 331 lb.
  EXPECT_EQ(of_board(Answered(board_between_benches({.ledge_length = "39"})), "support.tipping").status,
            Status::met);
  TrailerText unknown = board_between_benches({.ledge_length = "36"});
  std::string& board = unknown.pieces.front();
  board.replace(board.find("23/32 plywood"), 13, "door skin");
  EXPECT_EQ(of_board(Answered(unknown), "support.tipping").status, Status::unknown);
}

TEST(Board, HeldInTheAirIsAnAlertAndATableIsUnknown) {
  TrailerText text = board_between_benches();
  text.night.front() = R"({"piece": "board", "at": {"front": 0, "left": "20 1/8"}, "base": "13.5"})";
  const Answered made(text);
  const Finding drops = of_board(made, "support.rests", "nothing");
  EXPECT_EQ(drops.status, Status::not_met);
  EXPECT_EQ(drops.measured, Quantity(Length::inches(203, 1000)));
  EXPECT_EQ(drops.subjects, (std::vector<std::string>{"board", "left ledge"}));
  EXPECT_EQ(exit_code(made.answer), 1);
  std::string& table = text.pieces.front();
  table.replace(table.find(R"("kind": "board")"), 15, R"("kind": "table")");
  const Answered hooked(text);
  EXPECT_TRUE(hooked.of("support.rests").empty());
  EXPECT_EQ(hooked.one("support.fastening", "height").status, Status::unknown);
  EXPECT_EQ(exit_code(hooked.answer), 0);
}

TEST(Table, OnALegIsUnknownByDayAndOnTheBedByNight) {
  const Answered made(table_on_the_bed());
  EXPECT_EQ(made.one("support.fastening", "leg").subjects, (std::vector<std::string>{"table", "leg"}));
  const Finding upon = made.of("bed.laid-upon").front();
  EXPECT_EQ(upon.status, Status::not_met);
  EXPECT_EQ(upon.subjects, std::vector<std::string>{"table"});
  EXPECT_EQ(upon.measured, Quantity(Area::rectangle(30_in, 20_in)));
  EXPECT_EQ(Answered(board_between_benches()).one("bed.laid-upon").status, Status::met);
}

TEST(Cushion, OverAHoleWiderThanAKneeIsToldWithItsPlace) {
  TrailerText text = board_between_benches();
  text.night.erase(text.night.begin());  // no board: the backs lie on the ledges, an inch of each of them
  const Answered made(text);
  const std::vector<Finding> hollow = made.of("support.unsupported");
  ASSERT_EQ(hollow.size(), 2U);
  for (const Finding& finding : hollow) {
    EXPECT_EQ(finding.status, Status::not_met);
    EXPECT_EQ(finding.measured, Quantity(14_in));  // 15 in less the inch on the ledge
    EXPECT_EQ(finding.cure, (Cure{Cure::Kind::bridge, finding.subjects.front(), 4_in}));
    EXPECT_FALSE(finding.where.empty());
  }
}

TEST(Cushion, OnTwoHeightsIsToldWithTheStepAndTheShares) {
  const Answered made(cushion_on_two_benches("13 1/2"));
  const Finding finding = made.one("support.two-heights");
  EXPECT_EQ(finding.status, Status::not_met);
  EXPECT_EQ(finding.subjects, (std::vector<std::string>{"cushion", "high", "low"}));
  EXPECT_EQ(finding.measured, Quantity(Length::inches(1, 2)));
  EXPECT_EQ(finding.besides, (std::vector<Quantity>{Portion{625}, Portion{375}}));
  EXPECT_EQ(finding.cure->kind, Cure::Kind::raise);
  EXPECT_EQ(finding.cure->to, 14_in);
  EXPECT_EQ(Answered(cushion_on_two_benches("13 3/4")).one("support.two-heights").status, Status::close);
  EXPECT_TRUE(Answered(cushion_on_two_benches("14")).of("support.two-heights").empty());
}

TEST(SupportFindings, AreTheSameInTheMirror) {
  for (const TrailerText& text :
       {board_between_benches(), board_between_benches({.left_ledge = "12.797", .back = "3"}),
        board_between_benches({.ledge_length = "36"}), cushion_on_two_benches("13 1/2"),
        table_on_the_bed()}) {
    const Answered here(text);
    const Answered there(text.mirrored());
    for (const Rule& rule : all_rules()) {
      if (!rule.id.text().starts_with("support.") && rule.id.text() != "bed.laid-upon") continue;
      std::vector<std::string> a;
      std::vector<std::string> b;
      const auto tell = [](const Answered& made, const Finding& finding) {
        return finding.measured ? quantity_text(*finding.measured, made.plan->unit, Rounding::nearest)
                                : std::string("nothing");
      };
      for (const Finding& finding : here.of(rule.id.text())) a.push_back(tell(here, finding));
      for (const Finding& finding : there.of(rule.id.text())) b.push_back(tell(there, finding));
      std::ranges::sort(a);
      std::ranges::sort(b);
      EXPECT_EQ(a, b) << rule.id.text();
    }
  }
}

}  // namespace
}  // namespace berthwright
