#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// How often the boundaries of two operands wind about a place.
struct Winding {
  int first = 0;
  int second = 0;
  friend constexpr Winding operator+(Winding a, Winding b) {
    return {a.first + b.first, a.second + b.second};
  }
  friend constexpr Winding operator-(Winding a, Winding b) {
    return {a.first - b.first, a.second - b.second};
  }
  friend constexpr auto operator<=>(const Winding&, const Winding&) = default;
};

/// A piece of boundary from `low` to `high` (`low` < `high`); `gain` is the winding on its left less that on
/// its right.
struct Strand {
  Point low;
  Point high;
  Winding gain;
};

/// The edges as strands, in no particular order; points (edges of no length) are dropped.
std::vector<Strand> strands(std::span<const Edge> first, std::span<const Edge> second = {});

/// The same boundary cut wherever an end lies on a strand, coincident strands summed and those without gain
/// dropped; sorted. No rounding. Strands may still cross.
std::vector<Strand> cut_at_ends(std::vector<Strand> strands);

/// Whether a strand of the first operand crosses one of the second, each interior to the other.
bool operands_cross(std::span<const Strand> strands);

/// The same boundary cut into strands that meet in common ends only. Crossings on the lattice: exact.
/// Else each crossing is rounded once to the nearest tick, half toward plus infinity, and strands are led
/// through the centres of the ticks they pass that hold an end or a crossing (Hobby's snap rounding): nothing
/// is moved across anything, so no face is ever turned inside out.
std::vector<Strand> noded(std::vector<Strand> strands);

}  // namespace berthwright
