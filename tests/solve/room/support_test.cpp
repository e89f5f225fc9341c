#include <berthwright/solve/room/support.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <list>

#include "support/furniture.h"
#include "support/plan_builder.h"
#include "support/stood.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::Stood;

// Two benches 30 in apart, 40 in long, with ledges 1 in wide on their faces.
Furniture ledges(const std::string& left_top = "13.297", const std::string& right_top = "13.297",
                 const std::string& long_by = "40") {
  return Furniture()
      .fixture("left bench", "bench", {"0", "0", "40", "20"}, "0", "14")
      .fixture("right bench", "bench", {"0", "50", "40", "26"}, "0", "14")
      .fixture("left ledge", "ledge", {"0", "20", long_by, "1"}, "11", left_top)
      .fixture("right ledge", "ledge", {"0", "49", long_by, "1"}, "11", right_top);
}

Furniture with_board(Furniture furniture, const std::string& width = "29 3/4",
                     const std::string& left = "20 1/8", const std::string& pose = "") {
  return furniture.lay("board", "board", {"0", left, "40", width}, "0.703", pose,
                       R"("material": "23/32 plywood")");
}

// The board leaves 1/8 in to each bench: 7/8 in on each ledge, 3/4 in of it left when it is shoved over. From
// ledge to ledge 49 - 21 = 28 in, over all of its 40 in.
TEST(BoardOnTwoLedges, BearsLessByItsPlay) {
  const Stood made(with_board(ledges()));
  for (const Wall wall : {Wall::left, Wall::right}) {
    const BearingSide side = made.side(wall);
    EXPECT_EQ(side.borne, 40_in);
    EXPECT_EQ(side.depth, Length::inches(7, 8));
    EXPECT_EQ(side.play, Length::inches(1, 8));
    EXPECT_EQ(side.at_play, Length::inches(3, 4));
  }
  EXPECT_EQ(made.side(Wall::left).on, std::vector<std::string>{"left ledge"});
  EXPECT_EQ(made.side(Wall::right).on, std::vector<std::string>{"right ledge"});
  EXPECT_TRUE(made.side(Wall::front).is_free());
  EXPECT_TRUE(made.side(Wall::rear).is_free());
  EXPECT_EQ(made.board().held, BoardSupport::Held::lies);
  EXPECT_TRUE(made.board().balanced);
  EXPECT_EQ(made.board().overhang, Length{});
  EXPECT_FALSE(made.board().tips_at.has_value());
  const FreeSpan* span = made.board().span();
  ASSERT_NE(span, nullptr);
  EXPECT_EQ(span->across, Piece::Grain::along_width);
  EXPECT_EQ(span->clear, 28_in);
  EXPECT_EQ(span->carried, 40_in);
  EXPECT_EQ(span->open, 40_in);
  EXPECT_FALSE(made.board().over_length.has_value());
}

// 28 1/2 in wide between the benches: 3/4 in to each of them. Half an inch of play is counted.
TEST(BoardOnTwoLedges, SlipsOffWhenItsPlayIsWiderThanItsBearing) {
  const Stood made(with_board(ledges(), "28 1/2", "20 3/4"));
  EXPECT_EQ(made.side(Wall::left).depth, Length::inches(1, 4));
  EXPECT_EQ(made.side(Wall::left).play, Length::inches(1, 2));
  EXPECT_EQ(made.side(Wall::left).at_play, Length{});
}

// 40 x 29 3/4 in, 0.703 in thick: 8.2639 sq ft x 3 lb x 0.703 = 17.43 lb. The ledges end at 30 in, so the
// last 10 in hang over; its middle lies at 20 in, as far within the line as the edge lies beyond it: 17.43 lb
// tip it.
TEST(BoardOnTwoLedges, TipsUnderItsOwnWeightAtAsLongAnOverhang) {
  const Stood made(with_board(ledges("13.297", "13.297", "30")));
  EXPECT_TRUE(made.board().balanced);
  EXPECT_EQ(made.board().overhang, 10_in);
  EXPECT_EQ(made.board().overhangs_at.x, 40_in);
  ASSERT_TRUE(made.board().tips_at && made.board().weight);
  EXPECT_EQ(made.board().weight->units() * 100 / mass_units_per_pound, 1742);
  EXPECT_LE(*made.board().tips_at, *made.board().weight);
  EXPECT_GT(*made.board().tips_at, *made.board().weight - Mass::grams(1));
  EXPECT_EQ(made.board().span()->carried, 30_in);
  EXPECT_EQ(made.side(Wall::left).borne, 30_in);
}

