#pragma once

#include <optional>
#include <span>
#include <vector>

#include "solve/heat/burnables.h"

namespace berthwright {

/// The appliance as it stands in plan: its extents along x and y, and the way its front looks.
struct Stance {
  Length along;
  Length across;
  Wall faces = Wall::rear;
};

/// Things that can burn which stand alike to the appliance in height. All planes are closed, as for a data
/// plate: what only meets the plane of its top lies both beside and above it.
struct BurnGroup {
  struct Level {
    bool beside = false;
    std::optional<Length> above;  ///< how far above its top what lies beyond that plane begins
    std::optional<Length> below;  ///< how far below its underside
    int arcs = 0;                 ///< of the thing and of the appliance: each costs 0.05 mm
    friend auto operator<=>(const Level&, const Level&) = default;
  };
  Level level;
  std::vector<Polygon> parts;  ///< convex, together covering them in plan
};

/// `base` and `top` of the appliance; `arcs` when its own outline has any. In the order of their levels.
std::vector<BurnGroup> burn_groups(std::span<const Burnable> burnables, Length base, Length top, bool arcs);

/// The places of the corner of least x and y at which the appliance is nearer than `asked` to some of it, in
/// any direction: polygons that together cover them. What reaches farther in plan than `everywhere`, the
/// length and width together of all that is looked at, is cut off there.
std::vector<Polygon> too_near(std::span<const BurnGroup> groups, const Stance& stance, Length asked,
                              Length everywhere);

/// The same by a data plate: nearer than each face, edge or corner asks and `more`. Faces that the plate does
/// not give ask for nothing.
std::vector<Polygon> too_near_for_plate(std::span<const BurnGroup> groups, const Stance& stance,
                                        const DataPlate& plate, Length more, Length everywhere);

}  // namespace berthwright
