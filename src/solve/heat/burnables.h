#pragma once

#include <berthwright/solve/heat/distances.h>

namespace berthwright {

/// Design 2: chords stray at most this far from their arc. 0.05 mm.
inline constexpr Length arc_error = Length::from_ticks(ticks_per_mm / 20);

/// What can burn: all of one bed, a cushion that belongs to none, a curtain, another fixture.
struct Burnable {
  std::string id;
  HeatDistance::Kind kind = HeatDistance::Kind::cushion;
  bool made_up = false;
  std::vector<Solid> solids;
  bool has_arcs = false;
};

/// Each of `beds` bare and made up, every curtain, every cushion that belongs to none of them, and every
/// fixture that the plan says can burn, but for those that give heat.
std::vector<Burnable> burnables_in(const Arrangement& arrangement,
                                   const std::vector<std::pair<const Bed*, Bedding>>& beds);

/// The way the front of a heat source looks; none when it does not stand upright and square, as its plate
/// means it to.
std::optional<Wall> way_of_front(const Placed& source);

/// `burnable` must have solids.
HeatDistance heat_distance(const Placed& source, const Burnable& burnable);

}  // namespace berthwright
