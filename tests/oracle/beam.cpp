#include "oracle/beam.h"

#include <algorithm>

namespace berthwright::oracle {

BeamResult summed(const SlicedBeam& beam) {
  const double count = static_cast<double>(beam.loads.size());
  const double step = beam.span / count;
  double left = 0;
  for (std::size_t i = 0; i < beam.loads.size(); ++i)
    left += beam.loads[i] * (beam.span - (static_cast<double>(i) + 0.5) * step) / beam.span;

  // At the middle of each slice: the moment; then the rise of a line that starts level at the left end.
  std::vector<double> drop{0};
  BeamResult result;
  double shear = left;
  double moment = 0;
  double slope = 0;
  for (std::size_t i = 0; i < beam.loads.size(); ++i) {
    const double middle = moment + shear * step / 2;
    shear -= beam.loads[i];
    moment = middle + shear * step / 2;
    result.moment = std::max({result.moment, middle, moment});
    const double before = slope;
    slope += middle / beam.stiffness * step;
    drop.push_back(drop.back() + (before + slope) / 2 * step);
  }
  // Turned back so that the right end comes to the height of the left one.
  for (std::size_t i = 0; i < drop.size(); ++i)
    result.sag = std::max(result.sag, drop.back() * static_cast<double>(i) / count - drop[i]);
  return result;
}

}  // namespace berthwright::oracle
