#include <berthwright/solve/split/reuse.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/layings.h"
#include "support/bays.h"

namespace berthwright {
namespace {

using support::facing_benches;

Rect box_of(int x, int y, int to_x, int to_y) {
  return {{Length::inches(x), Length::inches(y)}, {Length::inches(to_x), Length::inches(to_y)}};
}

OwnCushion own(const std::string& id, int length, int width) {
  return {PieceId(id), Region(box_of(0, 0, length, width)), 4_in};
}

Area square_inches(int count) { return Area::rectangle(Length::inches(count), 1_in); }

// No cushion on another, none where something rises, each as large as it is.
void expect_sound(const NightBay& bay, const Reuse& reuse) {
  Area laid;
  std::vector<Region> boxes;
  for (const RelaidCushion& one : reuse.laid) {
    const Rect box = reuse.cushions[one.cushion].outline.bounds();
    EXPECT_EQ(std::minmax(box.width(), box.height()), std::minmax(one.at.width(), one.at.height()));
    for (const Region& other : boxes) EXPECT_FALSE(overlaps(other, Region(one.at)));
    boxes.emplace_back(one.at);
    laid += reuse.cushions[one.cushion].outline.area();
  }
  EXPECT_EQ(reuse.laid.size() + reuse.left_over.size(), reuse.cushions.size());
  const std::vector<Region> parts(bay.parts.begin(), bay.parts.end());
  EXPECT_EQ(without(united(parts), bay.kept_out).area() - laid + reuse.overhang.area(), reuse.open.area());
  EXPECT_GE(reuse.open.area(), reuse.least_open);
}

// The closing rule again: 23 + 15 + 15 + 23 = 76 (derived).
TEST(Reuse, LaysASetThatClosesTheBay) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  const Reuse reuse = reused(bay, {own("A", 23, 38), own("B", 38, 15), own("C", 23, 38), own("D", 15, 38)});
  EXPECT_TRUE(reuse.closes());
  EXPECT_TRUE(reuse.left_over.empty());
  EXPECT_TRUE(reuse.complete);
  EXPECT_EQ(reuse.least_open, Area{});
  expect_sound(bay, reuse);
}

// Backs of 14 in: 76 - 2 x 23 - 2 x 14 = 2 in stay open across 40 in: 80 sq in, and no laying leaves less.
TEST(Reuse, TellsHowFarASetFallsShort) {
  const NightBay bay = facing_benches(23_in, 30_in, 40_in);
  const Reuse reuse = reused(bay, {own("A", 23, 40), own("B", 14, 40), own("C", 23, 40), own("D", 14, 40)});
  EXPECT_EQ(reuse.open.area(), square_inches(80));
  EXPECT_EQ(reuse.least_open, square_inches(80));
  EXPECT_LE(reuse.widest_gap, 2_in);
  EXPECT_GE(reuse.widest_gap, 2_in - one_tick * 4);
  expect_sound(bay, reuse);
}

// On 38 in the same backs and seats, turned, fill two blocks of 38 x 38 but for 38 - 23 - 14 = 1 in each: the
// same area open, but the gaps are half as wide (a little more where they meet).
TEST(Reuse, PrefersNarrowGaps) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  const Reuse reuse = reused(bay, {own("A", 23, 38), own("B", 14, 38), own("C", 23, 38), own("D", 14, 38)});
  EXPECT_EQ(reuse.open.area(), square_inches(76));
  EXPECT_LT(reuse.widest_gap, Length::inches(3, 2));
}

