#pragma once

#include <berthwright/solve/cover/cover.h>

#include "view/dimensions.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// A cushion as it lies unturned, with the chains of its measures, at one scale.
struct SetCushion {
  const Cover* cover = nullptr;
  std::string letter;
  Surroundings around;
  PaperLength width;  ///< with its chains
  PaperLength height;
};
SetCushion set_cushion(const Cover& cover, const std::string& letter, std::int64_t ratio, Unit own);

/// Its outline, the run of the zip, the arrow to its upper edge where there is room for one, letter, radii
/// and measures; the box that they take has its top left corner at `corner`.
std::vector<Mark> cushion_marks(const SetCushion& set, std::int64_t ratio, Unit own, PaperPoint corner);

}  // namespace berthwright