// The same board, whatever it is made of: 12 lb as the plan says tip it with 12 lb.
TEST(BoardOnTwoLedges, WeighsWhatThePlanSays) {
  for (const char* material : {R"("material": "23/32 plywood", "weight": "12 lb")", R"("weight": "12 lb")"}) {
    Furniture furniture = ledges("13.297", "13.297", "30");
    const Stood made(furniture.lay("board", "board", {"0", "20 1/8", "40", "29 3/4"}, "0.703", "", material));
    EXPECT_EQ(made.board().weight, Mass::pounds(12));
    ASSERT_TRUE(made.board().tips_at);
    EXPECT_LE(*made.board().tips_at, Mass::pounds(12));
    EXPECT_GT(*made.board().tips_at, Mass::pounds(12) - Mass::grams(1));
  }
}

TEST(BoardOnTwoLedges, WhoseWeightIsNotKnownHasNoTippingLoad) {
  Furniture furniture = ledges("13.297", "13.297", "30");
  const Stood made(furniture.lay("board", "board", {"0", "20 1/8", "40", "29 3/4"}, "0.703"));
  EXPECT_EQ(made.board().overhang, 10_in);
  EXPECT_FALSE(made.board().weight.has_value());
  EXPECT_FALSE(made.board().tips_at.has_value());
}

// The right ledge half an inch low: it bears on the left one alone, whose edge at 21 in is 14 in from its
// middle at 35 in.
TEST(Board, OnOneLedgeHasItsMiddleInTheAir) {
  const Stood made(with_board(ledges("13.297", "12.797")));
  EXPECT_FALSE(made.board().balanced);
  EXPECT_EQ(made.board().beyond, 14_in + one_tick);
  EXPECT_TRUE(made.side(Wall::right).is_free());
  EXPECT_EQ(made.board().span(), nullptr);
}

// Bearing from 0 to 20 of 40 in: the middle lies exactly on the border, and a breath tips it.
TEST(Board, WithItsMiddleOnTheEdgeOfABenchDoesNotRest) {
  const auto on_bench = [](const std::string& length) {
    return Furniture()
        .fixture("bench", "bench", {"0", "0", length, "30"}, "0", "14")
        .lay("board", "board", {"0", "0", "40", "30"}, "0.703");
  };
  const Stood exactly(on_bench("20"));
  EXPECT_FALSE(exactly.board().balanced);
  EXPECT_GT(exactly.board().beyond, Length{});
  EXPECT_TRUE(Stood(on_bench("20.001")).board().balanced);
}

TEST(Board, AtAGivenHeightWithNothingThereIsHeldByNothing) {
  const Stood made(with_board(ledges(), "29 3/4", "20 1/8", R"("base": "13.5")"));
  EXPECT_EQ(made.board().held, BoardSupport::Held::at_height);
  EXPECT_TRUE(made.board().bearing.empty());
  EXPECT_TRUE(made.board().hull.empty());
  EXPECT_FALSE(made.board().balanced);
}

TEST(Board, OnTheFloorBearsAllOverAndBridgesNothing) {
  const Stood made(Furniture().lay("board", "board", {"10", "10", "40", "30"}, "0.703"));
  EXPECT_TRUE(made.board().balanced);
  EXPECT_EQ(made.board().bearing, made.arrangement.things.front().solid.outline());
  EXPECT_EQ(made.board().span(), nullptr);
  EXPECT_EQ(made.side(Wall::front).depth, 40_in);
  EXPECT_EQ(made.side(Wall::front).at_play, 40_in);
  EXPECT_EQ(made.side(Wall::left).on, std::vector<std::string>{"floor"});
}

TEST(Table, OnOneLegIsHeldInAWayThePlanDoesNotTell) {
  const Furniture room = Furniture().lay("leg", "leg", {"20", "20", "2", "2"}, "27");
  const auto table = [&](const std::string& x) {
    return Furniture(room).lay("table", "table", {x, "0", "40", "42"}, "0.703");
  };
  const Stood centred(table("1"));
  EXPECT_EQ(centred.board().held, BoardSupport::Held::on_legs);
  EXPECT_TRUE(centred.board().balanced);
  const Stood beside(table("15"));
  EXPECT_EQ(beside.board().held, BoardSupport::Held::on_legs);
  EXPECT_FALSE(beside.board().balanced);
}

