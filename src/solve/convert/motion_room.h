#pragma once

#include <berthwright/geometry/point.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// What a box needs in plan to be turned by a quarter about the vertical through its middle, and how it then
/// lies.
struct TurningRoom {
  Rect after;
  Rect needed;
};
TurningRoom turning_room(const Rect& box);

/// The same of one tipped over a lower edge, and the height it needs above its underside.
struct TippingRoom {
  Rect after;
  Length height_after;
  Rect needed;
  Length height_needed;
};
TippingRoom tipping_room(const Rect& box, Length height, Wall over);

}  // namespace berthwright
