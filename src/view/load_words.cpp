#include "view/load_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

constexpr std::size_t movers_told = 5;

std::vector<std::string> names_unknown(const Balance& balance) {
  std::vector<std::string> names;
  for (const WeighedThing& thing : balance.things)
    if (!thing.weight.most && std::ranges::find(names, thing.name) == names.end())
      names.push_back(thing.name);
  return names;
}

std::string trailer(const Plan& plan) { return std::string(word(Term::trailer, plan->english)); }

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
  if (!balance.along || !balance.across) return "Where its centre of gravity lies is unknown.";
  return "Its centre of gravity lies " + where_text(*balance.along, plan->unit) +
         " behind the front wall and " + where_text(*balance.across, plan->unit) + " from the left wall.";
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

std::string share_sentence(const Plan& plan, const Balance& balance) {
  const ShareRange& range = share_range(plan->chassis->range);
  const std::string asked = share_range_text(range.range);
  if (!balance.share)
    return "Its share is unknown" +
           std::string(range.of_plate && !plan->chassis->whole_limit ? ", as the plan does not give the plate"
                                                                     : "") +
           "; compared would be " + asked + ".";
  const auto verdict = [&]() -> std::string {
    if (balance.share->status == Status::met) return "within";
    if (balance.share->status == Status::unknown) return "within or not, by what is not known";
    // Rounded down: below the least it is below it, above the most it is not.
    return balance.share->low < range.least * std::int64_t{100} ? "too little" : "too much";
  };
  return "That is " + share_text(*balance.share) + (range.of_plate ? " of the plate" : " of the whole") +
         ", compared with " + asked + ": " + verdict() + ".";
}

std::string whole_sentence(const Plan& plan, const Balance& balance) {
  const Unit own = plan->unit;
  std::string text =
      tanks_lead(balance.tanks) + "the whole " + trailer(plan) + " weighs " + load_text(*balance.whole, own);
  const auto carried = [&](const LoadSpan& load) {
    return load.low || load.high ? load_text(load, own) : "an unknown load";
  };
  if (balance.coupling)
    text += ", of which the coupling carries " + carried(*balance.coupling) + " (" +
            std::string(coupling_load(plan->english)) + ") and the axle " + carried(*balance.axle);
  return capital_first(text) + ".";
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
  return capital_first(lead + "it changes the load on the coupling (" +
                       std::string(coupling_load(plan->english)) + ") by " +
                       change_text(*balance.coupling_change, plan->unit)) +
         ".";
}

std::string verdict_word(const Plan& plan, const Loads& loads, LoadVerdict::Kind kind,
                         TankState tanks = TankState::as_told) {
  for (const LoadVerdict& verdict : verdicts_on(plan, loads))
    if (verdict.kind == kind && verdict.tanks == tanks)
      return verdict.status == Status::unknown ? "kept or not, by what is not known"
                                               : std::string(word(term_of(verdict.status), plan->english));
  throw std::logic_error("a verdict that was not asked for");
}

std::string room_under_plate(const LoadSpan& left, Unit own) {
  if (!left.high || *left.high >= Mass{}) return "left for cargo under it " + load_text(left, own);
  LoadSpan over{Mass{} - *left.high, {}};
  if (left.low) over.high = Mass{} - *left.low;
  return "over it by " + load_text(over, own);
}

void add_plates(const Plan& plan, const Loads& loads, std::vector<std::string>& told) {
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
    add(chassis.track && balance->side, Kind::sides);
    if (!compared.empty()) told.push_back(tanks_lead(balance->tanks) + listed_with_and(compared) + ".");
  }
}

// "Right less left" is for tables; said, the heavier side is named.
std::string sides_text(const LoadSpan& side, Unit own) {
  const LoadSpan mirrored{side.high ? std::optional(Mass{} - *side.high) : std::nullopt,
                          side.low ? std::optional(Mass{} - *side.low) : std::nullopt};
  if (side.low == Mass{} && side.high == Mass{}) return "Left and right wheels carry the same";
  const auto heavier = [&](const char* these, const LoadSpan& by, const char* those) {
    const bool by_unknown = by.low == Mass{} && !by.high;
    return std::string("The ") + these + " wheels carry " +
           (by_unknown ? "an unknown amount" : load_text(by, own)) + " more than the " + those + " ones";
  };
  if (side.low && *side.low >= Mass{}) return heavier("right", side, "left");
  if (side.high && *side.high <= Mass{}) return heavier("left", mirrored, "right");
  return "Which wheels carry more is open: the right ones less the left ones, " + change_text(side, own);
}

