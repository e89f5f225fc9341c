#pragma once

#include <vector>

#include <berthwright/geometry/solid.h>

namespace berthwright::oracle {

/// A box by its low and high corners, in whole inches.
struct InchBox {
  int low[3];
  int high[3];
};

/// Whether every straight line of least distance between two boxes that lie apart meets the inside of one of
/// `shields`: lines at every half inch, each walked in 400 steps. Where the two share no stretch of an axis
/// there is one place on it. Plain doubles.
bool every_line_is_stopped(const InchBox& a, const InchBox& b, const std::vector<InchBox>& shields);

}  // namespace berthwright::oracle
