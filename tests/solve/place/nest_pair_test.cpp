#include "solve/place/nest_pair.h"

#include <gtest/gtest.h>

#include <random>

#include "oracle/nest_apart.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

std::vector<NestRing> nest_rings(const Region& region) {
  std::vector<NestRing> rings;
  const Face& face = region.faces().front();
  for (const Point& p : face.outer.vertices()) {
    if (rings.empty()) rings.emplace_back();
    rings.back().push_back({p.x.ticks(), p.y.ticks()});
  }
  for (const Polygon& hole : face.holes) {
    NestRing& ring = rings.emplace_back();
    for (const Point& p : hole.vertices()) ring.insert(ring.begin(), {p.x.ticks(), p.y.ticks()});
  }
  return rings;
}

oracle::NestRings at_place(const std::vector<NestRing>& rings, NestPoint place) {
  NestPoint low = rings.front().front();
  for (const NestPoint p : rings.front()) low = {std::min(low.x, p.x), std::min(low.y, p.y)};
  oracle::NestRings result;
  for (const NestRing& ring : rings) {
    auto& moved_ring = result.emplace_back();
    for (const NestPoint p : ring) moved_ring.push_back({p.x - low.x + place.x, p.y - low.y + place.y});
  }
  return result;
}

// A square of 2 before one of 3: not where 0 - 2 < x < 3 and -2 < y < 3.
TEST(NestPair, OfSquaresIsTheirSum) {
  NestPair pair(nest_shape({{{0, 0}, {3, 0}, {3, 3}, {0, 3}}}),
                nest_shape({{{0, 0}, {2, 0}, {2, 2}, {0, 2}}}));
  EXPECT_EQ(pair.border().size(), 4U);
  for (int x = -3; x <= 4; ++x)
    for (int y = -3; y <= 4; ++y)
      EXPECT_EQ(pair.clash({x, y}), x > -2 && x < 3 && y > -2 && y < 3) << x << ", " << y;
  EXPECT_NEAR(pair.depth({0, 1}).depth, 2, 1e-9);
  EXPECT_NEAR(pair.depth({2, 1}).depth, 1, 1e-9);
  EXPECT_EQ(pair.depth({3, 1}).depth, 0);
}

// A slot as wide as the second part is long leaves it a line, a hole of its size a single place.
TEST(NestPair, LeavesFreeWhatFitsWithoutPlay) {
  const NestShape square = nest_shape({{{0, 0}, {20, 0}, {20, 20}, {0, 20}}});
  NestPair slot(nest_shape({{{0, 0}, {60, 0}, {60, 60}, {40, 60}, {40, 20}, {20, 20}, {20, 60}, {0, 60}}}),
                square);
  NestPair hole(nest_shape({{{0, 0}, {60, 0}, {60, 60}, {0, 60}}, {{20, 20}, {20, 40}, {40, 40}, {40, 20}}}),
                square);
  for (int off = -2; off <= 2; ++off) {
    EXPECT_EQ(slot.clash({20 + off, 30}), off != 0);
    EXPECT_NEAR(slot.depth({20 + off, 30}).depth, std::abs(off), 1e-9);
    EXPECT_EQ(hole.clash({20, 20 + off}), off != 0);
    EXPECT_NEAR(hole.depth({20, 20 + off}).depth, std::abs(off), 1e-9);
  }
}

TEST(NestPair, AgreesWithCuttingBorders) {
  std::size_t met = 0;
  std::size_t looked = 0;
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    // Few cells: many corners and edges touch.
    const auto any_part = [&] {
      return nest_rings(seed % 2 == 0 ? support::random_region(random, 6, 50)
                                      : support::random_boxes(random, 6, 6, 50).parts().front());
    };
    const auto first = any_part();
    const auto second = any_part();
    NestPair pair(nest_shape(first), nest_shape(second));
    for (int k = 0; k < 150; ++k) {
      const std::int64_t step = k % 3 == 0 ? 50 : k % 3 == 1 ? 25 : 1;
      const auto any = [&] { return (static_cast<std::int64_t>(random() % 600) - 300) / step * step; };
      const NestPoint place{any(), any()};
      const bool meet = oracle::nest_interiors_meet(at_place(first, {}), at_place(second, place));
      EXPECT_EQ(pair.clash(place), meet) << place.x << ", " << place.y;
      const double depth = pair.depth(place).depth;
      if (depth > 1.5) {
        EXPECT_TRUE(meet);
        // Nothing nearer is free.
        for (const NestPoint by : {NestPoint{1, 0}, NestPoint{-1, 0}, NestPoint{0, 1}, NestPoint{0, -1}})
          EXPECT_TRUE(pair.clash(place + NestPoint{by.x * static_cast<std::int64_t>(depth - 1e-6),
                                                   by.y * static_cast<std::int64_t>(depth - 1e-6)}) ||
                      depth < 2);
      }
      ++looked;
      if (meet) ++met;
    }
  }
  EXPECT_GT(met, looked / 10);
  EXPECT_LT(met, looked * 9 / 10);
}

TEST(NestShape, HoldsItsHolesAndRefusesRingsThatCross) {
  const NestShape ring = nest_shape({{{0, 0}, {9, 0}, {9, 9}, {0, 9}}, {{3, 3}, {3, 6}, {6, 6}, {6, 3}}});
  EXPECT_EQ(ring.area, 72);
  EXPECT_GE(ring.convex.size(), 3U);
  EXPECT_THROW(nest_shape({{{0, 0}, {9, 9}, {9, 0}, {0, 9}}}), std::logic_error);
}

}  // namespace
}  // namespace berthwright
