#include <berthwright/geometry/four_walls.h>

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <stdexcept>
#include <utility>

namespace berthwright {
namespace {

FittedWalls fit(const MeasuredWalls& measured) {
  const Result<FittedWalls> result = fitted(measured);
  if (!result) throw std::invalid_argument(result.problems().front().message);
  return *result;
}

Length decimal(std::int64_t thousandths) { return Length::inches(thousandths, 1000); }
bool near(Length a, Length b) { return abs(a - b) <= decimal(1); }

// 72² + 96² = 120²: a square room, measured as it is.
TEST(FourWalls, ASquareRoomIsSquare) {
  const FittedWalls room = fit({72_in, 72_in, 96_in, 96_in, 120_in, 120_in});
  EXPECT_EQ(room.corners,
            (std::array<Point, 4>{{{0_in, 0_in}, {96_in, 0_in}, {96_in, 72_in}, {0_in, 72_in}}}));
  for (const Length misfit : room.misfits) EXPECT_EQ(misfit, 0_in);
}

// Front left (0, 0), front right (0, 100), rear left (96, 28), rear right (96, 100): the left wall is
// sqrt(96² + 28²) = 100, the diagonal from front right to rear left sqrt(96² + 72²) = 120. The other is not
// measured.
TEST(FourWalls, OneDiagonalSaysWhereTheCornersAre) {
  const FittedWalls room = fit({100_in, 72_in, 100_in, 96_in, std::nullopt, 120_in});
  EXPECT_EQ(room.corners,
            (std::array<Point, 4>{{{0_in, 0_in}, {96_in, 28_in}, {96_in, 100_in}, {0_in, 100_in}}}));
  for (const Length misfit : room.misfits) EXPECT_LE(abs(misfit), one_tick);
}

// The same seen in a mirror: the rear wall reaches farther to the left than the front one, whose corner then
// is not at y = 0.
TEST(FourWalls, TheBoxAroundTheRoomBeginsAtTheOrigin) {
  const FittedWalls room = fit({72_in, 100_in, 100_in, 96_in, 120_in, std::nullopt});
  EXPECT_EQ(room.corners,
            (std::array<Point, 4>{{{0_in, 28_in}, {96_in, 0_in}, {96_in, 100_in}, {0_in, 100_in}}}));
}

// One diagonal of the 72 x 96 room read 1/4 in too long. Of six measures one is more than needed; they can
// misfit only along the forces by which six bars of these lengths hold each other: (72, 72, 96, 96, -120,
// -120), as a unit
// (.3, .3, .4, .4, -.5, -.5). The error lies along it with -.5 of itself, so the misfits are 1/4 times
// (-.15, -.15, -.2, -.2, .25, .25) in: -.0375, -.05 and .0625, to first order.
TEST(FourWalls, OneWrongDiagonalIsSharedOutByAllSixMeasures) {
  const FittedWalls room = fit({72_in, 72_in, 96_in, 96_in, Length::inches(481, 4), 120_in});
  const std::array<Length, 6> expected{
      Length::inches(-375, 10'000), Length::inches(-375, 10'000), decimal(-50), decimal(-50),
      Length::inches(1, 16),        Length::inches(1, 16)};
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_TRUE(near(room.misfits[i], expected[i])) << i << " " << room.misfits[i].ticks();
}

double sum_of_squares(const std::array<Point, 4>& c, const std::array<Length, 6>& measured) {
  const std::array<std::pair<int, int>, 6> lines{{{0, 3}, {1, 2}, {0, 1}, {3, 2}, {0, 2}, {3, 1}}};
  double sum = 0;
  for (std::size_t i = 0; i < 6; ++i) {
    const auto [a, b] = lines[i];
    const double misfit = std::hypot(static_cast<double>((c[b].x - c[a].x).ticks()),
                                     static_cast<double>((c[b].y - c[a].y).ticks())) -
                          static_cast<double>(measured[i].ticks());
    sum += misfit * misfit;
  }
  return sum;
}

// No room near the fitted one fits better.
TEST(FourWalls, NothingNearFitsBetter) {
  for (unsigned seed = 0; seed < 50; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto about = [&](std::int64_t inches) {
      return Length::inches(inches * 16 + static_cast<std::int64_t>(random() % 33) - 16, 16);
    };
    const std::array<Length, 6> m{about(72), about(72), about(96), about(96), about(120), about(120)};
    const FittedWalls room = fit({m[0], m[1], m[2], m[3], m[4], m[5]});
    const double best = sum_of_squares(room.corners, m);
    for (int trial = 0; trial < 200; ++trial) {
      std::array<Point, 4> other = room.corners;
      for (Point& p : other) {
        p.x += Length::from_ticks(static_cast<std::int64_t>(random() % 20'001) - 10'000);
        p.y += Length::from_ticks(static_cast<std::int64_t>(random() % 20'001) - 10'000);
      }
      // Rounding to ticks leaves the least sum a little above the least.
      EXPECT_GT(sum_of_squares(other, m), best - 1e6);
    }
  }
}

TEST(FourWalls, MeasuresThatNoRoomHasAreRefused) {
  const auto id = [](const MeasuredWalls& walls) {
    const Result<FittedWalls> room = fitted(walls);
    return room ? "" : room.problems().front().id;
  };
  EXPECT_EQ(id({72_in, 72_in, 96_in, 96_in, std::nullopt, std::nullopt}), "walls.no-diagonal");
  EXPECT_EQ(id({72_in, 72_in, 96_in, 96_in, 300_in, 120_in}), "walls.no-room");
  EXPECT_EQ(id({72_in, 72_in, 96_in, 96_in, 200_in, std::nullopt}), "walls.no-room");
  EXPECT_EQ(id({0_in, 72_in, 96_in, 96_in, 120_in, 120_in}), "walls.no-room");
}

}  // namespace
}  // namespace berthwright
