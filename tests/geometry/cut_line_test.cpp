#include <berthwright/geometry/cut_line.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "oracle/line_scan.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;
using support::box;
using support::polygon;

using Intervals = std::vector<Interval>;

CutLine along_x(std::int64_t y) { return {CutLine::Along::x, Length::from_ticks(y)}; }
CutLine along_y(std::int64_t x) { return {CutLine::Along::y, Length::from_ticks(x)}; }
Interval from_to(std::int64_t from, std::int64_t to) {
  return {Length::from_ticks(from), Length::from_ticks(to)};
}

TEST(CutLine, MeetsAFrameInItsTwoSides) {
  const Region frame = without(Region(box(0, 0, 10, 8)), Region(box(2, 3, 7, 6)));
  EXPECT_EQ(cut(frame, along_x(4)), (Intervals{from_to(0, 2), from_to(7, 10)}));
  EXPECT_EQ(cut(frame, along_x(1)), (Intervals{from_to(0, 10)}));
  EXPECT_EQ(cut(frame, along_y(5)), (Intervals{from_to(0, 3), from_to(6, 8)}));
}

TEST(CutLine, AlongABorderTheClosedRegionIsMet) {
  const Region frame = without(Region(box(0, 0, 10, 8)), Region(box(2, 3, 7, 6)));
  EXPECT_EQ(cut(frame, along_x(3)), (Intervals{from_to(0, 10)})) << "the edge of the hole belongs to it";
  EXPECT_EQ(cut(frame, along_x(8)), (Intervals{from_to(0, 10)}));
  EXPECT_EQ(cut(frame, along_x(9)), Intervals{});
}

TEST(CutLine, ACornerThatTouchesIsAPoint) {
  const Region diamond = polygon({at(0, 5), at(5, 0), at(10, 5), at(5, 10)});
  EXPECT_EQ(cut(diamond, along_x(10)), (Intervals{from_to(5, 5)}));
  EXPECT_EQ(cut(diamond, along_y(0)), (Intervals{from_to(5, 5)}));
  // Two teeth that stand on the line.
  const Region teeth = united(Region(polygon({at(0, 6), at(2, 0), at(4, 6)})),
                              Region(polygon({at(4, 6), at(6, 0), at(8, 6)})));
  EXPECT_EQ(cut(teeth, along_x(0)), (Intervals{from_to(2, 2), from_to(6, 6)}));
}

// The edges of this triangle rise 3 ticks over 10: at y = 1 they are met at 10/3 and 20 - 10/3 = 50/3.
TEST(CutLine, PlacesOffTheLatticeAreRoundedOutward) {
  const Region hill = polygon({at(0, 0), at(20, 0), at(10, 3)});
  EXPECT_EQ(cut(hill, along_x(1)), (Intervals{from_to(3, 17)}));
  EXPECT_EQ(cut(mirrored(hill), along_x(-1)), (Intervals{from_to(3, 17)}));
}

TEST(CutLine, FacesThatShareAnEdgeAreOneStretch) {
  const Region two = Region::from_faces(
      {{Polygon::rectangle(box(0, 0, 4, 4)), {}}, {Polygon::rectangle(box(4, 0, 9, 4)), {}}});
  EXPECT_EQ(cut(two, along_x(2)), (Intervals{from_to(0, 9)}));
}

TEST(CutLine, OfTwoSolidsThatMeetInThePlaneTheOneBehindIsCut) {
  const Solid near(Region(box(0, 0, 10, 5)), Length::from_ticks(1), Length::from_ticks(3));
  const Solid far(Region(box(0, 5, 10, 9)), Length::from_ticks(1), Length::from_ticks(3));
  const std::vector<Rect> face{box(0, 1, 10, 3)};
  EXPECT_EQ(cut(near, along_x(5)), std::vector<Rect>{});
  EXPECT_EQ(cut(far, along_x(5)), face);
  EXPECT_EQ(cut(near, along_x(2)), face);
  // Who looks toward the front has smaller x behind the plane.
  const std::vector<Rect> side{box(0, 1, 5, 3)};
  EXPECT_EQ(cut(near, along_y(10)), side);
  EXPECT_EQ(cut(near, along_y(0)), std::vector<Rect>{});
}

