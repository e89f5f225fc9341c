#include "oracle/weighings.h"

#include <algorithm>

namespace berthwright::oracle {

std::optional<MeanArms> mean_arms(const std::vector<LooseWeight>& weights, Mass fixed, Length fixed_arm) {
  std::optional<MeanArms> found;
  const std::size_t ways = std::size_t{1} << (2 * weights.size());
  for (std::size_t way = 0; way < ways; ++way) {
    double mass = static_cast<double>(fixed.units());
    double moment = mass * static_cast<double>(fixed_arm.ticks());
    for (std::size_t i = 0; i < weights.size(); ++i) {
      const LooseWeight& one = weights[i];
      const auto weight = static_cast<double>(((way >> (2 * i) & 1) != 0 ? one.most : one.least).units());
      mass += weight;
      moment += weight * static_cast<double>(((way >> (2 * i + 1) & 1) != 0 ? one.far : one.near).ticks());
    }
    if (mass <= 0) continue;
    const double mean = moment / mass;
    if (!found) found = MeanArms{mean, mean};
    found->least = std::min(found->least, mean);
    found->greatest = std::max(found->greatest, mean);
  }
  return found;
}

double seconds_in_steps(double joules, double losses, double watts, double from, double to) {
  constexpr double step = 0.1;
  constexpr double longest = 200'000;
  double seconds = 0;
  for (double at = from; at < to; seconds += step) {
    const double rise = (watts - losses * at) / joules * step;
    // Half a step ahead, so that a curve is followed closely.
    at += (watts - losses * (at + rise / 2)) / joules * step;
    if (rise <= 0 || seconds > longest) return -1;
  }
  return seconds;
}

long most_watts(const std::vector<OracleLoad>& loads, std::vector<long> left, long left_of_whole,
                std::size_t at) {
  if (at == loads.size()) return 0;
  const OracleLoad& load = loads[at];
  const long without = most_watts(loads, left, left_of_whole, at + 1);
  const long counted = static_cast<long>(load.watts) * load.percent;
  if (counted > left[load.breaker] || counted > left_of_whole) return without;
  left[load.breaker] -= counted;
  return std::max(without, load.watts + most_watts(loads, left, left_of_whole - counted, at + 1));
}

}  // namespace berthwright::oracle
