#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include <berthwright/solve/way/walkways.h>

namespace berthwright {
namespace {

WayOut along(std::vector<Point> path, Length width) {
  WayOut way;
  way.door = "door";
  way.end = WayOut::End::reached;
  way.width = width;
  way.way = {width, path.front(), path.front(), path};
  return way;
}

// 60 in of a way of 22 in: 1320 sq in, and a disc of 11: 380.1.
TEST(SweptFloor, IsAsWideAsTheWay) {
  const Region floor = swept_floor(along({{40_in, 30_in}, {100_in, 30_in}}, 22_in));
  EXPECT_EQ(floor.bounds(), (Rect{{29_in, 19_in}, {111_in, 41_in}}));
  EXPECT_EQ(floor.bounds().height(), 22_in);
  EXPECT_NEAR(static_cast<double>(floor.area().doubled()) / 2 / (1'016'000.0 * 1'016'000.0), 1320 + 380.13,
              0.003 * 380);
}

TEST(SweptFloor, OfNoWayIsNone) {
  EXPECT_TRUE(swept_floor(WayOut{}).empty());
  EXPECT_TRUE(swept_floor(along({{40_in, 30_in}, {100_in, 30_in}}, {})).empty());
}

// The slow twin: a place belongs to it when the path comes within half the width.
TEST(SweptFloor, HoldsThePlacesWithinHalfTheWidthOfThePathAndNoOther) {
  std::mt19937 random(17);
  std::uniform_int_distribution<int> inch(0, 120);
  for (int round = 0; round < 20; ++round) {
    std::vector<Point> path;
    for (int i = 0; i < 5; ++i) path.push_back({Length::inches(inch(random)), Length::inches(inch(random))});
    const int width = 8 + inch(random) / 5;
    const Region floor = swept_floor(along(path, Length::inches(width)));
    for (int i = 0; i < 300; ++i) {
      const double x = inch(random) + 0.37;
      const double y = inch(random) + 0.53;
      double least = 1e9;
      for (std::size_t k = 1; k < path.size(); ++k) {
        const auto in = [](Length l) { return static_cast<double>(l.ticks()) / 1'016'000.0; };
        const double ax = in(path[k - 1].x), ay = in(path[k - 1].y);
        const double bx = in(path[k].x) - ax, by = in(path[k].y) - ay;
        const double size = bx * bx + by * by;
        const double t = size == 0 ? 0 : std::clamp(((x - ax) * bx + (y - ay) * by) / size, 0.0, 1.0);
        const double ex = x - ax - t * bx, ey = y - ay - t * by;
        least = std::min(least, ex * ex + ey * ey);
      }
      const Side side = floor.side_of({Length::from_ticks(static_cast<std::int64_t>(x * 1'016'000)),
                                       Length::from_ticks(static_cast<std::int64_t>(y * 1'016'000))});
      const double reach = width * width / 4.0;
      EXPECT_TRUE(least >= reach * 0.99999 || side != Side::outside) << round << ": " << x << ' ' << y;
      EXPECT_TRUE(least <= reach * 1.0027 || side == Side::outside) << round << ": " << x << ' ' << y;
    }
  }
}

TEST(SweptFloor, IsMirroredAndTurnedRoundWithItsPath) {
  const std::vector<Point> path{{10_in, 12_in}, {40_in, 15_in}, {44_in, 50_in}};
  std::vector<Point> back(path.rbegin(), path.rend());
  EXPECT_EQ(swept_floor(along(path, 18_in)), swept_floor(along(back, 18_in)));
  std::vector<Point> mirror = path;
  for (Point& p : mirror) p.y = -p.y;
  EXPECT_EQ(mirrored(swept_floor(along(path, 18_in))), swept_floor(along(mirror, 18_in)));
}

}  // namespace
}  // namespace berthwright
