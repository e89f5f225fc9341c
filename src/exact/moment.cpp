#include <berthwright/exact/moment.h>

#include <stdexcept>

#include "exact/spelling.h"

namespace berthwright {

Mass Moment::over(Length arm, Rounding rounding) const {
  if (arm <= Length{}) throw std::invalid_argument("a moment has an arm above zero");
  return Mass::from_units(static_cast<std::int64_t>(rounded(units_, arm.ticks(), rounding)));
}

Length Moment::over(Mass mass, Rounding rounding) const {
  if (mass <= Mass{}) throw std::invalid_argument("nothing that weighs nothing has an arm");
  return Length::from_ticks(static_cast<std::int64_t>(rounded(units_, mass.units(), rounding)));
}

}  // namespace berthwright
