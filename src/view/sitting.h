#pragma once

#include <berthwright/solve/answer.h>

namespace berthwright {

/// Where one person sits, of a seat that faces some way.
struct SittingPlace {
  const Placed* seat = nullptr;
  Wall faces = Wall::rear;
  Length back;    ///< where the back leans, along the way the person looks: an x, or a y
  Point middle;   ///< of the seat before the back
  Rect clear;     ///< that part
  Length height;  ///< top of the cushion, not pressed down
};
std::vector<SittingPlace> sitting_places(const ConfigurationAnswer& answer);

}  // namespace berthwright
