#pragma once

#include <cstddef>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// Rectangles of one size of which each must be laid, by quarter turns as it likes.
struct Tile {
  Length length;
  Length width;
  std::size_t count = 1;
};

/// What is to be covered, with what.
struct TilingTask {
  /// Rectangles that may overlap and touch; their union is covered, whole and once.
  std::vector<Rect> parts;
  /// Rectangles within them that are covered already; they do not overlap.
  std::vector<Rect> taken{};
  std::vector<Tile> tiles{};
  /// How many more rectangles may be added, of sides from `least_side` to `longest_side`.
  std::size_t fillers = 0;
  Length least_side = one_tick;
  Length longest_side = farthest;
  Length narrower_side = farthest;  ///< at most, of a filler's shorter side
  std::size_t least_fillers = 0;
};

struct LaidTile {
  std::size_t kind = 0;  ///< index into `tiles`; their number for a filler
  Rect at;
  friend bool operator==(const LaidTile&, const LaidTile&) = default;
};

/// What a search came to.
struct Tilings {
  /// With the fewest fillers that do, each in the order low y, then low x. Empty: there is none.
  std::vector<std::vector<LaidTile>> found;
  std::size_t stages = 0;  ///< tiles laid on trial
  std::size_t pruned = 0;  ///< trials given up because no rest could come out
  bool complete = true;    ///< all were seen; else the bound on stages or on those found came first
};

struct TilingBounds {
  std::size_t stages = 200'000;
  std::size_t found = 400;
};

/// Every way to lay all tiles and as few fillers as can be, so that they cover the parts and overlap nowhere.
///
/// The leftmost of the lowest free corners is covered next, so each way is met once. With at most one filler
/// complete without reserve. Of more, all but the last have their far sides where sides are anchored: at a
/// corner of the parts or a side laid before, plus or less sums of sides of tiles (normal positions);
/// complete for those. Deterministic.
/// std::invalid_argument: no part, or a tile without size.
Tilings tilings(const TilingTask& task, const TilingBounds& bounds = {});

}  // namespace berthwright
