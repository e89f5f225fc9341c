#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include <berthwright/exact/measure.h>

namespace berthwright {

/// A temperature: a whole count of ninetieths of a degree Celsius, so that tenths of both scales are exact.
class Temperature {
 public:
  constexpr Temperature() = default;
  static constexpr Temperature from_units(std::int64_t units) { return Temperature(units); }
  static constexpr Temperature fahrenheit(std::int64_t degrees) { return Temperature((degrees - 32) * 50); }
  static constexpr Temperature celsius(std::int64_t degrees) { return Temperature(degrees * 90); }
  constexpr std::int64_t units() const { return units_; }
  friend constexpr auto operator<=>(Temperature, Temperature) = default;

 private:
  explicit constexpr Temperature(std::int64_t units) : units_(units) {}
  std::int64_t units_ = 0;
};
inline constexpr std::int64_t temperature_units_per_kelvin = 90;

/// Reads "40 F", "-5 °C", "21.5 C" with at most one decimal, from -60 to 60 °C; a number without a unit is
/// refused. Else a Problem "temperature.…".
Result<Temperature> read_temperature(std::string_view text);
/// "40 °F (4.4 °C)" under the inch, the other way round under the millimetre; tenths, rounded to the nearest.
std::string temperature_text(Temperature temperature, Unit own);

/// How well a shell keeps heat, as it is told: an R-value of the American trade (sq ft °F h/Btu), or a
/// U-value (W/m²K), in thousandths.
struct Insulation {
  enum class Kind { r_value, u_value };
  Kind kind = Kind::r_value;
  std::int64_t thousandths = 0;
  friend bool operator==(Insulation, Insulation) = default;
};

/// Reads "R-4", "R 3.5", "U 1.7", with at most three decimals, above zero and below 100. Else a Problem
/// "insulation.…".
Result<Insulation> read_insulation(std::string_view text);
/// "R-3.5", "U 1.7".
std::string insulation_text(Insulation insulation);

/// Heat through `area` for each degree of difference, in millionths of a watt per kelvin, to the nearest:
/// area / R, or area × U. One Btu is 1055.05585262 J.
std::int64_t conduction(Area area, Insulation insulation);

}  // namespace berthwright
