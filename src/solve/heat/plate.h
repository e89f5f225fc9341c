#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// The box of a heat source, which stands square to the room; `front` is the way it looks. An outline that is
/// no rectangle counts as its bounding box, so no distance comes out too long.
struct SourceBox {
  Rect plan;
  Length base;
  Length top;
  Wall front = Wall::rear;
};

/// One of the 27 cells the planes of a box cut space into: -1 before its low plane, 0 between, 1 beyond.
/// All cells are closed: a shared plane belongs to every cell that meets it.
struct Cell {
  int x = 0;
  int y = 0;
  int z = 0;
  friend bool operator==(const Cell&, const Cell&) = default;
};

/// The faces before which a cell lies: one, the two of an edge, the three of a corner; none for the box
/// itself.
std::vector<ApplianceFace> faces_of(Wall front, Cell cell);

/// What the plate gives for a face; the underside counts as side.
const std::optional<Length>& given(const DataPlate& plate, const ApplianceFace& face);

/// What a plate asks before one cell.
struct Demand {
  std::optional<Length> required;  ///< the largest of the faces the plate gives
  bool incomplete = false;         ///< of some face it does not
};
/// An edge or corner asks the largest of its faces, the box itself that of all; the underside counts as side.
Demand demand_of(const DataPlate& plate, Wall front, Cell cell);

/// Least distance from the box to what of `solid` lies in the cell, be it only a point of its border; none
/// when nothing does. Exact. O(edges).
std::optional<Nearest> nearest_in_cell(const SourceBox& box, const Solid& solid, Cell cell);

/// How what can burn stands to a data plate.
struct PlateReading {
  struct Least {
    Length margin;    ///< distance, rounded down, less `required`
    Length required;  ///< of the face, or the largest of the faces of the edge or corner
    Nearest nearest;
    Cell cell;
  };
  std::optional<Least> least;            ///< over the faces the plate gives
  bool incomplete = false;               ///< something lies before a face the plate does not give
  std::vector<ApplianceFace> missing{};  ///< those faces, each once, in order
};

/// Least margin over all cells and solids (design 4.15): the underside counts as side; what reaches into the
/// box itself is compared with the largest distance of all faces. Of equal
/// margins that of the cell before the fewest faces, of several the first.
PlateReading plate_reading(const SourceBox& box, const DataPlate& plate, const std::vector<Solid>& solids);

}  // namespace berthwright
