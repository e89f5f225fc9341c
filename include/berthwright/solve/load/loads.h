#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/load/balancing.h>
#include <berthwright/solve/load/circuits.h>
#include <berthwright/solve/load/warm_up.h>

namespace berthwright {

/// Weight, supply and warmth of one configuration.
struct Loads {
  const Configuration* configuration = nullptr;
  std::vector<Balance> balances;  ///< with the tanks as told; then empty and full, where there are tanks
  std::optional<SupplyFigures> supply{};
  std::optional<WarmUp> warm_up{};
  const Balance& balance() const { return balances.front(); }
};

/// One comparison of a figure with a published or a plate's one.
struct LoadVerdict {
  enum class Kind { share, sides, whole_limit, axle_limit, coupling_limit, supply };
  Kind kind = Kind::share;
  Status status = Status::unknown;
};

/// Of every configuration. Points into `plan`.
std::vector<Loads> loads_of(const Plan& plan);

/// Everything that the plan gives reason to compare; shares and plates with the tanks as told.
std::vector<LoadVerdict> verdicts_on(const Plan& plan, const Loads& loads);

/// 1: something compared is not met; 2: nothing was compared, or something is unknown; 0: all is met.
int exit_code(const Plan& plan, const std::vector<Loads>& all);

/// Right and left wheels differ by at most this part of the load on the axle: common practice, no source.
inline constexpr int most_aside_percent = 5;

}  // namespace berthwright
