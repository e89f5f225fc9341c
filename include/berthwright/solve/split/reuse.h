#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <berthwright/solve/split/night_bay.h>

namespace berthwright {

/// A cushion that is there already.
struct OwnCushion {
  PieceId id;
  Region outline;  ///< unturned, its box beginning at the origin
  Length thickness;
  std::optional<Region> now{};  ///< by night as the plan has it, where it lies flat
};

/// How one of them lies by night.
struct RelaidCushion {
  std::size_t cushion = 0;  ///< index among those given
  Rect at;                  ///< its box
  int quarters = 0;         ///< counter-clockwise, after the flip
  bool flipped = false;     ///< its underside up
  bool stays = false;       ///< it lies there by night already
};

struct ReuseLimits {
  std::size_t openings = 3;  ///< rectangles that may stay open
  Length overhang = 2_in;    ///< over a side of the bay with open room beyond (common practice, no source)
};

/// How cushions that are there already cover a bay best.
struct Reuse {
  std::vector<OwnCushion> cushions;
  std::vector<RelaidCushion> laid{};     ///< in the order of the cushions
  std::vector<std::size_t> left_over{};  ///< cushions that find no place
  Region open{};                         ///< of the bay, what stays uncovered
  Length widest_gap{};                   ///< largest disc in it, across; at most two ticks short
  Region overhang{};                     ///< of cushions, what lies beyond the bay
  Length ridge{};                        ///< between the thinnest and the thickest laid
  /// Less than this no cushions of these outlines can leave open, wherever they lie: the bay less all of
  /// them.
  Area least_open{};
  std::size_t choices = 0;    ///< sets of cushions, and places of those that are cut out, looked at
  std::size_t skipped = 0;    ///< of which some could not be better by their areas
  std::size_t stages = 0;     ///< cushions laid on trial
  std::size_t pruned = 0;     ///< of which given up by a bound
  bool complete = true;       ///< no search came to its bound
  bool only_corners = false;  ///< what stays open are corners cut off the cushions themselves

  /// Nothing stays open; or corners alone, and no disc of more than 3 in goes there (common practice, no
  /// source: corners of so small a radius do not interrupt a bed).
  bool closes() const { return open.empty() || (only_corners && widest_gap <= 3_in); }
};

/// A bay, and how the plan's own cushions cover it.
struct BayReuse {
  NightBay bay;
  ReuseLimits limits;
  Reuse reuse;
};

/// The cushions of a bay as the plan has them, without bolsters. Problems as of `arranged`.
Result<std::vector<OwnCushion>> own_cushions(const Plan& plan, const NightBay& bay);

/// Where a laid cushion lies.
Region region_of(const Reuse& reuse, const RelaidCushion& laid);

/// Least area open; of equals the narrower opening, fewer openings, less overhang, more cushions left where
/// they lie, fewer turned.
///
/// Complete for: cushions turned by quarters, each laid or left over; what stays open makes at most
/// `openings` rectangles, as `tilings` looks for them; the bay reaches over at most one free side along and
/// one across, as far as sums of sides go. A cushion that is no rectangle lies with a side of its box on a
/// line of the bay or where it lies now, flipped or not, or is laid as its box; what rises into the bay is
/// taken as its box by all others. Deterministic.
Reuse reused(const NightBay& bay, const std::vector<OwnCushion>& cushions, const ReuseLimits& limits = {});

}  // namespace berthwright
