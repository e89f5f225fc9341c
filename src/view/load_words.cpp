#include "view/load_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

constexpr std::size_t movers_told = 5;

void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::ranges::find(names, name) == names.end()) names.push_back(name);
}

std::string thing_name(const WeighedThing& thing) {
  return (thing.basis == WeighedThing::Basis::water ? "water in " : "") + thing.name;
}

std::vector<std::string> names_unknown(const Balance& balance) {
  std::vector<std::string> names;
  for (const WeighedThing& thing : balance.things)
    if (!thing.weight.most) add_once(names, thing_name(thing));
  return names;
}

/// What keeps a tank without an end: nobody said how much it holds.
void add_endless_tanks(const Balance& balance, std::vector<std::string>& told) {
  std::vector<std::string> names;
  for (const WeighedThing& thing : balance.things)
    if (thing.basis == WeighedThing::Basis::water && !thing.weight.most) add_once(names, thing.name);
  if (!names.empty())
    told.push_back("How much " + listed_with_and(names) + (names.size() == 1 ? " holds" : " hold") +
                   " the plan does not say, so what is in it has no end: write \"volume\" beside \"kind\".");
}

/// What stood on the scales at nobody knows which weight of its span.
void add_differing(const Plan& plan, const Balance& balance, std::vector<std::string>& told) {
  std::string text;
  for (const WeighedThing& thing : balance.things)
    if (thing.may_differ)
      text += (text.empty() ? "" : "; ") + thing.name + " by up to " +
              mass_text(*thing.weight.most, plan->unit, Rounding::up);
  if (!text.empty())
    told.push_back("What may weigh more or less than it did on the scales, as the plan gives a span: " +
                   text + ". What weighs the same as then needs no span.");
}

/// "A, B and 3 others".
std::string listed_up_to(std::vector<std::string> names, std::size_t most) {
  if (names.size() > most + 1) {
    const std::size_t others = names.size() - most;
    names.resize(most);
    names.push_back(std::to_string(others) + " others");
  }
  return listed_with_and(names);
}

/// What keeps the load on the coupling from being one figure, what does most first: ", as the plan does not
/// say what A and B weigh or where C lies"; empty: nothing does.
std::string why_spanned(const Balance& balance) {
  std::vector<std::string> weights;
  std::vector<std::string> places;
  for (const std::size_t i : movers(balance)) {
    const WeighedThing& thing = balance.things[i];
    if (!thing.weight.is_known())
      add_once(weights, thing_name(thing));
    else if (!balance.on_coupling[i].is_known())
      add_once(places, thing.name);
  }
  if (weights.empty() && places.empty()) return {};
  std::string text = ", as the plan does not say exactly ";
  if (!weights.empty())
    text += "what " + listed_up_to(weights, movers_told) + (weights.size() == 1 ? " weighs" : " weigh");
  if (!places.empty())
    text += (weights.empty() ? "" : " or ") + std::string("where ") + listed_up_to(places, movers_told) +
            (places.size() == 1 ? " lies" : " lie");
  return text;
}

std::string added_sentence(const Plan& plan, const Balance& balance) {
  const bool weighed = plan->chassis && plan->chassis->weighed;
  const std::string weight = load_text(balance.added, plan->unit);
  std::string text = std::string("What the plan holds") +
                     (weighed ? " beside what stood on the scales " : " ") +
                     (weight == "unknown" ? "is of unknown weight" : "weighs " + weight);
  const std::vector<std::string> unknown = names_unknown(balance);
  if (!unknown.empty())
    text += ": the plan does not say what " + listed_with_and(unknown) +
            (unknown.size() == 1 ? " weighs" : " weigh");
  return text + ".";
}

std::string middle_sentence(const Plan& plan, const Balance& balance) {
  if (!balance.along || !balance.across) return "Where its centre of gravity lies is unknown as well.";
  return "Its centre of gravity lies " + where_text(*balance.along, plan->unit) +
         " behind the front wall and " + where_text(*balance.across, plan->unit) + " from the left wall.";
}

std::string why_no_share(const Chassis& chassis, const Balance& balance) {
  if (!chassis.weighed) return ", as the plan does not say what the scales found";
  if (!chassis.coupling || !chassis.axle) return ", as the plan does not say where coupling and axle are";
  if (share_range(chassis.range).of_plate && !chassis.whole_limit)
    return ", as the plan does not give the plate";
  return why_spanned(balance);
}

LoadSpan opposite(const LoadSpan& load) {
  return {load.high ? std::optional(Mass{} - *load.high) : std::nullopt,
          load.low ? std::optional(Mass{} - *load.low) : std::nullopt};
}