void add_sides(const Plan& plan, const Loads& loads, std::vector<std::string>& told) {
  const Balance& balance = loads.balance();
  if (!balance.side_change) return;
  if (!balance.side) {
    told.push_back("From side to side it changes the wheels by " +
                   change_text(*balance.side_change, plan->unit) +
                   " (right less left); how even they are is unknown without the wheels weighed.");
    return;
  }
  told.push_back(sides_text(*balance.side, plan->unit) + "; compared with " +
                 std::to_string(most_aside_percent) + " % of the axle (common practice, no source): " +
                 verdict_word(plan, loads, LoadVerdict::Kind::sides) + ".");
}

void add_movers(const Plan& plan, const Balance& balance, std::vector<std::string>& told) {
  std::string text;
  std::size_t count = 0;
  for (const std::size_t i : movers(balance)) {
    if (count++ == movers_told) break;
    const WeighedThing& thing = balance.things[i];
    const bool is_water = thing.basis == WeighedThing::Basis::water;
    text += (text.empty() ? "" : "; ") + (is_water ? "water in " + thing.name : thing.name) + " " +
            change_text(balance.on_coupling[i], plan->unit);
  }
  if (!text.empty()) told.push_back("What moves the load on the coupling most: " + text + ".");
}

void add_ground(const std::vector<Loads>& all, WeighedThing::Basis basis, const std::string& lead,
                std::vector<std::string>& told) {
  std::vector<std::string> names;
  // What stood on the scales counts only in the configurations in which it lies elsewhere.
  for (const Loads& loads : all)
    for (const WeighedThing& thing : loads.balance().things)
      if (thing.basis == basis && std::ranges::find(names, thing.name) == names.end())
        names.push_back(thing.name);
  if (!names.empty())
    told.push_back(lead + " (" + listed_with_and(names) + "): " + source_text(weight_source(basis)) + ".");
}

}  // namespace

std::string_view coupling_load(English english) {
  return english == English::american ? "tongue weight" : "noseweight";
}

std::string load_text(const LoadSpan& load, Unit own) {
  if (load.is_known()) return mass_text(*load.high, own);
  if (load.low && load.high)
    return "between " + mass_text(*load.low, own, Rounding::down) + " and " +
           mass_text(*load.high, own, Rounding::up);
  if (load.low) return "at least " + mass_text(*load.low, own, Rounding::down);
  if (load.high) return "at most " + mass_text(*load.high, own, Rounding::up);
  return "unknown";
}

std::string load_text(const MassSpan& weight, Unit own) {
  // Everything weighs at least nothing.
  if (weight.least == Mass{} && !weight.most) return "unknown";
  return load_text(LoadSpan{weight.least, weight.most}, own);
}

std::string change_text(const LoadSpan& change, Unit own) {
  const auto with_sign = [&](Mass mass, Rounding rounding) {
    return (mass < Mass{} ? "" : "+") + mass_text(mass, own, rounding);
  };
  if (change.is_known()) return with_sign(*change.high, Rounding::nearest);
  if (change.low && change.high)
    return with_sign(*change.low, Rounding::down) + " to " + with_sign(*change.high, Rounding::up);
  if (change.low == Mass{}) return "an unknown amount more";
  if (change.high == Mass{}) return "an unknown amount less";
  if (change.low) return "at least " + with_sign(*change.low, Rounding::down);
  if (change.high) return "at most " + with_sign(*change.high, Rounding::up);
  return "an unknown amount";
}

std::string where_text(const LengthSpan& span, Unit own) {
  if (span.high - span.low <= one_tick) return both(span.low, own);
  return both(span.low, own, {.rounding = Rounding::down}) + " to " +
         both(span.high, own, {.rounding = Rounding::up});
}

std::string share_range_text(TowingRange of) {
  const ShareRange& range = share_range(of);
  return std::to_string(range.least) + " to " + std::to_string(range.most) + " % (" +
         source_text(range.source) + ")";
}

std::string share_text(const ShareSpan& share) {
  const auto percent = [](std::int64_t ten_thousandths) {
    const std::int64_t size = ten_thousandths < 0 ? -ten_thousandths : ten_thousandths;
    return (ten_thousandths < 0 ? "-" : "") + std::to_string(size / 100) + "." +
           std::to_string(100 + size % 100).substr(1);
  };
  // Beside a whole percent both ends are told: it may be the end of a range.
  const bool is_beside_whole = share.low != share.high && (share.low % 100 == 0 || share.high % 100 == 0);
  if (share.high - share.low <= 1 && !is_beside_whole) return percent(share.high) + " %";
  return percent(share.low) + " to " + percent(share.high) + " %";
}

