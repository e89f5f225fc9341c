#pragma once

#include <vector>

namespace berthwright::oracle {

/// A box in inches, and whether it can burn.
struct SlowBox {
  double x0, x1, y0, y1, z0, z1;
  bool burns = false;
};
/// What a data plate asks, in inches; less than nothing: not given.
struct SlowPlate {
  double front, back, sides, top;
};

/// One place of a heater, by arithmetic of boxes alone: how far its sides are inside the room, how far it is
/// from the nearest box (less than nothing: as deep in it), from the nearest that burns, and the least margin
/// of the plate over the 27 cells about it. A thousand where there is nothing to compare.
struct SlowPlace {
  double inside = 1000;
  double apart = 1000;
  double to_burning = 1000;
  double plate = 1000;
};
/// `front`: the way it looks, one of f(ront), r(ear), l(eft) and R(ight).
SlowPlace slow_place(const SlowBox& room, const SlowBox& heater, char front, const SlowPlate& plate,
                     const std::vector<SlowBox>& things);

}  // namespace berthwright::oracle
