#pragma once

#include <cstdint>

namespace berthwright {

/// A number between two whole counts of 10^-12.
struct PicoSpan {
  std::int64_t low = 0;
  std::int64_t high = 0;
};
inline constexpr std::int64_t pico = 1'000'000'000'000;

/// The natural logarithm of `numerator / denominator`, enclosed to within 4 of 10^-12; both positive, at
/// most 10^18, else std::invalid_argument. Whole numbers alone: the same on every machine.
PicoSpan natural_logarithm(std::int64_t numerator, std::int64_t denominator);

}  // namespace berthwright
