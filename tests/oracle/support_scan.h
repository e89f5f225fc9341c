#pragma once

#include <optional>
#include <vector>

namespace berthwright::oracle {

/// Cells of a square raster, `wide` by `deep`; cell (x, y) is `cells[y * wide + x]`.
struct Raster {
  int wide = 0;
  int deep = 0;
  std::vector<bool> cells;

  Raster(int across, int along)
      : wide(across), deep(along), cells(static_cast<std::size_t>(across * along), false) {}
  bool at(int x, int y) const {
    return x >= 0 && y >= 0 && x < wide && y < deep && cells[static_cast<std::size_t>(y * wide + x)];
  }
  void fill(int x0, int y0, int x1, int y1);
  Raster shifted(int dx, int dy) const;
  /// Its front (x = 0) becomes left (y = 0): rows and columns exchanged.
  Raster transposed() const;
  /// Left and right exchanged.
  Raster flipped() const;
};

/// Lengths in cells.
struct ScannedSide {
  int borne = 0;
  int depth = 0;
  int at_play = 0;
};
/// The side y = 0 of a board that covers the raster; `inch` is the number of cells in one. `play`: how far it
/// can be shoved toward greater y.
ScannedSide scanned_side(const Raster& bearing, const Raster& tops_around, int margin, int inch, int play);

struct ScannedSpan {
  int clear = 0;
  int carried = 0;
  int open = 0;
};
/// Along y; nothing where no line has two bearings an inch apart.
std::optional<ScannedSpan> scanned_span(const Raster& bearing, int inch);

struct ScannedBalance {
  bool balanced = false;
  double beyond = 0;    ///< of the middle of the raster beyond the hull
  double overhang = 0;  ///< of its farthest corner
  double ratio =
      0;  ///< least load that tips, in weights of the board: from many tipping lines, so not too small
};
ScannedBalance scanned_balance(const Raster& bearing);

/// Diameter of the largest disc of cells that are not filled, about the middles and corners of cells.
double scanned_hollow(const Raster& filled);

}  // namespace berthwright::oracle
