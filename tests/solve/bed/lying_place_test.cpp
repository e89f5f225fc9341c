#include <berthwright/solve/bed/lying_place.h>

#include <gtest/gtest.h>

#include <random>

#include "oracle/height_grid.h"
#include "support/berth.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::berth;
using support::Furniture;
using support::MadeUp;
using support::rect;

constexpr std::array one_person{24_in};

void expect_inside(const LyingPlace& place, const LyingSpace& space) {
  EXPECT_TRUE(contains(space.head, Polygon::promised({place.shoulders.begin(), place.shoulders.end()})));
  for (const std::array<Point, 4>& foot : place.feet)
    EXPECT_TRUE(contains(space.foot, Polygon::promised({foot.begin(), foot.end()})));
  EXPECT_TRUE(contains(space.foot, place.region));
}

TEST(LyingPlace, OnAPlainBedIsItsLongestRectangle) {
  const LyingSpace space{rect(0_in, 0_in, 75_in, 24_in), rect(0_in, 0_in, 75_in, 24_in)};
  const std::optional<LyingPlace> place = longest_place(space, one_person);
  ASSERT_TRUE(place);
  EXPECT_EQ(place->length, 75_in);
  EXPECT_EQ(place->width, 24_in);
  EXPECT_EQ(place->region, space.head);
  // Narrower than the shoulders, there is only the place across it, 23 in long.
  const Region narrow = rect(0_in, 0_in, 75_in, 23_in);
  EXPECT_EQ(longest_place({narrow, narrow}, one_person)->length, 23_in);
  const Region tiny = rect(0_in, 0_in, 16_in, 16_in);
  EXPECT_FALSE(longest_place({tiny, tiny}, one_person));
  EXPECT_FALSE(longest_place({}, one_person));
}

// The full height ends at 50 in, the feet go on for 25: 24 of them count, so 50 + 24 = 74 in, feet to the
// rear.
TEST(LyingPlace, FeetGoOnUnderALowLockerForTwoFeet) {
  const LyingSpace space{rect(0_in, 0_in, 50_in, 24_in), rect(0_in, 0_in, 75_in, 24_in)};
  const std::optional<LyingPlace> place = longest_place(space, one_person);
  ASSERT_TRUE(place);
  EXPECT_EQ(place->length, 74_in);
  EXPECT_EQ(place->turn, Turn::quarters(0));
  EXPECT_EQ(place->shoulders[0], (Point{0_in, 0_in}));
  ASSERT_EQ(place->feet.size(), 1U);
  EXPECT_EQ(place->region.area(), Area::rectangle(50_in, 24_in) + Area::rectangle(24_in, 16_in));
  expect_inside(*place, space);
}

// Either end may be the foot: low over the first 20 in instead, 55 + 20.
TEST(LyingPlace, EitherEndMayBeTheFoot) {
  const LyingSpace space{rect(20_in, 0_in, 75_in, 24_in), rect(0_in, 0_in, 75_in, 24_in)};
  const std::optional<LyingPlace> place = longest_place(space, one_person);
  ASSERT_TRUE(place);
  EXPECT_EQ(place->length, 75_in);
  EXPECT_EQ(place->turn, Turn::quarters(2));
  expect_inside(*place, space);
}

// A wheel arch takes 18 x 7 in of the foot end: 24 - 7 = 17 in are left, enough for feet of 16 that lie to
// one side. With 9 in taken 15 are left, and the place ends at the arch.
TEST(LyingPlace, FeetPassAWheelArchWhereSixteenInchesAreLeft) {
  const auto length = [](Length arch) {
    const Region bed = without(rect(0_in, 0_in, 75_in, 24_in), rect(57_in, 0_in, 75_in, arch));
    return longest_place({bed, bed}, one_person)->length;
  };
  EXPECT_EQ(length(7_in), 75_in);
  EXPECT_EQ(length(8_in), 75_in);
  EXPECT_EQ(length(9_in), 57_in);
}

// Two side by side on 48 in, each with feet of its own: the low part over the right one's feet alone takes
// from both, for they lie level.
TEST(LyingPlace, SideBySideEachHasFeetOfItsOwn) {
  const Region bed = rect(0_in, 0_in, 75_in, 48_in);
  const Region high = without(bed, rect(60_in, 24_in, 75_in, 48_in));
  const std::array two{24_in, 24_in};
  const std::optional<LyingPlace> place = longest_place({high, bed}, two);
  ASSERT_TRUE(place);
  EXPECT_EQ(place->length, 75_in);
  EXPECT_EQ(place->width, 48_in);
  EXPECT_EQ(place->feet.size(), 2U);
  expect_inside(*place, {high, bed});
  EXPECT_EQ(longest_place({high, high}, two)->length, 60_in);
}

