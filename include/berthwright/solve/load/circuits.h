#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>
#include <berthwright/solve/finding.h>

namespace berthwright {

/// One thing that draws power in a configuration.
struct CircuitLoad {
  std::string name;
  Draw draw;
  bool plugged = false;                ///< by a cord into an outlet of the circuit
  std::string outlet{};                ///< id, where the plan says
  std::optional<Length> cord{};        ///< of a heater, as the plan gives it
  std::optional<std::size_t> circuit;  ///< index into the plan's circuits; none: the plan does not say
};

/// Percent by which a load counts that may run three hours or more.
inline constexpr int continuous_percent = 125;

/// What a load counts for, in hundredths of a watt.
std::int64_t counted_hundredths(const Draw& draw);

/// What hangs on one breaker, all at once. Continuous loads count by 125 %, so that alone they fill at most
/// 80 % of it; so does anything plugged in by a cord.
struct BreakerFigures {
  int breaker = 0;              ///< amperes
  std::int64_t continuous = 0;  ///< watts, of what hangs on it for certain; so are the next two
  std::int64_t others = 0;      ///< watts
  std::int64_t counted = 0;     ///< hundredths of a watt: continuous by 125 %
  std::int64_t allowed = 0;     ///< hundredths of a watt: breaker by volts
  /// Watts with everything on it that hangs nobody knows where; none: something there may draw anything.
  std::optional<std::int64_t> most_watts{};
  /// Not met where what hangs on it for certain is too much; unknown where what may hang there would be.
  Status status = Status::met;
  std::int64_t watts() const { return continuous + others; }
  /// All that hangs on it is known, and what each draws.
  bool is_known() const { return most_watts == watts(); }
  std::vector<std::size_t> too_large{};  ///< plugged loads that alone are above 80 % of it
  std::vector<std::string> no_figure{};  ///< heaters on it, and the plan does not say what they draw: names
};

/// The supply in one configuration.
struct SupplyFigures {
  std::vector<CircuitLoad> loads;
  std::vector<BreakerFigures> circuits;   ///< in the plan's order
  std::optional<BreakerFigures> whole{};  ///< where the plan gives the amperes of the supply
  /// The largest set of `loads` that may run at once, in their order; while anything is not known, of what
  /// is.
  std::vector<std::size_t> together;
  std::vector<std::string> unconnected;  ///< draw, or may, but hang on no circuit of the plan: names
  std::vector<std::string> no_figure;    ///< heaters that run, and the plan does not say what they draw
  Status status = Status::met;           ///< of all circuits and the whole, with everything on
  /// Of everything that draws both watts and circuit are known.
  bool is_known() const { return unconnected.empty() && no_figure.empty(); }
};

/// What stands in the configuration and draws: heaters that run, fixtures, and what the circuits list
/// besides. The largest set has the most watts, of equal ones the most loads, then the first in order;
/// every set is tried. Nothing where the plan has no supply.
std::optional<SupplyFigures> supply_in(const Plan& plan, const Configuration& configuration);

/// Whether `watts` on a breaker alone, continuous or by a cord, keep to 80 % of it, exactly.
bool keeps_to_80_percent(int watts, int breaker, int volts);

/// Tenths of an ampere, rounded up; of 80 % of a breaker down.
std::int64_t tenths_of_ampere(std::int64_t watts, int volts);

/// Whose the 80 % are.
const Source& continuous_source();

}  // namespace berthwright
