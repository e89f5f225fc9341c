#pragma once

#include <compare>

#include <berthwright/exact/length.h>

namespace berthwright {

/// The square of a distance as an exact fraction of square ticks. Distances are compared through their
/// squares, so no root decides anything; `floor` and `ceiling` give the length to print.
/// Holds for any two points within `farthest` of the datum in each of three axes.
class SquaredLength {
 public:
  constexpr SquaredLength() = default;
  /// `numerator / denominator` square ticks; numerator >= 0, denominator > 0, else std::invalid_argument.
  SquaredLength(Int128 numerator, Int128 denominator);
  static SquaredLength of(Length length);

  /// This plus the square of a distance at right angles to it (the z gap of two prisms).
  SquaredLength plus_square_of(Length across) const;

  /// The longest whole-tick length not above the distance: what to print for "at least".
  Length floor() const;
  /// The shortest whole-tick length not below the distance: what to print for "at most".
  Length ceiling() const;

  friend std::strong_ordering operator<=>(const SquaredLength& a, const SquaredLength& b);
  friend bool operator==(const SquaredLength& a, const SquaredLength& b) { return (a <=> b) == 0; }
  friend std::strong_ordering operator<=>(const SquaredLength& a, Length b) { return a <=> of(b); }
  friend bool operator==(const SquaredLength& a, Length b) { return a == of(b); }

 private:
  Int128 numerator_ = 0;
  Int128 denominator_ = 1;
};

}  // namespace berthwright
