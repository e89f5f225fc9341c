#include <berthwright/solve/load/loads.h>

#include <algorithm>

namespace berthwright {
namespace {

bool has_tanks(const Plan& plan) {
  return std::ranges::any_of(plan->fixtures,
                             [](const Fixture& one) { return one.kind == Fixture::Kind::tank; }) ||
         std::ranges::any_of(plan->cargo, [](const Cargo& one) { return one.fill.has_value(); });
}

Status at_most(const LoadSpan& load, Mass limit) {
  if (load.high && *load.high <= limit) return Status::met;
  return load.low && *load.low > limit ? Status::not_met : Status::unknown;
}

Status even_sides(const Balance& balance) {
  if (!balance.side || !balance.axle) return Status::unknown;
  const LoadSpan& side = *balance.side;
  const LoadSpan& axle = *balance.axle;
  // Both ends on the heavy side of zero: then the difference is at least the nearer, whatever the farther.
  Mass least;
  if (side.low) least = std::max(least, *side.low);
  if (side.high) least = std::max(least, Mass{} - *side.high);
  if (axle.high && least * 100 > *axle.high * most_aside_percent) return Status::not_met;
  if (!side.low || !side.high || !axle.low) return Status::unknown;
  const Mass most = std::max(*side.high, Mass{} - *side.low);
  return most * 100 <= *axle.low * most_aside_percent ? Status::met : Status::unknown;
}

void add_verdicts(const Chassis& chassis, const Balance& balance, std::vector<LoadVerdict>& verdicts) {
  using Kind = LoadVerdict::Kind;
  const auto add = [&](Kind kind, Status status) { verdicts.push_back({kind, status, balance.tanks}); };
  const auto plate = [&](Kind kind, const LoadSpan& load, const std::optional<Mass>& limit) {
    if (limit) add(kind, at_most(load, *limit));
  };
  if (chassis.towed) add(Kind::share, balance.share ? balance.share->status : Status::unknown);
  if (chassis.track || balance.side) add(Kind::sides, even_sides(balance));
  plate(Kind::whole_limit, balance.whole ? LoadSpan{balance.whole->least, balance.whole->most} : LoadSpan{},
        chassis.whole_limit);
  plate(Kind::axle_limit, balance.axle.value_or(LoadSpan{}), chassis.axle_limit);
  plate(Kind::coupling_limit, balance.coupling.value_or(LoadSpan{}), chassis.coupling_limit);
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

std::vector<const Balance*> different_balances(const Loads& loads) {
  const Balance& told = loads.balance();
  std::vector<const Balance*> different{&told};
  // Thing by thing: beside a weight that nobody knows, sums of unlike things may have the same ends.
  for (const Balance& one : loads.balances)
    if (!std::ranges::equal(one.things, told.things, {}, &WeighedThing::weight, &WeighedThing::weight))
      different.push_back(&one);
  return different;
}

std::vector<LoadVerdict::Kind> limits_not_given(const Plan& plan) {
  using Kind = LoadVerdict::Kind;
  std::vector<Kind> kinds;
  if (plan->supply && !plan->supply->amps) kinds.push_back(Kind::supply);
  if (!plan->chassis) return kinds;
  if (!plan->chassis->whole_limit) kinds.push_back(Kind::whole_limit);
  if (!plan->chassis->axle_limit) kinds.push_back(Kind::axle_limit);
  if (plan->chassis->towed && !plan->chassis->coupling_limit) kinds.push_back(Kind::coupling_limit);
  return kinds;
}

std::vector<LoadVerdict> verdicts_on(const Plan& plan, const Loads& loads) {
  std::vector<LoadVerdict> verdicts;
  if (plan->chassis)
    for (const Balance* balance : different_balances(loads)) add_verdicts(*plan->chassis, *balance, verdicts);
  using Kind = LoadVerdict::Kind;
  if (loads.supply) verdicts.push_back({Kind::supply, loads.supply->status});
  for (const Kind kind : limits_not_given(plan))
    if (kind != Kind::supply)
      verdicts.push_back({kind, Status::unknown});
    else if (loads.supply && loads.supply->status == Status::met)
      verdicts.back().status = Status::unknown;
  return verdicts;
}

int exit_code(const Plan& plan, const std::vector<Loads>& all) {
  std::vector<Status> told;
  for (const Loads& loads : all)
    for (const LoadVerdict& verdict : verdicts_on(plan, loads)) told.push_back(verdict.status);
  if (std::ranges::find(told, Status::not_met) != told.end()) return 1;
  return told.empty() || std::ranges::find(told, Status::unknown) != told.end() ? 2 : 0;
}

bool states_loads(const Plan& plan, const Loads& loads) {
  const std::optional<Mass>& most = loads.balance().added.most;
  return plan->chassis || plan->supply || (most && *most > Mass{});
}

}  // namespace berthwright
