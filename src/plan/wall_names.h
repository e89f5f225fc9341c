#pragma once

#include <stdexcept>
#include <string_view>

#include <berthwright/plan/names.h>

namespace berthwright {

/// Front or rear: a wall across the trailer.
constexpr bool is_end_wall(Wall wall) { return wall == Wall::front || wall == Wall::rear; }

constexpr Wall opposite(Wall wall) {
  switch (wall) {
    case Wall::front:
      return Wall::rear;
    case Wall::rear:
      return Wall::front;
    case Wall::left:
      return Wall::right;
    case Wall::right:
      return Wall::left;
  }
  throw std::logic_error("Wall out of range");
}

/// As a plan file spells it.
constexpr std::string_view wall_word(Wall wall) {
  switch (wall) {
    case Wall::front:
      return "front";
    case Wall::rear:
      return "rear";
    case Wall::left:
      return "left";
    case Wall::right:
      return "right";
  }
  throw std::logic_error("Wall out of range");
}

}  // namespace berthwright
