#pragma once

#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// Bedding of one bed as solids: the bare sleeping pieces, and what the made-up bedding adds over the free
/// edges (design 4.15: overhang 2 in, drop 12 in or to the highest thing below).
struct Bedding {
  std::vector<Solid> bare;
  std::vector<Solid> made_up;  ///< bare pieces and overhang
};
Bedding bedding_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                   const Mattress& mattress);

}  // namespace berthwright