// A wall cleat at the front, a leg under the rear: three points are enough to lie on.
TEST(Table, OnALegAndACleatLies) {
  const Stood made(Furniture()
                       .fixture("cleat", "ledge", {"0", "0", "1", "30"}, "25", "27")
                       .lay("leg", "leg", {"36", "14", "2", "2"}, "27")
                       .lay("table", "table", {"0", "0", "40", "30"}, "0.703"));
  EXPECT_EQ(made.board().held, BoardSupport::Held::lies);
  EXPECT_TRUE(made.board().balanced);
  // From the cleat to the leg 36 - 1 = 35 in, over the 2 in of the leg; all 30 in are open.
  ASSERT_TRUE(made.board().over_length.has_value());
  EXPECT_EQ(made.board().over_length->clear, 35_in);
  EXPECT_EQ(made.board().over_length->carried, 2_in);
  EXPECT_EQ(made.board().over_length->open, 30_in);
}

// Ledges on all four sides: 38 in between them one way, 28 in the other, and the shorter rules. Each side
// ends at the ledges of its neighbours, which do not bear it.
TEST(Board, OnFourLedgesSpansTheShorterWay) {
  Furniture furniture = ledges();
  furniture.fixture("front ledge", "ledge", {"0", "21", "1", "28"}, "11", "13.297")
      .fixture("rear ledge", "ledge", {"39", "21", "1", "28"}, "11", "13.297");
  const Stood made(with_board(furniture));
  EXPECT_EQ(made.board().over_length->clear, 38_in);
  EXPECT_EQ(made.board().over_width->clear, 28_in);
  EXPECT_EQ(made.board().span()->across, Piece::Grain::along_width);
  EXPECT_EQ(made.side(Wall::front).depth, 1_in);
  EXPECT_EQ(made.side(Wall::front).on, std::vector<std::string>{"front ledge"});
  EXPECT_EQ(made.side(Wall::left).depth, Length::inches(7, 8));
  EXPECT_EQ(made.side(Wall::left).on, std::vector<std::string>{"left ledge"});
}

// Three sides: the free one is carried between its neighbours, so that is the span, however long.
TEST(Board, OnThreeLedgesSpansAlongItsFreeEdge) {
  Furniture furniture = ledges();
  furniture.fixture("front ledge", "ledge", {"0", "21", "1", "28"}, "11", "13.297");
  const Stood made(with_board(furniture));
  EXPECT_FALSE(made.board().over_length.has_value());
  EXPECT_EQ(made.board().span()->clear, 28_in);
  EXPECT_EQ(made.board().span()->carried, 39_in);
  EXPECT_TRUE(made.side(Wall::rear).is_free());
}

TEST(Board, OverARailAcrossItsMiddleHasFourFreeSides) {
  const Stood made(Furniture()
                       .fixture("rail", "ledge", {"0", "14", "40", "2"}, "10", "12")
                       .lay("board", "board", {"0", "0", "40", "30"}, "0.703"));
  for (const BearingSide& side : made.board().sides) EXPECT_TRUE(side.is_free());
  EXPECT_TRUE(made.board().balanced);
  EXPECT_EQ(made.board().span(), nullptr);
}

// A ledge that narrows from 2 in to 1 in over 40 in: an inch from its end it is 2 - 39/40 in wide.
TEST(Board, OnATaperedLedgeBearsAsMuchAsItsNarrowEnd) {
  Furniture furniture;
  furniture.fixture("wide", "ledge", {"0", "28", "40", "2"}, "10", "12")
      .fixture("tapered", "ledge", {"0", "0", "40", "2"}, "10", "12",
               R"("corners": {"rear right": {"clip": ["40", "1"]}})")
      .lay("board", "board", {"0", "0", "40", "30"}, "0.703");
  const Stood made(furniture);
  EXPECT_EQ(made.side(Wall::left).depth, 2_in - Length::inches(39, 40));
  EXPECT_EQ(made.side(Wall::left).where, (Point{39_in, 0_in}));
}

