#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// One thing in space in one configuration: a fixture or a posed piece.
struct Placed {
  std::string id;
  const Fixture* fixture = nullptr;  ///< exactly one of `fixture` and `piece` is set
  const Piece* piece = nullptr;
  const Pose* pose = nullptr;  ///< of the piece
  Solid solid;
  std::vector<std::string> carried_by;  ///< ids of what the piece rests on, greatest bearing first; "floor"
  std::vector<std::string> pressed_by;  ///< narrow high spots that press into a cushion from below

  bool is_soft() const { return piece != nullptr && piece->is_soft(); }
};

/// One configuration standing in space: fixtures first, then the pieces in the order they are laid. Stowed
/// pieces are absent. Points into `plan`, which must outlive it.
struct Arrangement {
  const Configuration* configuration = nullptr;
  std::vector<Placed> things;

  const Placed* find(std::string_view id) const;  ///< nullptr: absent or stowed
};

/// Places every piece by design 4.15 and 4.16, in the order of the list, save that a piece waits for the
/// pieces its `on` names. A given `base` is kept. Else a piece lands on what its `on` names or, without one,
/// on whatever begins below 48 in and does not hang on a wall (lights, outlets, alarms, curtains,
/// protrusions); overlaps must have area. With nothing beneath it lies on the floor.
///
/// A board lies on the highest top; a cushion on the height whose tops, seen from above, carry most of its
/// area (of equal ones the higher). Cushions pressed together or against upright furniture by up to 1/2 in do
/// not lie on each other. What is at most 2 in wide and rises into a cushion by at most half its height
/// presses into it.
///
/// Problems: "rest.nothing-beneath" (nothing that `on` names lies beneath), "rest.circle", and "rest.order":
/// two pieces overlap in plan, the later does not stand on the earlier, and the earlier, which has neither
/// `on` nor `base`, would lie at another height had the later been laid first.
Result<Arrangement> arranged(const Plan& plan, const Configuration& configuration);

}  // namespace berthwright