// "Right less left" is for tables; said, the heavier side is named.
std::string sides_text(const LoadSpan& side, Unit own) {
  if (side.low == Mass{} && side.high == Mass{}) return "Left and right wheels carry the same";
  const auto heavier = [&](const char* these, const LoadSpan& by, const char* those) {
    if (by.low == Mass{} && !by.high)
      return std::string("The ") + these + " wheels carry as much as the " + those +
             " ones or more, by how much is unknown";
    return std::string("The ") + these + " wheels carry " + load_text(by, own) + " more than the " + those +
           " ones";
  };
  if (side.low && *side.low >= Mass{}) return heavier("right", side, "left");
  if (side.high && *side.high <= Mass{}) return heavier("left", opposite(side), "right");
  return "Which wheels carry more is open: the right ones less the left ones, " + change_text(side, own);
}

}  // namespace

std::string kept_text(const Plan& plan, Status status) {
  return status == Status::unknown ? "kept or not, by what is not known"
                                   : std::string(word(term_of(status), plan->english));
}

std::string tanks_lead(TankState tanks) {
  switch (tanks) {
    case TankState::as_told:
      return "";
    case TankState::empty:
      return "With every tank empty: ";
    case TankState::full:
      return "With every tank full: ";
  }
  throw std::logic_error("TankState out of range");
}

std::string no_plates_sentence(const Plan& plan) {
  const std::vector<LoadVerdict::Kind> not_given = limits_not_given(plan);
  std::vector<std::string> names;
  const auto add_if = [&](LoadVerdict::Kind kind, const char* name) {
    if (std::ranges::find(not_given, kind) != not_given.end()) names.emplace_back(name);
  };
  add_if(LoadVerdict::Kind::whole_limit, "whole");
  add_if(LoadVerdict::Kind::axle_limit, "axle");
  add_if(LoadVerdict::Kind::coupling_limit, "coupling");
  if (names.empty()) return {};
  const Chassis& chassis = *plan->chassis;
  if (!chassis.whole_limit && !chassis.axle_limit && !chassis.coupling_limit)
    return "The plan gives no plates: what " + listed_with_and(names) + " may carry is unknown.";
  if (names.size() == 1)
    return "The plan gives no plate of the " + names.front() + ": what it may carry is unknown.";
  return "The plan gives no plates of " + listed_with_and(names) + ": what they may carry is unknown.";
}

std::string share_verdict(const Plan& plan, const Balance& balance) {
  const ShareRange& range = share_range(plan->chassis->range);
  const std::string asked = share_range_text(range.range);
  if (!balance.share)
    return "unknown" + why_no_share(*plan->chassis, balance) + "; compared would be " + asked;
  const auto verdict = [&]() -> std::string {
    if (balance.share->status == Status::met) return "within";
    if (balance.share->status == Status::unknown) return "within or not" + why_spanned(balance);
    // Rounded down: below the least it is below it, above the most it is not.
    return balance.share->low < range.least * std::int64_t{100} ? "too little" : "too much";
  };
  return share_text(*balance.share, range) + (range.of_plate ? " of the plate" : " of the whole") +
         ", compared with " + asked + ": " + verdict();
}

std::string room_under_plate(const LoadSpan& left, Unit own) {
  if (!left.high || *left.high >= Mass{}) return "left for cargo under it " + left_text(left, own);
  return "over it by " + load_text(opposite(left), own);
}

std::string sides_verdict(const Plan& plan, const Balance& balance) {
  return sides_text(*balance.side, plan->unit) + "; compared with " + std::to_string(most_aside_percent) +
         " % of the axle (common practice, no source): ";
}