// Two of 31 in on 60 in: 62 sq in x 40 of foam on a bay of 60 x 40, yet only one lies flat: 29 x 40 open.
// With open room behind, they hang over by 2 in; with 1 in allowed, they do not lie so.
TEST(Reuse, HangsOverOnlyWhereThereIsRoom) {
  NightBay bay = facing_benches(20_in, 20_in, 40_in);
  const std::vector<OwnCushion> two{own("A", 31, 40), own("B", 31, 40)};
  const Reuse walled = reused(bay, two);
  EXPECT_EQ(walled.laid.size(), 1U);
  EXPECT_EQ(walled.open.area(), square_inches(29 * 40));
  EXPECT_EQ(walled.least_open, Area{});
  for (const Wall side : {Wall::front, Wall::rear}) {
    bay.free_sides = {side};
    const Reuse free = reused(bay, two);
    EXPECT_TRUE(free.closes());
    EXPECT_EQ(free.overhang.area(), square_inches(80));
    expect_sound(bay, free);
  }
  EXPECT_EQ(reused(bay, two, {3, 1_in}).laid.size(), 1U);
}

// What rises takes 18 x 7 in of the corner at (0, 0). The seat of 22 x 40 is cut out there only when its
// underside is up: as it is, the notch is in the corner across from it, and half round it is behind.
TEST(Reuse, TurnsACutOutSeatOverWhereThatFits) {
  NightBay bay = facing_benches(22_in, 31_in, 40_in);
  bay.kept_out = Region(box_of(0, 0, 18, 7));
  bay.risen = {"wheel arch"};
  OwnCushion seat{PieceId("A"), without(Region(box_of(0, 0, 22, 40)), Region(box_of(0, 33, 18, 40))), 4_in};
  std::vector<OwnCushion> cushions{seat, own("B", 22, 40), own("C", 31, 40)};
  const Reuse reuse = reused(bay, cushions);
  EXPECT_TRUE(reuse.closes());
  ASSERT_EQ(reuse.laid.size(), 3U);
  EXPECT_TRUE(reuse.laid[0].flipped);
  EXPECT_EQ(reuse.laid[0].at, box_of(0, 0, 22, 40));
  expect_sound(bay, reuse);
  // Without that cushion the arch's box stays free of all others: 22 x 40 less the arch, 18 x 7.
  cushions.erase(cushions.begin());
  const Reuse less = reused(bay, cushions);
  EXPECT_EQ(less.open.area(), square_inches(22 * 40 - 18 * 7));
  EXPECT_EQ(less.least_open, less.open.area());
}

// Four corners of 1 x 1 in cut off where two seats meet: nothing else is open, so the bay counts as closed.
TEST(Reuse, CountsCornersCutOffTheCushionsAsClosed) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  const Region clipped = without(Region(box_of(0, 0, 38, 38)),
                                 united(Region(box_of(37, 0, 38, 1)), Region(box_of(37, 37, 38, 38))));
  const Reuse reuse = reused(bay, {{PieceId("A"), clipped, 4_in}, {PieceId("B"), clipped, 4_in}});
  EXPECT_EQ(reuse.open.area(), square_inches(4));
  EXPECT_TRUE(reuse.only_corners);
  EXPECT_TRUE(reuse.closes());
}

TEST(Reuse, LeavesWhereTheyLieWhatMayStay) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  std::vector<OwnCushion> cushions{own("A", 23, 38), own("B", 23, 38), own("C", 15, 38), own("D", 15, 38)};
  cushions[0].now = Region(box_of(53, 0, 76, 38));
  cushions[2].now = Region(box_of(0, 0, 15, 38));
  const Reuse reuse = reused(bay, cushions);
  EXPECT_TRUE(reuse.closes());
  EXPECT_TRUE(reuse.laid[0].stays);
  EXPECT_TRUE(reuse.laid[2].stays);
}

// Both pairs cover all of 60 x 40 in; the one with 32 in would hang over by 2 in.
TEST(Reuse, HangsNothingOverWithoutNeed) {
  NightBay bay = facing_benches(20_in, 20_in, 40_in);
  bay.free_sides = {Wall::rear};
  const Reuse reuse = reused(bay, {own("A", 30, 40), own("B", 32, 40), own("C", 30, 40)});
  EXPECT_TRUE(reuse.closes());
  EXPECT_TRUE(reuse.overhang.empty());
  EXPECT_EQ(reuse.left_over, std::vector<std::size_t>{1});
}

