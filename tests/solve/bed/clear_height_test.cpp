#include <berthwright/solve/bed/clear_height.h>

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

std::vector<ClearHeight> map_of(const Furniture& furniture) {
  const MadeUp made(furniture.plan());
  return clear_heights(made.plan, made.arrangement, made.mattress);
}

const char* const sloping_front = R"("length": 120, "width": 76, "height": 76,
    "side_profile": {"corners": {"roof front": {"clip": ["40", "40"]}}})";

// Level 18; roof at 76: 58 in everywhere.
TEST(ClearHeights, OfABedUnderAFlatRoofAreOne) {
  const std::vector<ClearHeight> map = map_of(berth("75", "38"));
  ASSERT_EQ(map.size(), 1U);
  EXPECT_EQ(map[0].region, rect(0_in, 0_in, 75_in, 38_in));
  EXPECT_EQ(map[0].height, 58_in);
  EXPECT_EQ(map[0].what, "roof");
  EXPECT_EQ(map[0].band, 3U);
}

// A locker from 12 in above the level is in the band that begins there, one 1/64 in lower in the one below.
// The lower of two that overlap takes what they share.
TEST(ClearHeights, TheLowestThingTakesThePlace) {
  Furniture furniture = berth("75", "38");
  furniture.fixture("high", "locker", {"0", "0", "75", "12"}, "42", "60")
      .fixture("low", "shelf", {"60", "0", "15", "20"}, "29 63/64", "31")
      .fixture("beside", "locker", {"0", "40", "75", "12"}, "30", "60");
  const std::vector<ClearHeight> map = map_of(furniture);
  ASSERT_EQ(map.size(), 3U);
  EXPECT_EQ(map[0].what, "low");
  EXPECT_EQ(map[0].height, 12_in - Length::inches(1, 64));
  EXPECT_EQ(map[0].band, 0U);
  EXPECT_EQ(map[0].region, rect(60_in, 0_in, 75_in, 20_in));
  EXPECT_EQ(map[1].what, "high");
  EXPECT_EQ(map[1].height, 24_in);
  EXPECT_EQ(map[1].band, 2U);
  EXPECT_EQ(map[1].region, rect(0_in, 0_in, 60_in, 12_in));
  EXPECT_EQ(map[2].what, "roof");
}

// The roof rises from (0, 36) by an inch an inch: over the level of 18 it is 18 + x in high, so 24 in begin
// at x = 6 and 36 in at x = 18. A shelf at 40 in (22 above) begins to be the lower one at x = 4.
TEST(ClearHeights, ASlopingRoofIsCutIntoBandsAndMeetsAShelf) {
  Furniture furniture = berth("75", "38");
  furniture.interior(sloping_front).fixture("shelf", "shelf", {"0", "0", "10", "38"}, "40", "41");
  const std::vector<ClearHeight> map = map_of(furniture);
  ASSERT_EQ(map.size(), 4U);
  EXPECT_EQ(map[0].what, "roof");
  EXPECT_EQ(map[0].region, rect(0_in, 0_in, 4_in, 38_in));
  EXPECT_EQ(map[0].height, 18_in);
  EXPECT_EQ(map[0].band, 1U);
  EXPECT_EQ(map[1].what, "shelf");
  EXPECT_EQ(map[1].region, rect(4_in, 0_in, 10_in, 38_in));
  EXPECT_EQ(map[2].what, "roof");
  EXPECT_EQ(map[2].region, rect(10_in, 0_in, 18_in, 38_in));
  EXPECT_EQ(map[2].height, 28_in);
  EXPECT_EQ(map[2].band, 2U);
  EXPECT_EQ(map[3].region, rect(18_in, 0_in, 75_in, 38_in));
  EXPECT_EQ(map[3].height, 36_in);
}

TEST(ClearHeights, WhatStandsInTheBedLeavesNothing) {
  Furniture furniture = berth("75", "38");
  furniture.fixture("post", "leg", {"70", "30", "2", "2"}, "0", "76");
  const std::vector<ClearHeight> map = map_of(furniture);
  ASSERT_EQ(map.size(), 2U);
  EXPECT_EQ(map[0].what, "post");
  EXPECT_EQ(map[0].height, 0_in);
  EXPECT_EQ(map[0].region, rect(70_in, 30_in, 72_in, 32_in));
}

// The roof comes down to 10 in at the front and rises an inch an inch, so it passes the level of 18 at x = 8.
TEST(ClearHeights, ARoofBelowTheBedIsANegativeHeight) {
  Furniture furniture = berth("75", "38");
  furniture.interior(R"("length": 120, "width": 76, "height": 76,
      "side_profile": {"corners": {"roof front": {"clip": ["66", "66"]}}})");
  const std::vector<ClearHeight> map = map_of(furniture);
  ASSERT_FALSE(map.empty());
  EXPECT_EQ(map[0].what, "roof");
  EXPECT_EQ(map[0].height, -8_in);
  EXPECT_EQ(map[0].region, rect(0_in, 0_in, 8_in, 38_in));
  EXPECT_EQ(map[0].band, 0U);
}

TEST(ClearHeights, ABedWithoutSurfaceHasNone) {
  MadeUp made(berth("75", "38").plan());
  made.mattress = Mattress{};
  EXPECT_TRUE(clear_heights(made.plan, made.arrangement, made.mattress).empty());
  EXPECT_TRUE(clear_over(made.plan, made.arrangement, made.mattress, 24_in).empty());
}

