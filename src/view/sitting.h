#pragma once

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// Where one person sits.
struct SittingPlace {
  const Placed* seat = nullptr;
  Wall faces = Wall::rear;
  Length back;    ///< where the back leans, along the way the person looks: an x, or a y
  Point middle;   ///< of what is left of the seat before the back
  Rect clear;     ///< that part
  Length height;  ///< top of the cushion
};

/// Cushions that lie at the height of a seat with a back standing on them.
std::vector<SittingPlace> sitting_places(const Arrangement& arrangement);

}  // namespace berthwright
