#include "solve/room/nearest_wall.h"

#include <algorithm>
#include <array>
#include <utility>

namespace berthwright {

std::string nearest_wall(const Interior& room, Point place) {
  const std::array walls{
      std::pair{place.x, "the front wall"}, std::pair{room.length - place.x, "the rear wall"},
      std::pair{place.y, "the left wall"}, std::pair{room.width - place.y, "the right wall"}};
  return std::ranges::min_element(walls, {}, [](const auto& wall) { return wall.first; })->second;
}

}  // namespace berthwright
