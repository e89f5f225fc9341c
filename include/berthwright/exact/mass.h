#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>

#include <berthwright/exact/measure.h>

namespace berthwright {

/// What a thing or a person weighs, and the load it makes by standing still: a whole count of 10 micrograms,
/// so that the pound (453.59237 g) and the gram are both exact. At most `heaviest`.
class Mass {
 public:
  constexpr Mass() = default;
  static constexpr Mass from_units(std::int64_t units) { return Mass(units); }
  /// `count / parts` pounds; std::invalid_argument (at compile time: refuses) when that is no whole unit.
  static constexpr Mass pounds(std::int64_t count, std::int64_t parts = 1);
  /// `count / parts` grams; as `pounds`.
  static constexpr Mass grams(std::int64_t count, std::int64_t parts = 1);

  constexpr std::int64_t units() const { return units_; }

  friend constexpr auto operator<=>(Mass, Mass) = default;
  friend constexpr Mass operator+(Mass a, Mass b) { return Mass(a.units_ + b.units_); }
  friend constexpr Mass operator-(Mass a, Mass b) { return Mass(a.units_ - b.units_); }
  friend constexpr Mass operator*(Mass a, std::int64_t times) { return Mass(a.units_ * times); }
  friend constexpr Mass operator*(std::int64_t times, Mass a) { return a * times; }

 private:
  explicit constexpr Mass(std::int64_t units) : units_(units) {}
  std::int64_t units_ = 0;
};

inline constexpr std::int64_t mass_units_per_pound = 45'359'237;
inline constexpr std::int64_t mass_units_per_gram = 100'000;
/// 20 tonnes: no trailer of this kind weighs more.
inline constexpr Mass heaviest = Mass::from_units(20'000'000 * mass_units_per_gram);

constexpr Mass Mass::pounds(std::int64_t count, std::int64_t parts) {
  if (parts <= 0 || count * mass_units_per_pound % parts != 0)
    throw std::invalid_argument("not a whole number of units");
  return Mass(count * mass_units_per_pound / parts);
}

constexpr Mass Mass::grams(std::int64_t count, std::int64_t parts) {
  if (parts <= 0 || count * mass_units_per_gram % parts != 0)
    throw std::invalid_argument("not a whole number of units");
  return Mass(count * mass_units_per_gram / parts);
}

/// Reads "250 lb", "250 lbs", "250 pounds", "113.4 kg", "350 g"; a bare number counts in pounds under the
/// inch and in kilograms under the millimetre. Decimals, at most nine, are rounded once to the unit. Not
/// negative, at most `heaviest`; else a Problem "mass.…" with the column.
Result<Mass> read_mass(std::string_view text, Unit bare);

/// "131 lb (59.5 kg)": own unit first, whole pounds and tenths of a kilogram, rounded as asked.
std::string mass_text(Mass mass, Unit own, Rounding rounding = Rounding::nearest);

}  // namespace berthwright
