#pragma once

#include <optional>
#include <string>

#include <berthwright/exact/angle.h>
#include <berthwright/geometry/point.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// What keeps a piece or a leaf where it is on the road.
enum class Hold { lip, snap, hook_and_loop, strap, block, latch, hook, screws };

/// The clear inside of a locker, box or drawer.
struct InsideBox {
  Length length;  ///< along x, of a drawer when it is shut
  Length width;   ///< along y
  Length height;
  friend bool operator==(const InsideBox&, const InsideBox&) = default;
};

/// A part of a fixture that opens: a door or a flap in one of its faces, a drawer that is pulled out of one,
/// a lid on its top. The fixture stands square to the room.
struct Leaf {
  enum class Kind { door, flap, drawer, lid };
  enum class Edge { front, rear, left, right, bottom, top };  ///< of the leaf when it is shut
  LeafId id;
  std::string name;
  FixtureId fixture;
  Kind kind = Kind::door;
  Wall face = Wall::right;  ///< the face of the fixture in which it sits; of a lid not used
  Rect outline;  ///< a lid: in plan. Else x: along the face (room x or y), y: height above the floor
  std::optional<Edge> hinge;      ///< none: a drawer, or a lid that lifts out
  Turn stop = Turn::quarters(1);  ///< how far a door, flap or lid turns open, at most half a turn
  Length pull;                    ///< how far a drawer comes out
  std::optional<Hold> held_by;    ///< on the road; none: the plan does not say
  std::optional<InsideBox> inside;
  Origin origin;
};

}  // namespace berthwright