std::vector<std::string> weight_sentences(const Plan& plan, const Loads& loads) {
  const Balance& balance = loads.balance();
  std::vector<std::string> told;
  if (balance.whole &&
      std::ranges::all_of(balance.things, [](const WeighedThing& one) { return one.on_scales.has_value(); }))
    told.push_back("Everything that the plan shows stood on the scales.");
  else
    told = {added_sentence(plan, balance), middle_sentence(plan, balance)};
  if (!plan->chassis) {
    told.push_back("The plan gives no chassis, so what coupling and axle carry is unknown.");
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
    told.push_back("Without the figures of a scale no share is told: weigh the " + trailer(plan) + ".");
  else if (!balance.coupling)
    told.push_back(change_sentence(plan, balance));
  if (balance.whole_along)
    told.push_back("The centre of gravity of the whole lies " + where_text(*balance.whole_along, plan->unit) +
                   " behind the front wall (the axle, " + both(*plan->chassis->axle, plan->unit) + ")" +
                   (balance.whole_across
                        ? " and " + where_text(*balance.whole_across, plan->unit) + " from the left wall."
                        : ". How far from the left wall is unknown without both wheels weighed."));
  add_plates(plan, loads, told);
  add_sides(plan, loads, told);
  add_plates_by_tanks(plan, loads, told);
  add_movers(plan, balance, told);
  return told;
}

std::vector<std::string> load_grounds(const Plan& plan, const std::vector<Loads>& all) {
  std::vector<std::string> told;
  using Basis = WeighedThing::Basis;
  if (std::ranges::none_of(all, [&](const Loads& one) { return states_loads(plan, one); }))
    told.push_back(
        "No numbers are drawn: the plan states no chassis and no circuit, and not what everything weighs.");
  add_ground(all, Basis::panel, "Weight by panel", told);
  add_ground(all, Basis::plywood, "Weight of plywood", told);
  add_ground(all, Basis::foam, "Weight of foam", told);
  add_ground(all, Basis::water, "Weight of water", told);
  told.push_back(
      "The middle of a thing is taken to be that of its outline; what is stowed lies anywhere in what it is "
      "kept "
      "in. People, bedding and the covers of cushions are not counted. Coupling and axle are reckoned as "
      "supports "
      "of a beam that stands level, the wheels even about the middle of the room.");
  if (plan->supply)
    told.push_back(
        "What has no watts in the plan is not counted. What may run three hours or more counts by " +
        std::to_string(continuous_percent) +
        " %, and what is plugged in by a cord takes at "
        "most 80 % of its breaker: " +
        source_text(continuous_source()) + ".");
  if (plan->warming)
    told.push_back(
        "Warming: the whole room is air of 1.2 kg/m³ and 1005 J/kgK (from memory), stirred and of one "
        "temperature; "
        "the low end of a time warms air alone, the high end takes linings and furniture for twice what the "
        "air "
        "takes (our own choice; common practice, no source, is 15 to 20 minutes where air alone takes 11 to "
        "12). "
        "To warm boards and cushions through takes far longer.");
  told.push_back(
      "Weigh the " + trailer(plan) +
      " loaded as it is towed, coupling and axle: no figure here replaces a scale. Wiring is for a " +
      (plan->english == English::american ? "licensed" : "qualified") +
      " person and the local code; the maker's instructions come first.");
  return told;
}

std::string_view word(WeighedThing::Basis basis) {
  switch (basis) {
    case WeighedThing::Basis::stated:
      return "stated";
    case WeighedThing::Basis::panel:
      return "panel";
    case WeighedThing::Basis::plywood:
      return "plywood";
    case WeighedThing::Basis::foam:
      return "foam";
    case WeighedThing::Basis::water:
      return "water";
    case WeighedThing::Basis::unknown:
      return "unknown";
  }
  throw std::logic_error("Basis out of range");
}

std::string_view word(TankState tanks) {
  switch (tanks) {
    case TankState::as_told:
      return "as told";
    case TankState::empty:
      return "empty";
    case TankState::full:
      return "full";
  }
  throw std::logic_error("TankState out of range");
}

std::string_view word(LoadVerdict::Kind kind) {
  switch (kind) {
    case LoadVerdict::Kind::share:
      return "share on the coupling";
    case LoadVerdict::Kind::sides:
      return "side to side";
    case LoadVerdict::Kind::whole_limit:
      return "plate of the whole";
    case LoadVerdict::Kind::axle_limit:
      return "plate of the axle";
    case LoadVerdict::Kind::coupling_limit:
      return "plate of the coupling";
    case LoadVerdict::Kind::supply:
      return "supply";
  }
  throw std::logic_error("LoadVerdict::Kind out of range");
}

}  // namespace berthwright
