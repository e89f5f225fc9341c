#pragma once

#include <berthwright/exact/length.h>

namespace berthwright {

/// Of a whole panel in bending, in N/mm².
struct PlywoodValues {
  double modulus = 0;
  double strength = 0;  ///< characteristic: no factor for load or time is in it
};

/// Birch plywood with its face grain along the span, and across it.
struct Laminate {
  PlywoodValues along;
  PlywoodValues across;
};

/// An odd number of veneers 1.4 mm thick, laid crosswise by turns, the two faces sanded equally until the
/// whole is `thickness`. A veneer bends in its own direction only: 17,500 N/mm² stiff, 70 N/mm² strong.
Laminate laminate(int plies, Length thickness);

}  // namespace berthwright
