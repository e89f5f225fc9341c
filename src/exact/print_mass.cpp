#include <berthwright/exact/mass.h>

#include "exact/spelling.h"

namespace berthwright {

std::string mass_text(Mass mass, Unit own, Rounding rounding) {
  const auto whole = [&](std::int64_t step) {
    return static_cast<std::int64_t>(rounded(mass.units(), step, rounding));
  };
  const std::string pounds = std::to_string(whole(mass_units_per_pound)) + " lb";
  const std::int64_t tenths = whole(100 * mass_units_per_gram);
  const std::int64_t size = tenths < 0 ? -tenths : tenths;
  const std::string kilograms =
      (tenths < 0 ? "-" : "") + std::to_string(size / 10) + "." + std::to_string(size % 10) + " kg";
  return own == Unit::inch ? pounds + " (" + kilograms + ")" : kilograms + " (" + pounds + ")";
}

}  // namespace berthwright
