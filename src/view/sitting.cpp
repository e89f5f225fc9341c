#include "view/sitting.h"

namespace berthwright {
namespace {

// From the front line as deep as the seat is.
SittingPlace place_of(const Seat& seat, const Placed& cushion) {
  const Rect front = hull({seat.front_from, seat.front_from}, {seat.front_to, seat.front_to});
  SittingPlace place{&cushion, *seat.faces, {}, {}, front, seat.top};
  switch (*seat.faces) {
    case Wall::rear:
      place.back = place.clear.low.x = front.low.x - seat.depth;
      break;
    case Wall::front:
      place.back = place.clear.high.x = front.high.x + seat.depth;
      break;
    case Wall::right:
      place.back = place.clear.low.y = front.low.y - seat.depth;
      break;
    case Wall::left:
      place.back = place.clear.high.y = front.high.y + seat.depth;
      break;
  }
  place.middle = {half(place.clear.low.x + place.clear.high.x), half(place.clear.low.y + place.clear.high.y)};
  return place;
}

}  // namespace

std::vector<SittingPlace> sitting_places(const ConfigurationAnswer& answer) {
  std::vector<SittingPlace> places;
  for (const Seat& seat : answer.seats) {
    if (!seat.faces || seat.cushions.empty()) continue;
    const Placed* cushion = answer.arrangement.find(seat.cushions.front());
    if (cushion != nullptr && seat.depth > Length{}) places.push_back(place_of(seat, *cushion));
  }
  return places;
}

}  // namespace berthwright
