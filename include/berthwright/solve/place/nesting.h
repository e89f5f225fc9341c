#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include <berthwright/geometry/placement.h>

namespace berthwright {

/// A part to be cut out along a free line, and how it may lie. Its outline is one connected face, holes
/// allowed: smaller parts may come to lie in them. An arc is nested as its chords; where that matters give a
/// gap of 0.1 mm.
struct NestPart {
  Region outline;
  std::size_t count = 1;
  std::vector<Turn> turns{Turn{}};  ///< of those allowed; none: no turn, as it is drawn
  bool mirrored = false;            ///< may also be turned over
};

/// A rectangle: `width` along y; along x as long as need be (a strip), or `length` (sheets, as many as need
/// be).
struct NestStock {
  Length width;
  std::optional<Length> length{};
};

struct NestLimits {
  Length gap{};                      ///< kept between parts (the kerf), not to the sides of the stock
  std::uint64_t effort = 2'000'000;  ///< places looked at; a million takes about 1/4 s (measured 2026-11-29)
  std::uint64_t seed = 1;
  bool two_threads = false;  ///< sooner; what is found is the same
};

struct NestedPart {
  std::size_t part = 0;  ///< index among those given; once for each of its count
  std::size_t sheet = 0;
  Placement lies;  ///< of the outline as given, relative to the low corner of the stock
};

/// A part that lies on the stock in none of the turns allowed.
struct NestMisfit {
  std::size_t part = 0;
  Length least_width;  ///< of a stock long enough that it would fit
};

struct Nesting {
  std::vector<NestedPart> laid{};  ///< in the order given
  std::vector<NestMisfit> misfits{};
  std::size_t sheets = 0;  ///< 1 for a strip; 0: nothing is laid
  Length length{};         ///< used of the strip, or of the last sheet
  Area parts{};            ///< of all that are laid
  Area stock{};            ///< used: whole sheets, of the last one or of the strip `length` times `width`
  /// No nesting is shorter, or takes fewer sheets: by area and by the longest part. Proven.
  Length least_length{};
  std::size_t least_sheets = 0;
  std::uint64_t effort = 0;  ///< places looked at

  /// Part of the stock that is used; 0: nothing is laid.
  double density() const;
};

/// Lays all parts so that no two interiors meet (decided on integers, after all rounding) and the gap is
/// kept, on as short a strip or as few sheets as it finds, then as short a part of the last sheet: overlaps
/// are made by shortening and taken out again by guided local search. The same for the same values, on every
/// machine. Quarter turns are exact, others move corners by up to a tick. std::invalid_argument: an outline
/// that is not one face, or a negative gap.
Nesting nested(const std::vector<NestPart>& parts, const NestStock& stock, const NestLimits& limits = {});

}  // namespace berthwright
