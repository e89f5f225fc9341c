#include <berthwright/exact/logarithm.h>

#include <stdexcept>

#include <berthwright/exact/length.h>

#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr std::int64_t largest_argument = 1'000'000'000'000'000'000;
constexpr Int128 series_unit = largest_argument;  // the series is summed in 10^-18

struct Wide {
  Int128 low;
  Int128 high;
};

// ln z = 2 (t + t^3/3 + t^5/5 + …) with t = (z - 1)/(z + 1); for z from 1 to 2, t is at most 1/3. Each power
// is enclosed by rounding down and up; what follows the last term is less than it, since t² is below 1/2.
Wide series(Int128 above, Int128 sum) {
  const Int128 t_low = series_unit * above / sum;
  const Int128 t_high = t_low + 1;
  Wide total{0, 0};
  Wide power{t_low, t_high};
  for (int odd = 1; power.low > 0; odd += 2) {
    total.low += power.low / odd;
    total.high += power.high / odd + 1;
    power.low = power.low * t_low / series_unit * t_low / series_unit;
    power.high = (power.high * t_high / series_unit + 1) * t_high / series_unit + 1;
  }
  return {2 * total.low, 2 * (total.high + power.high)};
}

Wide logarithm_up_to_two(Int128 numerator, Int128 denominator) {
  return series(numerator - denominator, numerator + denominator);
}

}  // namespace

PicoSpan natural_logarithm(std::int64_t numerator, std::int64_t denominator) {
  if (numerator <= 0 || denominator <= 0 || numerator > largest_argument || denominator > largest_argument)
    throw std::invalid_argument("a logarithm is of positive numbers up to 10^18");
  if (numerator < denominator) {
    const PicoSpan turned = natural_logarithm(denominator, numerator);
    return {-turned.high, -turned.low};
  }
  int halvings = 0;
  Int128 scaled = denominator;
  for (; numerator >= 2 * scaled; scaled *= 2) ++halvings;
  const Wide rest = logarithm_up_to_two(numerator, scaled);
  const Wide two = logarithm_up_to_two(2, 1);
  constexpr Int128 step = series_unit / pico;
  return {static_cast<std::int64_t>(floor_divided(rest.low + halvings * two.low, step)),
          static_cast<std::int64_t>(-floor_divided(-(rest.high + halvings * two.high), step))};
}

}  // namespace berthwright
