#pragma once

#include <optional>
#include <span>
#include <vector>

#include <berthwright/plan/things.h>

#include "plan/place.h"

namespace berthwright {

/// What the leaves of a fixture are measured from.
struct LeafGround {
  RoomExtent room;
  std::span<const Landmark> landmarks;
  bool square = true;  ///< the fixture is turned by quarter turns
  bool sound = true;   ///< false: size, place or heights of the fixture are stand-ins
};

/// "opens" of a placed fixture; whether each leaf keeps to its face is left to `check_leaves`.
std::vector<Leaf> read_leaves(const Node& node, const Fixture& fixture, const LeafGround& ground,
                              Reading& reading);

/// What holds a thing on the road.
std::optional<Hold> as_hold(const Node& node, Reading& reading);
/// Length, width and height of the clear inside of a box.
std::optional<InsideBox> as_inside(const Node& node, Reading& reading);

}  // namespace berthwright
