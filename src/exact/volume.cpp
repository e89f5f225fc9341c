#include <berthwright/exact/volume.h>

#include <array>
#include <utility>

#include "exact/code_points.h"
#include "exact/counted.h"
#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr std::array<std::pair<std::string_view, Volume>, 12> named_volumes{{
    {"l", Volume::litres(1)},
    {"litre", Volume::litres(1)},
    {"litres", Volume::litres(1)},
    {"liter", Volume::litres(1)},
    {"liters", Volume::litres(1)},
    {"us gal", us_gallon},
    {"us gallon", us_gallon},
    {"us gallons", us_gallon},
    {"imp gal", imperial_gallon},
    {"imperial gal", imperial_gallon},
    {"imperial gallon", imperial_gallon},
    {"imperial gallons", imperial_gallon},
}};

Volume volume_of(Gallon gallon) { return gallon == Gallon::us ? us_gallon : imperial_gallon; }

std::optional<Volume> named_volume(std::string_view unit, Gallon gallon) {
  if (unit == "gal" || unit == "gallon" || unit == "gallons") return volume_of(gallon);
  for (const auto& [name, volume] : named_volumes)
    if (name == unit) return volume;
  return std::nullopt;
}

std::string tenths_of(Volume volume, Volume unit) {
  const auto tenths =
      static_cast<std::int64_t>(rounded(Int128{volume.units()} * 10, unit.units(), Rounding::nearest));
  return std::to_string(tenths / 10) + (tenths % 10 != 0 ? "." + std::to_string(tenths % 10) : "");
}

Problem volume_problem(const char* id, std::string message, std::string_view text, const char* cure) {
  return {.id = id,
          .message = std::move(message),
          .found = printable(text),
          .allowed = "a volume such as \"12 gal\", \"12 US gal\", \"10 imp gal\" or \"45 l\"",
          .cure = cure};
}

}  // namespace

Result<Volume> read_volume(std::string_view text, Gallon gallon) {
  const std::optional<Counted> counted = read_counted(text);
  const std::optional<Volume> unit = counted ? named_volume(counted->unit, gallon) : std::nullopt;
  if (!unit)
    return volume_problem("volume.unit", "a number with gal or l after it is expected here", text,
                          "write what it holds, as in 12 gal or 45 l");
  if (counted->number < 0)
    return volume_problem("volume.negative", "nothing holds less than nothing", text,
                          "take the minus sign away");
  const Int128 read = rounded(Int128{counted->number} * unit->units(), counted->parts, Rounding::nearest);
  if (read > largest_tank.units())
    return volume_problem("volume.too-large", "this is more than 2000 litres", text,
                          "check the volume and its unit");
  return Volume::from_units(static_cast<std::int64_t>(read));
}

std::string volume_text(Volume volume, Unit own, Gallon gallon) {
  const std::string gallons = tenths_of(volume, volume_of(gallon)) + " gal";
  const std::string litres = tenths_of(volume, Volume::litres(1)) + " L";
  return own == Unit::inch ? gallons + " (" + litres + ")" : litres + " (" + gallons + ")";
}

Mass water(Volume volume, int percent) {
  constexpr std::int64_t nanolitres_per_mass_unit = 10;  // 1 kg a litre
  return Mass::from_units(static_cast<std::int64_t>(
      rounded(Int128{volume.units()} * percent, Int128{100} * nanolitres_per_mass_unit, Rounding::nearest)));
}

}  // namespace berthwright
