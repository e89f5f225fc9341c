#include "view/sitting.h"

#include <algorithm>

namespace berthwright {
namespace {

constexpr Length lowest_seat = 12_in;
constexpr Length highest_seat = 24_in;
constexpr Length least_back = 6_in;
constexpr Length least_depth = 10_in;

bool is_seat(const Placed& placed) {
  return placed.is_soft() && placed.pose != nullptr && placed.pose->manner == Pose::Manner::flat &&
         placed.solid.top() >= lowest_seat && placed.solid.top() <= highest_seat;
}

bool is_back_of(const Placed& back, const Placed& seat) {
  return back.is_soft() && back.pose != nullptr && back.pose->faces &&
         back.solid.top() >= seat.solid.top() + least_back && back.solid.base() <= seat.solid.top() &&
         meets(back.solid.outline().bounds(), seat.solid.outline().bounds());
}

SittingPlace place_before(const Placed& back, const Placed& seat) {
  SittingPlace place{&seat, *back.pose->faces, {}, {}, seat.solid.outline().bounds(), seat.solid.top()};
  const Rect box = back.solid.outline().bounds();
  switch (place.faces) {
    case Wall::rear:
      place.back = place.clear.low.x = std::max(place.clear.low.x, box.high.x);
      break;
    case Wall::front:
      place.back = place.clear.high.x = std::min(place.clear.high.x, box.low.x);
      break;
    case Wall::right:
      place.back = place.clear.low.y = std::max(place.clear.low.y, box.high.y);
      break;
    case Wall::left:
      place.back = place.clear.high.y = std::min(place.clear.high.y, box.low.y);
      break;
  }
  place.middle = {half(place.clear.low.x + place.clear.high.x), half(place.clear.low.y + place.clear.high.y)};
  return place;
}

}  // namespace

std::vector<SittingPlace> sitting_places(const Arrangement& arrangement) {
  std::vector<SittingPlace> places;
  for (const Placed& seat : arrangement.things) {
    if (!is_seat(seat)) continue;
    for (const Placed& back : arrangement.things) {
      if (&back == &seat || !is_back_of(back, seat)) continue;
      const SittingPlace place = place_before(back, seat);
      if (place.clear.width() < least_depth || place.clear.height() < least_depth) continue;
      places.push_back(place);
      break;
    }
  }
  return places;
}

}  // namespace berthwright
