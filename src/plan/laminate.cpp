#include "plan/laminate.h"

namespace berthwright {
namespace {

constexpr double veneer_mm = 1.4;
constexpr double veneer_modulus = 17'500;
constexpr double veneer_strength = 70;

}  // namespace

Laminate laminate(int plies, Length thickness) {
  const double whole = static_cast<double>(thickness.ticks()) / ticks_per_mm;
  const double sanded = (plies * veneer_mm - whole) / 2;
  double along = 0;  // second moments per mm of width, of the veneers in that direction
  double across = 0;
  for (int ply = 0; ply < plies; ++ply) {
    const double low = ply == 0 ? 0 : ply * veneer_mm - sanded;
    const double high = ply == plies - 1 ? whole : (ply + 1) * veneer_mm - sanded;
    const double from = low - whole / 2;
    const double to = high - whole / 2;
    (ply % 2 == 0 ? along : across) += (to * to * to - from * from * from) / 3;
  }
  const double solid = whole * whole * whole / 12;
  const double outermost = whole / 2;
  const double outermost_across = outermost - (veneer_mm - sanded);
  return {.along = {veneer_modulus * along / solid, veneer_strength * along / solid},
          .across = {veneer_modulus * across / solid,
                     veneer_strength * across / solid * outermost / outermost_across}};
}

}  // namespace berthwright
