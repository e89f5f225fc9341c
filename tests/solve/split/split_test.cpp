#include <berthwright/solve/split/split.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/tilings.h"
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
        for (int choice = 0; choice < 4; ++choice)
          for (int one = 1; one <= 4; ++one)
            for (int other = 1; other <= 4; ++other) {
              const std::vector<BackManner> manners{
                  choice % 2 == 0 ? BackManner::on_seat : BackManner::behind_seat,
                  choice / 2 == 0 ? BackManner::on_seat : BackManner::behind_seat};
              const BayClosing ours = best_closing(
                  bay, limits,
                  day_seats(bay, limits, manners, {Length::inches(one), Length::inches(other)}, false), 0);
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
