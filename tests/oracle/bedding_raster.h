#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/heat/bedding.h>

namespace berthwright::oracle {

/// What a single plumb line through `at` meets of the overhang of made-up bedding.
struct Hang {
  Length base;
  Length top;
  friend bool operator==(const Hang&, const Hang&) = default;
};

/// Design 4.15 word by word at one point: within 2 in of S' but not in it, inside the plan outline of the
/// room, under no solid that rises above the level; from the level down 12 in or to the highest thing below,
/// at least one tick. None: no overhang. `sure` is false where the point lies too near a border to tell.
struct HangAt {
  std::optional<Hang> hang;
  bool sure = true;
};
HangAt hang_at(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Point at);

/// What the solids of `made_up` that are not among `bare` hold at the point.
std::vector<Hang> hangs_in(const Bedding& bedding, Point at);

}  // namespace berthwright::oracle