// A bed turned by the rational turn (4, 3) / 5: 50 + 24 in along it, as if it lay square.
TEST(LyingPlace, IsFoundAlongTheEdgesOfATurnedBed) {
  const auto at = [](int along, int across) {
    return Point{Length::inches(4 * along - 3 * across, 5), Length::inches(3 * along + 4 * across, 5)};
  };
  const auto turned = [&](int length) {
    return Region(Polygon::checked({at(0, 0), at(length, 0), at(length, 25), at(0, 25)}).value());
  };
  const LyingSpace space{turned(50), turned(75)};
  const std::optional<LyingPlace> place = longest_place(space, one_person);
  ASSERT_TRUE(place);
  EXPECT_GE(place->length, 74_in - turning_slack);
  EXPECT_LE(place->length, 74_in);
  EXPECT_GE(place->width, 24_in - turning_slack);
  expect_inside(*place, space);
}

/// Heights over a bed drawn from a seed, inch by inch.
struct Grid {
  std::vector<std::vector<double>> heights;
  int length, width;

  explicit Grid(unsigned seed) {
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    length = draw(40, 80), width = draw(24, 54);
    heights.assign(static_cast<std::size_t>(length),
                   std::vector<double>(static_cast<std::size_t>(width), 40));
    for (int i = draw(1, 5); i > 0; --i) {
      const int x = draw(0, length - 4), y = draw(0, width - 3), dx = draw(2, 30), dy = draw(2, 14);
      const double height = draw(0, 30);
      for (int cx = x; cx < std::min(length, x + dx); ++cx)
        for (int cy = y; cy < std::min(width, y + dy); ++cy) {
          double& here = heights[static_cast<std::size_t>(cx)][static_cast<std::size_t>(cy)];
          here = std::min(here, height);
        }
    }
  }
  Region at_least(double height) const {
    std::vector<Region> cells;
    for (int x = 0; x < length; ++x)
      for (int y = 0; y < width;) {
        int to = y;
        while (to < width && heights[static_cast<std::size_t>(x)][static_cast<std::size_t>(to)] >= height)
          ++to;
        if (to > y)
          cells.emplace_back(
              rect(Length::inches(x), Length::inches(y), Length::inches(x + 1), Length::inches(to)));
        y = std::max(to, y + 1);
      }
    return united(cells);
  }
  LyingSpace space() const { return {at_least(24), at_least(12)}; }
};

LyingSpace placed(const LyingSpace& space, const Placement& by) { return {by(space.head), by(space.foot)}; }

// Slow twin: every strip and every end on whole inches. Turned places may be longer, never those along x.
TEST(LyingPlace, IsNoShorterThanAnyOnTheGrid) {
  int with_feet = 0;
  for (unsigned seed = 0; seed < 14; ++seed) {
    SCOPED_TRACE(seed);
    const Grid grid(seed);
    const int expected = oracle::longest_place(grid.heights, {24});
    const std::optional<LyingPlace> place = longest_place(grid.space(), one_person);
    if (expected == 0) continue;
    ASSERT_TRUE(place);
    expect_inside(*place, grid.space());
    EXPECT_GE(place->length, Length::inches(expected));
    if (place->turn == Turn::quarters(0) || place->turn == Turn::quarters(2)) {
      EXPECT_EQ(place->length, Length::inches(expected));
    }
    with_feet += place->feet.empty() ? 0 : 1;
  }
  EXPECT_GT(with_feet, 3);
}

TEST(LyingPlace, IsAsLongInTheMirrorTurnedAndShifted) {
  for (unsigned seed = 0; seed < 10; ++seed) {
    SCOPED_TRACE(seed);
    const LyingSpace space = Grid(seed).space();
    const std::optional<LyingPlace> place = longest_place(space, one_person);
    for (const Placement& by :
         {Placement{true, Turn::quarters(0), {}}, Placement{false, Turn::quarters(1), {}},
          Placement{false, Turn::quarters(0), {7_in, Length::inches(13, 8)}}}) {
      const LyingSpace other = placed(space, by);
      const std::optional<LyingPlace> there = longest_place(other, one_person);
      ASSERT_EQ(place.has_value(), there.has_value());
      if (!place) continue;
      EXPECT_LE(abs(there->length - place->length), 2 * turning_slack);
      expect_inside(*there, other);
    }
  }
}

}  // namespace
}  // namespace berthwright