TEST(CutLine, BehindItStandsWhatAPersonSeesWhoLooksAcross) {
  // A U, open toward smaller y: behind y = 5 only its back is left; behind x = 4 only its first leg.
  const Region u = without(Region(box(0, 0, 10, 8)), Region(box(3, 0, 7, 5)));
  EXPECT_EQ(behind(u, along_x(6)), (Intervals{from_to(0, 10)}));
  EXPECT_EQ(behind(u, along_y(3)), (Intervals{from_to(0, 8)}));
  const Region legs = mirrored(u);  // 0 .. -8, the back at the far side of who looks toward greater y
  EXPECT_EQ(behind(legs, along_x(-5)), (Intervals{from_to(0, 3), from_to(7, 10)}));
  EXPECT_EQ(behind(u, along_x(8)), Intervals{}) << "it only touches";
  EXPECT_EQ(distance_behind(u, along_x(-3)), Length::from_ticks(3));
  EXPECT_EQ(distance_behind(u, along_x(4)), Length{});
  EXPECT_EQ(distance_behind(u, along_y(13)), Length::from_ticks(3));
  EXPECT_THROW(distance_behind(u, along_x(9)), std::invalid_argument);
}

// Samples of an eighth of a tick against a twin that only asks points. Stretches never fall short, and stick
// out by less than a tick; what they hold without a sample in it is thinner than that.
TEST(CutLine, HoldsEverySampleThatATwinFinds) {
  constexpr std::int64_t parts = 8;
  constexpr std::int64_t reach = 36;
  for (unsigned seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region =
        seed % 3 == 0 ? support::random_boxes(random, 7, 12, 3) : support::random_region(random, 12, 3);
    for (std::int64_t across = -1; across <= reach + 1; ++across)
      for (const CutLine& line : {along_x(across), along_y(across)}) {
        const Intervals found = cut(region, line);
        std::int64_t last_inside = -10 * parts;
        std::vector<std::int64_t> doubtful;
        for (std::int64_t sample = -2 * parts; sample <= (reach + 2) * parts; ++sample) {
          const bool held = std::ranges::any_of(found, [&](const Interval& i) {
            return i.from < i.to && i.to - i.from > one_tick && i.from.ticks() * parts <= sample &&
                   sample <= i.to.ticks() * parts;
          });
          if (oracle::on_line(region, line, sample, parts)) {
            last_inside = sample;
            std::erase_if(doubtful, [&](std::int64_t early) { return sample - early <= parts; });
            ASSERT_TRUE(std::ranges::any_of(found,
                                            [&](const Interval& i) {
                                              return i.from.ticks() * parts <= sample &&
                                                     sample <= i.to.ticks() * parts;
                                            }))
                << across << ' ' << sample;
          } else if (held && sample - last_inside > parts) {
            doubtful.push_back(sample);
          }
        }
        EXPECT_TRUE(doubtful.empty()) << across << ' ' << doubtful.front();
      }
  }
}

TEST(CutLine, TurnsMirrorsAndShiftsWithTheRegion) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    const Region region = support::random_region(random, 9, 5);
    const Vector by{Length::from_ticks(7), Length::from_ticks(-11)};
    const Region shifted = moved(region, by);
    for (std::int64_t across = 0; across <= 45; across += 4) {
      EXPECT_EQ(cut(mirrored(region), along_x(-across)), cut(region, along_x(across)));
      Intervals expected = cut(region, along_x(across));
      for (Interval& interval : expected) interval = {interval.from + by.x, interval.to + by.x};
      EXPECT_EQ(cut(shifted, along_x(across - 11)), expected);
      std::vector<Point> corners;
      const Polygon outer = region.faces()[0].outer;
      for (const Point p : outer.vertices()) corners.push_back(at(p.y.ticks(), p.x.ticks()));
      EXPECT_EQ(cut(Region(polygon(corners)), along_y(across)), cut(Region(outer), along_x(across)));
    }
  }
}

}  // namespace
}  // namespace berthwright
