#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright::support {

/// By its left, low, right and high borders.
constexpr Rect rect(Length left, Length low, Length right, Length high) {
  return {{left, low}, {right, high}};
}

/// In whole inches.
constexpr Point inch_point(int x, int y) { return {Length::inches(x), Length::inches(y)}; }
constexpr Rect inch_rect(int left, int low, int right, int high) {
  return {inch_point(left, low), inch_point(right, high)};
}

}  // namespace berthwright::support
