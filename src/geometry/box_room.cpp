#include "geometry/box_room.h"

namespace berthwright {

// Inside the bounds the box meets what is outside wherever it is within the box turned about the origin.
Region shifts_inside(const Region& region, const Rect& box) {
  if (region.empty()) return {};
  const Rect bounds = region.bounds();
  const Rect shifts{bounds.low - (box.low - Point{}), bounds.high - (box.high - Point{})};
  if (shifts.low.x >= shifts.high.x || shifts.low.y >= shifts.high.y) return {};
  const Region outside = without(Region(bounds), region);
  if (outside.empty()) return shifts;
  const Rect turned_about{Point{} - (box.high - Point{}), Point{} - (box.low - Point{})};
  return without(Region(shifts), swept(outside, Polygon::rectangle(turned_about)));
}

Region covered_by_squares(const Region& region, Length side) {
  const Rect square{{-half(side), -half(side)}, {half(side), half(side)}};
  const Region middles = shifts_inside(region, square);
  return middles.empty() ? Region() : common(swept(middles, Polygon::rectangle(square)), region);
}

}  // namespace berthwright
