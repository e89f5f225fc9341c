#pragma once

#include <berthwright/solve/room/support.h>

namespace berthwright {

/// Something that bears a rigid piece at its underside.
struct Bearer {
  std::string id;
  Region top;  ///< in plan
  bool is_leg = false;
};

/// Everything whose top lies at the underside of the piece and beneath it, in the order of the arrangement;
/// the floor reaches an inch beyond the piece on all sides.
std::vector<Bearer> bearers_of(const Arrangement& arrangement, const Placed& piece);

Region united_tops(const std::vector<Bearer>& bearers);

/// As told at `BearingSide`; the piece lies flat.
std::vector<BearingSide> sides_of(const Plan& plan, const Arrangement& arrangement, const Placed& piece,
                                  const std::vector<Bearer>& bearers);

}  // namespace berthwright
