#include <algorithm>

#include <berthwright/exact/measure.h>

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

std::string all_on(const BreakerFigures& figures, int volts, bool may_carry_more) {
  const std::int64_t watts = figures.continuous + figures.others;
  std::string text = "all on, " + current_text(watts, volts);
  if (figures.continuous > 0) text += ", of which " + current_text(figures.continuous, volts) + " continuous";
  if (figures.counted <= figures.allowed)
    return text + ": within" + (may_carry_more ? " as far as the loads are known" : "");
  return text + ": over by " + excess(figures, volts) +
         (figures.continuous > 0 ? ", continuous loads by " + std::to_string(continuous_percent) + " %" : "");
}

std::string circuit_sentence(const Plan& plan, const SupplyFigures& supply, std::size_t index) {
  const BreakerFigures& figures = supply.circuits[index];
  const int volts = plan->supply->volts;
  std::string text = plan->supply->circuits[index].name + ", breaker of " + std::to_string(figures.breaker) +
                     " A, for hours " + amperes_text(for_hours(figures.breaker));
  std::string loads;
  for (const CircuitLoad& load : supply.loads)
    if (load.circuit == index) loads += (loads.empty() ? "" : "; ") + one_load(plan, load);
  for (const std::string& name : figures.no_figure)
    loads += (loads.empty() ? "" : "; ") + name + ", watts not given";
  const bool may_carry_more = !figures.no_figure.empty() || !supply.unconnected.empty();
  if (loads.empty())
    return text + (may_carry_more ? ": what draws on it is not known."
                                  : ": nothing that the plan shows draws on it.");
  text += ": " + loads + ". " + capital_first(all_on(figures, volts, may_carry_more)) + ".";
  for (const std::size_t i : figures.too_large) {
    const CircuitLoad& load = supply.loads[i];
    const std::int64_t tenths = tenths_of_ampere(load.draw.watts, volts);
    text += " " + load.name + " alone draws " + amperes_text(tenths) + ", above the " +
            amperes_text(for_hours(figures.breaker)) + " for a plug on this breaker by " +
            amperes_text(tenths - for_hours(figures.breaker)) + ".";
  }
  return text;
}

std::string temperatures(const Plan& plan) {
  const Warming& warming = *plan->warming;
  return "from " + temperature_text(warming.from, plan->unit) + " to " +
         temperature_text(warming.to, plan->unit);
}

std::string room_sentence(const Plan& plan, const WarmUp& warm_up) {
  constexpr std::int64_t nanolitres_per_litre = 1'000'000'000;
  return "The room holds " + std::to_string(warm_up.room.units() / nanolitres_per_litre) +
         " litres; its shell is about " + area_text(warm_up.shell, plan->unit) + ", insulation " +
         (plan->warming->insulation ? insulation_text(*plan->warming->insulation) : "unknown") + ".";
}

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
                "losses for twice the air).");
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

}  // namespace

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
  const bool all_known = supply.no_figure.empty() && supply.unconnected.empty();
  if (supply.together.empty()) {
    const bool any =
        std::ranges::any_of(supply.loads, [](const CircuitLoad& one) { return one.circuit.has_value(); });
    if (any)
      return all_known ? "Nothing that hangs on a circuit may run."
                       : "Nothing whose watts and circuit are known may run.";
    return all_known ? "Nothing that draws hangs on a circuit."
                     : "What may run together is unknown: of nothing that draws are watts and circuit known.";
  }
  std::vector<std::string> names;
  std::int64_t watts = 0;
  for (const std::size_t i : supply.together) {
    names.push_back(supply.loads[i].name);
    watts += supply.loads[i].draw.watts;
  }
  return (all_known ? "Most that may run together: " : "Most that may run together, of what is known: ") +
         listed_with_and(names) + ", " + current_text(watts, plan->supply->volts) + ".";
}

std::vector<std::string> supply_sentences(const Plan& plan, const Loads& loads) {
  std::vector<std::string> told;
  if (!loads.supply) return told;
  const SupplyFigures& supply = *loads.supply;
  for (std::size_t i = 0; i < supply.circuits.size(); ++i) told.push_back(circuit_sentence(plan, supply, i));
  if (supply.whole)
    told.push_back("The whole supply, " + std::to_string(supply.whole->breaker) + " A, for hours " +
                   amperes_text(for_hours(supply.whole->breaker)) + ": " +
                   all_on(*supply.whole, plan->supply->volts, !supply.whole->no_figure.empty()) + ".");
  told.push_back(together_sentence(plan, supply));
  if (!supply.unconnected.empty())
    told.push_back("On which circuit " + listed_with_and(supply.unconnected) +
                   (supply.unconnected.size() == 1 ? " hangs" : " hang") + " the plan does not say.");
  if (!supply.no_figure.empty())
    told.push_back("What " + listed_with_and(supply.no_figure) +
                   (supply.no_figure.size() == 1 ? " draws" : " draw") +
                   " the plan does not say: read the data plate.");
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
