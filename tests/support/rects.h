#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright::support {

/// By its left, low, right and high borders.
constexpr Rect rect(Length left, Length low, Length right, Length high) {
  return {{left, low}, {right, high}};
}

}  // namespace berthwright::support
