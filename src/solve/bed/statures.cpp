#include <berthwright/solve/bed/statures.h>

namespace berthwright {

namespace {

/// Mean and deviation of a survey's stature, in tenths of a millimetre.
struct Model {
  double mean;
  double deviation;
};
// Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007 (2014); from the
// survey's public raw files: 4,082 men, 1,986 women.
constexpr Model men{17562, 686};
constexpr Model women{16285, 642};

// e^-x for 0 <= x <= 32: the power series of e^(x / 64), which converges at once, squared six times.
double inverse_exponential(double x) {
  const double small = x / 64;
  double term = 1;
  double sum = 1;
  for (int i = 1; i <= 16; ++i) {
    term *= small / i;
    sum += term;
  }
  for (int i = 0; i < 6; ++i) sum *= sum;
  return 1 / sum;
}

int share_in_thousandths(Length stature, const Model& model) {
  const double tenths_of_mm = static_cast<double>(stature.ticks()) * 10 / static_cast<double>(ticks_per_mm);
  const std::int64_t share = normal_share_millionths((tenths_of_mm - model.mean) / model.deviation);
  return static_cast<int>((share + 500) / 1000);
}

}  // namespace

std::int64_t normal_share_millionths(double z) {
  constexpr double farthest_z = 8;  // beyond it less than a millionth of a millionth is left
  if (z >= farthest_z) return 1'000'000;
  if (z <= -farthest_z) return 0;
  constexpr double one_over_root_of_two_pi = 0.3989422804014326779;
  // Area between 0 and z: density(z) (z + z^3/3 + z^5/(3 5) + z^7/(3 5 7) + ...), all terms of one sign.
  double term = z;
  double sum = z;
  for (int odd = 3; odd < 400; odd += 2) {
    term *= z * z / odd;
    sum += term;
  }
  const double share = 0.5 + sum * one_over_root_of_two_pi * inverse_exponential(z * z / 2);
  return (static_cast<std::int64_t>(share * 2e6) + 1) / 2;
}

Shares shares_up_to_stature(Length stature) {
  return {share_in_thousandths(stature, men), share_in_thousandths(stature, women)};
}

}  // namespace berthwright
