#pragma once

#include <cstdint>
#include <string_view>

#include <berthwright/exact/result.h>

namespace berthwright {

/// A turn about the vertical, counter-clockwise seen from above: a rational point (cosine, sine) / unit on
/// the unit circle, cosine^2 + sine^2 = unit^2 exactly. Quarter turns are exact; any other angle is within
/// 1e-8 of a degree of the one asked for, and the vertices it moves are rounded once to the lattice.
class Turn {
 public:
  constexpr Turn() = default;
  /// `count` quarter turns; any whole number.
  static constexpr Turn quarters(int count) {
    constexpr std::int64_t sines[] = {0, 1, 0, -1};
    const int i = ((count % 4) + 4) % 4;
    return Turn(sines[(i + 1) % 4], sines[i], 1);
  }
  /// The direction of the vector (x, y), not both zero, each at most 2^31, else std::invalid_argument;
  /// within 1e-8 degree. A vector mirrored at an axis gives the mirrored turn, a parallel one the same.
  static Turn toward(std::int64_t x, std::int64_t y);
  /// `microdegrees` millionths of a degree, any whole number; multiples of 90 degrees are exact.
  static Turn degrees(std::int64_t microdegrees);

  constexpr std::int64_t cosine() const { return cosine_; }
  constexpr std::int64_t sine() const { return sine_; }
  constexpr std::int64_t unit() const { return unit_; }
  constexpr bool is_quarter() const { return unit_ == 1; }
  constexpr Turn reversed() const { return Turn(cosine_, -sine_, unit_); }
  /// Angle in [0, 360) degrees, in millionths, rounded to nearest; computed without the C library.
  std::int64_t microdegrees() const;

  friend constexpr bool operator==(Turn, Turn) = default;

 private:
  constexpr Turn(std::int64_t cosine, std::int64_t sine, std::int64_t unit)
      : cosine_(cosine), sine_(sine), unit_(unit) {}
  std::int64_t cosine_ = 1;
  std::int64_t sine_ = 0;
  std::int64_t unit_ = 1;
};

/// Reads "12.5", "12.5 deg" or "12.5°" (decimal degrees, at most six decimals, sign allowed, below 10^9);
/// else a Problem "turn.…" with the column.
Result<Turn> read_turn(std::string_view text);

}  // namespace berthwright
