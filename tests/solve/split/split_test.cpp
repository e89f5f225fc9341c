#include <berthwright/solve/split/split.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/tilings.h"
#include "solve/split/back_heights.h"
#include "solve/split/closing.h"
#include "support/bays.h"

namespace berthwright {
namespace {

using support::facing_benches;

const Split* with_backs(const BaySplits& splits, BackManner manner, Length height) {
  const auto found = std::ranges::find_if(splits.best, [&](const Split& split) {
    return std::ranges::all_of(split.manners, [&](BackManner m) { return m == manner; }) &&
           std::ranges::all_of(split.heights, [&](Length h) { return h == height; });
  });
  return found == splits.best.end() ? nullptr : &*found;
}

// Whatever closes covers the bay, whole and once, with the sizes it says; nothing else is asked of the
// solver.
void expect_closed(const NightBay& bay, const Split& split, Length thickness) {
  std::vector<Region> laid;
  Area sum;
  for (const SplitPiece& piece : split.pieces) {
    const Rect& at = piece.by_night;
    // A back that stays takes its thickness of the bay, whatever its height.
    const bool stands = piece.use == SplitPiece::Use::back && piece.stays();
    EXPECT_TRUE(stands || (at.width() == piece.length && at.height() == piece.width) || piece.turned());
    if (stands) {
      EXPECT_EQ(std::min(at.width(), at.height()), thickness);
    }
    if (piece.turned() && !stands) {
      EXPECT_EQ(at.width(), piece.width);
    }
    laid.emplace_back(at);
    sum += Area::rectangle(at.width(), at.height());
  }
  const std::vector<Region> parts(bay.parts.begin(), bay.parts.end());
  EXPECT_EQ(united(laid), united(parts));
  EXPECT_EQ(sum, united(parts).area());
}

// Derived (closing rules for two benches of depth D = 23 in, a span S = 30 in and backs t = 4 in thick):
// backs on the seats are h = S/2 = 15 in high, 23 + 15 + 15 + 23 = 76; backs behind them h = S/2 + t = 19 in,
// the seats d = D - t = 19 in, 4 x 19 = 76, all alike because D - t is a quarter of 76.
TEST(Split, OfTwoBenchesFollowsTheClosingRules) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  SplitLimits limits;
  limits.fillers = 0;
  const BaySplits splits = splits_of(bay, limits);
  ASSERT_TRUE(splits.complete);
  ASSERT_FALSE(splits.best.empty());
  // One size comes before two.
  EXPECT_EQ(splits.best[0].sizes, 1U);
  const Split* behind = with_backs(splits, BackManner::behind_seat, 19_in);
  ASSERT_NE(behind, nullptr);
  EXPECT_EQ(behind, &splits.best[0]);
  for (const SplitPiece& piece : behind->pieces) EXPECT_EQ(std::min(piece.length, piece.width), 19_in);
  const Split* on = with_backs(splits, BackManner::on_seat, 15_in);
  ASSERT_NE(on, nullptr);
  EXPECT_EQ(on->sizes, 2U);
  EXPECT_EQ(on->beyond_ease, 0U);
  for (const Split& split : splits.best) expect_closed(bay, split, limits.thickness);
}

// S = 30 1/8 in: no multiple of 1/2 in closes, 15 1/16 in does.
TEST(Split, FindsHeightsBetweenTheSteps) {
  SplitLimits limits;
  limits.fillers = 0;
  const BaySplits splits = splits_of(facing_benches(23_in, Length::inches(241, 8), 40_in), limits);
  EXPECT_NE(with_backs(splits, BackManner::on_seat, Length::inches(241, 16)), nullptr);
}

// S = 50 in: two backs of 22 in at the most leave 50 - 44 = 6 in for a filler, on seats of 20 in. The
// sleeping length is 90 in. Backs behind the seats: seats 16 in, backs 22 in: 90 - 32 - 44 = 14 in.
TEST(Split, TakesAFillerWhereBacksAreNotHighEnough) {
  const NightBay bay = facing_benches(20_in, 50_in, 37_in);
  SplitLimits limits;
  limits.fillers = 0;
  const BaySplits none = splits_of(bay, limits);
  EXPECT_TRUE(none.best.empty());
  ASSERT_FALSE(none.cures.empty());
  EXPECT_EQ(none.cures[0].kind, SplitCure::Kind::filler);
  for (const SplitCure& cure : none.cures)
    if (cure.kind == SplitCure::Kind::higher_back) {
      EXPECT_EQ(cure.by, 25_in);
    }  // 50 / 2
  limits.fillers = 1;
  const BaySplits one = splits_of(bay, limits);
  ASSERT_FALSE(one.best.empty());
  EXPECT_TRUE(one.cures.empty());
  for (const Split& split : one.best) {
    EXPECT_EQ(split.fillers, 1U);
    expect_closed(bay, split, limits.thickness);
  }
}

// Backs stay behind the seats: 23 - 4 = 19 in of seat each side of the span, one filler of the whole span.
TEST(Split, LetsBacksStayWithAFillerOfTheSpan) {
  SplitLimits limits;
  limits.most_back = 13_in;
  limits.least_back = 13_in;
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  const BaySplits splits = splits_of(bay, limits);
  const Split* stay = with_backs(splits, BackManner::stays, 13_in);
  ASSERT_NE(stay, nullptr);
  EXPECT_EQ(stay->pieces.size(), 5U);
  EXPECT_EQ(stay->pieces.back().use, SplitPiece::Use::filler);
  EXPECT_EQ(stay->pieces.back().by_night, (Rect{{23_in, Length{}}, {53_in, 38_in}}));
  EXPECT_EQ(stay->moved, 0U);
  expect_closed(bay, *stay, limits.thickness);
}

// A seat of 84 in is longer than 80 in: two of 42 in, and its back likewise.
TEST(Split, CutsWhatIsLongerThanTheLongestSideInEqualParts) {
  SplitLimits limits;
  const BaySplits splits = splits_of(facing_benches(23_in, 30_in, 84_in), limits);
  ASSERT_FALSE(splits.best.empty());
  EXPECT_EQ(splits.best[0].pieces.size(), 8U);
  EXPECT_EQ(splits.best[0].pieces[0].width, 42_in);
}

// Behind a seat of 4 in a back of 16 rises 12 above it; behind one of 5, one of 17.
TEST(Split, ABackThatStaysRisesAFootAboveItsSeat) {
  SplitLimits limits;
  EXPECT_EQ(height_of_ease(limits), 16_in);
  limits.thickness = 5_in;
  EXPECT_EQ(height_of_ease(limits), 17_in);
  limits.most_back = 15_in;
  EXPECT_EQ(height_of_ease(limits), 15_in);
}

// A back behind the seat would stand on the wheel arch, so it stands on the seat, which is cut out and stays.
TEST(Split, KeepsASeatThatIsCutOutWhereItIs) {
  const NightBay bay = support::lounge_of_three(70_in, 76_in, 22_in, 20_in, 6_in);
  const BaySplits splits = splits_of(bay, {});
  ASSERT_FALSE(splits.best.empty());
  for (const Split& split : splits.best) {
    EXPECT_EQ(split.manners[0], BackManner::on_seat);
    EXPECT_TRUE(split.pieces[0].stays());
    EXPECT_EQ(split.pieces[0].kept_out, bay.kept_out);
    expect_closed(bay, split, SplitLimits{}.thickness);
  }
}

const SplitPiece& piece_of(const Split& split, const std::string& bench, SplitPiece::Use use) {
  return *std::ranges::find_if(split.pieces, [&](const SplitPiece& piece) {
    return piece.use == use && piece.bench == FixtureId(bench);
  });
}

// A lounge around one corner, 60 x 60 in, benches 20 in deep. Backs that end at the corner are 40 in long
// before a board of 40 x 40 in, so two of 20 in close it: 40 = 2 x 20, all seats where they are.
// 60 x 20 + 40 x 20 + 2 x 40 x 20 = 3,600 = 60 x 60.
TEST(Split, OfALoungeAroundOneCornerIsThatByHand) {
  const NightBay bay = support::lounge_of_two(60_in, 60_in, 20_in);
  SplitLimits limits;
  limits.fillers = 0;
  KnownTilings known;
  const std::vector<BackManner> on_seats(2, BackManner::on_seat);
  const std::vector<Length> heights(2, 20_in);
  const BayClosing closing =
      best_closing(bay, limits, day_seats(bay, limits, on_seats, heights, true), 0, known);
  const auto still = std::ranges::find(closing.splits, std::size_t{0}, &Split::moved);
  ASSERT_NE(still, closing.splits.end());
  expect_closed(bay, *still, limits.thickness);
  EXPECT_EQ(still->sizes, 2U);
  EXPECT_EQ(still->pieces.size(), 4U);
  // Backs of 60 in and 40 in, as long as their lids, are too much at that height: 1,200 + 800 = 2,000 on
  // 1,600.
  EXPECT_TRUE(
      best_closing(bay, limits, day_seats(bay, limits, on_seats, heights, false), 0, known).splits.empty());
  const BaySplits splits = splits_of(bay, limits);
  ASSERT_FALSE(splits.best.empty());
  for (const Split& split : splits.best) expect_closed(bay, split, limits.thickness);
}

// A lounge around three sides, 70 x 76 in, benches 22 in deep: 76 - 2 x 22 = 32 in between them. The rear
// back stays, its seat is 22 - 4 = 18 in; the side backs, 70 - 22 = 48 in long, are 32 / 2 = 16 in high.
TEST(Split, OfALoungeAroundThreeSidesIsThatByHand) {
  const NightBay bay = support::lounge_of_three(70_in, 76_in, 22_in, Length{}, Length{});
  SplitLimits limits;
  KnownTilings known;
  const DaySeats day = day_seats(bay, limits, {BackManner::on_seat, BackManner::on_seat, BackManner::stays},
                                 {16_in, 16_in, 16_in}, true);
  const BayClosing closing = best_closing(bay, limits, day, 0, known);
  const auto still = std::ranges::find(closing.splits, std::size_t{0}, &Split::moved);
  ASSERT_NE(still, closing.splits.end());
  EXPECT_EQ(piece_of(*still, "rear bench", SplitPiece::Use::seat).length, 18_in);
  for (const char* bench : {"left bench", "right bench"}) {
    const Rect at = piece_of(*still, bench, SplitPiece::Use::back).by_night;
    EXPECT_EQ(at.width(), 48_in);
    EXPECT_EQ(at.height(), 16_in);
    EXPECT_EQ(at.low.x, Length{});
  }
  expect_closed(bay, *still, limits.thickness);
}

// S = 30 in and backs of 14 7/8 in and no other: 30 - 2 x 14 7/8 = 1/4 in stays open, 40 in long. (On 38 in a
// seat and a back, turned, would fill 38 but for 1/8 in.)
TEST(Split, ShowsTheNearestWhereNothingCloses) {
  const NightBay bay = facing_benches(23_in, 30_in, 40_in);
  SplitLimits limits;
  limits.fillers = 0;
  limits.least_back = limits.most_back = Length::inches(119, 8);
  EXPECT_TRUE(splits_of(bay, limits).best.empty());
  limits.most_gap = Length::inches(1, 2);
  const BaySplits near = splits_of(bay, limits);
  ASSERT_FALSE(near.best.empty());
  EXPECT_EQ(gap_width(near.best[0]), Length::inches(1, 4));
  ASSERT_TRUE(near.best[0].gap.has_value());
  EXPECT_EQ(std::max(near.best[0].gap->width(), near.best[0].gap->height()), 40_in);
  EXPECT_FALSE(near.cures.empty());
  EXPECT_EQ(near.closed, 0U);
  limits.most_gap = Length::inches(1, 8);
  EXPECT_TRUE(splits_of(bay, limits).best.empty());
}

// Backs of 15 1/4 in and no other: 2 x 15 1/4 - 30 = 1/2 in too much.
TEST(Split, SaysHowFarCushionsWouldBePressed) {
  SplitLimits limits;
  limits.fillers = 0;
  limits.least_back = limits.most_back = Length::inches(61, 4);
  const BaySplits splits = splits_of(facing_benches(23_in, 30_in, 38_in), limits);
  const auto pressed = std::ranges::find(splits.cures, SplitCure::Kind::pressed_together, &SplitCure::kind);
  ASSERT_NE(pressed, splits.cures.end());
  EXPECT_EQ(pressed->by, Length::inches(1, 2));
  expect_closed(facing_benches(23_in, Length::inches(61, 2), 38_in), pressed->split, limits.thickness);
}

// The same bay with a wheel arch through the rear bench, from 54 in on: what lies behind the line that gives
// way goes aside with all that rises there, so the seat's notch then begins at 54 1/2 in. One on the front
// bench stays.
TEST(Split, PressedTogetherMovesTheWheelArchWithItsBench) {
  SplitLimits limits;
  limits.fillers = 0;
  limits.least_back = limits.most_back = Length::inches(61, 4);
  const auto notch = [&](Length from, Length to) {
    NightBay bay = facing_benches(23_in, 30_in, 38_in);
    bay.kept_out = Region(Rect{{from, Length{}}, {to, 6_in}});
    const BaySplits splits = splits_of(bay, limits);
    const auto pressed = std::ranges::find(splits.cures, SplitCure::Kind::pressed_together, &SplitCure::kind);
    Region all;
    if (pressed == splits.cures.end()) return all;
    for (const SplitPiece& piece : pressed->split.pieces)
      all = united(std::vector<Region>{all, piece.kept_out});
    return all;
  };
  EXPECT_EQ(notch(54_in, 76_in),
            Region(Rect{{Length::inches(109, 2), Length{}}, {Length::inches(153, 2), 6_in}}));
  EXPECT_EQ(notch(2_in, 20_in), Region(Rect{{2_in, Length{}}, {20_in, 6_in}}));
}

// A seat of 23 x 42 x 4 in at 2.5 lb/ft3: 3,864 / 1,728 x 2.5 = 5.59 lb. At 5 lb it is cut in two of 2.80 lb.
TEST(Split, CutsWhatIsTooHeavyToLift) {
  const NightBay bay = facing_benches(23_in, 30_in, 42_in);
  SplitLimits limits;
  limits.fillers = 0;
  const BaySplits plain = splits_of(bay, limits);
  ASSERT_FALSE(plain.best.empty());
  limits.most_weight = Mass::pounds(5);
  const BaySplits light = splits_of(bay, limits);
  ASSERT_FALSE(light.best.empty());
  for (const Split& split : light.best) {
    EXPECT_LE(split.heaviest, *limits.most_weight);
    expect_closed(bay, split, limits.thickness);
  }
  // Both seats in two, the backs of 15 x 42 in, 3.65 lb, whole.
  const std::vector<BackManner> on_seats(2, BackManner::on_seat);
  EXPECT_EQ(day_seats(bay, limits, on_seats, {15_in, 15_in}, false).pieces.size(), 6U);
  // Backs that stay leave the span of 30 x 42 in to one filler, of 7.29 lb.
  const DaySeats stays =
      day_seats(bay, limits, {BackManner::stays, BackManner::stays}, {15_in, 15_in}, false);
  KnownTilings known;
  EXPECT_TRUE(best_closing(bay, limits, stays, 1, known).splits.empty());
  limits.most_weight = Mass::pounds(8);
  EXPECT_FALSE(best_closing(bay, limits, stays, 1, known).splits.empty());
  const Split* on = with_backs(plain, BackManner::on_seat, 15_in);
  ASSERT_NE(on, nullptr);
  EXPECT_GT(on->heaviest, Mass::pounds(5));
  EXPECT_LT(on->heaviest, Mass::pounds(6));
}

// Blanks are 1/2 in over: two seats 23 1/2 x 38 1/2 = 904.75 sq in, two backs 15 1/2 x 38 1/2 = 596.75. A
// sheet of 82 x 54 in, 4,428 sq in, at 110.70 is 0.025 a sq in: 22.61875 and 14.91875, rounded up 22.62 and
// 14.92, together 75.08. A cheaper one of 30 x 20 in takes none of them; one 3 in thick does not count.
TEST(Split, ReckonsFoamByTheCheapestSheetThatTakesIt) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  SplitLimits limits;
  limits.fillers = 0;
  limits.foam_stock = {{82_in, 54_in, 4_in, 11'070}, {20_in, 30_in, 4_in, 100}, {82_in, 54_in, 3_in, 1}};
  const BaySplits splits = splits_of(bay, limits);
  const Split* on = with_backs(splits, BackManner::on_seat, 15_in);
  ASSERT_NE(on, nullptr);
  EXPECT_EQ(on->foam, (FoamCost{7'508, 0}));
  // The small one alone: all four are glued up, at 100 / 600 a sq in: 150.79 and 99.46, twice.
  limits.foam_stock = {{20_in, 30_in, 4_in, 100}};
  const BaySplits glued = splits_of(bay, limits);
  const Split* all = with_backs(glued, BackManner::on_seat, 15_in);
  ASSERT_NE(all, nullptr);
  EXPECT_EQ(all->foam, (FoamCost{2 * (151 + 100), 4}));
  limits.foam_stock = {{82_in, 54_in, 3_in, 1}};
  EXPECT_FALSE(splits_of(bay, limits).best[0].foam.has_value());
}

TEST(Split, DoesNotDependOnMirrorShiftOrOrder) {
  for (const bool lounge : {false, true}) {
    const NightBay bay = lounge ? support::lounge_of_three(70_in, 74_in, 21_in, 18_in, 5_in)
                                : facing_benches(22_in, 31_in, 38_in);
    const BaySplits plain = splits_of(bay, {});
    NightBay other = support::mirrored(bay, {7_in, 200_in});
    std::ranges::reverse(other.parts);
    std::ranges::reverse(other.lids);
    const BaySplits image = splits_of(other, {});
    EXPECT_EQ(plain.candidates, image.candidates);
    EXPECT_EQ(plain.closed, image.closed);
    ASSERT_EQ(plain.best.size(), image.best.size());
    for (std::size_t i = 0; i < plain.best.size(); ++i) {
      EXPECT_EQ(plain.best[i].fillers, image.best[i].fillers);
      EXPECT_EQ(plain.best[i].sizes, image.best[i].sizes);
      EXPECT_EQ(plain.best[i].hip_seams, image.best[i].hip_seams);
      EXPECT_EQ(plain.best[i].moved, image.best[i].moved);
      EXPECT_EQ(plain.best[i].seams, image.best[i].seams);
    }
  }
}

// Small benches in whole inches: whether seats and backs close them, against a search cell by cell.
TEST(Split, ClosesExactlyWhatAnExhaustiveSearchCloses) {
  int closed = 0;
  for (int depth = 3; depth <= 5; ++depth)
    for (int span = 2; span <= 6; ++span)
      for (int width = 3; width <= 6; ++width) {
        const NightBay bay =
            facing_benches(Length::inches(depth), Length::inches(span), Length::inches(width));
        SplitLimits limits{1_in, 1_in, 6_in, 1_in, 80_in, 0, 1_in};
        KnownTilings known;
        for (int choice = 0; choice < 4; ++choice)
          for (int one = 1; one <= 4; ++one)
            for (int other = 1; other <= 4; ++other) {
              const std::vector<BackManner> manners{
                  choice % 2 == 0 ? BackManner::on_seat : BackManner::behind_seat,
                  choice / 2 == 0 ? BackManner::on_seat : BackManner::behind_seat};
              const BayClosing ours = best_closing(
                  bay, limits,
                  day_seats(bay, limits, manners, {Length::inches(one), Length::inches(other)}, false), 0,
                  known);
              oracle::TilingCase cells;
              cells.free.assign(static_cast<std::size_t>(width),
                                std::vector<bool>(static_cast<std::size_t>(2 * depth + span), true));
              cells.tiles = {{depth - choice % 2, width, 1},
                             {depth - choice / 2, width, 1},
                             {one, width, 1},
                             {other, width, 1}};
              const bool closes = oracle::count_tilings(cells).fewest_fillers.has_value();
              ASSERT_EQ(!ours.splits.empty(), closes)
                  << depth << ' ' << span << ' ' << width << ' ' << choice << ' ' << one << ' ' << other;
              closed += closes ? 1 : 0;
            }
      }
  EXPECT_GT(closed, 100);
}

}  // namespace
}  // namespace berthwright
