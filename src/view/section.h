#pragma once

#include <berthwright/geometry/cut_line.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// One thing as a section shows it. In a section `x` runs along the cut and `y` is the height.
struct SectionShape {
  enum class Kind {
    far_opening,  ///< a door or window in the wall that is looked at
    seen,         ///< stands behind the plane
    cut
  };
  Kind kind = Kind::seen;
  const Placed* placed = nullptr;    ///< of `seen` and `cut`
  const Opening* opening = nullptr;  ///< of `far_opening`
  Rect box;
};

/// The trailer cut by an upright plane: along it, looking to the right wall with the front at the left; or
/// across, looking forward with the left wall at the left.
struct Section {
  CutLine line;
  Region room;                       ///< what is open between floor, walls and roof in the plane
  std::vector<SectionShape> shapes;  ///< in the order they are painted: farthest first, what is cut last
};
inline bool is_long(const Section& section) { return section.line.along == CutLine::Along::x; }
Section section_of(const Plan& plan, const Arrangement& arrangement, const CutLine& line);

/// The room in the plane alone: the profiles as the outline and each other leave them there.
Region room_in(const Interior& interior, const CutLine& line);

/// The lowest thing or roof over the place `along` the cut, above `level`, in the plane: never too high.
/// None when the place lies outside the room or something fills it at `level`.
struct Above {
  Length height;                   ///< its underside above the floor
  const Placed* placed = nullptr;  ///< nullptr: the roof
};
std::optional<Above> above(const Section& section, Length along, Length level);

}  // namespace berthwright
