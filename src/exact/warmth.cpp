#include <berthwright/exact/warmth.h>

#include "exact/code_points.h"
#include "exact/counted.h"
#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr Temperature coldest = Temperature::celsius(-60);
constexpr Temperature hottest = Temperature::celsius(60);

std::string in_tenths(Int128 numerator, Int128 denominator, const char* unit) {
  const auto tenths = static_cast<std::int64_t>(rounded(numerator * 10, denominator, Rounding::nearest));
  const std::int64_t size = tenths < 0 ? -tenths : tenths;
  return (tenths < 0 ? "-" : "") + std::to_string(size / 10) +
         (size % 10 != 0 ? "." + std::to_string(size % 10) : "") + unit;
}

Problem temperature_problem(const char* id, const char* message, std::string_view text,
                            const char* cure = "write the degrees and F or C after them") {
  return {.id = id,
          .message = message,
          .found = printable(text),
          .allowed = "a temperature such as \"40 F\" or \"5.5 C\", with at most one decimal",
          .cure = cure};
}

Problem insulation_problem(
    const char* id, const char* message, std::string_view text,
    const char* cure = "write R or U and the number, or take it away: then it is unknown") {
  return {.id = id,
          .message = message,
          .found = printable(text),
          .allowed = "an R-value such as \"R-4\" (sq ft °F h/Btu), or a U-value such as \"U 1.7\" (W/m²K)",
          .cure = cure};
}

}  // namespace

Result<Temperature> read_temperature(std::string_view text) {
  const std::optional<Counted> counted = read_counted(text);
  if (!counted || (counted->unit != "f" && counted->unit != "c"))
    return temperature_problem("temperature.unit", "a temperature in F or C is expected here", text);
  if (counted->parts > 10)
    return temperature_problem("temperature.decimals", "a temperature has at most one decimal", text,
                               "round it to one decimal");
  const std::int64_t tenths = counted->number * (10 / counted->parts);
  constexpr std::int64_t most = 10'000;
  if (tenths < -most || tenths > most)
    return temperature_problem("temperature.range", "no room is as cold or as hot as that", text,
                               "write what a thermometer shows, from -76 F (-60 C) to 140 F (60 C)");
  const Temperature read = Temperature::from_units(counted->unit == "c" ? tenths * 9 : (tenths - 320) * 5);
  if (read < coldest || read > hottest)
    return temperature_problem("temperature.range", "no room is as cold or as hot as that", text,
                               "write what a thermometer shows, from -76 F (-60 C) to 140 F (60 C)");
  return read;
}

std::string temperature_text(Temperature temperature, Unit own) {
  const std::string fahrenheit = in_tenths(temperature.units() + std::int64_t{32} * 50, 50, " °F");
  const std::string celsius = in_tenths(temperature.units(), temperature_units_per_kelvin, " °C");
  return own == Unit::inch ? fahrenheit + " (" + celsius + ")" : celsius + " (" + fahrenheit + ")";
}

Result<Insulation> read_insulation(std::string_view text) {
  const std::size_t letter = text.find_first_not_of(' ');
  const char kind = letter == std::string_view::npos ? ' ' : text[letter];
  const bool r_value = kind == 'R' || kind == 'r';
  if (!r_value && kind != 'U' && kind != 'u')
    return insulation_problem("insulation.kind", "an R-value or a U-value is expected here", text);
  std::string_view rest = text.substr(letter + 1);
  if (rest.starts_with('-')) rest.remove_prefix(1);
  const std::optional<Counted> counted = read_counted(rest);
  if (!counted || !counted->unit.empty() || counted->parts > 1000)
    return insulation_problem("insulation.number", "a plain number is expected after the letter", text);
  const Int128 thousandths = Int128{counted->number} * (1000 / counted->parts);
  if (thousandths <= 0 || thousandths >= 100'000)
    return insulation_problem("insulation.range", "no shell is insulated like that", text,
                              "write a value above 0 and below 100, or take it away: then it is unknown");
  return Insulation{r_value ? Insulation::Kind::r_value : Insulation::Kind::u_value,
                    static_cast<std::int64_t>(thousandths)};
}

std::string insulation_text(Insulation insulation) {
  std::string decimals = std::to_string(1000 + insulation.thousandths % 1000).substr(1);
  while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
  return (insulation.kind == Insulation::Kind::r_value ? "R-" : "U ") +
         std::to_string(insulation.thousandths / 1000) + (decimals.empty() ? "" : "." + decimals);
}

std::int64_t conduction(Area area, Insulation insulation) {
  // A square metre is 1.6 × 10^15 square ticks. U of R-1 is 1055.05585262 / (3600 × 0.09290304 × 5/9) W/m²K.
  constexpr Int128 thousandths_of_u = 3'200'000'000'000;
  constexpr Int128 numerator = 105'505'585'262;
  constexpr Int128 denominator = Int128{18'580'608'000} * 3'200'000;
  if (insulation.kind == Insulation::Kind::u_value)
    return static_cast<std::int64_t>(
        rounded(area.doubled() * insulation.thousandths, thousandths_of_u, Rounding::nearest));
  return static_cast<std::int64_t>(
      rounded(area.doubled() * numerator, denominator * insulation.thousandths, Rounding::nearest));
}

}  // namespace berthwright
