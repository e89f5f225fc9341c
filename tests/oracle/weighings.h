#pragma once

#include <optional>
#include <vector>

#include <berthwright/exact/length.h>
#include <berthwright/exact/mass.h>

namespace berthwright::oracle {

/// A weight between two, at an arm between two.
struct LooseWeight {
  Mass least;
  Mass most;
  Length near;
  Length far;
};

struct MeanArms {
  double least = 0;
  double greatest = 0;
};

/// The least and greatest mean arm, in ticks, over every way to take each weight at its least or its most and
/// each arm at either end; `fixed` counts besides at `fixed_arm`. None where nothing weighs anything. 4^n.
std::optional<MeanArms> mean_arms(const std::vector<LooseWeight>& weights, Mass fixed, Length fixed_arm);

/// Seconds until a room of `joules` for each kelvin, that loses `losses` W/K and gets `watts`, has risen from
/// `from` to `to` kelvin above outside, by small steps in time; negative: not within two days.
double seconds_in_steps(double joules, double losses, double watts, double from, double to);

/// The most watts of a set of loads that keeps to every breaker, one load after the other, taken or left.
struct OracleLoad {
  int watts = 0;
  int percent = 100;  ///< by which it counts
  std::size_t breaker = 0;
};
long most_watts(const std::vector<OracleLoad>& loads, std::vector<long> left, long left_of_whole,
                std::size_t at = 0);

}  // namespace berthwright::oracle