// One cushion of 10 x 20 in with a corner off on 30 x 20 in: at an end it leaves 20 in open, in the middle
// twice 10 in.
TEST(Reuse, TriesEveryPlaceOfACutOutCushion) {
  const NightBay bay = facing_benches(10_in, 10_in, 20_in);
  const Region clipped = without(Region(box_of(0, 0, 10, 20)), Region(box_of(0, 0, 1, 1)));
  const Reuse reuse = reused(bay, {{PieceId("A"), clipped, 4_in}});
  ASSERT_EQ(reuse.laid.size(), 1U);
  EXPECT_EQ(reuse.laid[0].at, box_of(10, 0, 20, 20));
}

TEST(Reuse, OfNoCushionsLeavesAllOpen) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  const Reuse reuse = reused(bay, {});
  EXPECT_EQ(reuse.open.area(), square_inches(76 * 38));
  EXPECT_EQ(reuse.least_open, reuse.open.area());
  EXPECT_FALSE(reuse.closes());
}

TEST(Reuse, TellsTheRidgeBetweenThicknesses) {
  const NightBay bay = facing_benches(23_in, 30_in, 38_in);
  std::vector<OwnCushion> cushions{own("A", 38, 38), own("B", 38, 38)};
  cushions[1].thickness = 3_in;
  EXPECT_EQ(reused(bay, cushions).ridge, 1_in);
}

struct SmallBay {
  NightBay bay;
  std::vector<OwnCushion> cushions;
  oracle::TilingCase cells;
};

// A bay of up to 6 x 5 cells of 1 in, a corner missing at times, and up to five cushions.
SmallBay random_bay(std::mt19937_64& random) {
  const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  SmallBay result;
  const int length = 3 + below(4);
  const int width = 2 + below(4);
  const int corner = below(2) == 0 ? 0 : 1 + below(width - 1);
  result.cells.free.assign(static_cast<std::size_t>(width),
                           std::vector<bool>(static_cast<std::size_t>(length), true));
  for (int y = 0; y < corner; ++y) result.cells.free[static_cast<std::size_t>(y)][0] = false;
  result.bay.parts = {box_of(0, corner, 1, width), box_of(1, 0, length, width)};
  for (int count = 1 + below(5); count > 0; --count) {
    const int a = 1 + below(3);
    const int b = 1 + below(4);
    result.cells.tiles.push_back({a, b, 1});
    result.cushions.push_back(own("c" + std::to_string(count), a, b));
  }
  return result;
}

TEST(Reuse, LeavesAsLittleOpenAsAnExhaustiveSearchOverCells) {
  int fell_short = 0;
  int as_if_any_shape = 0;
  for (unsigned seed = 0; seed < 250; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const SmallBay small = random_bay(random);
    const Reuse ours = reused(small.bay, small.cushions, {2, Length{}});
    ASSERT_TRUE(ours.complete);
    const int least = oracle::least_open(small.cells, 2);
    if (least < 0) continue;
    ASSERT_EQ(ours.open.area(), square_inches(least));
    fell_short += least > 0 ? 1 : 0;
    const int any_shape = oracle::least_open(small.cells);
    ASSERT_LE(any_shape, least);
    as_if_any_shape += any_shape == least ? 1 : 0;
  }
  EXPECT_GT(fell_short, 100);
  EXPECT_GT(as_if_any_shape, 150);
}

TEST(Reuse, DoesNotDependOnMirrorShiftOrOrder) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    SmallBay small = random_bay(random);
    const Reuse plain = reused(small.bay, small.cushions);
    std::ranges::reverse(small.cushions);
    NightBay image = support::mirrored(small.bay, {7_in, 20_in});
    std::ranges::reverse(image.parts);
    const Reuse other = reused(image, small.cushions);
    EXPECT_EQ(plain.open.area(), other.open.area());
    EXPECT_EQ(plain.least_open, other.least_open);
  }
}

}  // namespace
}  // namespace berthwright
