#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include <berthwright/exact/mass.h>

namespace berthwright {

/// What a tank or a room holds: a whole count of nanolitres, so that the litre and both gallons are exact.
class Volume {
 public:
  constexpr Volume() = default;
  static constexpr Volume from_units(std::int64_t nanolitres) { return Volume(nanolitres); }
  static constexpr Volume litres(std::int64_t count) { return Volume(count * 1'000'000'000); }
  /// A box, rounded down to the unit; 1000 m³ fit.
  static constexpr Volume box(Area base, Length height);

  constexpr std::int64_t units() const { return units_; }

  friend constexpr auto operator<=>(Volume, Volume) = default;
  friend constexpr Volume operator+(Volume a, Volume b) { return Volume(a.units_ + b.units_); }

 private:
  explicit constexpr Volume(std::int64_t units) : units_(units) {}
  std::int64_t units_ = 0;
};

/// 231 cubic inches of 25.4 mm.
inline constexpr Volume us_gallon = Volume::from_units(3'785'411'784);
/// 4.54609 litres (Weights and Measures Act 1985, from memory).
inline constexpr Volume imperial_gallon = Volume::from_units(4'546'090'000);
/// 2,000 litres: no tank of such a trailer holds more.
inline constexpr Volume largest_tank = Volume::litres(2'000);

constexpr Volume Volume::box(Area base, Length height) {
  constexpr Int128 cubic_ticks = Int128{ticks_per_mm} * ticks_per_mm * ticks_per_mm / 1000;
  return Volume(static_cast<std::int64_t>(base.doubled() * height.ticks() / (2 * cubic_ticks)));
}

enum class Gallon { us, imperial };

/// Reads "12 gal", "12.5 US gal", "10 imp gal", "45 l", "45 litres"; a bare "gal" is `gallon`, and a number
/// without a unit is refused. At most `largest_tank`; else a Problem "volume.…".
Result<Volume> read_volume(std::string_view text, Gallon gallon);

/// "12 gal (45.4 L)", own unit first, in tenths, rounded to the nearest.
std::string volume_text(Volume volume, Unit own, Gallon gallon);

/// So much water as fills `percent` of the volume, at one kilogram a litre (no water weighs more).
Mass water(Volume volume, int percent);

}  // namespace berthwright