// A trailer drawn from a seed: a bed in a room with a roof that slopes at the front, and boxes above and on
// it.
struct Drawn {
  int length, width, slope;
  std::vector<oracle::Box> boxes;

  explicit Drawn(unsigned seed) {
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    length = draw(40, 90), width = draw(24, 60), slope = draw(0, 50);
    for (int i = draw(2, 6); i > 0; --i)
      boxes.push_back({"box " + std::to_string(i), double(draw(0, length - 2)), double(draw(0, width - 2)),
                       double(draw(2, 40)), double(draw(2, 16)), double(draw(16, 60)), 70});
  }
  std::vector<oracle::Corner> roof() const { return {{0, 76.0 - slope}, {double(slope), 76}, {120, 76}}; }
  Furniture furniture(bool mirror, bool reversed) const {
    Furniture made;
    made.interior(R"("length": 120, "width": 80, "height": 76)" +
                  (slope == 0 ? std::string()
                              : R"(, "side_profile": {"corners": {"roof front": {"clip": [")" +
                                    std::to_string(slope) + R"(", ")" + std::to_string(slope) + R"("]}}})"));
    const auto spot = [&](double x, double y, double dx, double dy) {
      return support::Spot{std::to_string(int(x)), std::to_string(int(mirror ? 80 - y - dy : y)),
                           std::to_string(int(dx)), std::to_string(int(dy))};
    };
    const support::Spot pad = spot(0, 0, length, width);
    made.fixture("bench", "bench", pad, "0", "14").lay("pad", "cushion", pad, "4", R"("on": ["bench"])");
    std::vector<oracle::Box> order = boxes;
    if (reversed) std::reverse(order.begin(), order.end());
    for (const oracle::Box& box : order)
      made.fixture(box.name, "locker", spot(box.x, box.y, box.length, box.width),
                   std::to_string(int(box.base)), std::to_string(int(box.top)));
    return made.bed("bed", {"pad"});
  }
};

// Slow twin: looking up from the middle of each inch of the bed.
TEST(ClearHeights, AgreeWithLookingUpFromAGridOfPoints) {
  for (unsigned seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    const Drawn drawn(seed);
    const std::vector<ClearHeight> map = map_of(drawn.furniture(false, false));
    Area sum;
    for (const ClearHeight& part : map) sum += part.region.area();
    EXPECT_EQ(sum, Area::rectangle(Length::inches(drawn.length), Length::inches(drawn.width)));
    for (std::size_t i = 0; i < map.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) EXPECT_FALSE(overlaps(map[i].region, map[k].region));
    for (int x = 0; x < drawn.length; ++x)
      for (int y = 0; y < drawn.width; ++y) {
        const oracle::Above above = oracle::look_up(drawn.boxes, drawn.roof(), 18, x + 0.5, y + 0.5);
        const Point at{Length::inches(2 * x + 1, 2), Length::inches(2 * y + 1, 2)};
        std::size_t hits = 0;
        for (const ClearHeight& part : map) {
          if (part.region.side_of(at) != Side::inside) continue;
          ++hits;
          const double height = static_cast<double>(part.height.ticks()) / ticks_per_inch;
          EXPECT_EQ(part.band, (above.height >= 12) + (above.height >= 24) + std::size_t(above.height >= 36));
          if (part.what == "roof")
            EXPECT_LE(height, above.height + 1e-9);
          else
            EXPECT_DOUBLE_EQ(height, above.height);
          EXPECT_EQ(part.what == "roof", above.what == "roof") << part.what << " against " << above.what;
        }
        EXPECT_EQ(hits, 1U) << x << ' ' << y;
      }
  }
}

TEST(ClearHeights, AreTheSameInTheMirrorAndInAnyOrder) {
  for (unsigned seed = 0; seed < 5; ++seed) {
    SCOPED_TRACE(seed);
    const Drawn drawn(seed);
    const std::vector<ClearHeight> map = map_of(drawn.furniture(false, false));
    const std::vector<ClearHeight> reordered = map_of(drawn.furniture(false, true));
    const std::vector<ClearHeight> mirror = map_of(drawn.furniture(true, false));
    ASSERT_EQ(map.size(), reordered.size());
    ASSERT_EQ(map.size(), mirror.size());
    for (std::size_t i = 0; i < map.size(); ++i) {
      EXPECT_EQ(map[i].region, reordered[i].region);
      EXPECT_EQ(map[i].what, reordered[i].what);
      EXPECT_EQ(map[i].what, mirror[i].what);
      EXPECT_EQ(map[i].height, mirror[i].height);
      EXPECT_EQ(map[i].band, mirror[i].band);
      EXPECT_EQ(map[i].region, moved(mirrored(mirror[i].region), {0_in, 80_in}));
    }
  }
}

// The map and the space cut out at one height are two ways to the same place.
TEST(ClearHeights, TheBandsAboveALimitAreTheSpaceAtThatHeight) {
  for (unsigned seed = 0; seed < 8; ++seed) {
    SCOPED_TRACE(seed);
    const MadeUp made(Drawn(seed).furniture(false, false).plan());
    for (std::size_t band = 0; band < clear_height_bands.size(); ++band) {
      Area above;
      for (const ClearHeight& part : clear_heights(made.plan, made.arrangement, made.mattress))
        if (part.band > band) above += part.region.area();
      EXPECT_EQ(above,
                clear_over(made.plan, made.arrangement, made.mattress, clear_height_bands[band]).area());
    }
  }
}

}  // namespace
}  // namespace berthwright
