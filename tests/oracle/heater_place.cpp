#include "oracle/heater_place.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace berthwright::oracle {
namespace {

struct Span {
  double low, high;
};

double gap(Span a, Span b) { return std::max({b.low - a.high, a.low - b.high, 0.0}); }

// How deep two spans share space; less than nothing: as far apart.
double shared(Span a, Span b) { return std::min(a.high - b.low, b.high - a.low); }

Span cell_of(Span box, int side) {
  if (side < 0) return {-1e6, box.low};
  if (side > 0) return {box.high, 1e6};
  return box;
}

double face(const SlowPlate& plate, char front, int axis, int side) {
  if (axis == 2) return side > 0 ? plate.top : plate.sides;
  const char looks = axis == 0 ? (side < 0 ? 'f' : 'r') : (side < 0 ? 'l' : 'R');
  if (looks == front) return plate.front;
  const bool same_axis = (front == 'f' || front == 'r') == (axis == 0);
  return same_axis ? plate.back : plate.sides;
}

double plate_margin(const std::array<Span, 3>& heater, char front, const SlowPlate& plate,
                    const std::array<Span, 3>& thing) {
  double least = 1000;
  for (int cell = 0; cell < 27; ++cell) {
    const std::array<int, 3> side{cell % 3 - 1, cell / 3 % 3 - 1, cell / 9 - 1};
    double asked = -1;
    double squared = 0;
    bool meets = true;
    for (int axis = 0; axis < 3; ++axis) {
      const auto a = static_cast<std::size_t>(axis);
      const Span region = cell_of(heater[a], side[a]);
      const Span part{std::max(region.low, thing[a].low), std::min(region.high, thing[a].high)};
      meets = meets && part.low <= part.high;
      if (cell == 13) meets = meets && part.low < part.high;
      const double away = gap(heater[a], part);
      squared += away * away;
      if (side[a] != 0) asked = std::max(asked, face(plate, front, axis, side[a]));
    }
    if (cell == 13) asked = std::max({plate.front, plate.back, plate.sides, plate.top});
    if (meets && asked >= 0) least = std::min(least, std::sqrt(squared) - asked);
  }
  return least;
}

}  // namespace

SlowPlace slow_place(const SlowBox& room, const SlowBox& heater, char front, const SlowPlate& plate,
                     const std::vector<SlowBox>& things) {
  SlowPlace place;
  place.inside = std::min({heater.x0 - room.x0, room.x1 - heater.x1, heater.y0 - room.y0, room.y1 - heater.y1,
                           heater.z0 - room.z0, room.z1 - heater.z1});
  const std::array<Span, 3> own{Span{heater.x0, heater.x1}, {heater.y0, heater.y1}, {heater.z0, heater.z1}};
  for (const SlowBox& thing : things) {
    const std::array<Span, 3> other{Span{thing.x0, thing.x1}, {thing.y0, thing.y1}, {thing.z0, thing.z1}};
    double depth = 1000;
    double squared = 0;
    for (std::size_t axis = 0; axis < 3; ++axis) {
      depth = std::min(depth, shared(own[axis], other[axis]));
      squared += gap(own[axis], other[axis]) * gap(own[axis], other[axis]);
    }
    place.apart = std::min(place.apart, -depth);
    if (!thing.burns) continue;
    place.to_burning = std::min(place.to_burning, std::sqrt(squared));
    place.plate = std::min(place.plate, plate_margin(own, front, plate, other));
  }
  return place;
}

}  // namespace berthwright::oracle
