#include "geometry/root.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

// Squares of whole numbers up to those of 25 m in ticks, 10^9: each root is the number itself. From 2^53 on, where a double
// no longer tells a number from the next, the search once ended before its first step.
TEST(Root, OfWholeSquaresIsWhole) {
  for (const double number : {0.0, 1.0, 3.0, 1e3, 94'906'265.0, 94'906'266.0, 94'906'267.0, 121'920'000.0, 1e9})
    EXPECT_EQ(root(number * number), number) << number;
}

TEST(Root, ALongSlantHasItsLength) { EXPECT_EQ(length_of(72 * 1'016'000.0, 96 * 1'016'000.0), 120 * 1'016'000.0); }

}  // namespace
}  // namespace berthwright
