#pragma once

#include <compare>

#include <berthwright/exact/length.h>
#include <berthwright/exact/mass.h>

namespace berthwright {

/// A weight times its distance from a datum, as an exact whole number. Sums of all that a trailer holds fit.
class Moment {
 public:
  constexpr Moment() = default;
  static constexpr Moment from_units(Int128 units) { return Moment(units); }
  static constexpr Moment of(Mass mass, Length arm) { return Moment(Int128{mass.units()} * arm.ticks()); }

  constexpr Int128 units() const { return units_; }
  /// The weight that makes this moment at `arm`, rounded as asked; `arm` positive.
  Mass over(Length arm, Rounding rounding) const;
  /// The arm at which `mass` makes this moment, rounded as asked; `mass` positive.
  Length over(Mass mass, Rounding rounding) const;

  friend constexpr bool operator==(Moment a, Moment b) { return a.units_ == b.units_; }
  friend constexpr std::strong_ordering operator<=>(Moment a, Moment b) {
    return a.units_ < b.units_   ? std::strong_ordering::less
           : a.units_ > b.units_ ? std::strong_ordering::greater
                                 : std::strong_ordering::equal;
  }
  friend constexpr Moment operator+(Moment a, Moment b) { return Moment(a.units_ + b.units_); }
  friend constexpr Moment operator-(Moment a, Moment b) { return Moment(a.units_ - b.units_); }
  friend constexpr Moment operator-(Moment a) { return Moment(-a.units_); }

 private:
  explicit constexpr Moment(Int128 units) : units_(units) {}
  Int128 units_ = 0;
};

}  // namespace berthwright