// Only the straight part of a side is measured: under a rounded corner the bearing runs out.
TEST(Board, WithRoundedCornersBearsAsDeepAsASquareOne) {
  Furniture furniture = ledges();
  furniture.lay("board", "board", {"0", "20 1/8", "40", "29 3/4"}, "0.703", "",
                R"("corners": {"front left": {"round": 3}, "rear right": {"round": 3}})");
  const Stood made(furniture);
  for (const Wall wall : {Wall::left, Wall::right}) {
    EXPECT_EQ(made.side(wall).borne, 37_in);
    EXPECT_EQ(made.side(wall).depth, Length::inches(7, 8));
    EXPECT_EQ(made.side(wall).at_play, Length::inches(3, 4));
  }
}

// Turned by 30 degrees with its two rails: everything but a few ticks of rounding stays.
TEST(Board, MayStandAskew) {
  Furniture furniture;
  const std::string turn = R"("turn": 30)";
  // The rail is a board itself; both have their corner at (55, 20), from which the sine of 30 degrees takes
  // half the width toward the front.
  furniture.lay("near", "board", {"54", "20", "40", "2"}, "12", turn)
      .lay("board", "board", {"40", "20", "40", "30"}, "0.703", turn);
  const Stood made(furniture);
  const auto board = std::ranges::find(made.support.boards, "board", &BoardSupport::piece);
  ASSERT_NE(board, made.support.boards.end());
  const auto borne = std::ranges::max_element(board->sides, {}, &BearingSide::borne);
  EXPECT_LE(abs(borne->borne - 40_in), 16 * one_tick);
  EXPECT_LE(abs(borne->depth - 2_in), 16 * one_tick);
  EXPECT_FALSE(board->balanced);
  EXPECT_LE(abs(board->beyond - 13_in), 16 * one_tick);
}

// A cushion from bench to bench with nothing between: the hollow is 30 in wide and 40 long.
TEST(Cushion, FromBenchToBenchIsHollowInBetween) {
  Furniture furniture = ledges();
  const Stood made(furniture.lay("cushion", "cushion", {"0", "0", "40", "76"}, "4"));
  const CushionSupport& cushion = made.support.cushions.front();
  EXPECT_EQ(cushion.widest, 30_in);
  EXPECT_GT(cushion.where.y, 34_in);
  EXPECT_LT(cushion.where.y, 36_in);
  ASSERT_EQ(cushion.heights.size(), 1U);
  EXPECT_EQ(cushion.heights.front().top, 14_in);
}

TEST(Cushion, IsCarriedByWhatLiesAQuarterOfAnInchLower) {
  const auto over = [](const char* board_top) {
    Furniture furniture = ledges("13", "13");
    furniture
        .lay("board", "board", {"0", "20", "40", "30"}, board_top, R"("on": ["left ledge", "right ledge"])")
        .lay("cushion", "cushion", {"0", "0", "40", "76"}, "4");
    return Stood(furniture).support.cushions.front().widest;
  };
  EXPECT_EQ(over("1"), Length{});
  EXPECT_EQ(over("0.75"), Length{});
  EXPECT_EQ(over("0.749"), 30_in);
}

// Two benches side by side, 25 and 15 in of 40: 62.5 and 37.5 % of the cushion.
TEST(Cushion, OnTwoHeightsTellsHowMuchEachCarries) {
  const Stood made(Furniture()
                       .fixture("high", "bench", {"0", "0", "25", "30"}, "0", "14")
                       .fixture("low", "bench", {"25", "0", "15", "30"}, "0", "13.5")
                       .lay("cushion", "cushion", {"0", "0", "40", "30"}, "4"));
  const CushionSupport& cushion = made.support.cushions.front();
  ASSERT_EQ(cushion.heights.size(), 2U);
  EXPECT_EQ(cushion.heights[0].top, 14_in);
  EXPECT_EQ(cushion.heights[0].area, Area::rectangle(25_in, 30_in));
  EXPECT_EQ(cushion.heights[0].things, std::vector<std::string>{"high"});
  EXPECT_EQ(cushion.heights[1].top, 13_in + Length::inches(1, 2));
  EXPECT_EQ(cushion.heights[1].area, Area::rectangle(15_in, 30_in));
  EXPECT_EQ(cushion.widest, 15_in);  // the low bench is half an inch down: hollow
}

TEST(Cushion, OnTheFloorIsCarriedAllOver) {
  const Stood made(Furniture().lay("cushion", "cushion", {"0", "0", "40", "30"}, "4"));
  EXPECT_EQ(made.support.cushions.front().widest, Length{});
  EXPECT_EQ(made.support.cushions.front().heights.front().things, std::vector<std::string>{"floor"});
}

}  // namespace
}  // namespace berthwright
