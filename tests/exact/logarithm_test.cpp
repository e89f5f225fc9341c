#include <berthwright/exact/logarithm.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <stdexcept>

#include <berthwright/exact/length.h>

namespace berthwright {
namespace {

void expect_encloses(const PicoSpan& span, std::int64_t of_pico) {
  EXPECT_LE(span.low, of_pico + 1);
  EXPECT_GE(span.high, of_pico);
  EXPECT_LE(span.high - span.low, 4);
}

// ln 2 = 0.693147180559945, ln 10 = 2.302585092994045, ln 3/2 = 0.405465108108164: tables, from memory.
TEST(NaturalLogarithm, EnclosesTheTables) {
  expect_encloses(natural_logarithm(2, 1), 693'147'180'559);
  expect_encloses(natural_logarithm(10, 1), 2'302'585'092'994);
  expect_encloses(natural_logarithm(3, 2), 405'465'108'108);
  expect_encloses(natural_logarithm(1, 10), -2'302'585'092'995);
  const PicoSpan one = natural_logarithm(7, 7);
  EXPECT_LE(one.low, 0);
  EXPECT_GE(one.high, 0);
}

// The area under 1/t from 1 to x lies between the sums of its steps: a way that shares nothing with the
// series.
TEST(NaturalLogarithm, LiesBetweenTheStepsUnderItsCurve) {
  std::mt19937 random(12);
  std::uniform_int_distribution<std::int64_t> any(1, 400);
  for (int i = 0; i < 60; ++i) {
    const std::int64_t b = any(random);
    const std::int64_t a = b + any(random);
    SCOPED_TRACE(std::to_string(a) + "/" + std::to_string(b));
    constexpr std::int64_t steps = 20'000;
    // From 1 in steps of d = (a - b)/(b steps): each step is d/t = (a - b)/(b steps + k (a - b)).
    Int128 least = 0;
    Int128 most = 0;
    for (std::int64_t k = 0; k < steps; ++k) {
      most += Int128{pico} * (a - b) / (b * steps + k * (a - b)) + 1;
      least += Int128{pico} * (a - b) / (b * steps + (k + 1) * (a - b));
    }
    const PicoSpan found = natural_logarithm(a, b);
    EXPECT_LE(static_cast<std::int64_t>(least), found.high);
    EXPECT_GE(static_cast<std::int64_t>(most), found.low);
  }
}

TEST(NaturalLogarithm, OfAProductIsTheSum) {
  std::mt19937 random(13);
  std::uniform_int_distribution<std::int64_t> any(1, 1'000'000'000);
  for (int i = 0; i < 200; ++i) {
    const std::int64_t a = any(random);
    const std::int64_t b = any(random);
    const PicoSpan of_a = natural_logarithm(a, 1);
    const PicoSpan of_b = natural_logarithm(b, 1);
    const PicoSpan of_both = natural_logarithm(a * b, 1);
    EXPECT_LE(of_both.low, of_a.high + of_b.high);
    EXPECT_GE(of_both.high, of_a.low + of_b.low);
    EXPECT_LE(of_both.high - of_both.low, 4);
    EXPECT_EQ(natural_logarithm(a, b).low, -natural_logarithm(b, a).high);
  }
}

TEST(NaturalLogarithm, RefusesWhatHasNone) {
  EXPECT_THROW(natural_logarithm(0, 1), std::invalid_argument);
  EXPECT_THROW(natural_logarithm(1, -1), std::invalid_argument);
}

}  // namespace
}  // namespace berthwright
