#include "solve/open/sector.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/region.h>

namespace berthwright {
namespace {

constexpr std::int64_t degree = 1'000'000;

TEST(SectorSwept, ReachesItsRadiusAlongTheAxesAndNoFarther) {
  EXPECT_EQ(sector_swept(14_in, 90 * degree).bounds(), (Rect{{}, {14_in, 14_in}}));
  EXPECT_EQ(sector_swept(14_in, 180 * degree).bounds(), (Rect{{-14_in, 0_in}, {14_in, 14_in}}));
  EXPECT_EQ(sector_swept(14_in, 30 * degree).bounds().low, Point{});
  EXPECT_NEAR(static_cast<double>(sector_swept(14_in, 30 * degree).bounds().high.y.ticks()),
              static_cast<double>((7_in).ticks()), 2);  // sin 30 degrees = 1/2
}

// Every point of the arc lies in the cover, and no corner of the cover beyond 1.00001 times the radius.
TEST(SectorSwept, CoversItsArcByLessThanAHundredThousandth) {
  for (const Length radius : {2_mm, 13_in, 40_in, 5000_mm})
    for (const std::int64_t stop : {std::int64_t{1}, degree / 3, 58 * degree, 89'999'999L, 100 * degree,
                                    100 * degree + 250'001, 180 * degree}) {
      SCOPED_TRACE(std::to_string(radius.ticks()) + " " + std::to_string(stop));
      const Polygon sector = sector_swept(radius, stop);
      EXPECT_TRUE(Polygon::checked({sector.vertices().begin(), sector.vertices().end()}));
      for (int i = 0; i < 100; ++i) {
        const Turn turn = Turn::degrees(stop * i / 100);
        const auto part = [&](std::int64_t way) {
          return Length::from_ticks(static_cast<std::int64_t>(Int128{radius.ticks()} * way / turn.unit()));
        };
        const Point on_arc{part(turn.cosine()), part(turn.sine())};
        // Near its end the edge may cut off half a tick.
        const Point back = on_arc - Vector{Length{}, one_tick};
        EXPECT_TRUE(sector.side_of(on_arc) != Side::outside || sector.side_of(back) != Side::outside) << i;
      }
      const double r = static_cast<double>(radius.ticks());
      for (const Point& corner : sector.vertices()) {
        const double x = static_cast<double>(corner.x.ticks());
        const double y = static_cast<double>(corner.y.ticks());
        EXPECT_LE(x * x + y * y, (r * 1.00001 + 2) * (r * 1.00001 + 2));
      }
    }
}

TEST(SectorSwept, AWiderOneContainsANarrowerOne) {
  for (std::int64_t angle = 1; angle < 180; ++angle) {
    const Region beyond = without(Region(sector_swept(20_in, angle * degree)),
                                  Region(sector_swept(20_in, (angle + 1) * degree)));
    // At most half a tick along one side of the cover, which is 1/115 of the radius long.
    EXPECT_LE(beyond.area(), Area::rectangle(one_tick, 1_in)) << angle;
  }
}

TEST(SectorSwept, OfALeafThinnerThanAMillimetreIsABox) {
  EXPECT_EQ(sector_swept(one_tick, 90 * degree).bounds(), (Rect{{}, {one_tick, one_tick}}));
  EXPECT_EQ(sector_swept(one_tick, 91 * degree).bounds(),
            (Rect{{-one_tick, Length{}}, {one_tick, one_tick}}));
}

}  // namespace
}  // namespace berthwright
