#pragma once

#include <vector>

#include <berthwright/geometry/outline.h>
#include <berthwright/geometry/region.h>

namespace berthwright {

/// What a rounded corner takes from a piece: the triangle between the two sides it joins and its chords.
struct CornerTip {
  Point from;  ///< where the arc leaves one side
  Point tip;   ///< where the sides would meet
  Point to;    ///< where it joins the other
};

/// Corners rounded by quarter circles of up to 3 in.
std::vector<CornerTip> corner_tips(const std::vector<Arc>& arcs);

Region triangle(const CornerTip& corner);

/// Strips 1/64 in wide just outside the two sides.
Region beside(const CornerTip& corner);

}  // namespace berthwright
