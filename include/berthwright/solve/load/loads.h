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

/// The balance with the tanks as told, and those with empty and full tanks in which anything is different.
std::vector<const Balance*> different_balances(const Loads& loads);

/// One comparison of a figure with a published or a plate's one.
struct LoadVerdict {
  enum class Kind { share, sides, whole_limit, axle_limit, coupling_limit, supply };
  Kind kind = Kind::share;
  Status status = Status::unknown;
  TankState tanks = TankState::as_told;
};

/// Of every configuration. Points into `plan`.
std::vector<Loads> loads_of(const Plan& plan);

/// With what the plan could be compared, and does not give: plates of its chassis, amperes of its supply.
std::vector<LoadVerdict::Kind> limits_not_given(const Plan& plan);

/// Everything that the plan gives reason to compare; share, sides and plates of each of the different
/// balances: a plate that full tanks break is broken, and what is not given is unknown, once.
std::vector<LoadVerdict> verdicts_on(const Plan& plan, const Loads& loads);

/// 1: something compared is not met; 2: nothing was compared, or something is unknown; 0: all is met.
int exit_code(const Plan& plan, const std::vector<Loads>& all);

/// Whether the plan states a chassis, circuits, or what everything weighs. Where it does not, a drawing would
/// show nothing but that the centre of gravity may lie anywhere.
bool states_loads(const Plan& plan, const Loads& loads);

/// Right and left wheels differ by at most this part of the load on the axle: common practice, no source.
inline constexpr int most_aside_percent = 5;

}  // namespace berthwright
