#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include <berthwright/geometry/region.h>
#include <berthwright/plan/things.h>

#include "plan/fields.h"

namespace berthwright {

/// The extent of the interior: where the four walls stand plumb.
struct RoomExtent {
  Length length;
  Length width;
};

/// One measure of a tape: from a wall or from a fixture's face to the near face of the thing.
struct Measure {
  enum class From {
    low_wall,
    high_wall,
    after,
    before
  };  ///< front or left; rear or right; behind…; ahead of…
  From from = From::low_wall;
  Length distance;
  std::string fixture;  ///< for `after` and `before`
  Origin origin;        ///< of the reference
};

/// Where a thing stands: one measure along the room and one across.
struct Place {
  Measure along;
  Measure across;
};

/// Reads "at". Nothing after a Problem.
std::optional<Place> as_place(const Node& node, Reading& reading);

/// A fixture that others may be measured from; `bounds` is empty when it could not be placed.
struct Landmark {
  std::string id;
  std::optional<Rect> bounds;
};

/// The shift that brings a box to its place; nothing when a landmark has no bounds or is unknown.
std::optional<Vector> shift_to(const Place& place, const Rect& box, const RoomExtent& room,
                               std::span<const Landmark> landmarks);

/// The fixtures that `place` leans on.
std::vector<const Measure*> leanings(const Place& place);

/// Reports a box that would stand more than 25 m from where the walls meet.
bool within_reach(const Rect& box, Vector shift, const Origin& origin, Reading& reading);

/// Reports that there is no fixture of that name, with the nearest one.
void report_unknown_fixture(const Measure& measure, std::span<const Landmark> landmarks, Reading& reading);

}  // namespace berthwright