namespace {

std::string share_sentence(const Plan& plan, const Balance& balance) {
  return (balance.share ? "That is " : "Its share is ") + share_verdict(plan, balance) + ".";
}

std::string whole_sentence(const Plan& plan, const Balance& balance) {
  const Unit own = plan->unit;
  std::string text =
      tanks_lead(balance.tanks) + "the whole " + vehicle(plan) + " weighs " + load_text(*balance.whole, own);
  const auto carried = [&](const LoadSpan& load) {
    return load.low || load.high ? load_text(load, own) : "an unknown load";
  };
  if (balance.coupling && balance.coupling->high && *balance.coupling->high < Mass{})
    text += ", its coupling is lifted by " + load_text(opposite(*balance.coupling), own) +
            ", and the axle carries " + carried(*balance.axle);
  else if (balance.coupling)
    text += ", of which the coupling carries " + carried(*balance.coupling) + " (" +
            std::string(coupling_load(plan->english)) + ") and the axle " + carried(*balance.axle);
  return capital_first(text) + ".";
}

/// Of what was added since only that it is unknown is told besides.
std::string scales_sentence(const Chassis& chassis, Unit own) {
  return "On the scales the coupling carried " + mass_text(chassis.weighed->coupling, own, Rounding::up) +
         " and the axle " + mass_text(chassis.weighed->axle, own, Rounding::up) +
         ", with what stood on them; what was added or moved since is not in it.";
}

LoadSpan on_scales_aside(const Chassis& chassis) {
  const Mass aside = *chassis.weighed->right - *chassis.weighed->left;
  return {aside, aside};
}

std::string change_sentence(const Plan& plan, const Balance& balance) {
  const Chassis& chassis = *plan->chassis;
  const std::string lead = tanks_lead(balance.tanks);
  if (!balance.coupling_change)
    return "What it does to the load on the coupling is unknown: the plan does not say where the " +
           std::string(!chassis.coupling && !chassis.axle ? "coupling and the axle are"
                       : !chassis.axle                    ? "axle is"
                                                          : "coupling is") +
           ".";
  const LoadSpan& change = *balance.coupling_change;
  const std::string load = " the load on the coupling (" + std::string(coupling_load(plan->english)) + ")";
  if (change.low == Mass{} && !change.high)
    return capital_first(lead + "it adds nobody knows how much to" + load) + ".";
  if (change.high == Mass{} && !change.low)
    return capital_first(lead + "it takes nobody knows how much off" + load) + ".";
  return capital_first(lead + "it changes" + load + " by " + change_text(change, plan->unit)) + ".";
}

std::string verdict_word(const Plan& plan, const Loads& loads, LoadVerdict::Kind kind,
                         TankState tanks = TankState::as_told) {
  for (const LoadVerdict& verdict : verdicts_on(plan, loads))
    if (verdict.kind == kind && verdict.tanks == tanks) return kept_text(plan, verdict.status);
  throw std::logic_error("a verdict that was not asked for");
}

/// What bars tell as well, and what they do not: what is left for cargo.
enum class PlatesTold { all, beside_bars };

void add_plates(const Plan& plan, const Loads& loads, PlatesTold plates, std::vector<std::string>& told) {
  using Kind = LoadVerdict::Kind;
  const Chassis& chassis = *plan->chassis;
  const Balance& balance = loads.balance();
  const auto plate = [&](const char* what, Mass limit, Kind kind, const std::string& more) {
    told.push_back(std::string("The plate of the ") + what + " allows " +
                   mass_text(limit, plan->unit, Rounding::down) + ": " + verdict_word(plan, loads, kind) +
                   more + ".");
  };
  if (chassis.whole_limit)
    plate("whole", *chassis.whole_limit, Kind::whole_limit,
          balance.cargo_left ? "; " + room_under_plate(*balance.cargo_left, plan->unit)
                             : "; what is left for cargo is unknown without a weighing");
  if (const std::string none = no_plates_sentence(plan); !none.empty()) told.push_back(none);
  if (plates == PlatesTold::beside_bars) return;
  if (chassis.axle_limit) plate("axle", *chassis.axle_limit, Kind::axle_limit, "");
  if (chassis.coupling_limit) plate("coupling", *chassis.coupling_limit, Kind::coupling_limit, "");
}

/// Of other tanks than told: what the figures come to against the plates.
void add_plates_by_tanks(const Plan& plan, const Loads& loads, std::vector<std::string>& told) {
  using Kind = LoadVerdict::Kind;
  const Chassis& chassis = *plan->chassis;
  for (const Balance* balance : different_balances(loads)) {
    if (balance == &loads.balance()) continue;
    std::vector<std::string> compared;
    const auto add = [&](bool asked, Kind kind, const std::string& more = {}) {
      if (asked)
        compared.push_back(std::string(word(kind)) + " " + verdict_word(plan, loads, kind, balance->tanks) +
                           more);
    };
    add(chassis.whole_limit.has_value(), Kind::whole_limit,
        balance->cargo_left ? " (" + room_under_plate(*balance->cargo_left, plan->unit) + ")" : "");
    add(chassis.axle_limit.has_value(), Kind::axle_limit);
    add(chassis.coupling_limit.has_value(), Kind::coupling_limit);
    add(balance->side.has_value(), Kind::sides);
    if (!compared.empty()) told.push_back(tanks_lead(balance->tanks) + listed_with_and(compared) + ".");
  }
}

void add_sides(const Plan& plan, const Loads& loads, std::vector<std::string>& told) {
  const Balance& balance = loads.balance();
  if (!balance.side_change) return;
  if (!plan->chassis->track && balance.side && !balance.side->is_known())
    told.push_back("On the scales: " + small_first(sides_text(on_scales_aside(*plan->chassis), plan->unit)) +
                   "; what was added or moved since needs the track.");
  if (!balance.side) {
    told.push_back("From side to side it changes the wheels by " +
                   change_text(*balance.side_change, plan->unit) +
                   " (right less left); how even they are is unknown without the wheels weighed.");
    return;
  }
  told.push_back(sides_verdict(plan, balance) + verdict_word(plan, loads, LoadVerdict::Kind::sides) + ".");
}

void add_movers(const Plan& plan, const Balance& balance, std::vector<std::string>& told) {
  std::string text;
  std::size_t count = 0;
  for (const std::size_t i : movers(balance)) {
    if (count++ == movers_told) break;
    const LoadSpan& change = balance.on_coupling[i];
    text += (text.empty() ? "" : "; ") + thing_name(balance.things[i]);
    if (change.low && change.high)
      text += " " + change_text(change, plan->unit);
    else
      text += change.low == Mass{}    ? ", which adds nobody knows how much"
              : change.high == Mass{} ? ", which takes off nobody knows how much"
                                      : ", by " + change_text(change, plan->unit);
  }
  if (!text.empty()) told.push_back("What moves the load on the coupling most: " + text + ".");
}

std::vector<std::string> weight_words(const Plan& plan, const Loads& loads, PlatesTold plates) {
  const Balance& balance = loads.balance();
  std::vector<std::string> told;
  if (balance.whole &&
      std::ranges::all_of(balance.things, [](const WeighedThing& one) { return one.on_scales.has_value(); }))
    told.push_back("Everything that the plan shows stood on the scales.");
  else
    told.push_back(added_sentence(plan, balance));
  add_differing(plan, balance, told);
  add_endless_tanks(balance, told);
  // Nothing has no middle.
  if (balance.added != MassSpan::of(Mass{})) told.push_back(middle_sentence(plan, balance));
  if (!plan->chassis) {
    told.push_back("The plan gives no chassis, so what coupling and axle carry is unknown.");
    return told;
  }
  if (!plan->chassis->towed) {
    told.push_back(
        "A van that is not towed has no coupling, and what each of its axles carries is not reckoned: "
        "weigh it.");
    add_plates(plan, loads, plates, told);
    add_sides(plan, loads, told);
    return told;
  }
  for (const Balance* one : different_balances(loads)) {
    if (one->whole) {
      told.push_back(whole_sentence(plan, *one));
      if (one->coupling) told.push_back(share_sentence(plan, *one));
    } else {
      told.push_back(change_sentence(plan, *one));
    }
  }
  if (!balance.whole)
    told.push_back("Without the figures of a scale no share is told: weigh the " + vehicle(plan) + ".");
  else if (!balance.coupling) {
    told.push_back(scales_sentence(*plan->chassis, plan->unit));
    told.push_back(change_sentence(plan, balance));
  }
  if (balance.whole_along)
    told.push_back("The centre of gravity of the whole lies " + where_text(*balance.whole_along, plan->unit) +
                   " behind the front wall (the axle, " + both(*plan->chassis->axle, plan->unit) + ")" +
                   (balance.whole_across
                        ? " and " + where_text(*balance.whole_across, plan->unit) + " from the left wall."
                        : std::string(". How far from the left wall is unknown without ") +
                              (balance.side ? "the track." : "both wheels weighed.")));
  else if (balance.coupling)
    told.push_back("Where the centre of gravity of the whole lies is unknown" +
                   (plan->chassis->coupling && plan->chassis->axle
                        ? why_spanned(balance)
                        : std::string(", as the plan does not say where coupling and axle are")) +
                   ".");
  add_plates(plan, loads, plates, told);
  add_sides(plan, loads, told);
  add_plates_by_tanks(plan, loads, told);
  add_movers(plan, balance, told);
  return told;
}

}  // namespace

std::vector<std::string> weight_sentences(const Plan& plan, const Loads& loads) {
  return weight_words(plan, loads, PlatesTold::all);
}

std::vector<std::string> weight_remarks(const Plan& plan, const Loads& loads) {
  return weight_words(plan, loads, PlatesTold::beside_bars);
}

}  // namespace berthwright
