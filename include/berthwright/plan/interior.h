#pragma once

#include <optional>
#include <string>

#include <berthwright/geometry/outline.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// The room: a plan outline, and a closed profile in x-z (extruded across) and, where the side walls curve,
/// one in y-z (extruded along). In a profile the polygon's x is along (or across) and its y is the height.
struct Interior {
  Outline outline;
  Outline side_profile;
  std::optional<Outline> cross_profile;
  Length length;  ///< x extent of the outline; x = 0 is the foremost inside point
  Length width;   ///< y extent
  Length height;  ///< highest point of the roof above the floor
  Origin origin;
};

/// Doors, windows and hatches: a rectangle in a wall.
struct Opening {
  enum class Kind { door, window, hatch };
  enum class Swing { out, in, slides, fixed };
  OpeningId id;
  std::string name;
  Kind kind = Kind::window;
  Wall wall = Wall::right;
  Length from;  ///< from the front wall (for left, right) or the left wall (for front, rear) to its near edge
  Length width;   ///< clear
  Length height;  ///< clear
  Length sill;    ///< bottom of the clear opening above the floor
  Swing swing = Swing::fixed;
  std::optional<Wall> hinge;  ///< the side its hinge stands on
  bool escape = false;
  Origin origin;
};

}  // namespace berthwright
