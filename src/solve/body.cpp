#include <berthwright/solve/body.h>

#include <stdexcept>

namespace berthwright {

namespace {

struct SurveyRow {
  BodyMeasure measure;
  BodyFigures men;
  BodyFigures women;
};

// Tenths of a millimetre.
consteval BodyFigures of(int mean, int deviation, int p5, int p50, int p95) {
  const auto tenths = [](int count) { return Length::millimetres(count, 10); };
  return {tenths(mean), tenths(deviation), tenths(p5), tenths(p50), tenths(p95)};
}

constexpr SurveyRow rows[] = {
    {BodyMeasure::stature, of(17562, 686, 16480, 17550, 18700), of(16285, 642, 15250, 16260, 17400)},
    {BodyMeasure::sitting_height, of(9183, 357, 8600, 9180, 9770), of(8566, 331, 8030, 8570, 9120)},
    {BodyMeasure::eye_height_sitting, of(8045, 332, 7500, 8040, 8600), of(7477, 304, 6980, 7480, 7990)},
    {BodyMeasure::shoulder_breadth, of(5104, 325, 4590, 5090, 5670), of(4503, 287, 4060, 4500, 4990)},
    {BodyMeasure::forearm_breadth, of(5799, 509, 4971, 5790, 6669), of(4948, 410, 4320, 4920, 5638)},
    {BodyMeasure::hip_breadth, of(3793, 302, 3330, 3780, 4310), of(3990, 327, 3480, 3970, 4560)},
    {BodyMeasure::popliteal_height, of(4298, 248, 3900, 4300, 4710), of(3882, 236, 3500, 3870, 4280)},
    {BodyMeasure::buttock_popliteal, of(5029, 274, 4590, 5020, 5480), of(4851, 287, 4410, 4830, 5350)},
    {BodyMeasure::buttock_knee, of(6180, 306, 5690, 6170, 6690), of(5906, 326, 5410, 5890, 6460)},
    {BodyMeasure::knee_height, of(5542, 279, 5090, 5530, 6020), of(5113, 271, 4692, 5100, 5570)},
    {BodyMeasure::thigh_clearance, of(1805, 156, 1570, 1800, 2070), of(1679, 141, 1450, 1670, 1910)},
    {BodyMeasure::elbow_rest_height, of(2450, 287, 1970, 2460, 2910), of(2324, 263, 1890, 2330, 2758)},
    {BodyMeasure::abdominal_depth, of(2547, 373, 2000, 2510, 3200), of(2297, 315, 1840, 2270, 2850)},
};

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

double tenths_of_mm(Length length) {
  return static_cast<double>(length.ticks()) * 10 / static_cast<double>(ticks_per_mm);
}

int thousandths_up_to(Length size, const BodyFigures& figures) {
  const double beyond = tenths_of_mm(size) - tenths_of_mm(figures.mean);
  const std::int64_t share = normal_share_millionths(beyond / tenths_of_mm(figures.deviation));
  return static_cast<int>((share + 500) / 1000);
}

}  // namespace

const BodyFigures& body_figures(BodyMeasure measure, Sex sex) {
  for (const SurveyRow& row : rows)
    if (row.measure == measure) return sex == Sex::men ? row.men : row.women;
  throw std::logic_error("BodyMeasure out of range");
}

Shares shares_up_to(BodyMeasure measure, Length size) {
  return {thousandths_up_to(size, body_figures(measure, Sex::men)),
          thousandths_up_to(size, body_figures(measure, Sex::women))};
}

Shares shares_above(BodyMeasure measure, Length size) {
  const Shares below = shares_up_to(measure, size);
  return {1000 - below.men, 1000 - below.women};
}

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

}  // namespace berthwright
