#include <berthwright/solve/load/circuits.h>

#include <algorithm>
#include <bit>
#include <tuple>

namespace berthwright {
namespace {

std::optional<std::size_t> circuit_of(const Supply& supply, const std::string& fixture) {
  for (std::size_t i = 0; i < supply.circuits.size(); ++i)
    if (std::ranges::find(supply.circuits[i].feeds, fixture) != supply.circuits[i].feeds.end()) return i;
  return std::nullopt;
}

void add_to(BreakerFigures& figures, const std::vector<CircuitLoad>& loads, std::size_t i, int volts) {
  const CircuitLoad& load = loads[i];
  (load.draw.continuous ? figures.continuous : figures.others) += load.draw.watts;
  figures.counted += counted_hundredths(load.draw);
  if (load.plugged && !keeps_to_80_percent(load.draw.watts, figures.breaker, volts))
    figures.too_large.push_back(i);
}

BreakerFigures empty_breaker(int breaker, int volts) {
  BreakerFigures figures;
  figures.breaker = breaker;
  figures.allowed = std::int64_t{100} * breaker * volts;
  return figures;
}

/// `astray` hang nobody knows where: some of them may hang here, or all.
void judge(BreakerFigures& figures, const std::vector<const CircuitLoad*>& astray, bool dark, int volts) {
  std::int64_t counted = figures.counted;
  std::int64_t watts = figures.watts();
  bool fits = true;
  for (const CircuitLoad* load : astray) {
    counted += counted_hundredths(load->draw);
    watts += load->draw.watts;
    fits = fits && (!load->plugged || keeps_to_80_percent(load->draw.watts, figures.breaker, volts));
  }
  if (!dark) figures.most_watts = watts;
  if (figures.counted > figures.allowed || !figures.too_large.empty())
    figures.status = Status::not_met;
  else if (dark || !fits || counted > figures.allowed)
    figures.status = Status::unknown;
}

/// Every heater, fixture and other load of one configuration, and breakers on which nothing is added up yet.
SupplyFigures listed_loads(const Plan& plan, const Configuration& configuration, const Supply& supply) {
  SupplyFigures figures;
  for (const Circuit& circuit : supply.circuits)
    figures.circuits.push_back(empty_breaker(circuit.breaker, supply.volts));
  if (supply.amps) figures.whole = empty_breaker(*supply.amps, supply.volts);
  const auto add = [&](CircuitLoad load) {
    if (!load.circuit) figures.unconnected.push_back(load.name);
    figures.loads.push_back(std::move(load));
  };
  const auto add_dark = [&](const std::string& heater, std::optional<std::size_t> circuit) {
    figures.no_figure.push_back(heater);
    if (figures.whole) figures.whole->no_figure.push_back(heater);
    if (circuit)
      figures.circuits[*circuit].no_figure.push_back(heater);
    else
      figures.unconnected.push_back(heater);
  };
  for (const Piece& piece : plan->pieces) {
    if (piece.kind != Piece::Kind::heater) continue;
    const auto pose = std::ranges::find(configuration.poses, piece.id, &Pose::piece);
    if (pose == configuration.poses.end() || pose->state != Pose::State::running) continue;
    if (!piece.draw) {
      add_dark(piece.name, circuit_of(supply, pose->plugged_into));
      continue;
    }
    add({piece.name, *piece.draw, true, pose->plugged_into,
         piece.cord ? std::optional(piece.cord->length) : std::nullopt,
         circuit_of(supply, pose->plugged_into)});
  }
  for (const Fixture& fixture : plan->fixtures)
    if (fixture.draw)
      add({fixture.name, *fixture.draw, false, {}, std::nullopt, circuit_of(supply, fixture.id.text())});
    else if (fixture.kind == Fixture::Kind::heater)
      add_dark(fixture.name, circuit_of(supply, fixture.id.text()));
  for (std::size_t i = 0; i < supply.circuits.size(); ++i)
    for (const ExtraLoad& extra : supply.circuits[i].loads)
      add({extra.name, extra.draw, true, {}, std::nullopt, i});
  return figures;
}

/// Tries every set of the loads that hang on a circuit and may run there alone.
std::vector<std::size_t> largest_together(const SupplyFigures& figures, const Supply& supply) {
  std::vector<std::size_t> candidates;
  for (std::size_t i = 0; i < figures.loads.size(); ++i) {
    const CircuitLoad& load = figures.loads[i];
    if (load.circuit &&
        (!load.plugged ||
         keeps_to_80_percent(load.draw.watts, supply.circuits[*load.circuit].breaker, supply.volts)))
      candidates.push_back(i);
  }
  std::tuple<std::int64_t, int> best{-1, 0};
  std::uint32_t chosen = 0;
  std::vector<std::int64_t> on(supply.circuits.size());
  for (std::uint32_t set = 0; set < (std::uint32_t{1} << candidates.size()); ++set) {
    std::ranges::fill(on, 0);
    std::int64_t watts = 0;
    std::int64_t counted = 0;
    for (std::size_t k = 0; k < candidates.size(); ++k) {
      if ((set >> k & 1U) == 0) continue;
      const CircuitLoad& load = figures.loads[candidates[k]];
      watts += load.draw.watts;
      counted += counted_hundredths(load.draw);
      on[*load.circuit] += counted_hundredths(load.draw);
    }
    bool fits = !figures.whole || counted <= figures.whole->allowed;
    for (std::size_t i = 0; fits && i < on.size(); ++i) fits = on[i] <= figures.circuits[i].allowed;
    const std::tuple<std::int64_t, int> size{watts, std::popcount(set)};
    if (!fits || size <= best) continue;
    best = size;
    chosen = set;
  }
  std::vector<std::size_t> together;
  for (std::size_t k = 0; k < candidates.size(); ++k)
    if ((chosen >> k & 1U) != 0) together.push_back(candidates[k]);
  return together;
}

}  // namespace

std::optional<SupplyFigures> supply_in(const Plan& plan, const Configuration& configuration) {
  if (!plan->supply) return std::nullopt;
  const Supply& supply = *plan->supply;
  SupplyFigures figures = listed_loads(plan, configuration, supply);
  for (std::size_t i = 0; i < figures.loads.size(); ++i) {
    const CircuitLoad& load = figures.loads[i];
    if (load.circuit) add_to(figures.circuits[*load.circuit], figures.loads, i, supply.volts);
    if (figures.whole) {
      (load.draw.continuous ? figures.whole->continuous : figures.whole->others) += load.draw.watts;
      figures.whole->counted += counted_hundredths(load.draw);
    }
  }
  // What hangs nobody knows where may hang on any circuit; the whole carries it anyhow.
  std::vector<const CircuitLoad*> astray;
  for (const CircuitLoad& load : figures.loads)
    if (!load.circuit) astray.push_back(&load);
  const bool dark_astray = figures.unconnected.size() > astray.size();
  for (BreakerFigures& circuit : figures.circuits)
    judge(circuit, astray, dark_astray || !circuit.no_figure.empty(), supply.volts);
  if (figures.whole) judge(*figures.whole, {}, !figures.whole->no_figure.empty(), supply.volts);
  figures.together = largest_together(figures, supply);
  const auto is_over = [](const BreakerFigures& one) { return one.status == Status::not_met; };
  if (std::ranges::any_of(figures.circuits, is_over) || (figures.whole && is_over(*figures.whole)))
    figures.status = Status::not_met;
  else if (!figures.is_known())
    figures.status = Status::unknown;
  return figures;
}

std::int64_t counted_hundredths(const Draw& draw) {
  return std::int64_t{draw.watts} * (draw.continuous ? continuous_percent : 100);
}

bool keeps_to_80_percent(int watts, int breaker, int volts) {
  return std::int64_t{5} * watts <= std::int64_t{4} * breaker * volts;
}

std::int64_t tenths_of_ampere(std::int64_t watts, int volts) { return (watts * 10 + volts - 1) / volts; }

const Source& continuous_source() {
  static const Source source{.kind = Source::Kind::published,
                             .text = "NEC, the American code, 210.19-210.20 and 210.23(A)(1)",
                             .edition = {},
                             .address = "forums.mikeholt.com, thread 168088"};
  return source;
}

}  // namespace berthwright
