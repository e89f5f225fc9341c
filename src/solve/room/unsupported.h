#pragma once

#include <berthwright/solve/room/support.h>

namespace berthwright {

/// As told at `CushionSupport`; the piece is soft and lies flat.
CushionSupport support_of_cushion(const Arrangement& arrangement, const Placed& cushion);

}  // namespace berthwright
