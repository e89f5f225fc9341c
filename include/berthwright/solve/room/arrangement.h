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
  /// Ids of what the piece rests on, greatest bearing first: a board on the highest top beneath it, a cushion
  /// on the height whose tops, seen from above, carry most of its area (of equal ones the higher); "floor" at
  /// height 0.
  std::vector<std::string> carried_by;
  /// Narrow high spots: at most 2 in wide, rising into a cushion from beneath by at most half its height.
  std::vector<std::string> pressed_by;

  bool is_soft() const { return piece != nullptr && piece->is_soft(); }
  bool is_curtain() const { return fixture != nullptr && fixture->kind == Fixture::Kind::curtain; }
};

/// One configuration standing in space: fixtures first, then the pieces in the order they are laid. Stowed
/// pieces are absent. Points into `plan`, which must outlive it.
struct Arrangement {
  const Configuration* configuration = nullptr;
  std::vector<Placed> things;

  const Placed* find(std::string_view id) const;  ///< nullptr: absent or stowed
};

/// Lays the pieces in the order of the list, each after what its `on` names (design 4.15, 4.16). A given
/// `base` is kept; else a piece lands on what `on` names, or on whatever begins below 48 in and does not hang
/// on a wall as lights, outlets, alarms, curtains and protrusions do, or on the floor. An overlap must have
/// area; foam squeezed sideways by up to 1/2 in does not lie on its neighbour or on upright furniture.
///
/// Problems: "rest.nothing-beneath", nothing that `on` names is; "rest.circle"; "rest.order": a piece without
/// `on` and `base` would lie at another height, had a later one that overlaps it and does not stand on it
/// been first.
Result<Arrangement> arranged(const Plan& plan, const Configuration& configuration);

}  // namespace berthwright
