#pragma once

#include <vector>

namespace berthwright::oracle {

/// A beam on two supports cut into equal slices, with a load at the middle of each; plain inches and pounds.
struct SlicedBeam {
  double span = 0;
  double stiffness = 0;       ///< EI
  std::vector<double> loads;  ///< one for each slice
};

struct BeamResult {
  double sag = 0;     ///< the deepest
  double moment = 0;  ///< the greatest
};

/// Reactions by balance, moments by adding up forces times arms slice by slice, slope and sag by adding up
/// the curvature twice.
BeamResult summed(const SlicedBeam& beam);

}  // namespace berthwright::oracle
