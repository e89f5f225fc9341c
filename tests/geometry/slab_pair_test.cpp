#include "geometry/slab_pair.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace berthwright {
namespace {

constexpr int grid = 200;

double draw(std::mt19937_64& random, double low, double high) {
  return low + (high - low) * static_cast<double>(random() % 10'001) / 10'000;
}

Bay bay(std::mt19937_64& random, double left, double right) {
  return {left, right, draw(random, -20, 5), draw(random, -20, 5), draw(random, 6, 30), draw(random, 6, 30)};
}

Pair pair(std::mt19937_64& random) {
  Pair result{bay(random, 0, draw(random, 1, 30)), {}, random() % 4 == 0, -1000, 1000};
  result.last = result.same ? result.first : bay(random, result.first.right + 3, result.first.right + 20);
  if (!result.same) {
    result.low = std::max({result.first.low_right, result.last.low_left, draw(random, -20, 5)});
    result.high = std::min({result.first.high_right, result.last.high_left, draw(random, 6, 30)});
  }
  return result;
}

double height(const Pair& p, double first, double last) {
  return std::min({p.high, p.first.high(first), p.last.high(last)}) -
         std::max({p.low, p.first.low(first), p.last.low(last)});
}

// Calls take(length, height) for a grid of both ends.
template <typename Take>
void each_end(const Pair& p, const Take& take) {
  for (int i = 0; i <= grid; ++i)
    for (int k = 0; k <= grid; ++k) {
      const double first = static_cast<double>(i) / grid, last = static_cast<double>(k) / grid;
      take(p.last.x(last) - p.first.x(first), height(p, first, last));
    }
}

void expect_free(const Pair& p, const Span2& s) {
  for (int i = 0; i <= 10; ++i) {
    const double x = s.x1 + (s.x2 - s.x1) * i / 10;
    for (const Bay& b : {p.first, p.last}) {
      if (x < b.left || x > b.right) continue;
      const double at = (x - b.left) / (b.right - b.left);
      EXPECT_GE(s.y1, b.low(at) - 1e-9);
      EXPECT_LE(s.y2, b.high(at) + 1e-9);
    }
  }
  EXPECT_GE(s.y1, p.low);
  EXPECT_LE(s.y2, p.high);
}

// A triangle with its point at the left, 10 long and 4 high at the right: the largest rectangle starts
// halfway, 5 x 2 = 10.
TEST(SlabPair, InAWedgeTheLargestStartsHalfway) {
  const Bay wedge{0, 10, 0, 0, 0, 4};
  const Span2 span = largest_of({wedge, wedge, true, -1000, 1000}, 80);
  EXPECT_NEAR(span.x1, 5, 1e-6);
  EXPECT_NEAR(span.x2, 10, 1e-12);
  EXPECT_NEAR(span.y2 - span.y1, 2, 1e-6);
}

// The same wedge is 3 high from 7.5 on, and never 5 high.
TEST(SlabPair, InAWedgeTheLongestStartsWhereItIsHighEnough) {
  const Bay wedge{0, 10, 0, 0, 0, 4};
  const auto span = longest_of({wedge, wedge, true, -1000, 1000}, 3);
  ASSERT_TRUE(span);
  EXPECT_NEAR(span->x1, 7.5, 1e-9);
  EXPECT_NEAR(span->x2, 10, 1e-12);
  EXPECT_FALSE(longest_of({wedge, wedge, true, -1000, 1000}, 5));
}

TEST(SlabPair, NoPairOfEndsOnAGridHoldsMore) {
  std::mt19937_64 random(31);
  for (int seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    const Pair p = pair(random);
    double area = 0;
    each_end(p, [&](double length, double high) {
      if (length > 0 && high > 0) area = std::max(area, length * high);
    });
    for (const int sections : {20, 80}) {
      const Span2 span = largest_of(p, sections);
      expect_free(p, span);
      EXPECT_GE((span.x2 - span.x1) * (span.y2 - span.y1), area * (1 - (sections == 80 ? 1e-9 : 1e-4)));
    }
    const double width = draw(random, 1, 30);
    double length = -1;
    each_end(p, [&](double along, double high) {
      if (high >= width) length = std::max(length, along);
    });
    const auto longest = longest_of(p, width);
    if (length > 0) {
      ASSERT_TRUE(longest);
    }
    if (!longest || longest->x2 <= longest->x1) continue;
    expect_free(p, *longest);
    EXPECT_GE(longest->y2 - longest->y1, width - 1e-9);
    EXPECT_GE(longest->x2 - longest->x1, length - 1e-9);
  }
}

}  // namespace
}  // namespace berthwright
