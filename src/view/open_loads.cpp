#include "view/open_loads.h"

#include <algorithm>
#include <utility>

#include <berthwright/exact/measure.h>

#include "view/called.h"
#include "view/load_words.h"

namespace berthwright {
namespace {

const Balance& balance_with(const Loads& loads, TankState tanks) {
  const auto found = std::ranges::find(loads.balances, tanks, &Balance::tanks);
  return found == loads.balances.end() ? loads.balance() : *found;
}

/// Of an unknown load what the scales found of it.
std::string carried_text(const std::optional<LoadSpan>& load, const std::optional<Mass>& on_scales,
                         Unit own) {
  if (load && (load->low || load->high)) return load_text(*load, own);
  return on_scales ? "an unknown load (on the scales " + mass_text(*on_scales, own, Rounding::up) + ")"
                   : "an unknown load";
}

/// "the axle carries 2372 lb, its plate allows 2000 lb: not met".
std::string plate_text(const Plan& plan, const std::string& carries, Mass limit, Status status) {
  return carries + "; its plate allows " + mass_text(limit, plan->unit, Rounding::down) + ": " +
         kept_text(plan, status);
}

std::string whole_text(const Plan& plan, const Balance& balance, Status status) {
  const std::string weighs =
      balance.whole ? "weighs " + load_text(*balance.whole, plan->unit) : "is of unknown weight";
  const bool over = balance.cargo_left && status == Status::not_met;
  return plate_text(plan, "the whole " + weighs, *plan->chassis->whole_limit, status) +
         (over ? ", " + room_under_plate(*balance.cargo_left, plan->unit) : "");
}

std::string sides_open(const Plan& plan, const Balance& balance, Status status) {
  if (balance.side) return small_first(sides_verdict(plan, balance)) + kept_text(plan, status);
  return "how even the left and right wheels are is unknown without the wheels weighed";
}

std::string open_text(const Plan& plan, const Balance& balance, const LoadVerdict& verdict) {
  const Chassis& chassis = *plan->chassis;
  const auto on_scales = [&](Mass Weighed::*load) {
    return chassis.weighed ? std::optional((*chassis.weighed).*load) : std::nullopt;
  };
  switch (verdict.kind) {
    case LoadVerdict::Kind::share:
      return "the share on the coupling is " + share_verdict(plan, balance);
    case LoadVerdict::Kind::sides:
      return sides_open(plan, balance, verdict.status);
    case LoadVerdict::Kind::whole_limit:
      return whole_text(plan, balance, verdict.status);
    case LoadVerdict::Kind::axle_limit:
      return plate_text(
          plan, "the axle carries " + carried_text(balance.axle, on_scales(&Weighed::axle), plan->unit),
          *chassis.axle_limit, verdict.status);
    case LoadVerdict::Kind::coupling_limit:
      return plate_text(
          plan,
          "the coupling carries " + carried_text(balance.coupling, on_scales(&Weighed::coupling), plan->unit),
          *chassis.coupling_limit, verdict.status);
    case LoadVerdict::Kind::supply:
      break;
  }
  return {};
}

/// Of one figure with tanks in several states: each that is not met, else the first that is unknown.
std::vector<LoadVerdict> told_verdicts(const Plan& plan, const std::vector<LoadVerdict>& all) {
  const std::vector<LoadVerdict::Kind> not_given = limits_not_given(plan);
  std::vector<LoadVerdict> told;
  for (const LoadVerdict& verdict : all) {
    if (verdict.kind == LoadVerdict::Kind::supply) continue;
    if (std::ranges::find(not_given, verdict.kind) != not_given.end()) continue;
    const auto is_told = [&](const LoadVerdict& one) { return one.kind == verdict.kind; };
    const bool broken = std::ranges::any_of(
        all, [&](const LoadVerdict& one) { return is_told(one) && one.status == Status::not_met; });
    if (verdict.status == Status::not_met ||
        (verdict.status == Status::unknown && !broken && std::ranges::none_of(told, is_told)))
      told.push_back(verdict);
  }
  std::ranges::stable_sort(told, {}, [](const LoadVerdict& one) { return static_cast<int>(one.kind); });
  return told;
}

std::vector<std::string> open_in(const Plan& plan, const Loads& loads) {
  std::vector<std::string> told;
  for (const LoadVerdict& verdict : told_verdicts(plan, verdicts_on(plan, loads)))
    told.push_back(capital_first(tanks_lead(verdict.tanks) +
                                 open_text(plan, balance_with(loads, verdict.tanks), verdict)) +
                   ".");
  if (std::string none = no_plates_sentence(plan); !none.empty()) told.push_back(std::move(none));
  if (loads.supply)
    for (std::string& sentence : open_supply_sentences(plan, *loads.supply))
      told.push_back(std::move(sentence));
  if (loads.warm_up && loads.warm_up->watts > 0 && loads.warm_up->no_figure.empty()) {
    const WarmUp& warm_up = *loads.warm_up;
    if (warm_up.is_never_reached) told.push_back(time_sentence(plan, warm_up));
    if (warm_up.watts < warm_up.hold.low) told.push_back(hold_sentence(plan, warm_up));
  }
  return told;
}

/// "By day: …", "By day, with every tank full: …".
std::string led_by(const std::string& when, const std::string& sentence) {
  const bool has_lead =
      sentence.starts_with(tanks_lead(TankState::full)) || sentence.starts_with(tanks_lead(TankState::empty));
  return capital_first(when) + (has_lead ? ", " + small_first(sentence) : ": " + sentence);
}

}  // namespace

std::vector<std::string> open_load_sentences(const Plan& plan, std::span<const Loads> all) {
  std::vector<std::pair<std::string, std::vector<std::string>>> told;
  for (const Loads& loads : all)
    for (const std::string& sentence : open_in(plan, loads)) {
      auto found = std::ranges::find(told, sentence, [](const auto& one) { return one.first; });
      if (found == told.end()) found = told.insert(told.end(), {sentence, {}});
      found->second.push_back(small_first(when_of(*loads.configuration)));
    }
  std::vector<std::string> sentences;
  for (const auto& [sentence, when] : told)
    sentences.push_back(when.size() < all.size() ? led_by(listed_with_and(when), sentence) : sentence);
  return sentences;
}

}  // namespace berthwright
