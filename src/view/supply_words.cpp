#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_words.h"

namespace berthwright {
namespace {

/// What a breaker may carry for hours, in tenths of an ampere.
std::int64_t for_hours(int breaker) { return std::int64_t{8} * breaker; }

std::string one_load(const Plan& plan, const CircuitLoad& load) {
  std::string text = load.name + " " + current_text(load.draw.watts, plan->supply->volts) +
                     (load.draw.continuous ? ", continuous" : "");
  if (!load.outlet.empty()) text += ", on " + name_of(plan, load.outlet);
  if (load.cord) text += ", its cord " + both(*load.cord, plan->unit);
  return text;
}

/// By how much everything together is above the breaker, rounded up.
std::string excess(const BreakerFigures& figures, int volts) {
  const std::int64_t over = figures.counted - figures.allowed;
  return amperes_text((over * 10 + std::int64_t{100} * volts - 1) / (std::int64_t{100} * volts));
}

/// "within", "over by at least 0.5 A, as continuous loads count by 125 %".
std::string breaker_verdict(const BreakerFigures& figures, int volts) {
  if (figures.counted > figures.allowed)
    return std::string("over by ") + (figures.is_known() ? "" : "at least ") + excess(figures, volts) +
           (figures.continuous > 0
                ? ", as continuous loads count by " + std::to_string(continuous_percent) + " %"
                : "");
  if (!figures.too_large.empty()) return "within what the breaker carries, but not what it carries by a plug";
  return figures.status == Status::unknown ? "within as far as the loads are known" : "within";
}

std::string all_on(const BreakerFigures& figures, int volts) {
  std::string text = std::string("all on, ") + (figures.is_known() ? "" : "at least ") +
                     current_text(figures.watts(), volts);
  if (figures.continuous > 0) text += ", of which " + current_text(figures.continuous, volts) + " continuous";
  if (figures.most_watts && !figures.is_known())
    text +=
        ", with everything on it that has no circuit in the plan " + current_text(*figures.most_watts, volts);
  return text + ": " + breaker_verdict(figures, volts);
}

/// " Heater alone draws 12.5 A, above the 12 A for a plug on this breaker by 0.5 A."
std::string too_large_for_a_plug(const Plan& plan, const SupplyFigures& supply,
                                 const BreakerFigures& figures) {
  std::string text;
  for (const std::size_t i : figures.too_large) {
    const CircuitLoad& load = supply.loads[i];
    const std::int64_t tenths = tenths_of_ampere(load.draw.watts, plan->supply->volts);
    text += " " + load.name + " alone draws " + amperes_text(tenths) + ", above the " +
            amperes_text(for_hours(figures.breaker)) + " for a plug on this breaker by " +
            amperes_text(tenths - for_hours(figures.breaker)) + ".";
  }
  return text;
}

std::string circuit_lead(const Plan& plan, const SupplyFigures& supply, std::size_t index) {
  const int breaker = supply.circuits[index].breaker;
  return plan->supply->circuits[index].name + ", breaker of " + std::to_string(breaker) + " A, for hours " +
         amperes_text(for_hours(breaker));
}

/// "Heater 12.5 A (1500 W), continuous; Kettle 8.4 A (1000 W)".
std::string loads_on(const Plan& plan, const SupplyFigures& supply, std::size_t index) {
  std::string loads;
  for (const CircuitLoad& load : supply.loads)
    if (load.circuit == index) loads += (loads.empty() ? "" : "; ") + one_load(plan, load);
  for (const std::string& name : supply.circuits[index].no_figure)
    loads += (loads.empty() ? "" : "; ") + name + ", watts not given";
  return loads;
}

std::vector<std::string> breaker_cells(const Plan& plan, const std::string& name, const std::string& on_it,
                                       const BreakerFigures& figures, const std::string& more) {
  return {name, std::to_string(figures.breaker) + " A, for hours " + amperes_text(for_hours(figures.breaker)),
          on_it,
          std::string(word(term_of(figures.status), plan->english)) + ": " +
              all_on(figures, plan->supply->volts) + "." + more};
}

std::string circuit_sentence(const Plan& plan, const SupplyFigures& supply, std::size_t index) {
  const BreakerFigures& figures = supply.circuits[index];
  const int volts = plan->supply->volts;
  std::string text = circuit_lead(plan, supply, index);
  const std::string loads = loads_on(plan, supply, index);
  if (loads.empty() && figures.is_known()) return text + ": nothing that the plan shows draws on it.";
  if (loads.empty() && !figures.most_watts) return text + ": what draws on it is not known.";
  return text + ": " + (loads.empty() ? "nothing for certain" : loads) + ". " +
         capital_first(all_on(figures, volts)) + "." + too_large_for_a_plug(plan, supply, figures);
}

std::string whole_supply_sentence(const Plan& plan, const SupplyFigures& supply) {
  return "The whole supply, " + std::to_string(supply.whole->breaker) + " A, for hours " +
         amperes_text(for_hours(supply.whole->breaker)) + ": " + all_on(*supply.whole, plan->supply->volts) +
         ".";
}

/// Where the plan is of another country than the figures.
void add_foreign_rule(const Plan& plan, std::vector<std::string>& told) {
  const bool american =
      plan->english == English::american && (!plan->chassis || plan->chassis->range == TowingRange::us);
  if (!american)
    told.push_back("What a breaker carries for hours was taken from an American rule (" +
                   source_text(continuous_source()) +
                   "), for want of one of the plan's own country: ask a qualified person.");
}

/// What the plan does not say of what draws, and of what it may.
void add_gaps(const SupplyFigures& supply, std::vector<std::string>& told) {
  if (!supply.whole)
    told.push_back("The plan gives no \"amps\" of the supply: what everything together may draw is unknown.");
  if (!supply.unconnected.empty())
    told.push_back("On which circuit " + listed_with_and(supply.unconnected) +
                   (supply.unconnected.size() == 1 ? " hangs" : " hang") + " the plan does not say.");
  if (!supply.no_figure.empty())
    told.push_back("What " + listed_with_and(supply.no_figure) +
                   (supply.no_figure.size() == 1 ? " draws" : " draw") +
                   " the plan does not say: read the data plate.");
}

std::string temperatures(const Plan& plan) {
  const Warming& warming = *plan->warming;
  return "from " + temperature_text(warming.from, plan->unit) + " to " +
         temperature_text(warming.to, plan->unit);
}

std::string insulation_words(const Insulation& insulation) {
  return insulation_text(insulation) +
         (insulation.kind == Insulation::Kind::u_value ? " W/m²K" : " (sq ft °F h/Btu)");
}

std::string room_sentence(const Plan& plan, const WarmUp& warm_up) {
  constexpr std::int64_t nanolitres_per_litre = 1'000'000'000;
  return "The room holds " + std::to_string(warm_up.room.units() / nanolitres_per_litre) +
         " litres; its shell is about " + area_text(warm_up.shell, plan->unit) + ", insulation " +
         (plan->warming->insulation ? insulation_words(*plan->warming->insulation) : "unknown") + ".";
}

/// Where the heater may not hold what it reaches: that it may not reach it either.
std::string never_there(const WarmUp& warm_up) {
  if (!warm_up.no_figure.empty()) return {};
  if (warm_up.watts < warm_up.hold.low)
    return " To hold that takes more than the heater gives, so it gets there only where less air is changed "
           "than is counted for holding.";
  return warm_up.watts < warm_up.hold.high
             ? " Where holding that takes more than the heater gives, it never gets there."
             : "";
}

}  // namespace

std::string time_sentence(const Plan& plan, const WarmUp& warm_up) {
  const std::string who = listed_with_and(warm_up.heaters) + ", " + std::to_string(warm_up.watts) + " W, ";
  if (warm_up.is_never_reached)
    return who + "never brings it " + temperatures(plan) + " by these figures: at " +
           temperature_text(plan->warming->outside, plan->unit) +
           " outside the shell loses more. Air alone, without any loss, would take " +
           duration_text(*warm_up.air_alone, Rounding::down) + ".";
  return who + "brings it " + temperatures(plan) + " in " +
         duration_text(warm_up.seconds->low, Rounding::down) + " to " +
         duration_text(warm_up.seconds->high, Rounding::up) +
         (plan->warming->insulation
              ? " (low end: air alone, losses by the insulation; high end: linings and "
                "furniture for twice the air; without any loss air alone takes " +
                    duration_text(*warm_up.air_alone, Rounding::down) + ")."
              : " (low end: air alone without any loss; high end: linings, furniture and "
                "losses for twice the air).") +
         never_there(warm_up);
}

std::string hold_sentence(const Plan& plan, const WarmUp& warm_up) {
  const CountSpan& hold = warm_up.hold;
  std::string text = "To hold " + temperature_text(plan->warming->to, plan->unit) + " at " +
                     temperature_text(plan->warming->outside, plan->unit) + " outside takes " +
                     std::to_string(hold.low) + " to " + std::to_string(hold.high) + " W";
  text += plan->warming->insulation ? " (low end: the whole shell as insulated and half a change of air an "
                                      "hour; high end: as much again "
                                      "through seams, framing and glass, and a whole change: our own choice)"
                                    : " (insulation unknown, so for shells of 1.2 W/m²K, EN 1646-1 grade 3 "
                                      "from memory, to 3.4, our own "
                                      "choice, with half a change of air an hour and a whole one)";
  if (warm_up.watts == 0 || !warm_up.no_figure.empty()) return text + ".";
  if (warm_up.watts < hold.low) return text + ": more than the heater gives.";
  return text +
         (warm_up.watts < hold.high ? ": the heater may give enough, or not." : ": the heater gives more.");
}

std::string amperes_text(std::int64_t tenths) {
  return std::to_string(tenths / 10) + (tenths % 10 != 0 ? "." + std::to_string(tenths % 10) : "") + " A";
}

std::string current_text(std::int64_t watts, int volts) {
  return amperes_text(tenths_of_ampere(watts, volts)) + " (" + std::to_string(watts) + " W)";
}

std::string duration_text(std::int64_t seconds, Rounding rounding) {
  constexpr std::int64_t minute = 60;
  constexpr std::int64_t hour = 60;
  const std::int64_t minutes = (seconds + (rounding == Rounding::up ? minute - 1 : 0)) / minute;
  if (minutes < hour) return std::to_string(minutes) + " min";
  return std::to_string(minutes / hour) + " h " + std::to_string(minutes % hour) + " min";
}

std::string together_sentence(const Plan& plan, const SupplyFigures& supply) {
  if (supply.together.empty()) {
    const bool any =
        std::ranges::any_of(supply.loads, [](const CircuitLoad& one) { return one.circuit.has_value(); });
    if (any)
      return supply.is_known() ? "Nothing that hangs on a circuit may run."
                               : "Nothing whose watts and circuit are known may run.";
    return supply.is_known()
               ? "Nothing that draws hangs on a circuit."
               : "What may run together is unknown: of nothing that draws are watts and circuit known.";
  }
  std::vector<std::string> names;
  std::int64_t watts = 0;
  for (const std::size_t i : supply.together) {
    names.push_back(supply.loads[i].name);
    watts += supply.loads[i].draw.watts;
  }
  return (supply.is_known() ? "Most that may run together: " + listed_with_and(names) + ", "
                            : "Most that may run together, of what is known and while the rest is off: " +
                                  listed_with_and(names) + ", at least ") +
         current_text(watts, plan->supply->volts) + ".";
}

std::vector<std::vector<std::string>> circuit_cells(const Plan& plan, const SupplyFigures& supply) {
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < supply.circuits.size(); ++i) {
    const std::string loads = loads_on(plan, supply, i);
    const std::string nothing =
        supply.circuits[i].is_known() ? "nothing that the plan shows" : "nothing for certain";
    rows.push_back(breaker_cells(plan, plan->supply->circuits[i].name, loads.empty() ? nothing : loads,
                                 supply.circuits[i], too_large_for_a_plug(plan, supply, supply.circuits[i])));
  }
  if (supply.whole) rows.push_back(breaker_cells(plan, "The whole supply", "everything", *supply.whole, ""));
  return rows;
}

