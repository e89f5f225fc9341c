#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace berthwright {

__extension__ typedef __int128 Int128;  // NOLINT(modernize-use-using): a `using` would lose the mark

/// A distance, height or coordinate: a whole count of ticks of 25 nm. Workshop fractions to 1/64 in,
/// thousandths of an inch and micrometres are all whole ticks, so no measure is ever rounded on entry.
/// Plans keep every coordinate within `farthest` of the datum; sums of two such lengths never overflow.
class Length {
 public:
  constexpr Length() = default;
  static constexpr Length from_ticks(std::int64_t ticks) { return Length(ticks); }
  /// `count / parts` inches; throws std::invalid_argument (at compile time: refuses) off the lattice.
  static constexpr Length inches(std::int64_t count, std::int64_t parts = 1);
  /// `count / parts` millimetres; as `inches`.
  static constexpr Length millimetres(std::int64_t count, std::int64_t parts = 1);

  constexpr std::int64_t ticks() const { return ticks_; }

  friend constexpr auto operator<=>(Length, Length) = default;
  friend constexpr Length operator+(Length a, Length b) { return Length(a.ticks_ + b.ticks_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.ticks_ - b.ticks_); }
  friend constexpr Length operator-(Length a) { return Length(-a.ticks_); }
  friend constexpr Length operator*(Length a, std::int64_t times) { return Length(a.ticks_ * times); }
  friend constexpr Length operator*(std::int64_t times, Length a) { return a * times; }
  constexpr Length& operator+=(Length other) { return *this = *this + other; }
  constexpr Length& operator-=(Length other) { return *this = *this - other; }

 private:
  explicit constexpr Length(std::int64_t ticks) : ticks_(ticks) {}
  std::int64_t ticks_ = 0;
};

inline constexpr std::int64_t ticks_per_mm = 40'000;
inline constexpr std::int64_t ticks_per_inch = 1'016'000;
/// No coordinate of a plan lies farther than this from its datum (then coordinates fit 32 bits).
inline constexpr Length farthest = Length::from_ticks(25'000 * ticks_per_mm);
inline constexpr Length one_tick = Length::from_ticks(1);

constexpr Length Length::inches(std::int64_t count, std::int64_t parts) {
  if (parts <= 0 || count * ticks_per_inch % parts != 0)
    throw std::invalid_argument("not a whole number of ticks");
  return Length(count * ticks_per_inch / parts);
}

constexpr Length Length::millimetres(std::int64_t count, std::int64_t parts) {
  if (parts <= 0 || count * ticks_per_mm % parts != 0)
    throw std::invalid_argument("not a whole number of ticks");
  return Length(count * ticks_per_mm / parts);
}

constexpr Length abs(Length a) { return a < Length{} ? -a : a; }
/// Half of `a`, an odd tick rounded toward minus infinity.
constexpr Length half(Length a) { return Length::from_ticks(a.ticks() >> 1); }

/// An area: twice the square ticks, as the shoelace sum gives it, so that it too is exact.
class Area {
 public:
  constexpr Area() = default;
  static constexpr Area from_doubled(Int128 doubled_square_ticks) {
    Area area;
    area.doubled_ = doubled_square_ticks;
    return area;
  }
  static constexpr Area rectangle(Length a, Length b) {
    return from_doubled(Int128{2} * a.ticks() * b.ticks());
  }
  constexpr Int128 doubled() const { return doubled_; }

  friend constexpr bool operator==(Area a, Area b) { return a.doubled_ == b.doubled_; }
  friend constexpr std::strong_ordering operator<=>(Area a, Area b) {
    return a.doubled_ < b.doubled_   ? std::strong_ordering::less
           : a.doubled_ > b.doubled_ ? std::strong_ordering::greater
                                     : std::strong_ordering::equal;
  }
  friend constexpr Area operator+(Area a, Area b) { return from_doubled(a.doubled_ + b.doubled_); }
  friend constexpr Area operator-(Area a, Area b) { return from_doubled(a.doubled_ - b.doubled_); }
  constexpr Area& operator+=(Area other) { return *this = *this + other; }

 private:
  Int128 doubled_ = 0;
};

inline namespace literals {
consteval Length operator""_in(unsigned long long count) {
  return Length::inches(static_cast<std::int64_t>(count));
}
consteval Length operator""_ft(unsigned long long count) {
  return Length::inches(12 * static_cast<std::int64_t>(count));
}
consteval Length operator""_mm(unsigned long long count) {
  return Length::millimetres(static_cast<std::int64_t>(count));
}
}  // namespace literals

}  // namespace berthwright
