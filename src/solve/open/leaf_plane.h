#pragma once

#include <berthwright/geometry/placement.h>
#include <berthwright/geometry/solid.h>
#include <berthwright/plan/interior.h>
#include <berthwright/plan/things.h>

namespace berthwright {

/// The plane in which a leaf moves: plan, or upright along or across the trailer. It is seen so that the leaf
/// lies shut along x from its hinge (of a drawer or a loose lid: one end) at the origin, and opens toward y;
/// square to the plane it keeps to one stretch, so what it meets is decided in two dimensions.
class LeafPlane {
 public:
  LeafPlane(const Fixture& fixture, const Leaf& leaf);

  bool turns() const { return turns_; }
  Length width() const { return width_; }  ///< of the leaf, from its hinge outward
  /// Where it can come at all: about the hinge, or before the leaf as far as it slides.
  const Rect& frame() const { return frame_; }
  /// What of the frame a solid takes at some place of the stretch.
  Region taken_by(const Solid& solid) const;
  /// What of the frame lies outside the room at some place of the stretch.
  Region outside(const Interior& interior) const;
  /// The plan of all that is swept (a region of the frame) between the two heights.
  Region shadow(const Region& swept, Length low, Length high) const;
  /// The place in the room, in the middle of the stretch.
  Point3 in_room(Point point) const;

 private:
  enum class Seen { from_above, from_the_side, from_the_end };
  struct Ways {
    Point hinge;
    Point along;  ///< unit, from the hinge to the free edge of the shut leaf
    Point open;   ///< unit
  };
  Ways of_lid(const Fixture& fixture, const Leaf& leaf);
  Ways in_face(const Fixture& fixture, const Leaf& leaf);
  void look(const Ways& ways);
  Rect in_plan(const Rect& seen) const;
  Region beyond_outline(const Interior& interior, const Rect& seen) const;
  Region beyond_profile(const Interior& interior, const Rect& seen) const;

  bool turns_ = true;
  Seen seen_ = Seen::from_above;
  Length width_;
  Length from_;  ///< the stretch
  Length to_;
  Rect frame_;
  Placement to_leaf_;
  Placement to_room_;
};

}  // namespace berthwright
