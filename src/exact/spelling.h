#pragma once

#include <cstdint>
#include <string>

#include <berthwright/exact/measure.h>

namespace berthwright {

/// The largest whole number not above `numerator / denominator`; denominator > 0.
constexpr Int128 floor_divided(Int128 numerator, Int128 denominator) {
  const Int128 quotient = numerator / denominator;
  return quotient - (numerator % denominator < 0 ? 1 : 0);
}

/// `value / step` in whole numbers; halves go away from zero, so that a mirrored length prints as its twin
/// with a minus. step > 0.
constexpr Int128 rounded(Int128 value, Int128 step, Rounding rounding) {
  const Int128 down = floor_divided(value, step);
  const Int128 up = -floor_divided(-value, step);
  if (rounding == Rounding::down) return down;
  if (rounding == Rounding::up) return up;
  return value < 0 ? -((-value * 2 + step) / (2 * step)) : (value * 2 + step) / (2 * step);
}

/// The ticks between neighbours that have a finite decimal in a unit of `unit_ticks`: 1 for the millimetre,
/// 127 for the inch, 381 for the foot.
constexpr std::int64_t decimal_step(std::int64_t unit_ticks) {
  while (unit_ticks % 2 == 0) unit_ticks /= 2;
  while (unit_ticks % 5 == 0) unit_ticks /= 5;
  return unit_ticks;
}

/// `ticks / unit_ticks` as the shortest decimal; ticks >= 0, a multiple of decimal_step(unit_ticks).
std::string decimal_text(Int128 ticks, std::int64_t unit_ticks);

/// `count / parts` as "2 1/2", "1/2" or "2", reduced; count >= 0, parts a power of two.
std::string mixed_text(Int128 count, std::int64_t parts);

}  // namespace berthwright