std::vector<std::string> supply_remarks(const Plan& plan, const SupplyFigures& supply) {
  std::vector<std::string> told{together_sentence(plan, supply)};
  add_gaps(supply, told);
  add_foreign_rule(plan, told);
  return told;
}

std::vector<std::string> supply_sentences(const Plan& plan, const Loads& loads) {
  std::vector<std::string> told;
  if (!loads.supply) return told;
  const SupplyFigures& supply = *loads.supply;
  for (std::size_t i = 0; i < supply.circuits.size(); ++i) told.push_back(circuit_sentence(plan, supply, i));
  if (supply.whole) told.push_back(whole_supply_sentence(plan, supply));
  for (std::string& remark : supply_remarks(plan, supply)) told.push_back(std::move(remark));
  return told;
}

std::vector<std::string> open_supply_sentences(const Plan& plan, const SupplyFigures& supply) {
  const auto is_open = [](const BreakerFigures& one) {
    return one.status == Status::not_met || one.status == Status::unknown;
  };
  std::vector<std::string> told;
  for (std::size_t i = 0; i < supply.circuits.size(); ++i)
    if (const BreakerFigures& figures = supply.circuits[i]; is_open(figures))
      told.push_back(circuit_lead(plan, supply, i) + ": " + all_on(figures, plan->supply->volts) + "." +
                     too_large_for_a_plug(plan, supply, figures));
  if (supply.whole && is_open(*supply.whole)) told.push_back(whole_supply_sentence(plan, supply));
  if (!told.empty()) add_foreign_rule(plan, told);
  add_gaps(supply, told);
  return told;
}

std::vector<std::string> warm_up_sentences(const Plan& plan, const Loads& loads) {
  std::vector<std::string> told;
  if (!loads.warm_up) return told;
  const WarmUp& warm_up = *loads.warm_up;
  told.push_back(room_sentence(plan, warm_up));
  if (warm_up.air_alone) told.push_back(time_sentence(plan, warm_up));
  if (!warm_up.no_figure.empty())
    told.push_back("What " + listed_with_and(warm_up.no_figure) + " gives the plan does not say.");
  else if (warm_up.heaters.empty())
    told.push_back("No heater runs here.");
  told.push_back(hold_sentence(plan, warm_up));
  return told;
}

}  // namespace berthwright
