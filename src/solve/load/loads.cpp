#include <berthwright/solve/load/loads.h>

#include <algorithm>

namespace berthwright {
namespace {

bool has_tanks(const Plan& plan) {
  return std::ranges::any_of(plan->fixtures, [](const Fixture& one) { return one.fill.has_value(); }) ||
         std::ranges::any_of(plan->cargo, [](const Cargo& one) { return one.fill.has_value(); });
}

Status at_most(const std::optional<Mass>& low, const std::optional<Mass>& high, Mass limit) {
  if (high && *high <= limit) return Status::met;
  return low && *low > limit ? Status::not_met : Status::unknown;
}

Status even_sides(const Balance& balance) {
  if (!balance.side || !balance.axle || !balance.side->low || !balance.side->high || !balance.axle->low ||
      !balance.axle->high)
    return Status::unknown;
  const Mass left = Mass{} - *balance.side->low;
  const Mass most = std::max(*balance.side->high, left);
  // Both wheels on the heavy side of zero: then the difference is at least this.
  const Mass least = std::max({*balance.side->low, Mass{} - *balance.side->high, Mass{}});
  if (most * 100 <= *balance.axle->low * most_aside_percent) return Status::met;
  return least * 100 > *balance.axle->high * most_aside_percent ? Status::not_met : Status::unknown;
}

}  // namespace

std::vector<Loads> loads_of(const Plan& plan) {
  std::vector<Loads> all;
  for (const Configuration& configuration : plan->configurations) {
    Loads loads{.configuration = &configuration,
                .balances = {balanced(plan, configuration, TankState::as_told)}};
    if (has_tanks(plan))
      for (const TankState tanks : {TankState::empty, TankState::full})
        loads.balances.push_back(balanced(plan, configuration, tanks));
    loads.supply = supply_in(plan, configuration);
    loads.warm_up = warm_up_in(plan, configuration);
    all.push_back(std::move(loads));
  }
  return all;
}

std::vector<LoadVerdict> verdicts_on(const Plan& plan, const Loads& loads) {
  using Kind = LoadVerdict::Kind;
  std::vector<LoadVerdict> verdicts;
  const Balance& balance = loads.balance();
  if (plan->chassis) {
    const Chassis& chassis = *plan->chassis;
    verdicts.push_back({Kind::share, balance.share ? balance.share->status : Status::unknown});
    if (chassis.track) verdicts.push_back({Kind::sides, even_sides(balance)});
    const LoadSpan whole = balance.whole ? LoadSpan{balance.whole->least, balance.whole->most} : LoadSpan{};
    if (chassis.whole_limit)
      verdicts.push_back({Kind::whole_limit, at_most(whole.low, whole.high, *chassis.whole_limit)});
    const LoadSpan axle = balance.axle.value_or(LoadSpan{});
    if (chassis.axle_limit)
      verdicts.push_back({Kind::axle_limit, at_most(axle.low, axle.high, *chassis.axle_limit)});
    const LoadSpan coupling = balance.coupling.value_or(LoadSpan{});
    if (chassis.coupling_limit)
      verdicts.push_back(
          {Kind::coupling_limit, at_most(coupling.low, coupling.high, *chassis.coupling_limit)});
  }
  if (loads.supply) verdicts.push_back({Kind::supply, loads.supply->status});
  return verdicts;
}

int exit_code(const Plan& plan, const std::vector<Loads>& all) {
  std::vector<Status> told;
  for (const Loads& loads : all)
    for (const LoadVerdict& verdict : verdicts_on(plan, loads)) told.push_back(verdict.status);
  if (std::ranges::find(told, Status::not_met) != told.end()) return 1;
  return told.empty() || std::ranges::find(told, Status::unknown) != told.end() ? 2 : 0;
}

}  // namespace berthwright
