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
  const Pose* pose = nullptr;        ///< of the piece
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

/// Design 4.15 (rest) and 4.16: each piece lands on the highest top beneath it that begins below its drop
/// height (48 in, or the named `on`); a cushion on the height that carries most of its area, a board on its
/// highest bearing. A Problem when a piece has nothing to rest on, or when two orders of laying give
/// different heights (the pair is named).
Result<Arrangement> arranged(const Plan& plan, const Configuration& configuration);

}  // namespace berthwright
