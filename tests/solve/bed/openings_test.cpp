#include "solve/bed/openings.h"

#include <gtest/gtest.h>

#include <functional>
#include <random>

#include <berthwright/geometry/placement.h>

#include "solve/bed/straight_across.h"

namespace berthwright {
namespace {

// Rectangles in quarter inches.
Rect quarters(int left, int low, int right, int high) {
  return {{Length::inches(left, 4), Length::inches(low, 4)},
          {Length::inches(right, 4), Length::inches(high, 4)}};
}
Region rect(int left, int low, int right, int high) {
  return quarters(4 * left, 4 * low, 4 * right, 4 * high);
}

// A cushion with all corners rounded, its least corner at (left, low), in inches.
struct Rounded {
  Region region;
  std::vector<CornerTip> tips;
};
Rounded rounded(int left, int low, int length, int width, int radius) {
  const Round corner{Length::inches(radius)};
  const Outline outline =
      Outline::worked({Length::inches(length), Length::inches(width), {corner, corner, corner, corner}})
          .value();
  const Vector shift{Length::inches(left), Length::inches(low)};
  std::vector<Arc> arcs = outline.arcs();
  for (Arc& arc : arcs) arc.from = arc.from + shift, arc.to = arc.to + shift;
  return {moved(Region(outline.polygon()), shift), corner_tips(arcs)};
}
LyingSurface surface_of(const std::vector<Rounded>& cushions, Region stops = {}) {
  LyingSurface lying{{}, {}, std::move(stops)};
  for (const Rounded& cushion : cushions) {
    lying.surface = united(lying.surface, cushion.region);
    lying.corners.insert(lying.corners.end(), cushion.tips.begin(), cushion.tips.end());
  }
  return lying;
}

TEST(Openings, TwoCushionsHalfAnInchApartLeaveAGapOfHalfAnInch) {
  const Closing closing =
      closing_of({united(rect(0, 0, 38, 75), Region(quarters(154, 0, 306, 300))), {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_EQ(closing.gaps[0].region, Region(quarters(152, 0, 154, 300)));
  EXPECT_EQ(closing.gaps[0].width, Length::inches(1, 2));
  EXPECT_FALSE(closing.gaps[0].at_wall);
  EXPECT_FALSE(closing.gaps[0].at_corner);
  EXPECT_EQ(closing.closed, Region(quarters(0, 0, 306, 300)));
}

TEST(Openings, AGapToTheWallIsToldApart) {
  const Region wall = rect(-12, -12, 87, 0);
  const Closing closing = closing_of({Region(quarters(0, 2, 300, 154)), {}, wall});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_EQ(closing.gaps[0].region, Region(quarters(0, 0, 300, 2)));
  EXPECT_EQ(closing.gaps[0].width, Length::inches(1, 2));
  EXPECT_TRUE(closing.gaps[0].at_wall);
  EXPECT_EQ(closing.closed, Region(quarters(0, 2, 300, 154)));  // nobody lies on the slack
}

TEST(Openings, AGapBetweenCushionsThatEndsAtAWallIsNotAtTheWall) {
  const Region wall = rect(-12, -12, 99, 0);
  const Closing closing =
      closing_of({united(rect(0, 0, 38, 75), Region(quarters(154, 0, 306, 300))), {}, wall});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_FALSE(closing.gaps[0].at_wall);
}

// The disc of 3 in cannot reach into the inside corner of an L, which nobody calls a gap.
TEST(Openings, AnInsideCornerOfTheBedIsNoGap) {
  const Region bed = united(rect(0, 0, 75, 24), rect(0, 24, 24, 60));
  const Closing closing = closing_of({bed, {}, {}});
  EXPECT_TRUE(closing.gaps.empty());
  EXPECT_EQ(closing.closed, bed);
}

TEST(Openings, TheCornerBetweenTheFootOfTheBedAndTheWallIsNoGap) {
  const Closing closing = closing_of({rect(0, 0, 75, 24), {}, rect(-12, -12, 99, 0)});
  EXPECT_TRUE(closing.gaps.empty());
  EXPECT_EQ(closing.closed, rect(0, 0, 75, 24));
}

// Four quarter circles of radius r leave a star between them: the disc in its middle has the radius
// r (root 2 - 1), so 2 in corners leave 1.657 in and 3 in corners 2.485 in.
TEST(Openings, FourRoundedCornersLeaveAStarThatDoesNotInterruptTheBed) {
  for (const auto& [radius, width] : {std::pair{2, 1.65685}, std::pair{3, 2.48528}}) {
    SCOPED_TRACE(radius);
    const Closing closing =
        closing_of(surface_of({rounded(0, 0, 38, 30, radius), rounded(38, 0, 38, 30, radius),
                               rounded(0, 30, 38, 30, radius), rounded(38, 30, 38, 30, radius)}));
    // The star, and a notch at each end of the two seams.
    ASSERT_EQ(closing.gaps.size(), 5U);
    const Gap& star = closing.gaps[0];
    EXPECT_TRUE(star.at_corner);
    EXPECT_FALSE(star.at_wall);
    EXPECT_NEAR(static_cast<double>(star.width.ticks()) / ticks_per_inch, width, 0.005);
    EXPECT_EQ(closing.closed.side_of({38_in, 30_in}), Side::inside);
    EXPECT_EQ(closing.closed.side_of({38_in, Length::inches(1, 8)}), Side::inside);
    // The outer corners of the bed stay as they are.
    EXPECT_EQ(closing.closed.side_of({Length::inches(1, 8), Length::inches(1, 8)}), Side::outside);
    EXPECT_EQ(closing.closed.bounds(), quarters(0, 0, 304, 240));
  }
}

TEST(Openings, CornersOfMoreThanThreeInchesInterruptTheBed) {
  const Closing closing = closing_of(surface_of({rounded(0, 0, 38, 30, 4), rounded(38, 0, 38, 30, 4),
                                                 rounded(0, 30, 38, 30, 4), rounded(38, 30, 38, 30, 4)}));
  // 2 x 4 in x 0.41421 = 3.314 in.
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_FALSE(closing.gaps[0].at_corner);
  EXPECT_NEAR(static_cast<double>(closing.gaps[0].width.ticks()) / ticks_per_inch, 3.3137, 0.005);
  EXPECT_EQ(closing.closed.side_of({38_in, 30_in}), Side::outside);
}

TEST(Openings, ARoundedCornerInTheCornerOfTheRoomIsAtTheWall) {
  const Region walls = united(rect(-12, -12, 99, 0), rect(-12, -12, 0, 60));
  const Closing closing = closing_of(surface_of({rounded(0, 0, 75, 38, 2)}, walls));
  // Beside the corner in the room's corner, the two that touch one wall.
  ASSERT_EQ(closing.gaps.size(), 3U);
  for (const Gap& gap : closing.gaps) {
    EXPECT_TRUE(gap.at_corner);
    EXPECT_TRUE(gap.at_wall);
    // A quarter circle in its square leaves a disc of the diameter 2 r (root 2 - 1) / (root 2 + 1) = 0.686
    // in.
    EXPECT_LT(gap.width, Length::inches(7, 8));
  }
  EXPECT_EQ(closing.closed.side_of({Length::inches(1, 8), Length::inches(1, 8)}), Side::inside);
  EXPECT_EQ(closing.closed.side_of({75_in - Length::inches(1, 8), 38_in - Length::inches(1, 8)}),
            Side::outside);
}

// A notch of 10 x 8 in around a wheel arch of 9 1/2 x 7 3/4: 1/4 in at both sides and behind.
TEST(Openings, AnArchInItsNotchLeavesOneGapAtTheArch) {
  const Region cushion = without(rect(0, 0, 40, 24), rect(10, 0, 20, 8));
  const Region arch = quarters(41, 0, 79, 31);
  const Closing closing = closing_of({cushion, {}, arch});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_TRUE(closing.gaps[0].at_wall);
  EXPECT_LT(closing.gaps[0].width, Length::inches(3, 8));
  EXPECT_GE(closing.gaps[0].width, Length::inches(1, 4));
  EXPECT_EQ(closing.closed, cushion);  // nobody lies on the slack
}

TEST(Openings, ANotchThatADiscEntersIsNoGap) {
  const Region cushion = without(rect(0, 0, 40, 24), rect(10, 0, 18, 8));
  EXPECT_TRUE(closing_of({cushion, {}, {}}).gaps.empty());
}

TEST(Openings, ADeepNarrowNotchIsAGapThatStaysOpen) {
  const Region cushion = without(rect(0, 0, 40, 24), rect(10, 0, 14, 20));
  const Closing closing = closing_of({cushion, {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_EQ(closing.gaps[0].width, 4_in);
  EXPECT_EQ(closing.closed, cushion);
}

TEST(Openings, AFillerAQuarterInchShortLeavesItsQuarterInch) {
  const Region bed = united(united(rect(0, 0, 23, 42), Region(quarters(92, 0, 211, 168))),
                            Region(quarters(212, 0, 304, 168)));
  const Closing closing = closing_of({bed, {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_EQ(closing.gaps[0].width, Length::inches(1, 4));
  EXPECT_EQ(closing.gaps[0].region, Region(quarters(211, 0, 212, 168)));
  EXPECT_EQ(closing.closed, rect(0, 0, 76, 42));
}

TEST(Openings, AnInchIsClosedAndATickMoreIsNot) {
  const Region left = rect(0, 0, 30, 40);
  EXPECT_EQ(closing_of({united(left, rect(31, 0, 60, 40)), {}, {}}).closed, rect(0, 0, 60, 40));
  const Region farther = united(left, Region(Rect{{31_in + one_tick, 0_in}, {60_in, 40_in}}));
  const Closing closing = closing_of({farther, {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_EQ(closing.gaps[0].width, 1_in + one_tick);
  EXPECT_EQ(closing.closed, farther);
}

TEST(Openings, WhatADiscOfThreeInchesEntersIsNoGap) {
  EXPECT_EQ(closing_of({united(rect(0, 0, 30, 40), rect(35, 0, 60, 40)), {}, {}}).gaps.size(), 1U);
  EXPECT_TRUE(closing_of({united(rect(0, 0, 30, 40), rect(36, 0, 60, 40)), {}, {}}).gaps.empty());
}

// Four cushions 1/2 in apart: where the two seams cross, a disc of 1/2 in x root 2 = 0.707 in finds room.
TEST(Openings, CrossingSeamsAreOneGap) {
  const Region bed = united(united(rect(0, 0, 38, 30), Region(quarters(154, 0, 306, 120))),
                            united(Region(quarters(0, 122, 152, 242)), Region(quarters(154, 122, 306, 242))));
  const Closing closing = closing_of({bed, {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_NEAR(static_cast<double>(closing.gaps[0].width.ticks()) / ticks_per_inch, 0.70711, 1e-4);
  EXPECT_EQ(closing.closed, Region(quarters(0, 0, 306, 242)));
}

TEST(Openings, AStepBackInTheFreeEdgeIsNoGap) {
  const Region long_step =
      united(united(rect(0, 0, 20, 30), Region(quarters(80, 0, 160, 112))), rect(40, 0, 60, 30));
  EXPECT_TRUE(closing_of({long_step, {}, {}}).gaps.empty());
  const Region short_step =
      united(united(rect(0, 0, 20, 30), Region(quarters(80, 0, 100, 118))), rect(25, 0, 45, 30));
  const Closing closing = closing_of({short_step, {}, {}});
  EXPECT_TRUE(closing.gaps.empty());
  EXPECT_EQ(closing.closed, short_step);
}

// A step of 5 x 2 in: the disc dips 3 - root(9 - 2.5 x 2.5) = 1.34 in into it and leaves 5.28 of its 10 sq
// in, about half. In a slot of 5 x 10 in it leaves nine tenths: that is a gap.
TEST(Openings, AStepThatTheDiscHalfEntersIsNoGapAndADeepSlotIs) {
  const auto with_step = [](int depth) {
    return united(united(rect(0, 0, 20, 30), rect(20, 0, 25, 30 - depth)), rect(25, 0, 45, 30));
  };
  EXPECT_TRUE(closing_of({with_step(2), {}, {}}).gaps.empty());
  ASSERT_EQ(closing_of({with_step(10), {}, {}}).gaps.size(), 1U);
  EXPECT_EQ(closing_of({with_step(10), {}, {}}).gaps[0].region, rect(20, 20, 25, 30));
}

TEST(Openings, AGapBetweenWallAndCabinetIsNotTheBeds) {
  const Region stops = united(rect(-12, -12, 99, 0), Region(quarters(100, 2, 200, 40)));
  EXPECT_TRUE(closing_of({rect(0, 20, 75, 44), {}, stops}).gaps.empty());
}

/// Cells of an inch: taken or free.
using Cells = std::vector<std::vector<bool>>;

Region region_of(const Cells& cells) {
  std::vector<Region> parts;
  for (int x = 0; x < static_cast<int>(cells.size()); ++x)
    for (int y = 0; y < static_cast<int>(cells[0].size()); ++y)
      if (cells[static_cast<std::size_t>(x)][static_cast<std::size_t>(y)])
        parts.push_back(rect(x, y, x + 1, y + 1));
  return united(parts);
}

// Free cells of a line that lie between taken ones less than six apart.
void mark_between(const std::vector<bool>& line, const std::function<void(std::size_t)>& mark) {
  for (std::size_t i = 0; i < line.size(); ++i)
    for (std::size_t j = i + 2; j < line.size() && j <= i + 6; ++j) {
      if (!line[i] || !line[j]) continue;
      for (std::size_t k = i + 1; k < j; ++k)
        if (!line[k]) mark(k);
    }
}

TEST(StraightAcross, AgreesWithCountingCells) {
  for (unsigned seed = 0; seed < 25; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> place(0, 19);
    std::uniform_int_distribution<int> size(1, 8);
    Cells taken(24, std::vector<bool>(24));
    for (int i = 0; i < 7; ++i) {
      const int left = place(random), low = place(random), right = left + size(random),
                high = low + size(random);
      for (int x = left; x < std::min(right, 24); ++x)
        for (int y = low; y < std::min(high, 24); ++y)
          taken[static_cast<std::size_t>(x)][static_cast<std::size_t>(y)] = true;
    }
    Cells expected(24, std::vector<bool>(24));
    for (std::size_t i = 0; i < 24; ++i) {
      mark_between(taken[i], [&](std::size_t y) { expected[i][y] = true; });
      std::vector<bool> row(24);
      for (std::size_t x = 0; x < 24; ++x) row[x] = taken[x][i];
      mark_between(row, [&](std::size_t x) { expected[x][i] = true; });
    }
    EXPECT_EQ(straight_across(region_of(taken), quarters(0, 0, 96, 96)), region_of(expected));
  }
}

TEST(StraightAcross, CushionsTurnedTogetherKeepTheirGap) {
  // A gap of 1/2 in between cushions turned by the angle of the 3-4-5 triangle.
  const Turn turn = Turn::toward(4, 3);
  const auto turned = [&](const Rect& r) { return Placement{false, turn, {}}(Region(r)); };
  const Region bed = united(turned(quarters(0, 0, 120, 160)), turned(quarters(122, 0, 240, 160)));
  const Closing closing = closing_of({bed, {}, {}});
  ASSERT_EQ(closing.gaps.size(), 1U);
  EXPECT_NEAR(static_cast<double>(closing.gaps[0].width.ticks()), 508000, 8);
  EXPECT_EQ(closing.closed.faces().size(), 1U);
  const double area = static_cast<double>(closing.closed.area().doubled()) / 2;
  EXPECT_NEAR(area, 60.0 * 40.0 * ticks_per_inch * ticks_per_inch, 1e9);
}

TEST(Openings, AMirroredBedHasMirroredGaps) {
  const LyingSurface lying =
      surface_of({rounded(0, 0, 38, 30, 2), rounded(38, 0, 30, 24, 1)}, rect(-12, -12, 99, 0));
  LyingSurface other{mirrored(lying.surface), {}, mirrored(lying.stops)};
  for (CornerTip tip : lying.corners) {
    for (Point* p : {&tip.from, &tip.tip, &tip.to}) p->y = -p->y;
    std::swap(tip.from, tip.to);
    other.corners.push_back(tip);
  }
  const Closing here = closing_of(lying);
  const Closing there = closing_of(other);
  EXPECT_EQ(mirrored(here.closed), there.closed);
  ASSERT_EQ(here.gaps.size(), there.gaps.size());
  for (std::size_t i = 0; i < here.gaps.size(); ++i)
    EXPECT_NEAR(static_cast<double>((here.gaps[i].width - there.gaps[i].width).ticks()), 0, 5);
}

}  // namespace
}  // namespace berthwright
